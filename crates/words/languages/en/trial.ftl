## What a trial changed, in Predict and in Compare.

# What was predicted with its reason, as in “tail first, because the fins are small”. The
# value stands in quotation marks.
# $outcome (text): what the group predicted, or saw
# $because (text): the group’s own words
trial-because = { $outcome }, because <value>{ $because }</value>
# A list of the other trials.
trial-compared-with = Compared with
# An entry of that list.
trial-with-nothing = nothing: it is a baseline
# An entry of that list.
# $trial (number): the number of the trial
trial-with = trial { $trial }
# An entry of that list.
# $trial (number): the number of the trial
trial-with-deleted = trial { $trial } (deleted)
trial-is-baseline = This is a baseline: the others are compared with it.
# $trial (number): the number of the trial it is compared with
trial-unchanged = Nothing has changed since trial { $trial }.
# Behind that, before the prediction is locked.
trial-change-one = Change <b>one thing</b> about the rocket above; this trial follows it.
# Above the list of changes.
# $trial (number): the number of the trial it is compared with
trial-since = Since trial { $trial }:
# A button beside a change. The aside is only spoken.
# $change (text): the change in a few words, such as “fin shape”
trial-undo-change = Undo this change<aside>: { $change }</aside>
# Where more than one thing changed.
# $count (number): how many things
trial-things-changed = { $count ->
    [2] Two things changed. Which of them did it?
    [3] Three things changed. Which of them did it?
    [4] Four things changed. Which of them did it?
    [one] One thing changed. Which of them did it?
   *[other] { $count } things changed. Which of them did it?
}
# Behind that: one of three.
trial-several-allowed = Whoever leads allows it; the table says so.
trial-undo-all-but-one = Undo all but one for a fair test.
trial-table-says-so = The table says so.
# What moved with a change, for the youngest.
trial-point-moved-too = That moved a balance point too: see the drawing above.
# What moved with a change.
# $sentences (text): what moved, as sentences
trial-moved-too = What else moved (worked out): { $sentences }
