why-sure-readings =
    <b>How sure are your readings?</b> If only ruler and scales are a little off, you know how far
    the points are apart to ± { $readings }. Some things nobody read: how heavy the card is, the
    bottle’s floor and neck, glue. With those, nearly all such rockets have their points between
    { $low } and { $high } apart. They come out { $outcomes }.
why-outcome = { $sum-says ->
    [self-righting] self-righting
    [straight-start-only] straight start only
    [broadside] sideways
   *[swaps-ends] swaps ends
}
why-apart =
    Seen like this they are { $drawn } apart. Turned the worst way round its own middle line,
    they are { $least } apart.
why-row-apart = How far apart, seen like this
why-row-least-apart = How far apart, turned the worst way
why-table-note =
    All distances are from the nose tip. How far apart counts as above zero when the centre of
    mass is nearer the nose.
