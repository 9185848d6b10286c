slips-below-zero = A ruler shows nothing below 0. Take the minus sign out.
slips-zero = This is 0. Leave it empty if you did not measure.
slips-other-unit = { $slip-size ->
    [small] Only { $typed }
   *[large] { $typed }
}: { $slip-cause ->
    [centimetres] did you read centimetres
    [inches] did you read inches
    [millimetres] did you read millimetres
   *[zero] is there one 0 too many
}? Did you mean { $meant }?
slips-rocket =
    The ruler says { $measured }, but under Rocket it is { $described } long. Measure again, or
    change that.
slips-scaled =
    For each 100 mm of the rocket, the cut-out has { $percent } mm. The page makes its readings fit
    the rocket.
slips-guess = This guess is outside the rocket, which is { $rocket } long.
slips-beyond = { $balance-point ->
    [mass] This is past the end of the rocket, which is { $length } long.
   *[pressure] This is past the end of the cut-out, which is { $length } long.
}
slips-apart =
    This reading is far from the other two. It stays here to be seen. Choose if you leave it out,
    and say why.
slips-only-one = One reading cannot show how far readings are apart. Take two more.
