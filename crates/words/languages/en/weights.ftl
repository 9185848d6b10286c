## Headings in the list of what a weight is.

weights-uk-coins = UK coins
weights-euro-coins = Euro coins
weights-us-coins = US coins
weights-australian-coins = Australian coins
weights-other-things = Other things

## What a weight is, in that list. It becomes its label, of 24 letters at most: no two may be the same.

# $value (number): 1, 2, 5, 10, 20 or 50
weight-pence = { $value }p coin
# $value (number): 1 or 2
weight-pounds = { $value } pound coin
# $value (number): 1, 2, 5, 10, 20 or 50
weight-euro-cents = { $value } cent coin
# $value (number): 1 or 2
weight-euros = { $value } euro coin
weight-us-cent = US cent
weight-us-nickel = US nickel
weight-us-dime = US dime
weight-us-quarter = US quarter
weight-us-half-dollar = US half dollar
weight-us-dollar = US dollar coin
# $value (number): 5, 10, 20 or 50
weight-australian-cents = { $value }c coin
# $value (number): 1 or 2
weight-australian-dollars = { $value } dollar coin
# For modelling.
weight-clay = clay
weight-sticky-tape = sticky tape
weight-small-paper-clip = paper clip (small)
weight-large-paper-clip = paper clip (large)
weight-metal-washer = metal washer
# Something else: it gets a name of its own.
weight-other = other
