## The strip below the drawing: the two points and how far they are apart.

# The line with the separation: the centre of mass is nearer the nose.
# $separation (text): the separation with its unit, such as “55 mm”
strip-apart = <value>{ $separation }</value> apart
# The line with the separation: the centre of pressure is nearer the nose.
# $separation (text): the separation with its unit
strip-wrong-way = <value>{ $separation }</value> the wrong way round
# Behind that: in the view that is drawn it is another one. A telephone does without aside.
# $separation (text): the separation in that view, with its unit
strip-in-view = <aside>as it rolls; </aside>in this view { $separation }
# Behind how likely it is.
# $widths (number): the separation as a multiple of the rocket's width
strip-body-widths = { $widths } body widths
# Where the separation is likely to be.
# $low (text): with its unit
# $high (text): with its unit
strip-likely = likely { $low } to { $high }
# The same while it is being worked out.
strip-likely-open = likely …

# Where nothing is told before it is measured.
strip-measure-first = <b>Measure first.</b> What is worked out is told once you have measured it.
# Where nothing is told before it is predicted. A button that leads there may follow.
strip-predict-first = <b>Predict first.</b> What will it do on its string?
# Behind the points.
strip-stale-readings = Your readings are of the rocket before you changed it.
# A later rocket cannot be drawn.
strip-last-drawn = <b>This is the last rocket that could be drawn.</b> Put right what is marked.

# Which point is nearer the nose, also spoken.
strip-mass-nearer = The centre of mass is nearer the nose.
# Which point is nearer the nose, also spoken.
strip-pressure-nearer = The wrong way round: the centre of pressure is nearer the nose.
# Which point is nearer the nose, also spoken.
strip-same-place = Both points are in the same place.

# Spoken after a change.
# $separation (text): the separation with its unit
strip-spoken = Separation { $separation }.

## The line with the two points. Distances are from the tip of the nose, with their unit.

# A point that was not measured.
# $of-points (mass | pressure): the centre of mass or the centre of pressure
# $place (text): where it is worked out to be
strip-point = { $of-points ->
    [mass] centre of mass { $place }
   *[pressure] centre of pressure (side-on) { $place }
}
# A point that was measured, with the same reading each time.
# $of-points (mass | pressure): the centre of mass or the centre of pressure
# $differs (differs | agrees): whether the two are further apart than one can read
# $measured (text): where it was measured
# $worked-out (text): where it is worked out to be
strip-point-measured = { $of-points ->
    [mass] centre of mass <b>{ $measured }</b> measured; { $worked-out } worked out
   *[pressure] centre of pressure (side-on) <b>{ $measured }</b> measured; { $worked-out } worked out
}{ $differs ->
    [differs] <b>: they differ</b>
   *[agrees] {""}
}
# A point that was measured, with different readings.
# $of-points (mass | pressure): the centre of mass or the centre of pressure
# $differs (differs | agrees): whether the two are further apart than one can read
# $measured (text): where it was measured
# $least (text): the reading nearest the nose
# $most (text): the reading furthest from the nose
# $worked-out (text): where it is worked out to be
strip-point-range = { $of-points ->
    [mass] centre of mass <b>{ $measured }</b> measured, { $least } to { $most }; { $worked-out } worked out
   *[pressure] centre of pressure (side-on) <b>{ $measured }</b> measured, { $least } to { $most }; { $worked-out } worked out
}{ $differs ->
    [differs] <b>: they differ</b>
   *[agrees] {""}
}

# In the place of the drawing, where the rocket could not be drawn since the page was opened.
strip-nothing-drawn = This rocket cannot be drawn yet: first put right what is listed below.
