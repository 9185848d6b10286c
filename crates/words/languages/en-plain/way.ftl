way-large = Large, for all to see
way-baseline = trial { $trial }, first to compare
way-changed =
    changed since trial { $trial }. When you measure or predict, trial { $next } begins
way-to-measure = Next: find both points of your own rocket.
way-first-measure = First guess, then read each point three times. No rocket? Go on.
way-to-swing = Locked. Next come the cards, with the adult.
way-first-lock = First predict, and lock it.
way-first-swings = First swing three times. Write down each.
way-to-conclude = Next: change one thing and test again, or sum up.
