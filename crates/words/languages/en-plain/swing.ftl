swing-hang =
    Loop the string round the empty rocket: no water, no air pumped in. Slide it until the
    rocket hangs level: nose and tail are the same height above the table. Hang it low. Keep
    feet and faces away.
swing-too-close =
    On the string it could go either way. Of 20 tries with your readings, { $tries }.
swing-settles = { $motion ->
    [at-once] Started at { $start }°, it is nose-first at once.
    [nose-first]
        Started at { $start }°, it comes round nose-first in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [tail-first]
        Started at { $start }°, it settles tail first in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [across]
        Started at { $start }°, it ends up across its path, turned by { $angle }°, in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [still-swinging]
        Started at { $start }°, after about { $seconds } s it is still swinging round { $angle }°.
   *[turning-over] Started at { $start }°, after about { $seconds } s it is still turning over.
}
swing-spin = { $spin ->
    [holds-alone]
        <b>This swing does not show much.</b> Going round in a circle pulls this rocket straight.
        The air alone would not keep its nose in front, and nobody swings it round in flight.
    [flatters]
        <b>On the string it does better than it would in flight.</b> Going round in a circle helps
        the air to hold it.
    [too-weak]
        When the nose is nearly in front, the air turns this rocket away, and going round in a
        circle cannot hold it.
    [does-most]
        <b>This swing does not show much.</b> When the nose is nearly in front, the string does
        { $part } of 100 parts of the turning and the air the rest. In flight nobody swings it round.
   *[does-part]
        When the nose is nearly in front, the string does { $part } of 100 parts of the turning and
        the air the rest.
}
swing-open = Worked out here: it could go either way. What you saw counts.
