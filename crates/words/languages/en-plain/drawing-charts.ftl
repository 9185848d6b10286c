drawing-chart = How far apart the points are and what we saw, one dot for each swing
drawing-chart-blank = A chart to fill in: how far apart, and what we saw
drawing-band = what many people do: 1 to 2 body widths
drawing-separation-in = { $written-in ->
    [millimetres] how far apart, in millimetres
   *[inches] how far apart, in inches
}
drawing-hollow = hollow: worked out
drawing-range = from the least to the most
drawing-series = How far apart in each trial, measured and worked out
drawing-diamond = diamond: worked out
drawing-bar = bar: least to most measured
drawing-row-origin = { $origin ->
    [all-measured] measured.
    [all-computed] worked out.
   *[both] { $measured } measured, { $computed } worked out.
}
drawing-practice =
    What many people do, 1 to 2 body widths, goes { $spread ->
        [in-one-place] at { $to }
       *[apart] from { $from } to { $to }
    }.
drawing-trial =
    Trial { $trial }: { $known ->
        [nothing] nothing is known
        [by-ruler] measured { $middle } apart, between { $least } and { $most }
        [by-figures] worked out { $worked-out } apart
       *[by-both] measured { $middle } apart, between { $least } and { $most }; worked out { $worked-out }
    }.
