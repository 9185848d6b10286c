## In the place Measure, below a field: what looks like a slip of the ruler. These ask, and refuse nothing.

slips-not-a-number = This needs a number.
slips-below-zero = A ruler shows nothing below zero. Is there a sign too many?
slips-zero = This is zero. Leave it empty if nothing was measured.
# What was typed may be in another unit.
# $slip-size (small | large): whether it is too small or too large
# $typed (text): the length that was typed, with its unit
# $slip-cause (centimetres | inches | millimetres | zero): how it may have happened
# $meant (text): the length that may be meant, with its unit
slips-other-unit = { $slip-size ->
    [small] Only { $typed }
   *[large] { $typed }
}: { $slip-cause ->
    [centimetres] read in centimetres
    [inches] read in inches
    [millimetres] read in millimetres
   *[zero] one zero too many
}? Did you mean { $meant }?
# $measured (text): the length of the rocket as measured, with its unit
# $described (text): its length as described, with its unit
slips-rocket =
    The ruler says { $measured }, the description { $described }. Measure again, or change the
    description.
# $cutout (text): the length of the cut-out, with its unit
# $rocket (text): the length of the rocket, with its unit
slips-cutout = A cut-out of { $cutout } for a rocket of { $rocket }? Measure it again.
# $percent (number): how long the cut-out is, the rocket being 100
slips-scaled =
    The cut-out is { $percent } % as long as the rocket. Its readings are scaled to the rocket.
# $rocket (text): the length of the rocket, with its unit
slips-guess = This guess lies outside the rocket, which is { $rocket } long.
# $balance-point (mass | pressure): which of the two points; the first is read on the rocket, the second on the cut-out
# $length (text): how long that is, with its unit
slips-beyond = { $balance-point ->
    [mass] This lies beyond the rocket, which is { $length } long.
   *[pressure] This lies beyond the cut-out, which is { $length } long.
}
# $reading (text): the reading, with its unit
# $balance-point (mass | pressure): which of the two points; the first is read on the rocket, the second on the cut-out
# $length (text): how long that is, with its unit
slips-near-end = { $balance-point ->
    [mass] Only { $reading }: no point is so near an end of a rocket of { $length }. Measure again.
   *[pressure] Only { $reading }: no point is so near an end of a cut-out of { $length }. Measure again.
}
# $distance (text): how far from the other end, with its unit
slips-from-tail = Was this read from the tail? Then it is { $distance } from the nose.
# $distance (text): how far from the other end, with its unit
slips-from-nose = Was this read from the nose? Then it is { $distance } from the tail.
slips-left-out = You leave this reading out. Say why.
slips-apart =
    This reading lies apart from the other two. It stays in the record. Choose whether to leave
    it out, and say why.
slips-only-one = One reading cannot show how far readings differ. Take two more.
# Behind one of these: what is done about a reading, and about a length.
slips-not-counted = It does not count until it is changed.
slips-not-used = It is not used until it is changed.
