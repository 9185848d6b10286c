## What the air will do, with how sure that is: in the strip below the drawing and in Why.

# An outcome, before it is known how sure it is.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
verdict-open = { $comes-out ->
    [self-righting] Self-righting?
    [straight-start-only] Straight start only?
    [at-an-angle] At an angle?
    [broadside] Broadside?
   *[swaps-ends] Swaps ends?
}
# An outcome of which all sums are sure.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
verdict-agreed = { $comes-out ->
    [self-righting] Self-righting.
    [straight-start-only] Straight start only.
    [at-an-angle] At an angle.
    [broadside] Broadside.
   *[swaps-ends] Swaps ends.
}
# An outcome that is probable.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
verdict-probably = { $comes-out ->
    [self-righting] Probably self-righting.
    [straight-start-only] Probably straight start only.
    [at-an-angle] Probably at an angle.
    [broadside] Probably broadside.
   *[swaps-ends] Probably swaps ends.
}
# In the place of an outcome.
verdict-too-close = Too close to call.

# Behind an outcome, before it is known how sure it is.
verdict-means-open = How sure that is is being worked out.
# Behind “Too close to call.”
verdict-means-too-close = What is not known exactly decides.
# Behind “Self-righting.”
verdict-means-self-righting = The air turns this rocket back nose-first, whichever way it points.
# Behind “Straight start only.”
verdict-means-straight-start-only = It flies nose-first if it starts so, but can also settle otherwise.
# Behind “Broadside.” and “At an angle.”
# $angle (number): in degrees, from the direction of flight
verdict-means-tilted = The air holds it tilted by { $angle }°.
# Behind “Swaps ends.”
verdict-means-swaps-ends = The air turns this rocket round to fly tail-first.
# Behind that: why it is only probable.
verdict-not-all-sums = Not all published sums say so.
# Behind that: why it is only probable.
verdict-overlap = Your readings overlap.

# The name of the small picture, for screen readers.
verdict-picture = The rocket at rest, with the wind from the left

## In Why: what the air will do, as a sentence. Another one follows.

# Before it is known how sure it is.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
verdict-will-open = { $comes-out ->
    [self-righting] What the air will do: self-righting?
    [straight-start-only] What the air will do: straight start only?
    [at-an-angle] What the air will do: at an angle?
    [broadside] What the air will do: broadside?
   *[swaps-ends] What the air will do: swaps ends?
}
# All sums are sure of it.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
verdict-will-agreed = { $comes-out ->
    [self-righting] What the air will do: self-righting.
    [straight-start-only] What the air will do: straight start only.
    [at-an-angle] What the air will do: at an angle.
    [broadside] What the air will do: broadside.
   *[swaps-ends] What the air will do: swaps ends.
}
# It is probable.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
verdict-will-probably = { $comes-out ->
    [self-righting] What the air will do: probably self-righting.
    [straight-start-only] What the air will do: probably straight start only.
    [at-an-angle] What the air will do: probably at an angle.
    [broadside] What the air will do: probably broadside.
   *[swaps-ends] What the air will do: probably swaps ends.
}
# Nobody can say.
verdict-will-too-close = What the air will do: too close to call.
# At the end, for a rocket with two fins.
verdict-two-fins = Two fins steady it in one plane only; the other plane decides.

## In Why: how often each outcome came up when the readings were tried with small errors.

# One of a list, within a sentence.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
verdict-in-all-tries = { $comes-out ->
    [self-righting] self-righting in all tries
    [straight-start-only] straight start only in all tries
    [at-an-angle] at an angle in all tries
    [broadside] broadside in all tries
   *[swaps-ends] swaps ends in all tries
}
# One of a list, within a sentence.
# $comes-out (self-righting | straight-start-only | at-an-angle | broadside | swaps-ends): the outcome
# $tries (number): of 100
verdict-in-tries = { $comes-out ->
    [self-righting] self-righting in { $tries } of 100 tries
    [straight-start-only] straight start only in { $tries } of 100 tries
    [at-an-angle] at an angle in { $tries } of 100 tries
    [broadside] broadside in { $tries } of 100 tries
   *[swaps-ends] swaps ends in { $tries } of 100 tries
}
