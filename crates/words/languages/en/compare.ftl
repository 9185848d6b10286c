## In the place Compare: the trial in hand.

compare-no-trial =
    There is no trial yet. Measure, predict and swing: then the results stand here.
# The heading, where the rocket has no name.
# $trial (number): the number of the trial
compare-trial = Trial { $trial }
# The heading.
# $trial (number): the number of the trial
# $name (text): the name of its rocket
compare-trial-of = Trial { $trial }: { $name }
# $plan (text): the group’s own words
compare-planned = Planned: { $plan }
# The label of the room for notes.
compare-note = It did this because … and anything else to remember.
# The heads of a table of one row.
compare-we-thought = We thought
compare-we-saw = We saw
compare-together = Together
# In that table, where nothing was predicted.
compare-nothing-thought = nothing
# In that table.
# $outcome (text): what was seen
compare-not-counted = { $outcome } (not counted)
# Below that table: one of two.
compare-as-predicted = It did what you predicted. Was your reason right too?
compare-not-as-predicted =
    It did something else: now you have found something out. What could be the reason?
# At the most detailed level, once the group has predicted.
# $distance (text): how far apart the two points are, with its unit
# $how-known (measured | worked-out): where that number comes from
# $goes-back (tail | nose): which end the air turns back
compare-moment = Moments: side-on, the air pushes at the centre of pressure, { $distance } ({ $how-known ->
    [measured] measured
   *[worked-out] worked out
}) from the centre of mass. Push × that distance turns the rocket: { $goes-back ->
    [tail] its tail goes back, nose into the air.
   *[nose] its nose goes back, tail into the air.
} The cut-out stands for air straight from the side; flying straight, the air pushes at another place. With water inside, the centre of mass is elsewhere and moves.

## In the place Compare: what the group plans.

# The heading.
compare-next = What we will try next
# A button beside a plan. The aside is only spoken.
# $plan (text): the group’s own words
compare-begin-plan = Begin it with the rocket above<aside>: { $plan }</aside>
# A button beside a plan. The aside is only spoken.
# $plan (text): the group’s own words
compare-remove-plan = Take it off the list<aside>: { $plan }</aside>
# The label of the room for a plan.
compare-one-change = One change to try
# An example of a plan, in the empty room.
compare-plan-example = bigger fins
# The button beside it.
compare-add-plan = Add it
# Pressed while nothing is written.
compare-write-first = First write what you will try.

## In the place Compare and on paper: all trials as a table.

# What the table is called for a screen reader.
compare-trials = The trials
# Above the table.
# $group (text): the label of the group
compare-trials-of = The trials of { $group }
# The heads of its columns.
compare-head-trial = Trial
compare-head-changed = What changed
compare-head-nearer = Nearer the nose
compare-head-separation = Separation
compare-head-widths = Body widths
compare-head-mass = Mass
compare-head-predicted = We predicted
compare-head-do = Do
# Behind the number of the trial that the page shows.
compare-in-hand = (in hand)
# In the column of predictions, before a later one.
compare-later = later:
# In the column of predictions.
compare-nothing-yet = nothing yet
compare-swung-first = swung before it was predicted
compare-altered = changed by hand, outside of the page
# In the column of what was seen. The aside is a hint.
# $outcome (text): what was seen more often than all else
# $seen (number): in how many swings it was seen
# $swings (number): how many swings there were
compare-seen = { $outcome } <aside>({ $seen } of { $swings })</aside>
# In the column of what was seen, behind “mixed”.
# $swings (number): how many swings there were
compare-swings = { $swings ->
    [one] ({ $swings } swing)
   *[other] ({ $swings } swings)
}
# In the column of what was seen.
# $outcomes (text): what was recorded and taken back
compare-taken-back = taken back: { $outcomes }
# The buttons of a row. The aside is only spoken.
# $trial (number): the number of the trial
compare-open = Open<aside> trial { $trial }</aside>
# $trial (number): the number of the trial
compare-copy = Copy<aside> trial { $trial }</aside>
# $trial (number): the number of the trial
compare-pair = Side by side<aside>, trial { $trial }</aside>
# $trial (number): the number of the trial
compare-delete = Delete<aside> trial { $trial }</aside>
# A button that shows an arrow. Only spoken.
# $trial (number): the number of the trial
compare-move-up = Move trial { $trial } up
# A button that shows an arrow. Only spoken.
# $trial (number): the number of the trial
compare-move-down = Move trial { $trial } down
# In the column of changes: nothing to compare with.
compare-baseline = baseline
# In the column of changes.
compare-nothing-changed = nothing
# In the column of changes, below more than one.
# $count (number): how many
compare-changes = { $count ->
    [2] two changes
    [3] three changes
    [4] four changes
    [one] one change
   *[other] { $count } changes
}
# The same, where whoever leads allows several.
# $count (number): how many
compare-changes-allowed = { $count ->
    [2] two changes (allowed)
    [3] three changes (allowed)
    [4] four changes (allowed)
    [one] one change (allowed)
   *[other] { $count } changes (allowed)
}
# In the column of changes, behind them, where that is not the trial in the row above.
# $trial (number): the number of the trial it is compared with
compare-since = since trial { $trial }
# In the column of what is nearer the nose, and where measured ranges overlap.
compare-too-close = too close to call
# In the column of what is nearer the nose.
compare-mass = centre of mass
compare-pressure = centre of pressure
compare-one-place = both in one place
# In the column of the separation.
# $separation (text): how far apart the two points are, with its unit
compare-measured = { $separation } measured
# In the column of the separation.
# $separation (text): how far apart the two points are, with its unit
compare-worked-out = { $separation } worked out
# Below the table.
compare-notebook-altered =
    Trials were taken out of this notebook, or put in, by hand, outside of the page. A mark such
    as this one shows a change by hand. It cannot show that somebody went back to an earlier
    file.
