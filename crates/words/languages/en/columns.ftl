## The heads of the columns, where a notebook is saved for a spreadsheet. The key of the column follows in square brackets. Short, and without commas, semicolons, quotation marks and square brackets.

# What the row holds: a trial, a plan, the conclusion …
columns-kind = Kind of row
columns-group = Group
columns-trial = Trial
# The number of another trial.
columns-compared-with = Compared with trial
columns-plan = Plan
# A link.
columns-rocket = Rocket
columns-rocket-name = Name of the rocket
columns-rocket-length = Length of the rocket (mm)
columns-cutout-length = Length of the cut-out (mm)

## The readings of each of the two points.

# Whether they were read from the nose or the tail.
# $balance-point (mass | pressure): which of the two points
columns-from = { $balance-point ->
    [mass] Centre of mass: read from
   *[pressure] Centre of pressure: read from
}
# $balance-point (mass | pressure): which of the two points
columns-guess = { $balance-point ->
    [mass] Centre of mass: guess (mm)
   *[pressure] Centre of pressure: guess (mm)
}
# $balance-point (mass | pressure): which of the two points
# $number (number): which reading
columns-reading = { $balance-point ->
    [mass] Centre of mass: reading { $number } (mm)
   *[pressure] Centre of pressure: reading { $number } (mm)
}
# The number of a reading.
# $balance-point (mass | pressure): which of the two points
columns-left-out = { $balance-point ->
    [mass] Centre of mass: reading left out
   *[pressure] Centre of pressure: reading left out
}
# $balance-point (mass | pressure): which of the two points
columns-left-out-reason = { $balance-point ->
    [mass] Centre of mass: why it is left out
   *[pressure] Centre of pressure: why it is left out
}
# $balance-point (mass | pressure): which of the two points
columns-middle = { $balance-point ->
    [mass] Centre of mass: middle value from the nose (mm)
   *[pressure] Centre of pressure: middle value from the nose (mm)
}
# $balance-point (mass | pressure): which of the two points
columns-range = { $balance-point ->
    [mass] Centre of mass: range (mm)
   *[pressure] Centre of pressure: range (mm)
}
columns-measured-separation = Measured separation (mm)
columns-computed-separation = Computed separation (mm)

## Predictions, of which there can be later ones, and swings.

# $number (number): which prediction
columns-prediction = Prediction { $number }
# $number (number): which prediction
columns-because = Prediction { $number }: because
# How many swings the group had seen when it predicted.
# $number (number): which prediction
columns-swings-seen = Prediction { $number }: swings seen before
# A prediction that is written and not locked.
columns-draft = Not locked yet
columns-draft-because = Not locked yet: because
columns-string = String (m)
columns-arm = Arm (m)
columns-turns = Turns a second
columns-air-density = Density of the air (g/m³)
# $number (number): which swing
columns-swing = Swing { $number }
columns-all-swings = All swings together
# What was recorded by mistake.
# $number (number): which of them
columns-taken-back = Taken back { $number }
columns-note = Note

## What is kept for the page itself.

# A number by which a change is seen.
columns-seal = Seal
columns-altered = Changed by hand
# Where a deleted trial stood.
columns-place = Place in the notebook
columns-version = Version of the table
columns-level = Level
columns-help = Help with the conclusion
columns-two-changes = Two changes at once
columns-in-hand = Trial in hand
columns-telling = What is told when
columns-set-up = Set-up of the lesson
