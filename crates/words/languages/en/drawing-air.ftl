## In the graphs of the air from every side, and in the bars of how its push is shared: short.

# The name of the two graphs, for screen readers.
drawing-air-graphs = Centre of pressure and turning moment against the angle of the air
# Over a ruler that begins at the nose tip, and, in the drawing of the rocket, under “centre of mass”.
# $unit (text): “mm” or “in” over a ruler; such as “140 mm” else
drawing-from-nose = { $unit } from nose
# Over the graph, in the colour of its curve, and in the drawing of the rocket.
drawing-pressure = centre of pressure
# Over the graph, in the colour of its line, and in the drawing of the rocket.
drawing-mass = centre of mass
# Over the lower graph.
drawing-turns-nose = which way the air turns the nose
# At its upper edge: the air turns the nose back to the front.
drawing-back = back
# At its lower edge: the air turns the nose away from the front.
drawing-away = away
# The name of the small picture of the turned rocket, for screen readers.
drawing-turned = The rocket turned to this angle, with the wind from the left
# The name of the bars, for screen readers.
drawing-push = Where the air pushes each part while the rocket flies straight
# At a bar.
# $part (text): the name of the part
# $share (number): per cent of the whole push
drawing-push-share = { $part }: { $share } %
# At a bar to the other side.
# $part (text): the name of the part
# $share (number): per cent of the whole push
drawing-push-other-way = { $part }: { $share } %, the other way
