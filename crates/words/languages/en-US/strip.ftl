strip-mass-nearer = The center of mass is nearer the nose.
strip-pressure-nearer = The wrong way round: the center of pressure is nearer the nose.
strip-point = { $of-points ->
    [mass] center of mass { $place }
   *[pressure] center of pressure (side-on) { $place }
}
strip-point-measured = { $of-points ->
    [mass] center of mass <b>{ $measured }</b> measured; { $worked-out } worked out
   *[pressure] center of pressure (side-on) <b>{ $measured }</b> measured; { $worked-out } worked out
}{ $differs ->
    [differs] <b>: they differ</b>
   *[agrees] {""}
}
strip-point-range = { $of-points ->
    [mass] center of mass <b>{ $measured }</b> measured, { $least } to { $most }; { $worked-out } worked out
   *[pressure] center of pressure (side-on) <b>{ $measured }</b> measured, { $least } to { $most }; { $worked-out } worked out
}{ $differs ->
    [differs] <b>: they differ</b>
   *[agrees] {""}
}
