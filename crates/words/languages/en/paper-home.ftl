## A sheet to take home, for pupils: build and balance only. It has no word of what is not for home.

home-title = At home: balance and predict
# The only line about it, also at the foot of the page.
home-never = Do not launch at home.
home-never-swing = Do not swing it: that needs an adult and a lot of space.
home-need = You need
home-things = paper, card, tape, scissors, thread, a ruler, and clay or a few coins
home-do = What you do
home-body = Roll a sheet of paper into a tube and tape it. Press clay into one end: that is the nose. Keep it round and soft.
home-fins = Cut two fins out of card. Tape them to the other end, one on each side.
home-cut = Cut away from your fingers, with an adult near you.
home-guess = Guess where it will hang level. Put a small mark there.
home-hang = Tie a thread round it. Slide the thread until it hangs level. Hang it low. Keep your face clear.
home-read = Measure from the tip of the nose to the thread, three times.
home-draw = Lay it on card with its fins flat. Draw round it, and cut that shape out.
home-balance = Balance the card shape on your finger. Measure from its nose to your finger, three times.
# Lines to write on.
home-hangs-at = Hangs level at
home-balances-at = Card balances at
home-nearer = Which of the two is nearer the nose?
home-predict = Think of wind from the side. Which end will turn into the wind, and why?
# What the pictures show, for whoever has them read out.
home-pictures = The rocket hangs level from a thread. The card shape lies level on a finger.
home-bring = Bring this page and your rocket back to school.

## The sheet for a cover lesson, for pupils.

cover-title = Cover lesson: no swinging, no launching
cover-lead = A club by the sea swung twelve rockets on a string, with an adult. They measured two points of each, from the tip of the nose. These numbers are made up, so that you can practise.
# The caption of the table, with the heads of its last columns.
cover-table = Made-up numbers, for practice
cover-group = Group
cover-apart = How far apart
cover-saw = What they saw
# The tasks.
cover-work-out = How far apart are the two points? Take the first number from the second. Write it into the table.
cover-guess = Which rockets went nose first? Guess, and put a tick beside each. Then look at the last column.
cover-plot = Draw a line on squared paper, and write how far apart on it, from small to large. Put a dot over it for each rocket that went nose first. Put a cross for each other one.
cover-pattern = From where on do most rockets go nose first? Which ones do not fit?
cover-because = Write: “We think that … because …”. Say what you would test next.
# A task for those who are ready.
cover-spare = Done? Cut a rocket shape out of card. Balance it on your finger and mark the place. Tape larger fins on: where does it balance now?
cover-back = Hand in this page, your dots and what you wrote. Write your group on it, not your name.
