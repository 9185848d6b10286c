marking-points = The reason names both points: center of mass and center of pressure.
marking-turned =
    { $balance-point ->
        [mass] In trial { $trial } the center of mass was nearer the nose; seen: “{ $seen }”.
       *[pressure] In trial { $trial } the center of pressure was nearer the nose; seen: “{ $seen }”.
    }
example-reason-behind = The air pushes at the center of pressure. That is behind the center of mass, so the air turns the tail back and the nose into the wind.
example-reason-ahead = The air pushes at the center of pressure. That is not far enough behind the center of mass, so the air does not bring the nose round.
example-reason-one = The center of mass is in another place now.
