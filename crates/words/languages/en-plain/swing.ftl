swing-unreadable =
    I cannot read this. You can write { $setup ->
        [string] 1.5 or 150 cm
        [arm] 0.7 or 70 cm
        [density] 1.2
       *[turns] 1
    }.
swing-hangs-down = With so few turns the string hangs down. The numbers are only a rough guide.
swing-too-slow =
    With so few turns the string hangs nearly straight down. There is nothing to work out.
swing-nothing-yet = Nothing to swing yet. First put right what stands under the drawing.
swing-too-close = Too close to say on the string. Of 20 tries with your readings, { $tries }.
swing-tries =
    in about { $tries } it { $string-ending ->
        [from-any-start] turns nose-first from any start
        [once-it-is] stays nose-first once it is
        [across] ends across its path
       *[tail-first] turns tail-first
    }
swing-settles = { $motion ->
    [at-once] Started at { $start }°, it is nose-first at once.
    [nose-first]
        Started at { $start }°, it comes round nose-first in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [tail-first]
        Started at { $start }°, it comes round tail first in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [across]
        Started at { $start }°, it ends across its path in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }). It stays turned by { $angle }°.
    [still-swinging] Started at { $start }°, after about { $seconds } s it still swings round { $angle }°.
   *[turning-over] Started at { $start }°, after about { $seconds } s it still turns over.
}
swing-spin = { $spin ->
    [holds-alone]
        <b>This swing does not show much.</b> Going round in a circle pulls this rocket straight.
        The air alone would not keep its nose in front, and nobody swings it round in flight.
    [flatters]
        <b>On the string it does better than it would in flight.</b> Going round in a circle helps
        the air to hold it.
    [too-weak]
        When the nose is nearly in front, the air turns this rocket away. Going round in a circle
        does not pull hard enough to hold it.
    [does-most]
        <b>This swing does not show much.</b> Think of the nose nearly in front. The string does
        { $part } of 100 parts of the turning, the air the rest. In flight nobody swings it round.
   *[does-part]
        Think of the nose nearly in front. The string does { $part } of 100 parts of the turning, the
        air the rest.
}
swing-clear =
    Nobody stands nearer than <b>{ $clear } m</b> to the swinger. That is { $across } m across.
    Too small? Then not here.
swing-holds-for =
    This is far enough only if you let go no more than 20° upwards from the shoulder. It is worked
    out as if no air slowed the rocket. Steeper flies further. With the air that slows this rocket
    it is about { $about } m. This is worked out. It does not say that you may swing.
swing-sweep = String and rocket reach
swing-nobody-within = Nobody nearer
swing-hang =
    Loop the string round the empty rocket: no water, no air pumped in. Slide it until the
    rocket hangs level: nose and tail are the same height above the table. Hang it low. Keep
    feet and faces away.
swing-type-measured = Write what you measured
swing-initials = Space checked, the adult signs: __________ (before every three swings)
swing-no-permission =
    This does not say that you may launch. Local rules, your school’s own risk assessment and a
    qualified person decide. This page does not.
swing-none-more = You can take no more back in this trial. Begin another one.
swing-open = Worked out here: too close to say. What you saw counts.