# Below the table, before the numbers of the trials that can be brought back.
compare-deleted = Deleted:
# $trial (number): the number of the trial
compare-deleted-trial = trial { $trial }
# The button behind it.
# $trial (number): the number of the trial
compare-bring-back = Bring trial { $trial } back

## What is said after a button of that table.

# $trial (number): the number of the trial
compare-is-deleted = Trial { $trial } is deleted. It can be brought back below.
# $trial (number): the number of the trial
compare-is-back = Trial { $trial } is back, and in hand.
# $trial (number): the number of the trial
compare-is-back-closed = Trial { $trial } is back. Open it to go on with it.
# $trial (number): the number of the trial
compare-is-first = Trial { $trial } is the first one already.
# $trial (number): the number of the trial
compare-is-last = Trial { $trial } is the last one already.

## In the place Compare and on paper: the charts.

# The heading of the chart of swings.
charts-swings = Separation and what we saw
charts-swings-hint =
    Each dot is one swing. Pick one: what does it tell? Now look at all: is there a pattern? One
    to two body widths is a habit, not a permission.
# A line that opens the table of a chart.
charts-as-table = The same as a table
# What the table is called for a screen reader.
charts-swings-table = Separation and swings
# The head of a column: measured or worked out.
charts-how = How
# The head of a column.
# $number (number): which swing of the trial
charts-swing = Swing { $number }
# In the column “How”.
charts-is-measured = measured
charts-is-worked-out = worked out
# The heading of the chart of separations.
charts-series = Separation over the trials
# What its table is called for a screen reader.
charts-series-table = Separation of each trial
# The heads of its columns: the measured separation, the least and the most it could be.
charts-head-measured = Measured
charts-head-from = From
charts-head-to = To
charts-head-worked-out = Worked out
charts-no-pair = One of the two rockets cannot be drawn.
# The heading of two rockets on one ruler.
# $left (number): the number of the one trial
# $right (number): the number of the other
charts-pair = Trial { $left } and Trial { $right }, side by side
# Below that heading, where neither was measured.
charts-pair-neither = Both as worked out.
# Below that heading, where one was measured.
# $trial (number): the number of that trial
# $separation (text): its measured separation, with its unit
charts-pair-one = Both as worked out; trial { $trial } measured: { $separation }.
# Below that heading, where both were measured.
# $left (number): the number of the one trial
# $left-separation (text): its measured separation, with its unit
# $right (number): the number of the other
# $right-separation (text): its measured separation, with its unit
charts-pair-both =
    Both as worked out; trial { $left } measured: { $left-separation }; trial { $right }
    measured: { $right-separation }.
