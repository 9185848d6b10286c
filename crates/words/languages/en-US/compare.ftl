compare-moment = Moments: side-on, the air pushes at the center of pressure, { $distance } ({ $how-known ->
    [measured] measured
   *[worked-out] worked out
}) from the center of mass. Push × that distance turns the rocket: { $goes-back ->
    [tail] its tail goes back, nose into the air.
   *[nose] its nose goes back, tail into the air.
} The cut-out stands for air straight from the side; flying straight, the air pushes at another place. With water inside, the center of mass is elsewhere and moves.
compare-mass = center of mass
compare-pressure = center of pressure
