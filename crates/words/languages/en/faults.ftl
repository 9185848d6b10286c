## Over the drawing: what is to be put right before the rocket can be worked out.

# The heading of the list.
# $count (number): how many faults stop the drawing
faults-to-mend = { $count ->
    [one] One thing to mend
   *[other] { $count } things to mend
}

# Behind the heading of the list, on a telephone, where the list scrolls in itself.
faults-scroll = (scroll here)

# A line of the list. The button leads to the field.
# $field (text): where the field is: one of the names below
# $sentence (text): what is wrong with it, as a sentence
faults-line = <button>{ $field }</button>: { $sentence }

## The names of fields and cards, in those lines and in Why.

# The field for the name of the rocket.
faults-rocket-name = Rocket’s name
# The card of the body's parts.
faults-body = Body
# The card of all fins.
faults-fins = Fins
# The card of all weights.
faults-weights = Weights
# The card of what was measured of the whole rocket.
faults-measured = Measured
# The card of the bottle, where the page asks for nothing else of the body.
faults-bottle = Bottle

# A field of a card.
# $card (text): the name of the card, such as “Fins”
# $measure (shape | length | width | front-end | mass | how-many | start | turned-by | along-the-body | outer-edge | out-from-the-body | slants-back-by | outline | name | place): which field of it
faults-field = { $measure ->
    [shape] { $card }, shape
    [length] { $card }, length
    [width] { $card }, width
    [front-end] { $card }, front end
    [mass] { $card }, mass
    [how-many] { $card }, how many
    [start] { $card }, start
    [turned-by] { $card }, turned by
    [along-the-body] { $card }, along the body
    [outer-edge] { $card }, outer edge
    [out-from-the-body] { $card }, out from the body
    [slants-back-by] { $card }, slants back by
    [outline] { $card }, outline
    [name] { $card }, name
   *[place] { $card }, place
}
