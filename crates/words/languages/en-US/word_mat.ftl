term-width = Body width (caliber)
term-mass = Center of mass
term-side-on = Center of pressure (side-on)
term-nose-on = Center of pressure (nose-on)
means-separation = How far apart the center of mass and the center of pressure are.
means-cut-out =
    The rocket’s side view in card: where it balances is the center of pressure (side-on).
