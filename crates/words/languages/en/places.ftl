## The places of the page: the steps of the lesson, and three beside them.

# The name of a step, on the path over the page and on the button that leads there.
places-rocket = Rocket
# The heading of the place.
places-rocket-heading = Your rocket
# The name of a step, on the path over the page and on the button that leads there.
places-measure = Measure
# The heading of the place.
places-measure-heading = Measure both points
# The name of a step, on the path over the page and on the button that leads there.
places-predict = Predict
# The heading of the place.
places-predict-heading = Predict what it will do
# The name of a step, on the path over the page and on the button that leads there.
places-swing = Swing
# The heading of the place.
places-swing-heading = Swing it
# The name of a step, on the path over the page and on the button that leads there.
places-compare = Compare
# The heading of the place.
places-compare-heading = Compare what it did
# The name of a step, on the path over the page and on the button that leads there.
places-conclude = Conclude
# The heading of the place.
places-conclude-heading = What did you find out?
# The name of a step, on the path over the page and on the button that leads there.
places-hand-in = Hand in
# The heading of the place.
places-hand-in-heading = Keep it, hand it in
# The name of the place with the reasons, on the button that leads there.
places-why = Why?
# The heading of the place with the reasons.
places-why-heading = Why? The air from every side
# The name of the place with words and pictures, in the menu and as its heading.
places-words = Word mat
# The name of the place for adults, in the menu and as its heading.
places-lead = For whoever leads
