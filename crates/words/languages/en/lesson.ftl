## The names of what a class chooses, measures and sees, wherever they stand.

# What a swing showed.
lesson-steady = nose first, steady
lesson-wobbling = nose first after wobbling
lesson-sideways = sideways or tumbling
lesson-tail-first = tail first
lesson-slipped = string slipped, do again
lesson-not-sure = not sure
# What the swings of a trial come to: there were none that count.
lesson-not-swung = not swung
# What the swings of a trial come to: they did not agree.
lesson-mixed = mixed
# The point where the rocket hangs level.
lesson-mass = centre of mass
# The point where the card cut-out balances.
lesson-pressure = centre of pressure (side-on)
# A list to choose from: how much detail the notebook shows, with the ages it is meant for.
lesson-level-balance = Balance (about 8 to 10)
lesson-level-measure = Measure (about 10 to 12)
lesson-level-explain = Explain (about 12 to 14)
lesson-level-model = Model (about 14 to 16)
# A list to choose from: how much help the conclusion gets.
lesson-help-sentences = sentences to use
lesson-help-questions = questions only
lesson-help-none = an empty page
# A list to choose from: what the page tells when.
lesson-telling-all = everything at once
lesson-telling-verdict = the verdict after predicting
lesson-telling-points = the points after measuring, the verdict after predicting
# The four boxes of a conclusion.
lesson-claim = Claim
lesson-evidence = Evidence
lesson-reason = Reason
lesson-trust = Trust

## The label of a group: a colour and a number.

# $colour (text): one of the colours below
# $number (number): its number, from 1 on
lesson-group = { $colour } { $number }
lesson-red = Red
lesson-orange = Orange
lesson-yellow = Yellow
lesson-green = Green
lesson-blue = Blue
lesson-purple = Purple
lesson-brown = Brown
lesson-black = Black
lesson-grey = Grey
lesson-white = White
lesson-silver = Silver
lesson-gold = Gold

## Where the notebook has no room left.

# $most (number): how many it has room for
lesson-room-trials = A notebook has room for { $most } trials, deleted ones included.
# $most (number): how many it has room for
lesson-room-plans = A notebook has room for { $most } plans.

## Several outcomes in one line.

# $outcomes (text): those that were seen first
# $outcome (text): the next one
lesson-outcomes = { $outcomes }; { $outcome }
