## In forms and around tables of every place.

# Behind the label of every room for free text.
forms-no-names = (no names)
# Above a table that may be wider than the window.
forms-sideways =
    If the table is cut off, scroll it sideways: with a finger, or with Tab and the arrow keys.
