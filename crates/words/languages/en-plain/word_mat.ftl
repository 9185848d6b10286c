means-ballast = Weight that you put in yourself, such as clay in the nose.
means-side-on = The middle of the air’s push, when the air comes straight from the side.
means-nose-on =
    The middle of the air’s push to the side, when the nose points nearly into the wind.
means-cut-out =
    The rocket’s side view in card. It lies level on an edge at the centre of pressure (side-on).
term-self-righting = Turns itself nose-first (self-righting)
means-self-righting = The air turns the rocket nose-first again from any side.
term-broadside = Stays sideways (broadside)
term-swaps-ends = Turns tail-first (swaps ends)
means-evidence = The readings and swings that show if you are right.
