refused-not-a-group =
    “{ $found }” is no group. Write a color and a number, such as blue 4.
