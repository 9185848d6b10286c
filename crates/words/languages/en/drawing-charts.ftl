## In the charts of separations, in the place Compare and on paper: short, there is little room.

# The name of the chart of swings, for screen readers.
drawing-chart = Separation and what was seen, one dot for every swing
# The name of the same chart without dots, for screen readers.
drawing-chart-blank = A chart to fill in: separation and what was seen
# Over it.
drawing-one-dot = one dot a swing, with its trial number
# What its hatched band is.
drawing-band = common practice: 1 to 2 body widths
# At the line at 0, and what it is.
drawing-zero = 0: both points in one place
# To the right of 0. The arrow points to the right of the chart.
drawing-mass-nearer-arrow = centre of mass nearer the nose →
# To the left of 0. The arrow points to the left of the chart.
drawing-pressure-nearer-arrow = ← centre of pressure nearer the nose
# What the axis is.
# $written-in (millimetres | inches): the unit
drawing-separation-in = { $written-in ->
    [millimetres] separation in millimetres
   *[inches] separation in inches
}
# What a filled dot is.
drawing-filled = filled: measured
# What a hollow dot is.
drawing-hollow = hollow: computed
# What a line with two ends is.
drawing-range = range of a separation
# The name of the chart of trials, for screen readers.
drawing-series = Separation over the trials, measured and computed
# Under its axis of trials.
drawing-trial-axis = trial
# What a dot is.
drawing-dot = dot: measured
# What a diamond is.
drawing-diamond = diamond: computed
# What an upright bar is.
drawing-bar = bar: range of what was measured
# What an arrow up is.
drawing-mass-nearer = centre of mass nearer the nose
# What an arrow down is.
drawing-pressure-nearer = centre of pressure nearer the nose

## What those charts show, in sentences.

# How many dots, at the beginning of the sentences below. It is in them, and nowhere else.
# $count (number): how many
drawing-dots = { $count ->
    [2] Two dots
    [3] Three dots
    [4] Four dots
    [5] Five dots
    [6] Six dots
    [7] Seven dots
    [8] Eight dots
    [9] Nine dots
    [10] Ten dots
    [11] Eleven dots
    [12] Twelve dots
    [one] One dot
   *[other] { $count } dots
}
# The dots of a row of the chart. How they came about follows.
# $count (number): how many
# $row (text): the name of the row, such as “nose first, steady”
# $spread (in-one-place | apart): whether they stand in one place
# $from (text): the first, such as “20”; not said of one place
# $to (text): the last, such as “35 mm”, or the place
drawing-row =
    { drawing-dots } in the row { $row }, { $spread ->
        [in-one-place] at { $to }
       *[apart] from { $from } to { $to }
    }:
# Behind it: how the dots of the row came about.
# $origin (all-measured | all-computed | both): all in one way, or some in each
# $measured (number): how many of them were measured
# $computed (number): how many of them were computed
drawing-row-origin = { $origin ->
    [all-measured] measured.
    [all-computed] computed.
   *[both] { $measured } measured, { $computed } computed.
}
# There is no dot.
drawing-no-swing = No swing yet.
# Where the band is.
# $spread (in-one-place | apart): whether it is narrower than can be told
# $from (text): such as “60”; not said of one place
# $to (text): such as “120 mm”, or the place
drawing-practice =
    Common practice, 1 to 2 body widths, goes { $spread ->
        [in-one-place] at { $to }
       *[apart] from { $from } to { $to }
    }.
# What the chart of trials shows of one.
# $trial (text): its number
# $known (nothing | by-ruler | by-figures | by-both): what is known of it
# $middle (text): what was measured in the middle, such as “35 mm”
# $least (text): the least
# $most (text): the most
# $worked-out (text): what was computed, such as “35 mm”
drawing-trial =
    Trial { $trial }: { $known ->
        [nothing] no separation
        [by-ruler] measured { $middle }, between { $least } and { $most }
        [by-figures] computed { $worked-out }
       *[by-both] measured { $middle }, between { $least } and { $most }; computed { $worked-out }
    }.
