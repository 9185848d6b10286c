index-new-version = A newer page is here.
index-failed-late =
    This takes long. If your internet is slow, wait a little more. If nothing comes, try what
    stands below. A rocket that came with a link stays in the address bar.
index-failed-ended =
    The drawing did not start. Your rocket stays in the address bar. Copy the address to keep it.
index-failed-tab = Open it in a new window
index-failed-copy = Or copy its address into a new window:
index-failed-on-paper = Work on paper: the lesson stands below on this page.
index-failed-deletes =
    This takes away the rocket, the notebooks and all else that this page kept on this computer.
    You cannot bring it back. Links, codes and files that you made still work.
index-failed-deleted = All that this page kept on this computer is gone.
index-paper-local =
    Local rules, your school’s own risk assessment and a qualified person decide. This page
    does not. It does not say that you may launch.
index-paper-need =
    <b>You need</b> for each group: an empty drinks bottle that held fizzy drink, card, tape and
    scissors. You need a ruler, about 1 m of string, clay, and card for a cut-out. You need eye
    protection for everybody who swings or watches. You need chalk or cones to mark a line.
index-paper-pressure =
    <b>Centre of pressure (side-on).</b> Draw the rocket from the side, fins and all, on one
    sheet of card. Cut it out: no tape, no glue. Lay it across a ruler’s edge so that it does not
    tip over. Measure from its nose tip to the edge. Do it three times. Is the cut-out smaller or
    larger than the rocket? Then multiply your reading by the rocket’s length. Divide by the length
    of the cut-out.
index-paper-separation =
    <b>How far apart</b> = centre of pressure − centre of mass. If it is more than nothing, the
    centre of mass is nearer the nose. Do some readings of one point reach past some of the other?
    Then it is too close to say.
index-paper-swing =
    <b>Swing test, with the adult.</b> Tape the string at the centre of mass. Eye protection
    on; tug the string hard. The adult checks the space, and again before every three swings.
    Use 1 m of string and 0.8 turns a second. Then mark a line 9.5 m from the swinger, all the
    way round. This is far enough only if you let go no more than 20° upwards. It is worked out
    as if no air slowed the rocket. Steeper flies further. It does not say that you may swing. Is
    there less room? Then not here. Swing level, over the head, three times. Use the same string
    each time, and as many turns in ten seconds.
index-paper-results =
    What did it do? Nose first, steady / nose first after wobbling / sideways or tumbling
    / tail first / string slipped, do again / not sure
index-paper-column-separation-mm = How far apart, mm
index-paper-column-because = We predict, because
index-paper-column-outcomes = Swings 1, 2, 3
index-paper-initials = Space checked, the adult signs: ………
index-paper-found =
    We found that … What shows it is … It is so because … We trust it this much, because …
index-crash-twice =
    Does it break again with this rocket? Then start with another one. Nothing that was kept is
    lost.
index-damaged = This page needs the internet once
index-damaged-part =
    A part of it is missing or broken on this computer, and there is no internet. What you wrote
    here is still kept. A rocket that came with a link stays in the address bar.
index-damaged-load =
    Turn the internet on. Then load the page again with the button at the top of the window.
