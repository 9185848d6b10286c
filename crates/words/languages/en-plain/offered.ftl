offered-too-close = It was too close to say which point was nearer the nose.
offered-worked-out = The two points, worked out, were { $from } apart and are { $to } apart now.
offered-worked-out-stayed = The two points, worked out, stayed { $to } apart.
offered-separation = { $how-known ->
    [measured] measured { $separation } apart
   *[worked-out] worked out { $separation } apart
}
offered-neither-nearer = { $how-known ->
    [measured] points too close to say
   *[worked-out] worked out: points too close to say
}
offered-mixed = not the same in all { $swings } swings
offered-longer = When the two points are further apart, the air …
offered-within = { $how-many ->
    [two] Our two readings
   *[three] Our three readings
} { $balance-point ->
    [mass] of the centre of mass
   *[pressure] of the centre of pressure (side-on)
} in trial { $trial } are { $range } apart.
offered-overlap = In trial { $trial } our readings of one point reach past the other. It is too close to say.
offered-not-measured = In trial { $trial } we worked out how far apart the points are. We did not measure it.
offered-alike =
    From our readings, we cannot tell in which of trials { $before } and { $after } the points are
    further apart.
offered-few-swings = { $swings ->
    [0] Trial { $trial } has no swing that counts.
    [one] In trial { $trial } only one swing counts.
   *[other] In trial { $trial } only two swings count.
}
offered-altered = Somebody changed trial { $trial } by hand, and not on this page.
asked-overlap =
    In trial { $trial } your readings of one point reach past the other. What can you still say, and
    what not?
asked-differ = { $balance-point ->
    [mass] Your readings of the centre of mass in trial { $trial } are { $range } apart. What does that change?
   *[pressure] Your readings of the centre of pressure (side-on) in trial { $trial } are { $range } apart. What does that change?
}
