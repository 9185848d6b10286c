problem-nose-not-first = A nose can only come first. Move it up, or choose another shape.
problem-taper-first = A part that gets narrower starts as wide as the part in front. Put a nose or a tube in front of it.
problem-ogive-too-short = A pointed arch this short would bulge. Make it at least { $least } long, or choose the egg.
problem-dome-too-long = A bottle’s base is at most half a ball. Make it { $most } or shorter, or choose the egg.
problem-fin-crosses-itself =
    The edges of this fin cross, or it is as thin as a line. Go round its corners in order: the
    front one on the body, outside, the rear one on the body.
problem-two-fins = Two fins keep the rocket steady in one direction only. Three or more do it all round.
problem-many-fins = With more than four fins, each takes air from the next.
problem-slender-fins =
    Long, narrow fins lose their grip on the air soon. When the rocket is turned a lot, they push
    less than the page works out.
problem-fins-in-wake =
    The fins in front stir up the air that these fly in. They may push much less than the page
    works out.
