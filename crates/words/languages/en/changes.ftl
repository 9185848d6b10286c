## In Predict and in Compare, and where undo tells what it did: one thing that changed. What
## it was stands before the arrow, what it is behind it.

# Part of the body that is new, or gone.
# $card (text): the name of the part
# $came (added | removed): which of the two
# $length (text): how long it is, with its unit
# $mass (text): its mass, or what it is made of
change-section = { $card } { $came ->
    [added] added
   *[removed] removed
}: { $length } long, { $mass }.
# A nose that is new, or gone.
# $card (text): the name of the part
# $came (added | removed): which of the two
# $shape (text): its shape
# $length (text): how long it is, with its unit
# $mass (text): its mass, or what it is made of
change-nose = { $card } { $came ->
    [added] added
   *[removed] removed
}: { $shape }, { $length } long, { $mass }.
# A set of fins that is new, or gone.
# $card (text): the name of the set
# $came (added | removed): which of the two
# $count (number): how many fins
# $sizes (text): a list, such as “root 70 mm, tip 40 mm, span 60 mm, sweep 30 mm”
# $mass (text): their mass, or what they are made of
change-fins = { $card } { $came ->
    [added] added
   *[removed] removed
}: { $count } fins, { $sizes }, { $mass }.
# In that list.
# $fin-size (root | tip | span | sweep | length): what of them; the length is how far fins without four sides reach along the body
# $size (text): its size, with its unit
change-fin-size = { $fin-size ->
    [root] root
    [tip] tip
    [span] span
    [sweep] sweep
   *[length] length
} { $size }
# A weight that is new, or gone.
# $came (added | removed): which of the two
# $name (text): what it is
# $mass (text): its mass, with its unit
# $place (text): how far it is from the nose tip, with its unit
change-weight = Weight { $came ->
    [added] added
   *[removed] removed
}: { $name }, { $mass }, { $place } from the nose tip.
# The same for a weight without a name.
# $came (added | removed): which of the two
# $mass (text): its mass, with its unit
# $place (text): how far it is from the nose tip, with its unit
change-nameless-weight = Weight { $came ->
    [added] added
   *[removed] removed
}: { $mass }, { $place } from the nose tip.
# A part that has another value.
# $card (text): the name of the part
# $aspect (length | width | mass | material | shape | number | outline | corners | middle): what of it; corners are how many a fin has, the middle is where a weight sits
# $from (text): what it was
# $to (text): what it is
change-value = { $card }: { $aspect ->
    [length] length
    [width] width
    [mass] mass
    [material] material
    [shape] shape
    [number] number
    [outline] outline
    [corners] corners
   *[middle] middle
} { $from } → { $to }.
# A tube that is closed in front now, like the base of a bottle, or open.
# $card (text): the name of the part
# $front (opened | closed): which of the two
change-front = { $card }: front end { $front ->
    [opened] closed → open
   *[closed] open → closed
}.
# Some corners of a fin are elsewhere.
# $card (text): the name of the fins
# $moved (number): how many
# $corners (number): how many there are
change-corners-moved = { $card }: { $moved } of { $corners } corners moved.
# Fins of which one value or more differ.
# $card (text): the name of the fins
# $values (text): a list, such as “root 70 mm → 90 mm, span 60 mm → 80 mm”
change-fin-values = { $card }: { $values }.
# In that list.
# $fin-value (root | tip | span | sweep | start | turned): what of them; the start is that of the root from the nose tip, turned is round the body
# $from (text): what it was, with its unit
# $to (text): what it is, with its unit
change-fin-value = { $fin-value ->
    [root] root
    [tip] tip
    [span] span
    [sweep] sweep
    [start] start
   *[turned] turned
} { $from } → { $to }
# How the rocket is swung.
# $swing-value (string | arm | turns | density): what of it
# $from (text): what it was, with its unit
# $to (text): what it is, with its unit
change-swing = Swing: { $swing-value ->
    [string] string
    [arm] arm
    [turns] speed
   *[density] density of the air
} { $from } → { $to }.
# Behind a change that took other parts along: they keep their place on the body, and are
# elsewhere from the nose tip.
# $parts (text): their names, with commas
change-along = Moved with it: { $parts }.

## In those sentences.

# A width that nothing tells.
change-not-known = not known
# A sheet of card or plastic.
# $density (number): how heavy a square metre is, in grams
change-sheet = sheet of { $density } g/m²
# The outline of a fin.
# $corners (number): how many corners it has
change-corners = { $corners ->
    [one] { $corners } corner
   *[other] { $corners } corners
}
# The shape of a section.
# $section-shape (cone | ogive | ellipsoid | paraboloid | dome | tube | straight-taper | rounded-taper | neck): which
change-shape = { $section-shape ->
    [cone] cone
    [ogive] ogive
    [ellipsoid] ellipsoid
    [paraboloid] paraboloid
    [dome] dome
    [tube] tube
    [straight-taper] straight taper
    [rounded-taper] rounded taper
   *[neck] neck
}

## In tables and lists: what changed, in two or three words.

# $changed-part (nose | body | taper | neck | bottle | fins | weight): what was added
changed-added = { $changed-part ->
    [nose] nose added
    [body] body added
    [taper] taper added
    [neck] neck added
    [bottle] bottle added
    [fins] fins added
   *[weight] weight added
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what was taken off
changed-removed = { $changed-part ->
    [nose] nose removed
    [body] body removed
    [taper] taper removed
    [neck] neck removed
    [bottle] bottle removed
    [fins] fins removed
   *[weight] weight removed
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what has another shape
changed-shape = { $changed-part ->
    [nose] nose shape
    [taper] taper shape
    [neck] neck shape
    [fins] fin shape
   *[body] body shape
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what has another length
changed-length = { $changed-part ->
    [nose] nose length
    [taper] taper length
    [neck] neck length
   *[body] body length
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what has another width
changed-width = { $changed-part ->
    [nose] nose width
    [taper] taper width
    [neck] neck width
   *[body] body width
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what has another mass
changed-mass = { $changed-part ->
    [nose] nose mass
    [body] body mass
    [taper] taper mass
    [neck] neck mass
    [bottle] bottle mass
    [fins] fin mass
   *[weight] weight mass
}
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what is open or closed now
changed-front = { $changed-part ->
    [nose] nose front end
    [taper] taper front end
    [neck] neck front end
   *[body] body front end
}
# There are more fins, or fewer.
changed-fin-number = fin number
# $changed-part (nose | body | taper | neck | bottle | fins | weight): what is elsewhere
changed-place = { $changed-part ->
    [fins] fin place
   *[weight] weight place
}
# How the rocket is swung.
# $swing-value (string | arm | turns | density): what of it
changed-swing = { $swing-value ->
    [string] string length
    [arm] arm length
    [turns] speed of the swing
   *[density] density of the air
}
