term-self-righting = Turns itself nose-first (self-righting)
means-self-righting = Whichever way the rocket points, the air turns it nose-first again.
term-broadside = Stays sideways (broadside)
term-swaps-ends = Turns tail-first (swaps ends)
