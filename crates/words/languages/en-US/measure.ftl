measure-mass = Center of mass
measure-pressure = Center of pressure (side-on)
measure-from = Measured from<aside>, { $balance-point ->
    [mass] center of mass
   *[pressure] center of pressure (side-on)
}</aside>
measure-guess = First a guess<aside> of the { $balance-point ->
    [mass] center of mass
   *[pressure] center of pressure (side-on)
}, from the nose tip in { $unit }</aside>
measure-reading = Reading { $number }<aside> of the { $balance-point ->
    [mass] center of mass
   *[pressure] center of pressure (side-on)
} in { $unit }</aside>
measure-mass-nearer = The center of mass is nearer the nose.
measure-pressure-nearer = The center of pressure (side-on) is nearer the nose.
