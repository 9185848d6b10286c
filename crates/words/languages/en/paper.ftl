## The notebook on paper.

# The heading.
# $group (text): the label of the group
paper-notebook-of = Notebook of { $group }
# Below a drawing.
# $trial (number): the number of the trial
paper-rocket-of = The rocket of trial { $trial }
# $trial (number): the number of the trial
# $note (text): what the group wrote
paper-note = <b>Trial { $trial }:</b> { $note }
# $plans (text): what the group wrote, with semicolons between
paper-plans = <b>What we will try next:</b> { $plans }
# The heading of the conclusion.
paper-found-out = What we found out
# To be signed with a pencil.
paper-initials = Adult’s initials, space checked before every three swings: ____ ____ ____ ____
paper-no-permission =
    A good swing is not permission to launch. Local rules, your school’s own risk assessment and
    a qualified person decide.
# Above a table.
paper-swings = What we saw, swing by swing
# The heads of its columns; the other one is the trial.
paper-head-swings = Swings
# Above a table.
paper-readings = What we guessed and measured, from the nose tip
# The heads of its columns.
paper-head-point = Point
paper-head-guess = Guess
paper-head-middle = Middle
paper-head-range = Range
# In that table: what is to be known about the readings of a point, one behind the other.
# $point (text): the point
paper-from-tail = { $point } (readings from the tail)
# $point (text): the point, and what was said of it before
# $number (number): which reading
paper-left-out = { $point }, reading { $number } left out
# $point (text): the point, and what was said of it before
# $number (number): which reading
# $reason (text): the group’s own words
paper-left-out-because = { $point }, reading { $number } left out: { $reason }
# $point (text): the point, and what was said of it before
# $number (number): which reading
paper-not-true = { $point }, reading { $number } does not count: it cannot be true
# In the column of what was seen, where swings differ.
# $seen (text): what was seen, and how often
# $numbers (text): the numbers of these swings, such as “1, 3”
paper-which-swings = { $seen }, no. { $numbers }
