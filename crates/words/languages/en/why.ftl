## In the place Why?: the air from every side, how sure that is, and the rocket in words and numbers.

# In the place of all of it until the group has predicted.
why-hidden = Hidden until you have predicted.
# Opens how sure the figures are. The line below follows.
why-how-sure = How sure is that?
# Behind it.
# $likely (text): where the separation is likely to be, such as “likely 30 mm to 35 mm”
why-likely = { $likely } apart
# The slider for the angle that is looked at.
why-angle = Angle between the nose and the oncoming air
# Opens the rocket in sentences.
why-in-words = The rocket in words
# Opens the rocket as a table.
why-as-table = The rocket as a table
# The caution at the end of the place.
why-caution =
    The cut-out’s centre of pressure stands for air from the side. A good separation is not
    permission to swing or launch. Local rules, your school’s own risk assessment and a
    qualified person decide. This page does not.
# A list to choose from: how finely the ruler is read, in millimetres.
why-ruler = Ruler reads to
# A list to choose from: how finely the scales are read, in grams.
why-scales = Scales read to

## How sure the figures are.

# Before it is worked out.
why-sure-wait = <b>How sure are your readings?</b> Being worked out.
# What the readings leave open.
# $readings (text): how far off ruler and scales alone can put the separation, such as “3 mm”
# $low (text): where the separation is likely to be, from
# $high (text): to
# $outcomes (text): how often each outcome came up, such as “self-righting in all tries”
why-sure-readings =
    <b>How sure are your readings?</b> If only ruler and scales err, the separation is known to
    ± { $readings }. With all that nobody read (how heavy the card is, the bottle’s floor and
    neck, glue), about 19 of 20 such rockets have one between { $low } and { $high }. They come
    out { $outcomes }.
# Behind it.
# $readings (text): the fields that matter most, parted as in the line below
why-matter-most = The readings that matter most: { $readings }.
# Two of those fields, or the list so far and one more.
# $before (text): the list so far
# $more (text): the field that follows
why-more-readings = { $before }; { $more }
# What the model itself leaves open: the published ways to work it out.
# $agreement (agree | differ): whether all of them come to the same outcome
# $outcomes (text): what they come to, such as “self-righting, or swaps ends”
why-sums =
    <b>How sure is our sum?</b> There are several published sums for this. They { $agreement ->
        [agree] all say
       *[differ] say
    }: { $outcomes }.
# The same, with where they put the centre of pressure for air from the front.
# $agreement (agree | differ): whether all of them come to the same outcome
# $least (text): the foremost place, from the nose tip
# $most (text): the rearmost
# $outcomes (text): what they come to, such as “self-righting, or swaps ends”
why-sums-band =
    <b>How sure is our sum?</b> There are several published sums for this. They put the centre of
    pressure (nose-on) between { $least } and { $most }, and { $agreement ->
        [agree] all say
       *[differ] say
    }: { $outcomes }.
# One of those outcomes.
# $sum-says (self-righting | straight-start-only | broadside | swaps-ends): the outcome
why-outcome = { $sum-says ->
    [self-righting] self-righting
    [straight-start-only] straight start only
    [broadside] broadside
   *[swaps-ends] swaps ends
}
# Two of those outcomes, or the list so far and one more.
# $before (text): the list so far
# $more (text): the outcome that follows
why-more-outcomes = { $before }, or { $more }

## What the air does, beside the two graphs.

# The lines of the graphs cross between the ends.
why-lines-cross =
    Where the two lines cross, the air does not turn the rocket. Full dot: a nudge, and it comes
    back. Open dot: a nudge, and it turns away.
# They do not.
why-lines-apart =
    The two lines do not cross: but for the two ends, the air turns the rocket the same way at
    every angle. Full dot: a nudge, and it comes back. Open dot: a nudge, and it turns away.
# Opens where each point lies.
# $side (text): where air from the side pushes, from the nose tip
# $front (text): where air from the front pushes
why-pushes = Air from the side pushes at { $side }, air from the front at { $front }
# The same, where air from the front hardly pushes.
# $side (text): where air from the side pushes, from the nose tip
why-pushes-side = Air from the side pushes at { $side }
# $least (text): how far the points are apart at least as it rolls
# $most (text): and at most
# $drawn (text): and in the view that is drawn
why-rolls =
    A flying rocket rolls, and shows more or less of its fins: the two points are then { $least }
    to { $most } apart. The least counts. The drawing and the cut-out show one view, in which they
    are { $drawn } apart.
# $side (text): where air from the side pushes, from the nose tip
why-cut-out =
    A card cut-out stands for air from the side: its centre of pressure (side-on) is at { $side }.
# Behind it.
# $front (text): where air from the front pushes, from the nose tip
why-nose-on =
    Flying straight, the air meets the nose: then the centre of pressure (nose-on) is at { $front }.
    The one nearer the nose is the more cautious of the two.
