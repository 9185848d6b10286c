index-description =
    Draw a soda-bottle rocket from a few ruler readings and see its center of mass and center of
    pressure. Nothing to install, nothing is sent anywhere.
index-privacy-licence =
    <b>License:</b> MIT. Whoever runs this copy is responsible for its server and that
    server’s logs.
index-paper-need =
    <b>You need</b> for each group: an empty soda bottle, card, tape, scissors, a
    ruler, about 1 m of string, modeling clay, card for a cut-out, eye protection for
    everybody who swings or watches, chalk or cones to mark a line.
index-paper-mass =
    <b>Center of mass.</b> Loop the string round the rocket and slide it until the rocket
    hangs level. Measure from the nose tip to the string. Do it three times.
index-paper-pressure =
    <b>Center of pressure (side-on).</b> Cut the rocket’s side view, fins and all, out of
    one sheet of card: no tape, no glue. Balance it across a ruler’s edge and measure from
    its nose tip. Three times. Is the cut-out smaller or larger than the rocket? Multiply by
    the rocket’s length, divide by the cut-out’s.
index-paper-separation =
    <b>Separation</b> = center of pressure − center of mass. If it is more than nothing, the
    center of mass is nearer the nose. If the readings of the two points overlap, it is too
    close to call.
index-paper-swing =
    <b>Swing test, with the adult.</b> Tape the string at the center of mass. Eye protection
    on; tug the string hard. The adult checks the space, and again before every three
    swings: with 1 m of string and 0.8 turns a second, mark a line 9.5 m from the swinger,
    all the way round (worked out for letting go up to 20° upwards, without drag; steeper
    flies further; not a permission). Is there less room? Then not here. Swing level, over
    the head, three times: the same string, the same number of turns in ten seconds.
index-paper-column-mass-mm = Center of mass, mm
index-paper-column-pressure-mm = Center of pressure, mm
index-licences = Licenses of what this page is made with
