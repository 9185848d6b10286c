forms-sideways =
    Is the table cut off? Move it sideways with a finger, or with Tab and the arrow keys.
