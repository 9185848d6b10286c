deed-added = { $changed-part ->
    [nose] Eine Nase wurde hinzugefügt.
    [body] Ein Rumpf wurde hinzugefügt.
    [taper] Eine Verjüngung wurde hinzugefügt.
    [neck] Ein Hals wurde hinzugefügt.
    [bottle] Eine Flasche wurde hinzugefügt.
    [fins] Flossen wurden hinzugefügt.
   *[weight] Ein Gewicht wurde hinzugefügt.
}
deed-removed = { $changed-part ->
    [nose] Die Nase wurde weggenommen.
    [body] Der Rumpf wurde weggenommen.
    [taper] Die Verjüngung wurde weggenommen.
    [neck] Der Hals wurde weggenommen.
    [bottle] Die Flasche wurde weggenommen.
    [fins] Flossen wurden weggenommen.
   *[weight] Ein Gewicht wurde weggenommen.
}
deed-length = { $changed-part ->
    [nose] Die Nase wurde
    [taper] Die Verjüngung wurde
    [neck] Der Hals wurde
   *[body] Der Rumpf wurde
} { $how-much ->
    [more] länger
   *[less] kürzer
} gemacht.
deed-width = { $changed-part ->
    [nose] Die Nase wurde
    [taper] Die Verjüngung wurde
    [neck] Der Hals wurde
   *[body] Der Rumpf wurde
} { $how-much ->
    [more] breiter
   *[less] schmaler
} gemacht.
deed-weight = { $changed-part ->
    [nose] Die Nase wurde
    [body] Der Rumpf wurde
    [taper] Die Verjüngung wurde
    [neck] Der Hals wurde
    [bottle] Die Flasche wurde
    [fins] Die Flossen wurden
   *[weight] Das Gewicht wurde
} { $how-much ->
    [more] schwerer
   *[less] leichter
} gemacht.
deed-mass = { $changed-part ->
    [nose] Die Masse der Nase wurde geändert.
    [body] Die Masse des Rumpfs wurde geändert.
    [taper] Die Masse der Verjüngung wurde geändert.
    [neck] Die Masse des Halses wurde geändert.
    [bottle] Die Masse der Flasche wurde geändert.
    [fins] Die Masse der Flossen wurde geändert.
   *[weight] Die Masse des Gewichts wurde geändert.
}
deed-shape = { $changed-part ->
    [nose] Die Form der Nase wurde geändert.
    [taper] Die Form der Verjüngung wurde geändert.
    [neck] Die Form des Halses wurde geändert.
    [fins] Die Form der Flossen wurde geändert.
   *[body] Die Form des Rumpfs wurde geändert.
}
deed-front = { $changed-part ->
    [nose] Das vordere Ende der Nase wurde geändert.
    [taper] Das vordere Ende der Verjüngung wurde geändert.
    [neck] Das vordere Ende des Halses wurde geändert.
   *[body] Das vordere Ende des Rumpfs wurde geändert.
}
deed-moved = { $changed-part ->
    [fins] Die Flossen wurden
   *[weight] Ein Gewicht wurde
} { $moved-way ->
    [back] nach hinten
   *[forward] nach vorn
} verschoben.
deed-fin-number = { $how-much ->
    [more] Es wurden mehr Flossen angebracht.
   *[less] Es wurden weniger Flossen angebracht.
}
deed-fin-size = { $how-much ->
    [more] Die Flossen wurden größer gemacht.
   *[less] Die Flossen wurden kleiner gemacht.
}
deed-fins-turned = Die Flossen wurden um den Rumpf gedreht.
deed-string = { $how-much ->
    [more] Die Schnur wurde länger gemacht.
   *[less] Die Schnur wurde kürzer gemacht.
}
deed-turns = { $how-much ->
    [more] Die Rakete wurde schneller geschleudert.
   *[less] Die Rakete wurde langsamer geschleudert.
}
deed-arm = Die Länge des Arms wurde geändert.
deed-density = Die Dichte der Luft wurde geändert.