# The same, where it depends on the roll.
# $front (text): the foremost place, from the nose tip
# $rear (text): the rearmost
why-nose-on-rolls =
    Flying straight, the air meets the nose: then the centre of pressure (nose-on) is at { $front },
    or as far back as { $rear } in another roll. The one nearer the nose is the more cautious of
    the two.
# The same, where the air from the front hardly pushes.
why-nose-on-hardly = Flying straight, the air hardly pushes this rocket sideways.
# Under the slider: what the air does at that angle.
# $angle (number): degrees between nose and oncoming air
# $place (text): where the air pushes, such as “120 mm”
# $turning (only-nudged | back | away): what it does
why-at-angle =
    { $angle }°: the air pushes { $place } from the nose, and { $turning ->
        [only-nudged] only a nudge lets it turn the rocket
        [back] turns it back nose-first
       *[away] turns it away from nose-first
    }.
# The same where the air pushes next to nothing.
# $angle (number): degrees between nose and oncoming air
# $turning (only-nudged | back | away): what it does
why-at-angle-hardly =
    { $angle }°: and { $turning ->
        [only-nudged] only a nudge lets it turn the rocket
        [back] turns it back nose-first
       *[away] turns it away from nose-first
    }.

## The rocket in sentences, for those who do not see the drawing, too.

# The rocket as it is now cannot be drawn.
why-last-drawn = This is the last rocket that could be drawn.
# $name (text): its name
# $length (text): such as “310 mm”
# $width (text): such as “65 mm”
# $mass (text): such as “120 g”
why-is = { $name } is { $length } long and { $width } wide. It weighs { $mass }.
# The same where it has no name.
# $length (text): such as “310 mm”
# $width (text): such as “65 mm”
# $mass (text): such as “120 g”
why-is-nameless = The rocket is { $length } long and { $width } wide. It weighs { $mass }.
# In place of what is told later.
why-untold = Where its two points are is told once you have measured them.
# $found (by-hand | by-sum): whether it was measured or worked out
# $at (text): its distance from the nose tip
why-mass-at =
    The centre of mass is { $found ->
        [by-hand] measured, { $at }
       *[by-sum] { $at }
    } from the nose tip.
# Behind it.
# $found (by-hand | by-sum): whether it was measured or worked out
# $at (text): its distance from the nose tip
why-pressure-at =
    The centre of pressure (side-on), which a card cut-out finds, is { $found ->
        [by-hand] measured, { $at }
       *[by-sum] { $at }
    } from the nose tip.
# Which of the two is nearer the nose follows.
# $drawn (text): how far they are apart in the view that is drawn
# $least (text): and in the roll in which they are nearest
why-apart =
    In this view they are { $drawn } apart, and { $least } in the least favourable roll.
# A point that was measured.
# $which-point (mass | pressure): the centre of mass or the centre of pressure
# $at (text): where it was measured, from the nose tip
# $worked-out (text): where it is worked out to be
# $by (text): the difference; it is not said where they are the same
# $compared (more | less | the-same): how what was worked out compares with it
why-point-measured =
    { $which-point ->
        [mass] The centre of mass
       *[pressure] The centre of pressure (side-on)
    } was measured, at { $at }. Worked out: { $worked-out }, { $compared ->
        [more] { $by } more
        [less] { $by } less
       *[the-same] the same
    }.
# $mass (text): what the scales said of the whole rocket
# $parts (text): what its parts come to
# $by (text): the difference; it is not said where they are the same
# $compared (more | less | the-same): how the parts compare with it
why-weighed =
    The whole rocket was weighed: { $mass }. The parts add up to { $parts }, { $compared ->
        [more] { $by } more
        [less] { $by } less
       *[the-same] the same
    }.

## The rocket as a table: the heads of its rows.

why-row-length = Length
why-row-width = Width of the body
why-row-mass = Mass
why-row-mass-at = Centre of mass, from the nose tip
why-row-side-on = Centre of pressure (side-on), from the nose tip
why-row-nose-on = Centre of pressure (nose-on), from the nose tip
why-row-across = Where the air pushes at 90°, each part with its own drag
why-row-apart = Separation in this view
why-row-least-apart = Separation in the least favourable roll
# The least separation as a multiple of the body's width.
why-row-body-widths = The same in body widths
# In a row, where there is no such point.
why-none = none
# Over the table.
why-table-title = The rocket
# Under the table.
why-table-note =
    All distances are from the nose tip. Separation counts as positive when the centre of mass
    is nearer the nose.
# Over the bars that show how much of the push each part takes.
why-push-bars = Flying straight: how the air’s push is shared
# Opens a table of all parts.
why-parts = The parts in numbers
# The head of its first column: the names of the parts.
why-part = Part
# The head of a column of masses.
why-weighs = Weighs
# The head of a column of distances from the nose tip: the centre of mass of each part.
why-hangs-at = Hangs at
# The head of a column of numbers.
why-pushed = Pushed (for experts: force slope for each radian)
# The head of the column behind it: at which distance from the nose tip the part is pushed.
why-pushed-at = at
