## The cut-out on paper: a side view at true size, to balance on an edge.

# The title of the sheet.
# $rocket (text): the name of the rocket
cut-out-title = Cut-out of { $rocket }
# The same of a rocket without a name.
cut-out-title-nameless = Cut-out of your rocket
# Under the title: which view it is.
cut-out-view = This is the rocket seen from the side, as it is drawn on the page.
# $length (text): the length of the rocket with its unit
cut-out-true-size = It is as long as the real rocket: { $length }.
# $percent (number): in per cent of the real size
# $length (text): the length of the cut-out with its unit
cut-out-scaled = It is drawn at { $percent } % of the real size, so it is { $length } long.
# Steps.
cut-out-step-check = Measure both bars. Each must be 100 mm long. If not, print again at 100 %, “actual size”.
# Only where there are several sheets.
cut-out-step-check-all =
    Print all pages at once. Measure both bars on this page; the others have none. Each must be
    100 mm long. If not, print again at 100 %, “actual size”.
cut-out-step-join = Cut sheet by sheet along the dashed lines, lay cross on cross, and tape them together.
cut-out-step-card = Lay it on card, and draw round it. Cut that out: one flat layer, with no tape and no glue.
# Only where it is so.
cut-out-step-loose = A fin touches the body at a point only. Leave a little card there, so that it stays on.
cut-out-step-cut = Cut on the outside of the line.
cut-out-step-measure = Measure how long your cut-out is, and write it down.
cut-out-step-balance = Lay it flat on an edge, find where it balances, and measure from the nose tip.
# To be written in.
cut-out-own-length = Length of the cut-out (mm):
cut-out-balances = It balances, from the nose tip (mm):
cut-out-caution = Cut away from your fingers. Sit down to cut. Keep scissors closed when nobody cuts.
# What a drawing shows.
cut-out-drawing = The outline of the rocket seen from the side, nose up
# What a small drawing shows.
cut-out-map = How the sheets lie beside each other
# Over a sheet with a part of the outline.
# $sheet (number): its number
# $of (number): how many there are
cut-out-sheet = Part { $sheet } of { $of }
# Beside a dashed line.
# $sheet (number): the part that joins it there
cut-out-join = part { $sheet } joins here
# At the nose.
cut-out-nose = nose
# The title of the sheet with answers.
# $rocket (text): the name of the rocket
cut-out-answers = Answers: { $rocket }
cut-out-answers-nameless = Answers
# $mass (text): distance from the nose tip with its unit
cut-out-mass-at = Centre of mass: { $mass } from the nose tip.
# $pressure (text): distance from the nose tip with its unit
cut-out-pressure-at = Centre of pressure (side-on), where the cut-out balances: { $pressure } from the nose tip.
# $separation (text): a length with its unit
cut-out-apart = They are { $separation } apart.
cut-out-mass = centre of mass
cut-out-pressure = centre of pressure (side-on)
