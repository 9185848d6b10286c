## The place with the word mat: thirty terms with pictures, for a wall or a table.

# Below the heading.
mat-lead = Thirty words, each with a picture: for the wall, or for your table.
# A list to choose from: the language that stands beside the first one.
mat-beside = Beside it
# In that list.
mat-beside-none = no second language
# A button.
mat-print = Print the word mat
# The headings of the four groups of words.
mat-parts = The rocket and its parts
mat-points = Two points, and the air
mat-outcomes = On the string, and in the air
mat-test = Test and measure

## The words, each with one short sentence. What the trade calls it may follow in brackets. These are parts of the rocket.

term-nose = Nose (nose cone)
means-nose = The front part. Its very end is the nose tip, where the ruler starts.
term-tube = Tube
means-tube = The straight part of the body, just as wide in front as behind.
term-taper = Taper
means-taper = A part of the body that gets narrower towards one end.
term-neck = Bottle neck
means-neck = The narrow, open end of the bottle, at the rocket’s tail.
term-width = Body width (calibre)
means-width = How far it is straight across the body, where it is widest.
term-ballast = Ballast
means-ballast = Weight that you add on purpose, such as clay in the nose.
term-fin = Fin
means-fin = A flat piece that sticks out near the tail, for the air to push on.
term-root = Root (of a fin)
means-root = The edge of the fin that is joined to the body.
term-tip = Tip (of a fin)
means-tip = The outer edge of the fin, away from the body.
term-span = Span (of a fin)
means-span = How far the fin sticks out from the body.
term-sweep = Sweep (of a fin)
means-sweep = How far back the front of the tip is from the front of the root.

## Of these, the two points and the air.

term-mass = Centre of mass
means-mass = The point where the rocket hangs level on a string.
term-side-on = Centre of pressure (side-on)
means-side-on = Where the air pushes, on average, when it comes straight from the side.
term-nose-on = Centre of pressure (nose-on)
means-nose-on =
    Where the air pushes it sideways, on average, when its nose points nearly into the wind.
term-separation = Separation
means-separation = How far apart the centre of mass and the centre of pressure are.
term-cut-out = Cut-out
means-cut-out =
    The rocket’s side view in card: where it balances is the centre of pressure (side-on).
term-angle = Angle of attack
means-angle = The angle between where the nose points and where the air comes from.

## Of these, what it does.

term-swing-test = Swing test
means-swing-test =
    With the adult there, one person swings the rocket round on a string; everybody watches its
    nose.
term-self-righting = Self-righting
means-self-righting = The air turns the rocket nose-first again, whichever way it points.
term-broadside = Broadside
means-broadside = The air keeps the rocket sideways, with its side to the wind.
term-swaps-ends = Swaps ends
means-swaps-ends = The air turns the rocket round to fly tail-first.

## Of these, how one tests and measures.

term-fair-test = Fair test
means-fair-test = You change one thing only, and keep all the rest the same.
term-variable = Variable
means-variable = Anything in a test that can change, such as how much clay is in the nose.
term-prediction = Prediction
means-prediction = What you think will happen and why, said before you test it.
term-reading = Reading
means-reading = One number that you read off a ruler or scales.
term-repeat = Repeat
means-repeat = The same thing measured again, in the same way.
term-middle = Middle value (median)
means-middle = Put the readings in order, the smallest first: it is the one in the middle.
term-range = Range
means-range = How far it is from the smallest reading to the largest.
term-uncertainty = Uncertainty
means-uncertainty = How far the true value may well be from the one you found.
term-evidence = Evidence
means-evidence = The readings and swings that show whether you are right.
