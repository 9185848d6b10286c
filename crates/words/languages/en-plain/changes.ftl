change-section = { $card } { $came ->
    [added] added
   *[removed] taken off
}: { $length } long, { $mass }.
change-nose = { $card } { $came ->
    [added] added
   *[removed] taken off
}: { $shape }, { $length } long, { $mass }.
change-fins = { $card } { $came ->
    [added] added
   *[removed] taken off
}: { $count } fins, { $sizes }, { $mass }.
change-fin-size = { $fin-size ->
    [root] along the body
    [tip] outside edge
    [span] out from the body
    [sweep] leans back by
   *[length] length
} { $size }
change-weight = Weight { $came ->
    [added] added
   *[removed] taken off
}: { $name }, { $mass }, { $place } from the nose tip.
change-nameless-weight = Weight { $came ->
    [added] added
   *[removed] taken off
}: { $mass }, { $place } from the nose tip.
change-value = { $card }: { $aspect ->
    [length] length
    [width] width
    [mass] mass
    [material] made of
    [shape] shape
    [number] number
    [outline] shape
    [corners] corners
   *[middle] middle
} { $from } → { $to }.
change-fin-value = { $fin-value ->
    [root] along the body
    [tip] outside edge
    [span] out from the body
    [sweep] leans back by
    [start] start
   *[turned] turned
} { $from } → { $to }
change-swing = Swing: { $swing-value ->
    [string] string
    [arm] arm
    [turns] speed
   *[density] how heavy the air is
} { $from } → { $to }.
change-shape = { $section-shape ->
    [cone] cone
    [ogive] pointed
    [ellipsoid] egg
    [paraboloid] rounded
    [dome] end of a bottle
    [tube] tube
    [straight-taper] narrower, straight
    [rounded-taper] narrower, round
   *[neck] neck
}
changed-removed = { $changed-part ->
    [nose] nose taken off
    [body] body taken off
    [taper] taper taken off
    [neck] neck taken off
    [bottle] bottle taken off
    [fins] fins taken off
   *[weight] weight taken off
}
changed-swing = { $swing-value ->
    [string] string length
    [arm] arm length
    [turns] speed of the swing
   *[density] how heavy the air is
}
