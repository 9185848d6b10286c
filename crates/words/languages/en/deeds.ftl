## In the place Conclude: the one thing that a group changed. What followed stands behind it as
## a sentence of its own, or the question what happened.

# $changed-part (nose | body | taper | neck | bottle | fins | weight): what was added
deed-added = { $changed-part ->
    [nose] A nose was added.
    [body] A body was added.
    [taper] A taper was added.
    [neck] A neck was added.
    [bottle] A bottle was added.
    [fins] Fins were added.
   *[weight] A weight was added.
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what was taken off
deed-removed = { $changed-part ->
    [nose] The nose was taken off.
    [body] The body was taken off.
    [taper] The taper was taken off.
    [neck] The neck was taken off.
    [bottle] The bottle was taken off.
    [fins] Fins were taken off.
   *[weight] A weight was taken off.
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): a part of the body
# $how-much (more | less): longer or shorter
deed-length = { $changed-part ->
    [nose] The nose was made
    [taper] The taper was made
    [neck] The neck was made
   *[body] The body was made
} { $how-much ->
    [more] longer
   *[less] shorter
}.
# $changed-part (nose | body | taper | neck | bottle | fins | weight): a part of the body
# $how-much (more | less): wider or narrower
deed-width = { $changed-part ->
    [nose] The nose was made
    [taper] The taper was made
    [neck] The neck was made
   *[body] The body was made
} { $how-much ->
    [more] wider
   *[less] narrower
}.
# $changed-part (nose | body | taper | neck | bottle | fins | weight): a part
# $how-much (more | less): heavier or lighter
deed-weight = { $changed-part ->
    [nose] The nose was made
    [body] The body was made
    [taper] The taper was made
    [neck] The neck was made
    [bottle] The bottle was made
    [fins] The fins were made
   *[weight] The weight was made
} { $how-much ->
    [more] heavier
   *[less] lighter
}.
# Where it was not weighed both times, so that nobody knows which is heavier.
# $changed-part (nose | body | taper | neck | bottle | fins | weight): a part
deed-mass = { $changed-part ->
    [nose] The mass of the nose was changed.
    [body] The mass of the body was changed.
    [taper] The mass of the taper was changed.
    [neck] The mass of the neck was changed.
    [bottle] The mass of the bottle was changed.
    [fins] The mass of the fins was changed.
   *[weight] The mass of the weight was changed.
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): a part of the body, or fins
deed-shape = { $changed-part ->
    [nose] The shape of the nose was changed.
    [taper] The shape of the taper was changed.
    [neck] The shape of the neck was changed.
    [fins] The shape of the fins was changed.
   *[body] The shape of the body was changed.
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): a part of the body
deed-front = { $changed-part ->
    [nose] The front end of the nose was changed.
    [taper] The front end of the taper was changed.
    [neck] The front end of the neck was changed.
   *[body] The front end of the body was changed.
}
# “Back” is towards the tail.
# $changed-part (nose | body | taper | neck | bottle | fins | weight): the fins, or a weight
# $moved-way (back | forward): which way
deed-moved = { $changed-part ->
    [fins] The fins were moved
   *[weight] A weight was moved
} { $moved-way ->
    [back] back
   *[forward] forward
}.
# $how-much (more | less): more fins or fewer
deed-fin-number = { $how-much ->
    [more] More fins were put on.
   *[less] Fewer fins were put on.
}
# $how-much (more | less): larger or smaller
deed-fin-size = { $how-much ->
    [more] The fins were made larger.
   *[less] The fins were made smaller.
}
deed-fins-turned = The fins were turned round the body.
# $how-much (more | less): longer or shorter
deed-string = { $how-much ->
    [more] The string was made longer.
   *[less] The string was made shorter.
}
# $how-much (more | less): faster or slower
deed-turns = { $how-much ->
    [more] The rocket was swung faster.
   *[less] The rocket was swung slower.
}
deed-arm = The arm length was changed.
deed-density = The density of the air was changed.
