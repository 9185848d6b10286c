## In the place Swing, where the rocket is swung on a string, and on its sheet of paper.

# The caution on top of the place.
swing-caution =
    <b>Ask the adult before you swing.</b> Hall or outside. Empty: no water, no air pumped in.
    Eye protection on, then tug the string hard. One person swings; everyone else outside the
    marked line. Anybody shouts Stop: it stops. Local rules, your school’s own risk assessment
    and a qualified person decide. This page does not.
# In bold over the room that a swing needs.
swing-ask = Ask the adult before you swing.
# In bold in place of any result, where the rocket would fly too fast or pull too hard.
swing-limit = Do not swing this. Shorter string, fewer turns, lighter rocket: ask the adult.

## What opens: the line of each part, and its fields.

# Opens the fields of string and turns, and the room they need.
swing-room = String, turns, and the room they need
# The field for the length of the string. Also the head of a column of lengths.
swing-string = String
# The field for how often the string goes round in a second.
swing-turns = Turns a second
# The field for the length of the arm.
swing-arm = Arm, shoulder to hand
# Opens what was worked out.
swing-model = What it should do on its string, worked out
# In its place until the group has predicted.
swing-hidden = Hidden until you have predicted.
# The field for the angle between nose and path at which the rocket is let go.
swing-start = Nose starts at
# The field for the density of the air, in kilograms for a cubic metre.
swing-density = One cubic metre of air weighs
# Over the slider for the same angle.
swing-slider = Where the nose starts: 0° ahead, 180° behind

## What is wrong in a field of the swing.

# A comma that could part thousands or decimals.
# $small (text): the number if it parts decimals, such as “1.234”
# $large (text): the number if it parts thousands, such as “1234”
swing-ambiguous = Is that { $small } or { $large }?
# The field of the starting angle.
swing-needs-angle = This needs an angle from 0 to 180 degrees.
# Any other field with something that is no number.
# $setup (string | arm | density | turns): which field
swing-unreadable =
    I cannot read this. Type, for example, { $setup ->
        [string] 1.5 or 150 cm
        [arm] 0.7 or 70 cm
        [density] 1.2
       *[turns] 1
    }.
# A value that is no number.
swing-no-number = This needs a number.
# A number that is too small or too large.
# $least (text): the smallest there can be, such as “0.3 m” or “0.3 turns a second”
# $most (text): the largest
swing-out-of-bounds = Use a number from { $least } to { $most }.
# So few turns that the string hangs down.
swing-hangs-down = This slowly the string hangs down: take the figures as a rough guide.
# Still fewer.
swing-too-slow = This slowly the string hangs nearly straight down: there is nothing to work out.
# How fast it goes round, by itself in a table, in a fault and on the sheet of paper.
# $turns (number): how many turns
swing-turns-a-second = { $turns ->
    [one] { $turns } turn a second
   *[other] { $turns } turns a second
}

## What was worked out, in words.

# Where the rocket itself cannot be drawn.
swing-nothing-yet = Nothing to swing yet. First put right what is listed under the drawing.
# Where a field of the swing has a fault.
swing-number-first = Nothing to swing yet. First put the number above right.
# While it is worked out.
swing-wait = Being worked out…
# While every starting angle is tried, for the strip of starts.
swing-trying = Every start is being tried…

# In bold: what is not known exactly decides. Of 20 tries, so many end in each way.
# $tries (text): one or more of the lines below, such as “in about 9 it turns tail-first”
swing-too-close = Too close to call on the string. Of 20 tries with your readings, { $tries }.
# How many of the 20 tries end in a way.
# $tries (number): how many, 1 to 20
# $string-ending (from-any-start | once-it-is | across | tail-first): how they end
swing-tries =
    in about { $tries } it { $string-ending ->
        [from-any-start] turns nose-first from any start
        [once-it-is] stays nose-first once it is
        [across] settles across its path
       *[tail-first] turns tail-first
    }

# How it settles, in bold.
# $start (number): degrees off its path at the start
# $motion (at-once | nose-first | tail-first | across | still-swinging | turning-over): what it does
# $angle (number): degrees off its path in the end, or round which it swings; 0 where that is not said
# $seconds (number): after about how many seconds, or for how many it is watched
# $turns (number): after about how many turns of the circle; not said of what still swings
swing-settles = { $motion ->
    [at-once] Started at { $start }°, it is nose-first at once.
    [nose-first]
        Started at { $start }°, it comes round nose-first in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [tail-first]
        Started at { $start }°, it settles tail first in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [across]
        Started at { $start }°, it settles across its path, turned by { $angle }°, in about { $seconds } s ({ $turns ->
            [one] { $turns } turn
           *[other] { $turns } turns
        }).
    [still-swinging] Started at { $start }°, after about { $seconds } s it is still swinging round { $angle }°.
   *[turning-over] Started at { $start }°, after about { $seconds } s it is still turning over.
}
# Behind a sentence on how it settles: so much is left of its swinging.
# $angle (number): degrees to either side
swing-remains = It still swings by { $angle }° at the end.
# Some starting angles lead to the tail ahead.
# $from (number): the least of them, in degrees
# $to (number): the largest
swing-trap =
    <b>A tail-first trap.</b> Started between { $from }° and { $to }°, it flies with its tail ahead.

