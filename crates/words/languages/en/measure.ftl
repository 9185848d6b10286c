## In the place Measure: three readings of each of the two points.

# Below the heading.
measure-lead =
    Both points from the nose tip, along the body. The rocket is empty. Three readings of each:
    take the ruler away in between.
# A line below the readings.
# $number (number): which reading
# $sentence (text): what looks odd about it, as a sentence
measure-slip = Reading { $number }: { $sentence }
# The headings of the two cards.
measure-mass = Centre of mass
measure-pressure = Centre of pressure (side-on)
# How it is done, beside a sketch.
measure-mass-how = Loop the string round the rocket until it hangs level. Read at the string.
measure-pressure-how = Balance the flat card cut-out on a ruler’s edge. Read at the edge.
# The list of the two ends to measure from. The aside is only spoken.
# $balance-point (mass | pressure): which of the two points
measure-from = Measured from<aside>, { $balance-point ->
    [mass] centre of mass
   *[pressure] centre of pressure (side-on)
}</aside>
# An entry of that list.
measure-from-nose = the nose
# An entry of that list.
measure-from-tail = the tail
# Before anything is measured. The aside is only spoken.
# $balance-point (mass | pressure): which of the two points
# $unit (text): the unit, as a word
measure-guess = First a guess<aside> of the { $balance-point ->
    [mass] centre of mass
   *[pressure] centre of pressure (side-on)
}, from the nose tip in { $unit }</aside>
# Once something is measured.
# $distance (text): how far, with its unit
measure-guessed = Your guess was { $distance } from the nose.
measure-no-guess = No guess was made.
# The field of a reading. The aside is only spoken.
# $number (number): which reading
# $balance-point (mass | pressure): which of the two points
# $unit (text): the unit, as a word
measure-reading = Reading { $number }<aside> of the { $balance-point ->
    [mass] centre of mass
   *[pressure] centre of pressure (side-on)
} in { $unit }</aside>
# A list, where one reading lies apart from the others.
measure-apart = What do you do with it?
# An entry of that list.
measure-keep-all = keep all
# An entry of that list.
# $number (number): which reading
measure-leave-out = leave out reading { $number }
# The field for the reason, where a reading is left out.
measure-why = Why?
# What the readings come to.
# $distance (text): how far, with its unit
measure-middle = Middle value: <b>{ $distance } from the nose</b>.
# The same, where something was converted.
# $distance (text): how far, with its unit
# $from-tail (text): how far from the tail, with its unit
measure-middle-both =
    Middle value: <b>{ $distance } from the nose</b> ({ $from-tail } from the tail).
# Behind that: how far the readings differ.
measure-range-none = One reading has no range.
measure-range-close = The readings are close together.
measure-range-spread = The readings are spread out: measure again?
# $range (text): from the least to the most, with its unit
# $least (text): the least reading
# $most (text): the largest reading
measure-range = Range: { $range } ({ $least } to { $most }).

## Below both cards: what the two points come to together.

# $separation (text): how far apart the two points are, with its unit
measure-separation = Measured separation: <b>{ $separation }</b>.
# Behind the separation.
# $widths (number): how many times as far as the body is wide, with one decimal
measure-widths = That is { $widths } body widths.
measure-mass-nearer = The centre of mass is nearer the nose.
measure-pressure-nearer = The centre of pressure (side-on) is nearer the nose.
measure-neither-nearer = Both points are in the same place.
measure-too-close =
    <b>Too close to call.</b> The ranges of the two points overlap: these readings cannot tell
    which point is nearer the nose.
# A line that opens a table, and the table’s name.
measure-beside = Measured beside worked out
# Above the table.
measure-beside-caption = From the nose tip: measured beside worked out
# The heads of its columns.
measure-head-what = what
measure-head-measured = measured
measure-head-worked-out = worked out
measure-head-difference = difference
# The head of its last row: the distance between the two points.
measure-row-separation = separation

## Below that: where a cut-out is not as long as its rocket.

# A line that opens two fields.
measure-other-scale = The cut-out is smaller or larger than the rocket
# The fields. The aside is only spoken.
# $unit (text): the unit, as a word
measure-rocket-length = Length of the rocket<aside> in { $unit }</aside>
# $unit (text): the unit, as a word
measure-cutout-length = Length of the cut-out<aside> in { $unit }</aside>
# Below the two fields.
measure-type-both = Type both lengths.
