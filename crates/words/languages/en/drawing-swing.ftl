## In the drawings of the swing: short, there is little room.

# The name of the drawing of the circle from above, for screen readers.
# $reach (number): how far rocket and string reach, in metres
# $clear (number): how far nobody stands, in metres
drawing-circle =
    The swing seen from above: rocket and string reach { $reach } metres from the middle; nobody
    stands within { $clear } metres
# What the solid circle is.
# $reach (number): metres from the middle
drawing-reach = rocket and string reach { $reach } m
# What the dashed circle is.
drawing-nobody-inside = nobody stands inside this line
# The name of the drawing of the rocket seen along the string, for screen readers.
drawing-along = The rocket seen along the string, turned to its path, which runs to the left
# Beside an arrow to the left, over the rocket.
drawing-flies-this-way = flies this way
# The name of the graph, for screen readers.
drawing-angle-graph = Angle between nose and path against time
# What its band is.
drawing-rest-band = within 10° of where it rests
# Over its axis of angles.
drawing-angle-axis = angle between nose and path
# Under its axis of time.
drawing-time-axis = time in seconds
# At an angle of 0°, on every graph of angles. Also how a swing ends.
drawing-nose-first = nose first
# At an angle of 90°.
drawing-side-on = side-on
# At an angle of 180°. Also how a swing ends.
drawing-tail-first = tail first
# How a swing ends: at an angle to the path.
drawing-across = across its path
# The same with that angle.
# $angle (number): in degrees
drawing-across-at = across, at { $angle }°
# How a swing ends: it has not settled.
drawing-still-swinging = still swinging
# The name of the strip of all starting angles, for screen readers.
drawing-starts = What each starting angle leads to, from nose first to tail first
# At the mark on it.
# $angle (number): the starting angle, in degrees
drawing-starts-at = starts at { $angle }°
