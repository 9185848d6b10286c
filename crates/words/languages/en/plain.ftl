## The notebook as plain text, in a file: each sentence is a line.

# The first line.
# $group (text): the label of the group
plain-notebook = Notebook of group { $group }
# $level (text): one of the levels of the lesson
plain-level = Level: { $level }.
# $help (text): how much help there is
plain-help = Help with the conclusion: { $help }.
# $allowed (allowed | not-allowed): whether it is
plain-two-changes = Two changes at once: { $allowed ->
    [allowed] allowed
   *[not-allowed] not allowed
}.
# $telling (text): what the page tells when
plain-telling = What is told when: { $telling }.
plain-altered = Trials were taken out or put in by hand, outside of the page.
# $trial (number): the number of the trial
plain-in-hand = In hand: trial { $trial }.

## A trial.

# The line above all of it.
# $trial (number): the number of the trial
# $name (text): the name of its rocket
plain-trial = Trial { $trial }: { $name }
# $trial (number): the number of the trial
# $name (text): the name of its rocket
plain-deleted = Trial { $trial } (deleted): { $name }
# $trial (number): the number of the other trial
plain-compared = Compared with trial { $trial }.
plain-compared-with-none = Compared with no other trial.
# $plan (text): what the group wrote
plain-plan = Plan: { $plan }
# $note (text): what the group wrote
plain-note = Note: { $note }
plain-trial-altered = Some of this trial was changed by hand, outside of the page.

## What was predicted.

plain-not-predicted = Predicted: nothing yet.
# $count (number): how many swings were seen before
# $outcome (text): what was predicted
plain-predicted = Predicted, { $count ->
    [0] before any swing
    [one] after { $count } swing
   *[other] after { $count } swings
}: { $outcome }.
# A later prediction.
# $count (number): how many swings were seen before
# $outcome (text): what was predicted
plain-later = Later, { $count ->
    [0] before any swing
    [one] after { $count } swing
   *[other] after { $count } swings
}: { $outcome }.
# A prediction that is not locked.
# $outcome (text): what is predicted
plain-draft = Written and not locked: { $outcome }.
plain-draft-empty = Written and not locked: no outcome.
# Behind one of these sentences, and behind the one on a reading that is left out.
# $because (text): what the group wrote
plain-because = Because: { $because }

## What was measured.

# $mm (number): millimetres
plain-rocket-length = Length of the rocket: { $mm } mm.
# $mm (number): millimetres
plain-cutout-length = Length of the cut-out: { $mm } mm.
# $balance-point (mass | pressure): which of the two points
# $mm (number): millimetres
plain-guess = Guess of the { $balance-point ->
    [mass] centre of mass
   *[pressure] centre of pressure (side-on)
}: { $mm } mm from the nose.
# $balance-point (mass | pressure): which of the two points
# $from-end (nose | tail): the end where the ruler began
# $readings (text): each of the three, with commas between, such as “150.1 mm, none, 151 mm”
plain-readings = Readings of the { $balance-point ->
    [mass] centre of mass
   *[pressure] centre of pressure (side-on)
}, from the { $from-end ->
    [nose] nose
   *[tail] tail
}: { $readings }.
# One of those readings.
# $mm (number): millimetres
plain-reading = { $mm } mm
# In place of one.
plain-no-reading = none
# $number (number): which reading
plain-left-out = Reading { $number } is left out.
# $number (number): which reading
plain-not-true = Reading { $number } does not count: it cannot be true of this rocket.
# $mm (number): millimetres
# $range (number): millimetres between the least reading and the largest
plain-middle = Middle value: { $mm } mm from the nose, range { $range } mm.
# $mm (number): millimetres
plain-measured-separation = Measured separation: { $mm } mm.
# $mm (number): millimetres
plain-measured-overlap =
    Measured separation: { $mm } mm; the readings of the two points overlap.
# $mm (number): millimetres
plain-computed-separation = Computed separation: { $mm } mm.

## What was seen.

# $outcomes (text): what was recorded by mistake
plain-taken-back = Taken back, as recorded by mistake: { $outcomes }.
plain-not-swung = Swings: none yet.
# $counted (number): how many swings count
# $wanted (number): how many it takes
# $outcomes (text): what was seen
plain-swings = Swings, { $counted } of { $wanted }: { $outcomes }.
# $outcome (text): what they come to
plain-together = All together: { $outcome }.
# $string (number): the length of the string in metres
# $arm (number): the length of the arm in metres
# $turns (number): how many turns a second
# $density (number): what a cubic metre of the air weighs, in kilograms
plain-swung =
    Swung on { $string } m of string with an arm of { $arm } m, { $turns } turns a second, in air
    of { $density } kg/m³.

## The end.

# Above the plans for later trials.
plain-plans = Plans
# Above the four boxes.
plain-conclusion = Conclusion
# $statement (text): the name of a box of the conclusion, such as “Claim”
# $said (text): what the group wrote
plain-statement = { $statement }: { $said }
# $statement (text): the name of a box of the conclusion, such as “Claim”
plain-no-statement = { $statement }: nothing yet.
# Above the notebook as a table.
plain-table-follows = Keep what follows: with it this page opens the notebook again.
