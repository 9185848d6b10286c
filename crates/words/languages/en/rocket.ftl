## The place Rocket, over the cards: three ways to begin.

# Before the three menus.
rocket-begin = Begin with
# The label of a menu: empty bottles.
rocket-begin-bottle = our bottle
# The label of a menu: rockets that come with the page.
rocket-begin-example = an example
# The label of a menu: what somebody has.
rocket-begin-open = a link, code or file
# In that menu.
rocket-open-file = A file that was saved here
# In that menu, over the field for a text.
rocket-open-text = Or paste a link or the text of a file, or type a code
# The button under that field.
rocket-open-pasted = Open this text

## The place Rocket: the head of the form.

# A field.
rocket-name = Rocket’s name (not yours)
# The name of a switch, for screen readers.
rocket-units = Units
# The name of a switch, for screen readers.
rocket-how-much = How much to show
# A half of that switch: the measurements that matter most.
rocket-main-ones = Main ones
# The other half of that switch.
rocket-all-measurements = All measurements

## The place Rocket: labels of fields, each beside a small picture.

# Behind a label, for screen readers.
# $unit (text): the unit in full, such as “millimetres”
rocket-in-unit = in { $unit }
# A list: the shape of a section of the body.
rocket-shape = Shape
# A field of a section.
rocket-length = Length
# A field of a bottle: its straight part.
rocket-straight-part = Straight part
# A field of a bottle: from its straight part to its neck.
rocket-shoulder = Shoulder
# A field of a bottle, where it is open.
rocket-neck = Neck
# A field of a section.
rocket-width = Width
# A field of a section that becomes narrower.
rocket-width-rear = Width at its rear end
# A field of a nose.
rocket-width-base = Width at its base
# A list: whether a tube is open in front.
rocket-front-end = Front end
# In that list.
rocket-front-open = open
# In that list.
rocket-front-closed = closed (a bottle’s base)
# A field: a mass.
rocket-weighs = Weighs
# A field: the mass of all fins of a set.
rocket-all-weigh = All together weigh
# A field: the mass of card or plastic sheet.
rocket-square-metre = One square metre weighs
# A list: how the mass of a part is known.
rocket-made-of = Made of
# In that list.
rocket-weighed = weighed on scales
# In that list: a material that the list does not have.
rocket-another-sheet = another sheet
# In that list: a part that was weighed together with another.
rocket-weighed-with = weighed with the part in front
# A field: the number of fins.
rocket-how-many = How many
# A field of fins.
rocket-fin-start = Start, from nose tip
# A field of fins: the edge on the body.
rocket-fin-root = Along the body
# What the trade calls it.
rocket-fin-root-trade = root
# A field of fins: the edge away from the body.
rocket-fin-tip = Outer edge
# What the trade calls it.
rocket-fin-tip-trade = tip
# A field of fins: how far they stick out.
rocket-fin-span = Out from the body
# What the trade calls it.
rocket-fin-span-trade = span
# A field of fins: how far the front of the outer edge lies behind that of the root.
rocket-fin-sweep = Slants back by
# What the trade calls it.
rocket-fin-sweep-trade = sweep
# A field of fins: the angle round the body.
rocket-turned-by = Turned by
# A list: the outline of a fin.
rocket-outline = Outline
# In that list.
rocket-four-sided = four-sided
# In that list.
rocket-by-corners = own outline, by corners
# On the card of fins, where their corners are not shown.
# $corners (number): how many corners the outline has
rocket-own-outline = Own outline with { $corners } corners: see all measurements.
# Over the corners.
rocket-corners = Corners in order: the front one on the body, round the outside, the rear one on the body.
# A field of a corner: its distance along the body, or from it.
# $corner-axis (along | out): which of the two
# $corner (number): which corner
rocket-corner-field = { $corner-axis ->
    [along] Corner { $corner }, along
   *[out] Corner { $corner }, out
}
# A button at a corner. What stands in aside is for screen readers.
# $corner (number): which one
rocket-corner-remove = Remove<aside> corner { $corner }</aside>
# A button.
rocket-corner-add = Add a corner
# The heading of a card.
rocket-weights = Weights
# A list: what a weight is.
rocket-what-it-is = What it is
# A field: the name of a weight.
rocket-its-name = Its name
# A field: where a weight is.
rocket-middle = Middle, from nose tip
# The heading of a card.
rocket-measured = Measured on the finished rocket
# On that card.
rocket-measured-note =
    Leave this empty until it is built. What you measure takes the place of what is worked
    out. Where it hangs level, and where its cut-out balances, goes under Measure.
# A field of that card.
rocket-whole-weighs = Whole rocket weighs
# The heading of a card.
rocket-bottle = Bottle

## The place Rocket: cautions on the cards.

# On the card of the nose.
rocket-soft-tip = <b>Make the tip soft and round.</b>
# On the cards of the bottle and of fins.
rocket-scissors = <b>Scissors for card only.</b> An adult cuts bottles, plastic, foam, balsa. Tape over edges.
# On the card of weights.
rocket-taped = <b>Inside, taped:</b> a weight must not come loose. Nothing hard or sharp on the outside.

## The place Rocket: buttons.

# A button on the card of a part. What stands in aside is for screen readers.
# $move-or-copy (up | down | copy | remove): what it does
# $part (text): the name of the part
rocket-part-button = { $move-or-copy ->
    [up] Up<aside> { $part }</aside>
    [down] Down<aside> { $part }</aside>
    [copy] Copy<aside> { $part }</aside>
   *[remove] Remove<aside> { $part }</aside>
}
# Under the cards.
rocket-add-nose = Add a nose
# Under the cards.
rocket-add-tube = Add a tube
# Under the cards.
rocket-add-taper = Add a taper
# Under the cards.
rocket-add-neck = Add a neck
# Under the cards.
rocket-add-fins = Add fins
# Under the weights.
rocket-add-weight = Add a weight

## The place Rocket: shapes of a nose, in a list.

# What it looks like.
rocket-dome = bottle base
# With the word of the trade.
rocket-dome-trade = nose: bottle base (dome)
# What it looks like.
rocket-egg = egg
# With the word of the trade.
rocket-egg-trade = nose: egg (ellipsoid)
# What it looks like.
rocket-ogive = pointed arch
# With the word of the trade.
rocket-ogive-trade = nose: pointed arch (ogive)
# What it looks like.
rocket-paraboloid = rounded arch
# With the word of the trade.
rocket-paraboloid-trade = nose: rounded arch (paraboloid)
# What it looks like.
rocket-cone = straight to a point
# With the word of the trade.
rocket-cone-trade = nose: straight to a point (cone)

## The place Rocket: the other shapes of a section, in the same list.

rocket-tube = tube
# A part of the body that becomes narrower.
rocket-straight-taper = taper, straight
# The same, like the shoulder of a bottle.
rocket-rounded-taper = taper, rounded (shoulder)
rocket-neck-shape = neck
