## At a field of the form: what was typed is no value for it.

# Nothing was typed.
# $example (text): what one can type, such as “120 or 12.5 or 12 cm”
typed-empty = This needs a number, such as { $example }.
# It is no number.
# $example (text): what one can type, such as “120 or 12.5 or 12 cm”
typed-unreadable = I cannot read this. Type, for example, { $example }.
# It has decimals.
typed-not-whole = This needs a whole number.
# It can be read in two ways. Two buttons follow.
# $small (text): the smaller number, such as “1.234”
# $large (text): the larger number, such as “1234”
typed-ambiguous = Is that { $small } or { $large }?
# A mass was typed.
typed-no-length = This needs a length, such as 120 mm.
# A length was typed.
typed-no-mass = This needs a mass, such as 20 g.
# A unit was typed.
# $example (text): what one can type, such as “45”
typed-without-unit = This needs a number without a unit, such as { $example }.

## In those sentences: what one can type. Units stay as they are: others cannot be read.

# A length.
typed-as-length = 120 or 12.5 or 12 cm
# A length, where the page is in inches.
typed-as-inches = 4.5 or 4 1/2 or 115 mm
# A mass.
typed-as-mass = 20 or 7.5
# A mass, where the page is in ounces.
typed-as-ounces = 0.75 or 21 g
# A number of fins.
typed-as-count = 4
# An angle.
typed-as-angle = 45

# Words for units that somebody may type behind a number, with spaces between them; in small
# letters. Symbols such as mm are understood in every language.
typed-units-mm = millimetre millimetres millimeter millimeters
typed-units-cm = centimetre centimetres centimeter centimeters
typed-units-m = metre metres meter meters
typed-units-in = inch inches " ” ″
typed-units-g = gram grams gramme grammes
typed-units-kg = kilogram kilograms
typed-units-oz = ounce ounces
typed-units-mg = milligram milligrams
typed-units-degrees = deg degree degrees
typed-units-fins = fin fins
