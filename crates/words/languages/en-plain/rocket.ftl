rocket-begin-example = a ready rocket
rocket-open-text = Or put a link or a code here
rocket-open-pasted = Open this
rocket-units = Measure in
rocket-all-measurements = All of them
rocket-width-rear = Width at its back end
rocket-width-base = Width at its wide end
rocket-front-closed = closed (the end of a bottle)
rocket-fin-start = Start, from the nose tip
rocket-fin-tip = Outside edge
rocket-fin-sweep = Leans back by
rocket-outline = Shape
rocket-by-corners = our own shape, by corners
rocket-own-outline = Your own shape with { $corners } corners. Choose “All of them” to see each.
rocket-corners = The corners in order: first the front one on the body. Go round the outside to the back one on the body.
rocket-middle = Middle, from the nose tip
rocket-measured = Measured when the rocket is built
rocket-measured-note =
    Leave this empty until the rocket is built. What you measure counts more than what the page
    works out. Under Measure, write where the rocket hangs level. Write there too where its cut-out
    does not tip over a ruler’s edge.
rocket-dome = end of a bottle
rocket-dome-trade = nose: end of a bottle (dome)
rocket-ogive = pointed
rocket-ogive-trade = nose: pointed (ogive)
rocket-paraboloid = rounded
rocket-paraboloid-trade = nose: rounded (paraboloid)
rocket-straight-taper = narrower, straight
rocket-rounded-taper = narrower, round (shoulder)
