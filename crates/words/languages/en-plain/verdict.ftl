verdict-open = { $comes-out ->
    [self-righting] Turns itself straight?
    [straight-start-only] Straight start only?
    [at-an-angle] At a slant?
    [broadside] Sideways?
   *[swaps-ends] Turns right round?
}
verdict-agreed = { $comes-out ->
    [self-righting] Turns itself straight.
    [straight-start-only] Straight start only.
    [at-an-angle] At a slant.
    [broadside] Sideways.
   *[swaps-ends] Turns right round.
}
verdict-probably = { $comes-out ->
    [self-righting] Probably turns itself straight.
    [straight-start-only] Probably straight start only.
    [at-an-angle] Probably at a slant.
    [broadside] Probably sideways.
   *[swaps-ends] Probably turns right round.
}
verdict-too-close = Nobody can tell.

verdict-means-open = The page is still working out how sure that is.
verdict-means-too-close = It depends on small things that nobody measured.
verdict-means-self-righting = The air turns this rocket nose-first again, whichever way it points.
verdict-means-straight-start-only = It flies nose-first if it starts that way. It can also end up another way.
verdict-means-tilted = The air keeps it leaning by { $angle }°.
verdict-means-swaps-ends = The air turns this rocket round. It flies tail-first.
verdict-not-all-sums = Not everybody who worked this out agrees.
verdict-overlap = Your readings of the two points overlap.

verdict-will-open = { $comes-out ->
    [self-righting] What the air will do: turn it straight?
    [straight-start-only] What the air will do: keep it straight if it starts straight?
    [at-an-angle] What the air will do: hold it at a slant?
    [broadside] What the air will do: hold it sideways?
   *[swaps-ends] What the air will do: turn it right round?
}
verdict-will-agreed = { $comes-out ->
    [self-righting] What the air will do: turn it straight.
    [straight-start-only] What the air will do: keep it straight if it starts straight.
    [at-an-angle] What the air will do: hold it at a slant.
    [broadside] What the air will do: hold it sideways.
   *[swaps-ends] What the air will do: turn it right round.
}
verdict-will-probably = { $comes-out ->
    [self-righting] What the air will do: probably turn it straight.
    [straight-start-only] What the air will do: probably keep it straight if it starts straight.
    [at-an-angle] What the air will do: probably hold it at a slant.
    [broadside] What the air will do: probably hold it sideways.
   *[swaps-ends] What the air will do: probably turn it right round.
}
verdict-will-too-close = What the air will do: nobody can tell.
verdict-two-fins = Two fins keep it steady in one direction only. The other direction decides.

verdict-in-all-tries = { $comes-out ->
    [self-righting] turns itself straight in all tries
    [straight-start-only] straight start only in all tries
    [at-an-angle] at a slant in all tries
    [broadside] sideways in all tries
   *[swaps-ends] turns right round in all tries
}
verdict-in-tries = { $comes-out ->
    [self-righting] turns itself straight in { $tries } of 100 tries
    [straight-start-only] straight start only in { $tries } of 100 tries
    [at-an-angle] at a slant in { $tries } of 100 tries
    [broadside] sideways in { $tries } of 100 tries
   *[swaps-ends] turns right round in { $tries } of 100 tries
}
