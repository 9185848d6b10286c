verdict-open = { $comes-out ->
    [self-righting] Turns itself nose-first?
    [straight-start-only] Stays straight only if started straight?
    [at-an-angle] Stays at an angle?
    [broadside] Stays sideways?
   *[swaps-ends] Turns tail-first?
}
verdict-agreed = { $comes-out ->
    [self-righting] Turns itself nose-first.
    [straight-start-only] Stays straight only if started straight.
    [at-an-angle] Stays at an angle.
    [broadside] Stays sideways.
   *[swaps-ends] Turns tail-first.
}
verdict-probably = { $comes-out ->
    [self-righting] Probably turns itself nose-first.
    [straight-start-only] Probably stays straight only if started straight.
    [at-an-angle] Probably stays at an angle.
    [broadside] Probably stays sideways.
   *[swaps-ends] Probably turns tail-first.
}
verdict-too-close = Too close to say.
verdict-means-open = The page still works out how sure that is.
verdict-means-too-close = Small things that nobody measured decide.
verdict-means-self-righting = The air turns this rocket nose-first again from any side.
verdict-means-straight-start-only = From another start it may end another way.
verdict-means-tilted = The air keeps it leaning by { $angle }°.
verdict-means-swaps-ends = The air turns this rocket round. It flies tail-first.
verdict-not-all-sums = Not all who worked this out agree.
verdict-overlap = Your readings of one point reach past the other.
verdict-picture = The rocket at rest. The wind comes from the left
verdict-will-open = { $comes-out ->
    [self-righting] What the air will do: turn it nose-first?
    [straight-start-only] What the air will do: keep it straight, only if it starts straight?
    [at-an-angle] What the air will do: keep it at an angle?
    [broadside] What the air will do: keep it sideways?
   *[swaps-ends] What the air will do: turn it tail-first?
}
verdict-will-agreed = { $comes-out ->
    [self-righting] What the air will do: turn it nose-first.
    [straight-start-only] What the air will do: keep it straight, only if it starts straight.
    [at-an-angle] What the air will do: keep it at an angle.
    [broadside] What the air will do: keep it sideways.
   *[swaps-ends] What the air will do: turn it tail-first.
}
verdict-will-probably = { $comes-out ->
    [self-righting] What the air will do: probably turn it nose-first.
    [straight-start-only] What the air will do: probably keep it straight, only if it starts straight.
    [at-an-angle] What the air will do: probably keep it at an angle.
    [broadside] What the air will do: probably keep it sideways.
   *[swaps-ends] What the air will do: probably turn it tail-first.
}
verdict-will-too-close = What the air will do: too close to say.
verdict-two-fins = Two fins keep it straight in one direction only. The other direction decides.
verdict-in-all-tries = { $comes-out ->
    [self-righting] turns itself nose-first in all tries
    [straight-start-only] stays straight only if started straight, in all tries
    [at-an-angle] stays at an angle in all tries
    [broadside] stays sideways in all tries
   *[swaps-ends] turns tail-first in all tries
}
verdict-in-tries = { $comes-out ->
    [self-righting] turns itself nose-first in { $tries } of 100 tries
    [straight-start-only] stays straight only if started straight, in { $tries } of 100 tries
    [at-an-angle] stays at an angle in { $tries } of 100 tries
    [broadside] stays sideways in { $tries } of 100 tries
   *[swaps-ends] turns tail-first in { $tries } of 100 tries
}
