## In the place Measure, below the table of what was measured beside what was worked out.

# $balance-point (mass | pressure): which of the two points
# $distance (text): how far apart they are, with its unit
beside-agree = { $balance-point ->
    [mass] The centre of mass: measured and worked out agree to within { $distance }.
   *[pressure] The centre of pressure (side-on): measured and worked out agree to within { $distance }.
}
# $balance-point (mass | pressure): which of the two points
# $distance (text): how far apart they are, with its unit
# $nearer-end (nose | tail): which end the measured one is nearer to
beside-differ = { $balance-point ->
    [mass] The centre of mass: measured { $distance } nearer the { $nearer-end ->
        [nose] nose
       *[tail] tail
    } than worked out.
   *[pressure] The centre of pressure (side-on): measured { $distance } nearer the { $nearer-end ->
        [nose] nose
       *[tail] tail
    } than worked out.
}
# Behind that.
# $range (text): how far apart the readings are, with its unit
beside-cannot-tell =
    But your readings lie { $range } apart themselves: they cannot tell. Measure again?
# What a difference may come from, as questions.
beside-other-end = Was it read from the other end of the rocket?
beside-tail-heavier = Is the tail heavier than described: tape, glue, thick fins?
beside-tail-lighter = Is the tail lighter than described, or is there more ballast in the nose?
# $scales (text): what the scales say, with its unit
# $parts (text): what the parts add up to, with its unit
beside-scales = The scales say { $scales }, the parts add up to { $parts }. Is a part missing?
beside-weigh = What does the whole rocket weigh on the scales?
beside-card = Is the card the same all over: no tape, glue or double card?
beside-flat = Is the cut-out flat, and are its fins cut to the right size?
beside-how-long = How long is the cut-out? Its length gives its scale.
beside-which-view =
    An odd number of fins looks different from each side: which view was cut out?
