verdict-open = { $comes-out ->
    [self-righting] Richtet sich selbst auf?
    [straight-start-only] Nur bei geradem Start?
    [at-an-angle] Schräg?
    [broadside] Quer?
   *[swaps-ends] Dreht sich um?
}
verdict-agreed = { $comes-out ->
    [self-righting] Richtet sich selbst auf.
    [straight-start-only] Nur bei geradem Start.
    [at-an-angle] Schräg.
    [broadside] Quer.
   *[swaps-ends] Dreht sich um.
}
verdict-probably = { $comes-out ->
    [self-righting] Richtet sich wahrscheinlich selbst auf.
    [straight-start-only] Wahrscheinlich nur bei geradem Start.
    [at-an-angle] Wahrscheinlich schräg.
    [broadside] Wahrscheinlich quer.
   *[swaps-ends] Dreht sich wahrscheinlich um.
}
verdict-too-close = Zu knapp, um es zu sagen.

verdict-means-open = Wie sicher das ist, wird noch berechnet.
verdict-means-too-close = Es kommt auf das an, was niemand genau weiß.
verdict-means-self-righting = Die Luft dreht diese Rakete wieder mit der Nase nach vorn, wohin sie auch zeigt.
verdict-means-straight-start-only = Sie fliegt mit der Nase voran, wenn sie so startet, kann aber auch anders liegen bleiben.
verdict-means-tilted = Die Luft hält sie um { $angle }° geneigt.
verdict-means-swaps-ends = Die Luft dreht diese Rakete um, sodass sie mit dem Heck voran fliegt.
verdict-not-all-sums = Nicht alle veröffentlichten Rechnungen sagen das.
verdict-overlap = Eure Messwerte überschneiden sich.

verdict-picture = Die Rakete in Ruhe, der Wind kommt von links

verdict-will-open = { $comes-out ->
    [self-righting] Was die Luft tun wird: Die Rakete richtet sich selbst auf?
    [straight-start-only] Was die Luft tun wird: Nur bei geradem Start?
    [at-an-angle] Was die Luft tun wird: Die Rakete liegt schräg?
    [broadside] Was die Luft tun wird: Die Rakete liegt quer?
   *[swaps-ends] Was die Luft tun wird: Die Rakete dreht sich um?
}
verdict-will-agreed = { $comes-out ->
    [self-righting] Was die Luft tun wird: Die Rakete richtet sich selbst auf.
    [straight-start-only] Was die Luft tun wird: Nur bei geradem Start bleibt sie gerade.
    [at-an-angle] Was die Luft tun wird: Die Rakete liegt schräg.
    [broadside] Was die Luft tun wird: Die Rakete liegt quer.
   *[swaps-ends] Was die Luft tun wird: Die Rakete dreht sich um.
}
verdict-will-probably = { $comes-out ->
    [self-righting] Was die Luft tun wird: Die Rakete richtet sich wahrscheinlich selbst auf.
    [straight-start-only] Was die Luft tun wird: Wahrscheinlich bleibt sie nur bei geradem Start gerade.
    [at-an-angle] Was die Luft tun wird: Die Rakete liegt wahrscheinlich schräg.
    [broadside] Was die Luft tun wird: Die Rakete liegt wahrscheinlich quer.
   *[swaps-ends] Was die Luft tun wird: Die Rakete dreht sich wahrscheinlich um.
}
verdict-will-too-close = Was die Luft tun wird: Es ist zu knapp, um es zu sagen.
verdict-two-fins = Zwei Flossen halten sie nur in einer Ebene ruhig; die andere Ebene entscheidet.

verdict-in-all-tries = { $comes-out ->
    [self-righting] richtet sich in allen Proben selbst auf
    [straight-start-only] in allen Proben nur bei geradem Start
    [at-an-angle] in allen Proben schräg
    [broadside] in allen Proben quer
   *[swaps-ends] dreht sich in allen Proben um
}
verdict-in-tries = { $comes-out ->
    [self-righting] richtet sich in { $tries } von 100 Proben selbst auf
    [straight-start-only] in { $tries } von 100 Proben nur bei geradem Start
    [at-an-angle] in { $tries } von 100 Proben schräg
    [broadside] in { $tries } von 100 Proben quer
   *[swaps-ends] dreht sich in { $tries } von 100 Proben um
}
