rocket-middle = Its middle, from the nose tip
rocket-fin-start = Where they start, from the nose tip
rocket-width-rear = Width at its back end
rocket-add-taper = Add a part that gets narrower
rocket-measured-note =
    Leave this empty until the rocket is built. What you measure counts more than what the
    page worked out. Where it hangs level goes under Measure.
rocket-straight-taper = part that gets narrower, straight
rocket-rounded-taper = part that gets narrower, rounded (shoulder)
