problem-too-many-sections = That is more body parts than fit. Keep { $most } or fewer.
problem-name-too-long = Use { $most } letters or fewer. A link cuts longer names short.
problem-text-too-long = All names together are too long for a code. Make some shorter.
problem-nose-not-first = A nose can only come first. Move it up, or choose another shape.
problem-taper-first = A taper gets narrower. It starts as wide as the part in front. Put a nose or a tube in front of it.
problem-width-missing = How wide is it? Write it down.
problem-ogive-too-short = A pointed nose this short would be wider than the rocket. Make it at least { $least } long, or choose the egg.
problem-dome-too-long = The round end of a bottle is at most half a ball. Make it { $most } or shorter, or choose the egg.
problem-joined-to-nothing =
    There is nothing in front that you could weigh it with. Weigh it by itself, or choose what it
    is made of.
problem-fin-joined = Weigh the fins, or choose what they are made of.
problem-nothing-weighed = Nothing weighs anything yet. Write what the parts weigh.
problem-fin-crosses-itself =
    The edges of this fin cross, or it is as thin as a line. Go round its corners in order. Begin
    with the front one on the body, end with the back one on the body.
problem-centimetres = Only { $typed }? Did you measure in centimetres? Then write { $meant }.
problem-kilograms = Does it really weigh { $typed }? Write grams, not kilograms.
problem-two-fins = Two fins keep the rocket straight in one direction only. Three or more do it all round.
problem-many-fins = With more than four fins, each takes air from the next.
problem-slender-fins =
    Long, narrow fins lose their hold on the air soon. When the rocket is turned a lot, they push
    less than the page works out.
problem-same-fins-twice =
    These fins are in the same place as others. Did you add them twice? If not, turn some of them.
problem-fins-in-wake =
    The fins in front stir up the air that these fly in. They may push much less than the page
    works out.
problem-mass-differs = The scales say { $scales }. All parts together come to { $parts }. Is a part missing, or wet?
