cover-lead = A club by the sea swung twelve rockets on a string, with an adult. They measured two points of each, from the tip of the nose. These numbers are made up, so that you can practice.
