language-failed =
    { $language } did not load, so the page stays as it was. Is the internet on? Then choose it
    again.
