drawing-circle =
    The swing seen from above. Rocket and string reach { $reach } metres from the middle. Nobody
    stands nearer than { $clear } metres
drawing-along = The rocket seen along the string, flying to the left
drawing-angle-graph = Angle between nose and path as time goes on
drawing-rest-band = up to 10° from where it rests
drawing-starts = How it ends from each starting angle, from nose first to tail first
