## The place Class, the view Marking: what each group wrote, beside its own data.

# The name of the view.
marking-view = Marking
marking-none =
    No notebook has come whole yet. There is something to read in the link, the file or the parts of
    a notebook; the code of a trial and a row from paper are numbers only.
# The label of a list of notebooks.
marking-whose = Notebook
# The buttons beside it.
marking-previous = Previous
marking-next = Next
# $number (number): which notebook
# $of (number): of how many
marking-at = Notebook { $number } of { $of }
# Buttons: the report of the group whose notebook is shown.
marking-print = Print its report
marking-text = Its report as text
# A group of another class.
# $group (text): the label of the group
# $class (text): the label of the class
marking-of-class = { $group } ({ $class })
# One of several notebooks that came under one label.
# $name (text): the label of the group
# $number (number): which of them
# $of (number): how many there are
marking-one-of = { $name }, notebook { $number } of { $of }
# The heading of the conclusion of a group.
# $name (text): the label of the group
marking-wrote = What { $name } wrote
# Beside a heading, and on every page of paper.
marking-invented = Invented, for practice
# The heading of the trials of that group.
marking-data = Its own data
# The heading of the statements to choose.
marking-found = What you find in it
marking-how = Press what holds. The page presses nothing by itself: below some stands what it knows.
# In place of what a group did not write.
marking-nothing = nothing
# Below a point that was measured.
# $count (number): how many readings count
# $range (text): the largest less the smallest, with its unit
marking-of-readings =
    { $count ->
        [one] { $count } reading
       *[other] { $count } readings, range { $range }
    }
# In the column of what was seen. The aside is a hint.
# $outcome (text): what was seen more often than all else
# $seen (number): in how many swings it was seen
# $swings (number): of how many
marking-seen = { $outcome } <aside>({ $seen } of { $swings })</aside>
# $groups (text): the labels of the groups
marking-only-numbers = Only numbers came from: { $groups }. There is nothing to mark.

## The statements to choose, in the order in which files keep them.

marking-answers = The claim answers the question.
marking-fits = The claim fits the group’s own data.
marking-numbers = The evidence names numbers from at least two trials.
marking-points = The reason names both points: centre of mass and centre of pressure.
marking-which-way = The reason says which way the air turns the rocket.
marking-one-change = One thing was changed at a time.
marking-predicted = Predictions were made before swinging.
marking-repeated = Each point was read more than once.
marking-how-sure = The group says how sure it is, and why.
marking-next-step = The group says what it would try next.

## What the page knows of some of them, below each.

# $question (text): the question of the lesson
marking-question = The question was: { $question }
marking-no-question = No question was set.
# $count (number): how many
# $of (number): of how many trials
marking-measured = Trials with a measured separation: { $count } of { $of }
# $count (number): how many
# $of (number): of how many trials
marking-changes = Compared trials that changed no more than one thing: { $count } of { $of }
# $count (number): how many
# $of (number): of how many trials
marking-before = Trials predicted before swinging: { $count } of { $of }
# $count (number): how many
# $of (number): of how many trials
marking-readings = Trials in which both points were read more than once: { $count } of { $of }
# $count (number): how many
marking-plans = Plans on the group’s list: { $count }
# What followed from a change.
# $before (number): the number of a trial
# $after (number): the number of the one that is compared with it
# $from (text): the separation before, with its unit
# $to (text): the separation after, with its unit
# $was (text): what was seen before
# $is (text): what was seen after
marking-followed = From trial { $before } to trial { $after } the separation went from { $from } to { $to }, and what was seen from “{ $was }” to “{ $is }”.
# $trial (number): the number of the trial
# $balance-point (mass | pressure): which of the two points
# $seen (text): what was seen
marking-turned =
    { $balance-point ->
        [mass] In trial { $trial } the centre of mass was nearer the nose; seen: “{ $seen }”.
       *[pressure] In trial { $trial } the centre of pressure was nearer the nose; seen: “{ $seen }”.
    }

## What the groups of the invented class wrote: well, in part, and not by their data.

# $from (text): a length with its unit
# $to (text): a length with its unit
example-claim-more = Our change moved the two points further apart, from { $from } to { $to }.
# $from (text): a length with its unit
# $to (text): a length with its unit
example-claim-less = Our change did not move the two points further apart: { $from } before, { $to } after.
example-claim-vague = Ours flew better the second time.
example-claim-wrong = Fins do not matter, and neither does the weight.
# $from (text): a length with its unit
# $was (text): what was seen
# $to (text): a length with its unit
# $is (text): what was seen
example-evidence = In trial 1 the separation was { $from }, and we saw “{ $was }”. In trial 2 it was { $to }, and we saw “{ $is }”.
# $is (text): what was seen
example-evidence-one = In trial 2 we saw “{ $is }”.
example-evidence-vague = We all saw it.
example-reason-behind = The air pushes at the centre of pressure. That is behind the centre of mass, so the air turns the tail back and the nose into the wind.
example-reason-ahead = The air pushes at the centre of pressure. That is not far enough behind the centre of mass, so the air does not bring the nose round.
example-reason-vague = Because we built it well.
example-reason-one = The centre of mass is in another place now.
example-reason-wrong = The air pushes on the nose, so the nose goes first.
example-trust = We measured three times and swung three times, so we are quite sure.
example-trust-sure = We are very sure.
example-trust-not = We do not know.
example-plan = one more fin
