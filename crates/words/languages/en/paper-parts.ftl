## Sheets with parts at true size, to be cut out by pupils.

# On a bar that shows whether a sheet was printed true to size.
paper-parts-bar = 100 mm

## Titles.

# $rocket (text): the name of the rocket
# $sheet (text): what the sheet is for
paper-parts-of = { $rocket }: { $sheet }
# $part (text): the name of a part, such as “Nose” or “Fins”
paper-parts-cut = { $part } to cut out
paper-parts-strip = Where the fins go
paper-parts-tools = Ruler and balance stand

## What kinds of lines mean.

paper-parts-solid = thick line: cut
paper-parts-dashed = dashed line: fold back, print outside
paper-parts-thin = thin line: only a mark

## Cautions.

paper-parts-care-cut = Cut card away from your fingers.
paper-parts-care-bottle = Never cut, sand, heat, glue hot or paint a bottle that will hold pressure.
paper-parts-care-nose = Keep the nose blunt: no metal, no sharp point.

## Steps.

# Over a small picture of a part, where there is no room for it at its size.
paper-parts-small = This is a small picture. The part at true size is on the next page.
paper-parts-card = Print this on card, or stick it on card.
# Of fins.
paper-parts-fold-tab = Fold each tab back along its dashed line.
paper-parts-fix-fin = Tape each tab to the bottle. The arrow points to the nose.
# Of a cone, a taper or a tube.
paper-parts-bend = Bend it round, print outside. The straight edge meets the thin line.
paper-parts-glue-tab = Stick the tab under that edge.
# $count (number): of how many parts a cone, a taper or a nose is made
paper-parts-parts =
    { $count ->
        [one] It is one part.
       *[other] It is made of { $count } parts. Stick each tab under the next part.
    }
# Of a round nose, which is made of long leaves that stand on a band.
paper-parts-ring = Bend the band to a ring, print outside. Stick its end tab under the other end.
paper-parts-leaves = Bend the leaves in till their edges meet. Stick the small tabs under the next leaf. Where a seam has no tabs, tape it.
paper-parts-round-tip = Close the tip with tape, so that it is round.
paper-parts-put-on = Tape it to the rocket.
# Of a part that is larger than a sheet.
# $width (number): millimetres
# $height (number): millimetres
paper-parts-large = This part is larger than a sheet: { $width } mm by { $height } mm.
# $sheets (number): how many sheets are the most
paper-parts-too-large = It would take more than { $sheets } sheets. Draw it on large card with a ruler.
# Of a part over several sheets.
paper-parts-join = Cut each sheet along its line with crosses, lay cross on cross, and tape them together.
# $count (number): how many of these are needed
paper-parts-trace =
    { $count ->
        [one] Lay it on card, and draw round it. Copy its lines.
       *[other] Lay it on card, and draw round it { $count } times. Copy its lines.
    }
# Of the strip.
paper-parts-rows = Stick each row on the tab of the row before it.
paper-parts-wrap = Wrap the strip round the body where the fins go. Both ends meet.
paper-parts-mark = Make a mark at each line, and take the strip off.
# Of the ruler.
paper-parts-ruler-end = Cut the end with 0 in the middle of the line.
# Of the stand.
paper-parts-stand-fold = Fold the stand back along its dashed lines.
paper-parts-stand-tape = Stick the tab inside, so that it stands like a tent.
paper-parts-stand-use = Lay your cut-out flat on the top edge, and move it till it stays level.

## Words on parts.

# $number (number): which fin
# $of (number): how many there are
paper-parts-fin = Fin { $number } of { $of }
# $part (text): the name of a part
# $number (number): which piece of it
# $of (number): how many there are
paper-parts-piece = { $part }, part { $number } of { $of }
# On a tab.
paper-parts-tab = tab: fold back
# On a tab that comes under the other edge.
paper-parts-under = tab: goes under
# On a taper: which end is the front.
paper-parts-narrow-front = narrow end to the nose
paper-parts-narrow-rear = narrow end to the tail
# At the end of the strip.
paper-parts-meets = here it meets
# $row (number): the next row of the strip
paper-parts-next-row = row { $row } goes on here
# Along the strip.
# $part (text): the name of the set of fins
paper-parts-edge = { $part }: this edge to the nose
# The same, of a strip in several rows.
# $part (text): the name of the set of fins
# $row (number): which row
paper-parts-row = { $part }, row { $row }: this edge to the nose
# $degrees (number): the angle of a fin
paper-parts-degrees = { $degrees }°
# On the ruler: what it is divided into.
paper-parts-mm = mm
# Along the top of the stand.
paper-parts-top = top edge
