## In index.html: what stands there before the page has started, and what never changes after.

# The title of the page before it has started, and what a search engine shows below it.
index-title = Noseward: find a bottle rocket’s two points
index-description =
    Draw a drinks-bottle rocket from a few ruler readings and see its centre of mass and
    centre of pressure. Nothing to install, nothing is sent anywhere.
# The first two stops of the keyboard.
index-skip-place = Skip to the place
index-skip-drawing = Skip to the drawing
# Names of parts of the page, for screen readers.
index-path = The lesson
index-tools = Tools
# A line at the top, and its button.
index-new-version = A new version of this page is here.
index-load-new = Load it when you like
index-notebook = This notebook
# What the page is for, at its top.
index-purpose = Will your bottle rocket fly nose-first?
index-heading = Noseward: will your bottle rocket fly nose-first?
index-drawing = Drawing
# Where the drawing will be, until it is there.
index-loading = Getting the squared paper out…
# Where the drawing should be, when the page does not start.
index-failed-late =
    This is taking long. On a slow line, wait a little more. If nothing comes, one of these
    helps. A rocket that came with a link stays in the address bar.
index-failed-ended =
    The drawing could not start. Your rocket stays in the address bar: copy the address to
    keep it.
# The same, shown in every language below the English one: it is not known yet which is read.
index-failed-elsewhere =
    The drawing could not start. Load the page again, try another browser, or work on paper.
# What helps then: buttons, links and lines.
index-failed-again = Load the page again
index-failed-frame = If this page stands inside another one, that may block it.
index-failed-tab = Open it in a tab of its own
index-failed-copy = Or copy its address into a new tab:
index-failed-address = The address of this page
index-failed-browser =
    Try another browser: this one may be too old, or may block scripts or WebAssembly.
index-failed-file = Get the page as one file, for this computer or another
index-failed-on-paper = Work on paper: the lesson is further down this page.
index-failed-paper = Go to the paper lesson
index-failed-delete = Delete everything on this computer
index-failed-deletes =
    Deletes the rocket, the notebooks and everything else of this page from this computer.
    It cannot be undone. Links, codes and files you have made still work.
index-failed-delete-now = Delete everything now
index-failed-deleted = Everything of this page was deleted from this computer.
# A number follows.
index-failed-left = Not everything could be deleted. Entries that are left:
# The reason follows: what the browser says, or one of the two.
index-failed-reason = For whoever looks after this computer:
index-failed-blocked = The script that starts the page did not arrive, or was blocked.
index-failed-old = This browser is too old: it knows no JavaScript modules.
# Where scripts are switched off.
index-no-scripts =
    This page draws with scripts, and they are switched off here. Ask whoever looks after
    this computer to allow scripts for this address. The lesson on paper below works
    without.
index-more = For IT, and on paper
index-try-file = A file to try opening with; it is not read
# What the page keeps and sends, for whoever looks after computers: a heading and a list.
index-privacy = For IT and data protection: what this page keeps and sends
index-privacy-origin =
    <b>One origin.</b> Every file comes from the address of this page. There are no fonts,
    pictures, counters or scripts from anywhere else.
index-privacy-sent =
    <b>Nothing is sent.</b> Once the page and its copy for use without a network have
    loaded, it makes no request. A later visit’s page comes from the browser’s own store;
    the browser may ask the server whether there is a newer one. The rocket in a link stands
    after the sign #, which browsers do not send to servers; with its name it may stand in
    the browser’s history.
index-privacy-accounts =
    <b>No accounts, no cookies, no names.</b> Nothing asks for a name, an address, an age or
    a photo. A group is a colour and a number, and whatever you typed into the boxes for
    words. The page asks for one permission, the camera, when whoever leads has QR symbols read
    in Class; no picture is kept or sent. It writes to the clipboard when somebody presses Copy.
index-privacy-kept =
    <b>What is kept</b> lies in this browser alone: the rocket, the notebooks of the groups
    with all that was written in them, the last link, the chosen units, language and view, a number by
    which a new group’s label is chosen (local storage, keys that begin with noseward/;
    which notebook a tab has open also in its session storage), a second copy of these for a
    browser that is killed (IndexedDB, the database noseward), and a copy of the page’s own
    files (cache storage). “Delete everything on this computer”, under For whoever leads,
    empties all of them. Whoever uses this computer next can open these notebooks until
    then.
index-privacy-needs =
    <b>What it needs:</b> scripts and WebAssembly from its own address: Chrome or Edge 97,
    Firefox 102, Safari 16, or newer. It works with storage, downloads, clipboard, file
    choosers and service workers barred.
index-privacy-policy =
    <b>Content security policy:</b> the page carries its own; it allows scripts, styles and
    connections from its own address only, and no inline script.
