plain-guess = Guess of the { $balance-point ->
    [mass] center of mass
   *[pressure] center of pressure (side-on)
}: { $mm } mm from the nose.
plain-readings = Readings of the { $balance-point ->
    [mass] center of mass
   *[pressure] center of pressure (side-on)
}, from the { $from-end ->
    [nose] nose
   *[tail] tail
}: { $readings }.
