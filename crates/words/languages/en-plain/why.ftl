why-angle = Angle between the nose and the air it meets
why-caution =
    The card cut-out shows air from the side only. Even when the points are well apart, that does
    not mean that you may swing or launch. Local rules, your school’s own risk assessment and a
    qualified person decide. This page does not.
why-sure-wait = <b>How sure are your readings?</b> The page works it out.
why-sure-readings =
    <b>How sure are your readings?</b> Ruler and scales may be a little off. For that alone, how far
    the points are apart is known to ± { $readings }. Some things nobody read: how heavy the card is,
    the bottle’s floor and neck, glue. Of 20 such rockets, about 19 have their points between { $low }
    and { $high } apart. What the tries say: { $outcomes }.
why-matter-most = These readings count most: { $readings }.
why-sums =
    <b>How sure is our sum?</b> People have more than one sum for this. They { $agreement ->
        [agree] all say
       *[differ] do not agree and say
    }: { $outcomes }.
why-sums-band =
    <b>How sure is our sum?</b> People have more than one sum for this. They put the centre of
    pressure (nose-on) between { $least } and { $most }. They { $agreement ->
        [agree] all say
       *[differ] do not agree and say
    }: { $outcomes }.
why-outcome = { $sum-says ->
    [self-righting] turns itself nose-first
    [straight-start-only] stays straight only if started straight
    [broadside] stays sideways
   *[swaps-ends] turns tail-first
}
why-lines-cross =
    Where the two lines cross, the air does not turn the rocket. Full dot: push it a little, and it
    comes back. Open dot: push it a little, and it turns away.
why-lines-apart =
    The two lines do not cross. But for the two ends, the air turns the rocket the same way at each
    angle. Full dot: push it a little, and it comes back. Open dot: push it a little, and it turns
    away.
why-rolls =
    In flight a rocket rolls, and shows more or less of its fins. So the two points are { $least }
    to { $most } apart. The least counts. The drawing and the cut-out show one side only: there the
    points are { $drawn } apart.
why-cut-out =
    A card cut-out shows air from the side. Its centre of pressure (side-on) is at { $side }.
why-nose-on =
    In straight flight, the air meets the nose. Then the centre of pressure (nose-on) is at
    { $front }. Go by the one nearer the nose: that takes more care.
why-nose-on-rolls =
    In straight flight, the air meets the nose. Then the centre of pressure (nose-on) is at
    { $front }, or as far back as { $rear } when it rolls. Go by the one nearer the nose: that takes
    more care.
why-nose-on-hardly = In straight flight, the air hardly pushes this rocket sideways.
why-at-angle =
    { $angle }°: the air pushes { $place } from the nose. It { $turning ->
        [only-nudged] turns the rocket only if you push it a little
        [back] turns the rocket back nose-first
       *[away] turns the rocket away from nose-first
    }.
why-at-angle-hardly =
    { $angle }°: the air { $turning ->
        [only-nudged] turns the rocket only if you push it a little
        [back] turns the rocket back nose-first
       *[away] turns the rocket away from nose-first
    }.
why-last-drawn = This is the last rocket that the page could draw.
why-untold = Once you have measured the two points, the page tells where they are.
why-apart =
    Seen like this they are { $drawn } apart. Turned the worst way round its own middle line,
    they are { $least } apart.
why-weighed =
    The whole rocket weighs { $mass } on the scales. All parts together come to { $parts }, { $compared ->
        [more] { $by } more
        [less] { $by } less
       *[the-same] the same
    }.
why-row-across = Where the air pushes at 90°, with what slows each part
why-row-apart = How far apart, seen like this
why-row-least-apart = How far apart, turned the worst way
why-table-note =
    All is measured from the nose tip. How far apart counts as above 0 when the centre of mass is
    nearer the nose.
why-push-bars = In straight flight: how much of the air’s push each part takes
