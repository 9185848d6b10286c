## At a field of the form, and in the list over the drawing: what is wrong with a rocket, and how to mend it.

# Something that is no number.
problem-not-a-number = This needs a number.
# A number that is too small or too large.
# $least (text): the smallest it can be, such as “1 mm”
# $most (text): the largest
problem-out-of-bounds = Use a number from { $least } to { $most }.
# A rocket with no body.
problem-no-sections = There is no body yet. Add a nose, a tube or a bottle.
# $most (number): how many there can be
problem-too-many-sections = That is more body sections than fit. Keep { $most } or fewer.
# $most (number): how many there can be
problem-too-many-fin-sets = That is more sets of fins than fit. Keep { $most } or fewer.
# $most (number): how many there can be
problem-too-many-weights = That is more weights than fit. Keep { $most } or fewer.
# A name that is too long.
# $most (number): how many letters it can have
problem-name-too-long = Use { $most } letters or fewer: a link cuts longer names short.
# All names of a rocket, its own and those of its weights, are too long.
problem-text-too-long = All names together are too long for a code or a symbol. Make some shorter.
# A nose behind another part.
problem-nose-not-first = A nose can only come first. Move it up, or choose a tube or taper.
# A taper with nothing in front.
problem-taper-first = A taper starts as wide as the section in front. Put a nose or a tube in front of it.
# A part without a width.
problem-width-missing = How wide is it? Type its width.
# A nose in the shape of a pointed arch.
# $least (text): its least length, such as “32 mm”
problem-ogive-too-short = An ogive this short would bulge. Make it at least { $least } long, or choose the ellipsoid.
# A nose made of a bottle’s base.
# $most (text): its greatest length, such as “32 mm”
problem-dome-too-long = A dome is at most half a ball. Make it { $most } or shorter, or choose the ellipsoid.
# $width (text): the width of the bottle, such as “65 mm”
problem-neck-too-wide = A neck is narrower than its bottle, which is { $width } wide here.
# $width (text): the width of the neck, such as “28 mm”
problem-bottle-too-narrow = A bottle is wider than its neck, which is { $width } wide here.
# A part said to be weighed together with the one in front, which is not there.
problem-joined-to-nothing =
    There is nothing in front that it could be weighed with. Weigh it, or choose a material.
# Fins said to be weighed together with the part in front.
problem-fin-joined = Weigh the fins, or choose a material.
# A rocket whose parts all weigh 0.
problem-nothing-weighed = Nothing weighs anything yet. Type what the parts weigh.
# $length (text): the length of the body, such as “320 mm”
problem-fin-off-body = The fins start off the body. It ends { $length } from the nose tip.
# $least (number): how many it needs
problem-too-few-points = A fin needs { $least } corners or more.
# $most (number): how many it can have
problem-too-many-points = Use { $most } corners or fewer.
# A fin drawn by its corners.
problem-fin-crosses-itself =
    The edges of this fin cross, or it has no area. Go round its corners in order: front of the
    root, outside, rear of the root.
# A fin drawn by its corners.
problem-fin-touches-nothing =
    This fin does not touch the body. Measure its corners from the place where its front meets
    the body.
# $length (text): the length of the rocket, such as “320 mm”
problem-weight-outside = This weight is outside the rocket, which ends { $length } from the nose tip.
# A length so small that it looks like a slip.
# $typed (text): what was typed, such as “12 mm”
# $meant (text): the same number of centimetres, such as “120 mm”
problem-centimetres = Only { $typed }? If you measured in centimetres, type { $meant }.
# A mass so small that it looks like a slip.
# $typed (text): what was typed, such as “0 g”
problem-kilograms = Does it really weigh { $typed }? Type grams, not kilograms.
# $by (text): how far, such as “30 mm”
problem-fin-overhangs = The fins reach { $by } behind the end of the body. Is that right?
# A set of two fins.
problem-two-fins = Two fins steady the rocket in one plane only. Three or more do it all round.
# A set of five to eight fins.
problem-many-fins = With more than four fins, each shades its neighbours.
# Fins that are much longer than wide.
problem-slender-fins =
    Long, narrow fins lose their grip on the air early. At large angles they push less than
    worked out here.
# Two sets of fins in one place.
problem-same-fins-twice =
    These fins are in the same place as another set. Is it one set, typed twice? If not, turn one
    of them.
# Fins behind other fins.
problem-fins-in-wake =
    These fins fly in the wake of those in front, and may push much less than worked out here.
# The whole rocket was weighed, and that is far from the sum of its parts.
# $scales (text): what the scales said, such as “120 g”
# $parts (text): what the parts add up to
problem-mass-differs = The scales say { $scales }, the parts add up to { $parts }. Is a part missing, or wet?
