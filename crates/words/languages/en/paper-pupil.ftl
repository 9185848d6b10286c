## Sheets that pupils write on, and cards to cut apart, in the place Paper.

# The title of the record of a group: measured, predicted, swung, concluded.
pupil-record = Record of one trial
# Below the headings of sheets with lengths.
# $unit (text): the unit, such as “mm”
pupil-all-in = Unit of every length: { $unit }.
# Fields of the swings, for a fair test: how long the string is, and how fast it goes round.
pupil-string = Length of the string
pupil-turns = Turns in ten seconds
# Where a rocket is hung up to measure it. In a frame.
pupil-hang = Hang it low. Keep feet and faces clear.
# Above a table: which way each of the two points moved.
pupil-moved = What moved since the trial before?
# The heads of its columns, each with a box to tick; the last one is to write in.
pupil-moved-nose = to the nose
pupil-moved-tail = to the tail
pupil-moved-not = not at all
pupil-moved-far = how far

## The table for the results of a class.

# The title of the sheet.
pupil-results = Results of the class
# Below it.
# $unit (text): the unit, such as “mm”
pupil-results-how =
    One row for each trial. Readings from the nose tip in { $unit }: up to three, with room
    between them.
# Over a list of what a swing can do, each with its number.
pupil-results-key = Write the number of what a swing did:

## Charts to draw in.

# The title of the sheet.
pupil-charts = Charts to draw in
# The heading over squared paper with two axes.
pupil-squares = Squared paper
# Below it.
pupil-squares-how = Write on each axis what it shows, and its unit.
# What squared paper is, for those who have the sheet read out.
pupil-squares-name = Squared paper with two axes, to draw in

## Cards for the tests, to cut apart.

# The title of the sheet.
pupil-cards = Cards for the tests
# On the card for balancing the cut-out. In a frame: cutting hurts people.
pupil-card-cutting = An adult cuts bottles. Cut card away from your fingers.
pupil-card-flat = The cut-out is one flat layer of card, with no tape, no glue and nothing else on it.
# The title of the card on getting ready to swing.
pupil-card-ready = Before you swing
# On the card on the space, in a frame, where the distance is not worked out: to be written in.
pupil-card-line =
    Mark a line all the way round: nobody stands inside it. The adult says how far from the swinger:
    ______ m
# The title of the card on what to write down, and what stands on it.
pupil-card-record = Write it down
pupil-card-readings = Write down all three readings, and from which end you measured.
pupil-card-odd = Does one look odd? It stays. Write beside it what you think.
pupil-card-prediction = Write what it will do, and why, before it swings.
pupil-card-swings = Write what each of three swings did.
pupil-card-slipped = Did the string slip? Write that down too, and swing once more.

## Cards for who does what in a group, to cut apart.

# The title of the sheet.
pupil-roles = Who does what
# Below it.
pupil-roles-how = Share the cards out. In a small group you may have two each.
# What somebody is called in a group, and what this one does.
pupil-role-ruler = Ruler
pupil-role-ruler-does =
    You measure both points from the nose tip. Take the ruler away after each reading.
pupil-role-string = String
pupil-role-string-does =
    You hold the string low until the rocket hangs level. You tape it on both sides, and you tug it
    hard three times.
pupil-role-swinger = Swinger
pupil-role-swinger-does =
    You swing the rocket level, over your head. Then arm up until it hangs still. Don’t grab it.
pupil-role-space = Lookout
pupil-role-space-does =
    You look at the marked line, not at the rocket. Does anybody step over it? Shout Stop.
pupil-role-nose = Nose watcher
pupil-role-nose-does =
    You watch the nose for five turns, and count the turns in ten seconds. You say what it did.
pupil-role-pencil = Pencil
pupil-role-pencil-does =
    You write down every reading, the prediction and every swing. Read each one out again.
