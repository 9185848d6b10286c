offered-nearer = { $how-known ->
    [measured] { $balance-point ->
        [mass] center of mass nearer the nose
       *[pressure] center of pressure (side-on) nearer the nose
    }
   *[worked-out] { $balance-point ->
        [mass] worked out: center of mass nearer the nose
       *[pressure] worked out: center of pressure (side-on) nearer the nose
    }
}
offered-behind = In trial { $trial } the air pushed behind the center of mass, so the nose …
offered-ahead = In trial { $trial } the air pushed ahead of the center of mass, so the nose …
offered-although = In trial { $trial } the swing was “{ $outcome }”. { $balance-point ->
    [mass] The center of mass was nearer the nose, and …
   *[pressure] The center of pressure (side-on) was nearer the nose, and …
}
offered-one-reading = { $balance-point ->
    [mass] In trial { $trial } one reading of the center of mass counts.
   *[pressure] In trial { $trial } one reading of the center of pressure (side-on) counts.
}
offered-within = { $how-many ->
    [two] Our two readings
   *[three] Our three readings
} { $balance-point ->
    [mass] of the center of mass
   *[pressure] of the center of pressure (side-on)
} in trial { $trial } lie within { $range }.
asked-differ = { $balance-point ->
    [mass] Your readings of the center of mass in trial { $trial } differ by { $range }. What does that change?
   *[pressure] Your readings of the center of pressure (side-on) in trial { $trial } differ by { $range }. What does that change?
}
