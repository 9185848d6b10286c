## What a part of the rocket is called: on its card, in lists and tables, in the bars of the air’s push.

part-nose = Nose
part-tube = Tube
# A part of the body that becomes narrower.
part-taper = Taper
part-neck = Neck
part-fins = Fins
# A weight without a label.
part-weight = Weight
# Where there are several.
# $part (text): one of the names above, or the label of a weight
# $number (number): which one
part-numbered = { $part } { $number }
