change-section = { $card } { $came ->
    [added] hinzugefügt
   *[removed] weggenommen
}: { $length } lang, { $mass }.
change-nose = { $card } { $came ->
    [added] hinzugefügt
   *[removed] weggenommen
}: { $shape }, { $length } lang, { $mass }.
change-fins = { $card } { $came ->
    [added] hinzugefügt
   *[removed] weggenommen
}: { $count ->
    [one] { $count } Flosse
   *[other] { $count } Flossen
}, { $sizes }, { $mass }.
change-fin-size = { $fin-size ->
    [root] Wurzel
    [tip] Spitze
    [span] Spannweite
    [sweep] Pfeilung
   *[length] Länge
} { $size }
change-weight = Gewicht { $came ->
    [added] hinzugefügt
   *[removed] weggenommen
}: { $name }, { $mass }, { $place } von der Nasenspitze.
change-nameless-weight = Gewicht { $came ->
    [added] hinzugefügt
   *[removed] weggenommen
}: { $mass }, { $place } von der Nasenspitze.
change-value = { $card }: { $aspect ->
    [length] Länge
    [width] Breite
    [mass] Masse
    [material] Material
    [shape] Form
    [number] Anzahl
    [outline] Umriss
    [corners] Ecken
   *[middle] Mitte
} { $from } → { $to }.
change-front = { $card }: vorderes Ende { $front ->
    [opened] geschlossen → offen
   *[closed] offen → geschlossen
}.
change-corners-moved = { $card }: { $moved } von { $corners } Ecken verschoben.
change-fin-values = { $card }: { $values }.
change-fin-value = { $fin-value ->
    [root] Wurzel
    [tip] Spitze
    [span] Spannweite
    [sweep] Pfeilung
    [start] Anfang
   *[turned] gedreht um
} { $from } → { $to }
change-swing = Schleudern: { $swing-value ->
    [string] Schnur
    [arm] Arm
    [turns] Tempo
   *[density] Dichte der Luft
} { $from } → { $to }.
change-along = Mit verschoben: { $parts }.

change-not-known = unbekannt
change-sheet = Pappe oder Folie mit { $density } g/m²
change-corners = { $corners ->
    [one] { $corners } Ecke
   *[other] { $corners } Ecken
}
change-shape = { $section-shape ->
    [cone] Kegel
    [ogive] Ogive
    [ellipsoid] Ellipsoid
    [paraboloid] Paraboloid
    [dome] Kuppel
    [tube] Rohr
    [straight-taper] gerade Verjüngung
    [rounded-taper] runde Verjüngung
   *[neck] Hals
}

changed-added = { $changed-part ->
    [nose] Nase hinzugefügt
    [body] Rumpf hinzugefügt
    [taper] Verjüngung hinzugefügt
    [neck] Hals hinzugefügt
    [bottle] Flasche hinzugefügt
    [fins] Flossen hinzugefügt
   *[weight] Gewicht hinzugefügt
}
changed-removed = { $changed-part ->
    [nose] Nase weggenommen
    [body] Rumpf weggenommen
    [taper] Verjüngung weggenommen
    [neck] Hals weggenommen
    [bottle] Flasche weggenommen
    [fins] Flossen weggenommen
   *[weight] Gewicht weggenommen
}
changed-shape = { $changed-part ->
    [nose] Form der Nase
    [taper] Form der Verjüngung
    [neck] Form des Halses
    [fins] Form der Flossen
   *[body] Form des Rumpfs
}
changed-length = { $changed-part ->
    [nose] Länge der Nase
    [taper] Länge der Verjüngung
    [neck] Länge des Halses
   *[body] Länge des Rumpfs
}
changed-width = { $changed-part ->
    [nose] Breite der Nase
    [taper] Breite der Verjüngung
    [neck] Breite des Halses
   *[body] Breite des Rumpfs
}
changed-mass = { $changed-part ->
    [nose] Masse der Nase
    [body] Masse des Rumpfs
    [taper] Masse der Verjüngung
    [neck] Masse des Halses
    [bottle] Masse der Flasche
    [fins] Masse der Flossen
   *[weight] Masse des Gewichts
}
changed-front = { $changed-part ->
    [nose] vorderes Ende der Nase
    [taper] vorderes Ende der Verjüngung
    [neck] vorderes Ende des Halses
   *[body] vorderes Ende des Rumpfs
}
changed-fin-number = Zahl der Flossen
changed-place = { $changed-part ->
    [fins] Ort der Flossen
   *[weight] Ort des Gewichts
}
changed-swing = { $swing-value ->
    [string] Länge der Schnur
    [arm] Länge des Arms
    [turns] Tempo beim Schleudern
   *[density] Dichte der Luft
}
