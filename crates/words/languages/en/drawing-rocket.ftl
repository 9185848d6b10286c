## In the drawing of the rocket, and in that of two rockets on one ruler: short, there is little room.

# The name of the drawing, for screen readers.
# $name (text): the name of the rocket
drawing-rocket = { $name }, drawn to scale with its two points
# The same of a rocket without a name.
drawing-rocket-nameless = The rocket, drawn to scale with its two points
# The name of the drawing of two rockets, for screen readers.
# $left (text): what the left one is called, such as “Trial 1”
# $right (text): what the right one is called
drawing-pair = { $left } and { $right }, drawn to one scale on one ruler
# Under “centre of pressure”: air from the side.
# $place (text): its distance from the nose tip, such as “140 mm”
drawing-side-on-at = side-on, { $place }
# In its place, over that distance: it was measured.
drawing-side-on-measured = side-on, measured
# Under “centre of mass”: it was measured.
# $place (text): its distance from the nose tip, such as “140 mm”
drawing-measured-at = measured, { $place }
# At the bracket between the two points.
# $separation (text): such as “40 mm”
drawing-points-apart = { $separation } apart
# Beside a narrow drawing, in two lines of about 9 letters each, parted by “|”.
drawing-pressure-lines = centre of|pressure
# The same.
drawing-mass-lines = centre of|mass
# What the arrow is, under two rockets.
drawing-pressure-side-on = centre of pressure, side-on
# At the fins, under the pointer.
drawing-drag-fins = Drag up or down to move the fins
# At a weight, under the pointer.
drawing-drag-weight = Drag up or down to move this weight

## The name of a QR symbol, for screen readers.

drawing-qr-link = QR symbol: a link to this rocket
drawing-qr-code = QR symbol: the code beside it