index-privacy-licence =
    <b>Licence:</b> MIT. Whoever runs this copy is responsible for its server and that
    server’s logs.
# The lesson on paper: what opens it, and its heading.
index-paper = The lesson on paper
index-paper-heading = Will it fly nose-first? The lesson on paper
# Cautions, before anything is done.
index-paper-adult =
    Swing only with the adult, in a hall or outside. Empty rockets only: no water, no air
    pumped in.
index-paper-eyes =
    Eye protection on: the swinger and everybody who watches. Then tug the string hard.
index-paper-line =
    One person swings; everyone else outside the marked line. Never wind the string round
    fingers.
index-paper-stop =
    Anybody shouts Stop: it stops. Arm up until it hangs still; nobody walks in before.
index-paper-scissors =
    Scissors for card only. An adult cuts bottles, plastic, foam, balsa. Tape over edges.
index-paper-local =
    Local rules, your school’s own risk assessment and a qualified person decide. This page
    does not. It is not permission to launch.
index-paper-need =
    <b>You need</b> for each group: an empty fizzy-drinks bottle, card, tape, scissors, a
    ruler, about 1 m of string, modelling clay, card for a cut-out, eye protection for
    everybody who swings or watches, chalk or cones to mark a line.
# The steps.
index-paper-build =
    <b>Build.</b> Tape a nose and three or four card fins to the bottle. Make its tip soft
    and round. Weights go inside, taped: they must not come loose.
index-paper-mass =
    <b>Centre of mass.</b> Loop the string round the rocket and slide it until the rocket
    hangs level. Measure from the nose tip to the string. Do it three times.
index-paper-pressure =
    <b>Centre of pressure (side-on).</b> Cut the rocket’s side view, fins and all, out of
    one sheet of card: no tape, no glue. Balance it across a ruler’s edge and measure from
    its nose tip. Three times. Is the cut-out smaller or larger than the rocket? Multiply by
    the rocket’s length, divide by the cut-out’s.
index-paper-separation =
    <b>Separation</b> = centre of pressure − centre of mass. If it is more than nothing, the
    centre of mass is nearer the nose. If the readings of the two points overlap, it is too
    close to call.
index-paper-predict =
    <b>Predict</b> what the rocket will do on the string, and why. Write it down before
    anybody swings.
index-paper-swing =
    <b>Swing test, with the adult.</b> Tape the string at the centre of mass. Eye protection
    on; tug the string hard. The adult checks the space, and again before every three
    swings: with 1 m of string and 0.8 turns a second, mark a line 9.5 m from the swinger,
    all the way round (worked out for letting go up to 20° upwards, without drag; steeper
    flies further; not a permission). Is there less room? Then not here. Swing level, over
    the head, three times: the same string, the same number of turns in ten seconds.
index-paper-change =
    <b>Change one thing</b>: clay in the nose, size of fins, number of fins, or their place.
    Measure both points again, predict again, swing again.
# A table to fill in by hand: above it, and the heads of its columns.
index-paper-results =
    Results. Outcome: nose first, steady / nose first after wobbling / sideways or tumbling
    / tail first / string slipped, do again / not sure
index-paper-column-changed = What was changed
index-paper-column-mass-mm = Centre of mass, mm
index-paper-column-pressure-mm = Centre of pressure, mm
index-paper-column-separation-mm = Separation, mm
index-paper-column-because = Prediction, because
index-paper-column-outcomes = Outcomes 1, 2, 3
# In the first row of that column.
index-paper-first = nothing (first rocket)
# Below the table, to fill in by hand.
index-paper-initials = Adult’s initials, space checked: ………
index-paper-found =
    We found that … Our evidence is … This makes sense because … We trust it this much,
    because …
index-paper-print = Print the lesson
# At the foot of the page; the four follow.
index-edition = Version, date, build and compiler of this page:
# Links at the foot.
index-one-file = Get this page as one file, for a computer without internet
index-licences = Licences of what this page is made with
# In the single file, in the place of the link to it.
index-single = This is the single file: it needs no internet.
# Over the whole page, when it has stopped.
index-crash = Something in this page broke, and it stopped.
index-crash-again = Your rocket is in this link: open it again
index-crash-copy = To be sure, copy the link first:
index-crash-link = The link with your rocket
index-crash-twice =
    If it breaks again with this rocket, start with another one: nothing that was kept is
    deleted.
index-crash-afresh = Start with another rocket
# In place of the page, where a part of it is lost and there is no network: heading and two lines.
index-damaged = This page needs the network once
index-damaged-part =
    A part of it is missing or damaged on this computer, and the network cannot be reached.
    What you wrote here is still kept. A rocket that came with a link stays in the address
    bar.
index-damaged-load = Connect this computer, then load the page again with the browser’s own button.