## How much of it the spin of the swing does, and not the air.

# What turns it back.
# $spin (holds-alone | flatters | too-weak | does-most | does-part): what the spin does
# $part (number): per cent of the turning that the string does
swing-spin = { $spin ->
    [holds-alone]
        <b>This swing proves little.</b> The spin of the swing itself pulls this rocket along its
        path. The air alone would not hold it nose-first, and nothing swings it round in flight.
    [flatters]
        <b>On the string it does better than it would in flight.</b> The spin of the swing holds
        it better than the air alone would.
    [too-weak]
        Near nose-first the air turns this rocket away, and the spin of the swing is too weak to
        hold it.
    [does-most]
        <b>This swing proves little.</b> When the nose is nearly in front, the string does { $part } %
        of the turning and the air the rest. In flight nothing swings it round.
   *[does-part]
        When the nose is nearly in front, the string does { $part } % of the turning and the air
        the rest.
}

## The moving pictures, and what is below them.

# Under the pictures: the time, and where the nose points.
# $seconds (number): since it was let go
# $angle (number): degrees between nose and path
swing-time = { $seconds } s: nose { $angle }° off its path
# Under a still picture, the same in short.
# $seconds (text): since it was let go
# $angle (text): degrees between nose and path
swing-still = { $seconds } s: { $angle }°
# The button that stops the pictures.
swing-pause = Pause
# The button that lets them move.
swing-play = Play
# The button that goes on by one picture.
swing-step = Step
# The button that goes back to the first picture.
swing-rewind = Back to the start
# The name of the group of three buttons for the speed of the pictures, for screen readers.
swing-speed = Speed
# The first of those buttons: a quarter of the true speed. The second is “½”.
swing-quarter = ¼ speed
# The third: as fast as it really is.
swing-full = full
# The name of the curve of the rocket as it is now, in the graph.
swing-this-rocket = this rocket
# The name of the curve of the rocket it is compared with, in the graph.
swing-before-change = before the change
# Which rocket it is compared with; what was seen of it follows.
# $name (text): its name
# $apart (text): its separation, such as “35 mm”
swing-dashed = Dashed: <b>{ $name }</b> before the change, { $apart } apart.
# The same where it has no name.
# $apart (text): its separation, such as “35 mm”
swing-dashed-nameless = Dashed: <b>the rocket</b> before the change, { $apart } apart.
# Behind that: none of its swings counts.
# $wanted (number): how many swings are wanted: three
swing-none-seen = 0 of { $wanted }
# Behind that: what was seen of it.
# $counted (number): how many swings count
# $wanted (number): how many are wanted: three
# $seen (text): what was seen, with semicolons between
swing-seen = { $counted } of { $wanted }: { $seen }
# Behind that.
# $slipped (number): how often the string slipped
swing-slipped = ({ $slipped } slipped, not counted)
# A button: from now on changes are compared with this rocket.
swing-compare = Compare changes with the rocket as it is now
# A button.
swing-print = Print the swing test

## The room that the swing needs.

# $clear (number): metres from the swinger that are kept free
# $across (number): the same right across, in metres
swing-clear =
    Nobody stands within <b>{ $clear } m</b> of the swinger. That is { $across } m across.
    Too small? Then not here.
# What that distance holds for.
# $about (number): how far the rocket would fly with the drag of the air, in metres
swing-holds-for =
    It holds for letting go up to 20° upwards from the shoulder, without drag. Steeper flies
    further. With this rocket’s own drag it is about { $about } m. Worked out, not a permission.
# A figure: how far from the swinger string and rocket reach.
swing-sweep = String and rocket sweep
# Its value.
# $reach (number): metres
swing-sweep-value = { $reach } m from the swinger
# A figure: how fast the rocket flies.
swing-how-fast = Speed
# A figure: how hard the string pulls.
swing-pull = Pull in the string
# Its value.
# $pull (number): newtons
# $hung (text): what weighs as much, such as “120 g”
swing-pull-value = { $pull } N, like { $hung } hung on it
# Over a table of ways to need less room.
swing-less-room = Less room: shorter string, slower turns
# The head of its column of turns a second.
swing-turns-column = Turns
# The head of its column of distances.
swing-nobody-within = Nobody within

## The cards of the test: the title of each, and what is done. The safety of the class hangs on these.

swing-hang-title = Find the hanging point
swing-hang =
    Loop the string round the empty rocket: no water, no air pumped in. Slide it until the
    rocket hangs level: nose and tail the same height above the table. Hang it low; keep feet
    and faces clear.
swing-hang-measure = Measure from the nose tip to the string, three times.
swing-tape-title = Tape it
swing-tape =
    Tape the string on both sides, so that it cannot slide. Never wind it round fingers.
