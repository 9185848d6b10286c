beside-agree = { $balance-point ->
    [mass] Centre of mass: you and the page are no more than { $distance } apart.
   *[pressure] Centre of pressure (side-on): you and the page are no more than { $distance } apart.
}
beside-differ = { $balance-point ->
    [mass] Centre of mass: you measured { $distance } nearer the { $nearer-end ->
        [nose] nose
       *[tail] tail
    } than the page worked out.
   *[pressure] Centre of pressure (side-on): you measured { $distance } nearer the { $nearer-end ->
        [nose] nose
       *[tail] tail
    } than the page worked out.
}
beside-cannot-tell =
    But your own readings are { $range } apart, so they cannot tell. Measure again?
beside-other-end = Did you read it from the other end of the rocket?
beside-tail-heavier = Is the tail heavier than the page knows: tape, glue, thick fins?
beside-tail-lighter = Is the tail lighter than the page knows, or is there more weight in the nose?
beside-scales = The scales say { $scales }. All parts together come to { $parts }. Is a part missing?
beside-weigh = How much does the whole rocket weigh on the scales?
beside-how-long = How long is the cut-out? Then the page knows how much smaller or larger it is than the rocket.
beside-which-view =
    When the number of fins is odd, each side looks different. Which side did you cut out?
