means-ballast = Weight that you put in yourself, such as clay in the nose.
means-side-on = The middle of the air’s push, when the air comes straight from the side.
means-nose-on =
    The middle of the air’s push to the side, when the nose points nearly into the wind.
means-cut-out =
    The rocket’s side view in card. It lies level on an edge at the centre of pressure (side-on).
means-self-righting = Turns itself nose-first: the air turns the rocket back from any side.
means-broadside = Stays sideways: the air keeps the rocket’s side to the wind.
means-swaps-ends = Turns tail-first: the air turns the rocket round.
means-evidence = The readings and swings that show if you are right.