swing-eyes-title = Cover your eyes
swing-eyes = Eye protection on: the swinger and everybody who watches.
swing-tug-title = Tug it
swing-tug = Tug the string hard, three times. Knot, string and tape must hold.
# $pull (number): how hard the swing will pull, in newtons
swing-tug-pull =
    Tug the string hard, three times. Knot, string and tape must hold: the swing will pull
    with about { $pull } N.
swing-space-title = Check the space, with the adult
swing-space = A hall, or outside. Look up as well: lamps, wires, branches.
# $clear (number): metres from the swinger that are kept free
# $across (number): the same right across, in metres
swing-space-line =
    Mark a line <b>{ $clear } m</b> from the swinger, all the way round: nobody stands inside
    it. That is { $across } m across. Too small? Then not here. Steeper flies further.
swing-one-title = One person swings
swing-one =
    <b>Ask the adult before you swing.</b> One person swings, level, over the head. Everyone
    else is outside the marked line. Anybody shouts Stop: it stops.
swing-one-count =
    The same string and the same speed each time: count the turns in ten seconds.
swing-slow-title = Let it slow
swing-slow =
    Watch the nose for five turns. Then arm up until it hangs still; nobody walks in before.
    Don’t grab it. Say what you saw.
# Behind the title of a card: which one it is.
# $card (text): its number
# $cards (text): how many there are
swing-card-of = { $card } of { $cards }
# On the first card: leads to the place Measure.
swing-type-measured = Type what you measured
# Over the button below.
swing-space-who =
    The adult in charge looks at the space and presses this, before every set of three swings.
# The button on the card of the space.
swing-space-checked = Space checked
# After “Space checked” was pressed while a fault stands in the way.
swing-space-unknown =
    How much space it needs can’t be worked out yet: first put right what is marked.
# The button to the card before.
swing-back = Back
# The button to the next card.
swing-next = Next

## The test on paper.

# The title of the sheet.
swing-test = Swing test
# Which rocket the sheet is about, and who swings it.
# $name (text): its name, or the line below
# $length (text): its length, such as “310 mm”
# $mass (number): its mass in grams
# $apart (text): its separation, such as “35 mm”
# $string (text): the length of the string, such as “1 m”
# $turns (text): how fast it goes round, such as “0.8 turns a second”
swing-sheet =
    <b>{ $name }</b>, { $length } long, { $mass } g, { $apart } apart. String { $string }, { $turns }.
    Group: ______________
# In place of a name, to be written on paper.
swing-sheet-nameless = Rocket: ______________
# To be signed.
swing-initials = Space checked, adult’s initials: __________ (before every three swings)
swing-no-permission =
    This is not permission to launch. Local rules, your school’s own risk assessment and a
    qualified person decide. This page does not.
# Over a table to write into. The words to choose from follow.
swing-what = What did it do?
# The head of a column of it.
# $number (number): 1 to 3
swing-number = Swing { $number }
# A title in the list of cards on paper; what is done follows.
# $title (text): the title of the card
swing-paper-title = { $title }.

## What was seen.

# All three are recorded. What was worked out follows.
swing-all-recorded = Three swings recorded.
# There is no room for another one.
swing-list-full = The list is full: take one back, or begin another trial.
# $counted (number): how many are recorded
# $wanted (number): how many it takes
swing-recorded = { $counted } of { $wanted } swings recorded.
# Before a prediction is locked. The button below follows.
swing-predict-first = First predict, and lock it: only then is a swing a test.
# The button that leads to the place Predict.
swing-predict = Predict
# Over the buttons for what was seen.
swing-record-caution =
    Eye protection on. Nobody inside the marked line. Anybody shouts Stop: it stops.
# While the space is not checked. The button leads to the card of the space.
swing-check-first = First the space has to be checked: <button>to that card</button>
# Under those buttons.
swing-quick-presses = Two quick presses of the same one count once.
# An entry of the list of what was seen, where the string slipped.
# $seen (text): what was seen
swing-not-counted = { $seen } (not counted)
# What was recorded and then called a slip.
# $seen (text): what was seen, with semicolons between
swing-taken-back = Taken back, and kept on record: { $seen }.
# Behind it, where so many were taken back that no more can be.
swing-none-more = No more can be taken back in this trial: begin another one instead.
# A button.
swing-was-slip = That was a slip: take the last one back
# A button.
swing-once-more = Another trial with the same rocket

# What was worked out, beside what was seen.
# $comes-to (nose-first | tail-first | across | still-swinging): what the rocket should do
swing-expected =
    Worked out here: { $comes-to ->
        [nose-first] nose first
        [tail-first] tail first
        [across] across its path
       *[still-swinging] still swinging
    }.
# The same, where something else was seen.
# $seen (text): what was seen, with semicolons between
# $comes-to (nose-first | tail-first | across | still-swinging): what the rocket should do
swing-differs = You saw: { $seen }. { swing-expected } What you saw counts. What could be the reason?
# The same, where what is not known exactly decides.
swing-open = Worked out here: too close to call. What you saw counts.
