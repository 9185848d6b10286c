drawing-chart = Abstand und was zu sehen war, ein Punkt für jeden Schwung
drawing-chart-blank = Ein Diagramm zum Ausfüllen: Abstand und was zu sehen war
drawing-one-dot = Punkt je Schwung, mit Versuchsnummer
drawing-band = üblich: 1 bis 2 Rumpfbreiten
drawing-zero = 0: beide Punkte am selben Ort
drawing-mass-nearer-arrow = Schwerpunkt näher an der Nase →
drawing-pressure-nearer-arrow = ← Druckpunkt näher an der Nase
drawing-separation-in = { $written-in ->
    [millimetres] Abstand in Millimetern
   *[inches] Abstand in Zoll
}
drawing-filled = voll: gemessen
drawing-hollow = hohl: ausgerechnet
drawing-range = Spanne eines Abstands
drawing-series = Abstand über den Versuchen, gemessen und ausgerechnet
drawing-trial-axis = Versuch
drawing-dot = Punkt: gemessen
drawing-diamond = Raute: ausgerechnet
drawing-bar = Balken: Spanne des Gemessenen
drawing-mass-nearer = Schwerpunkt näher an der Nase
drawing-pressure-nearer = Druckpunkt näher an der Nase

drawing-dots = { $count ->
    [2] Zwei Punkte
    [3] Drei Punkte
    [4] Vier Punkte
    [5] Fünf Punkte
    [6] Sechs Punkte
    [7] Sieben Punkte
    [8] Acht Punkte
    [9] Neun Punkte
    [10] Zehn Punkte
    [11] Elf Punkte
    [12] Zwölf Punkte
    [one] Ein Punkt
   *[other] { $count } Punkte
}
drawing-row =
    { drawing-dots } in der Zeile „{ $row }“, { $spread ->
        [in-one-place] bei { $to }
       *[apart] von { $from } bis { $to }
    }:
drawing-row-origin = { $origin ->
    [all-measured] gemessen.
    [all-computed] ausgerechnet.
   *[both] { $measured } gemessen, { $computed } ausgerechnet.
}
drawing-no-swing = Noch kein Schwung.
drawing-practice =
    Üblich, 1 bis 2 Rumpfbreiten, ist es { $spread ->
        [in-one-place] bei { $to }
       *[apart] von { $from } bis { $to }
    }.
drawing-trial =
    Versuch { $trial }: { $known ->
        [nothing] kein Abstand
        [by-ruler] gemessen { $middle }, zwischen { $least } und { $most }
        [by-figures] ausgerechnet { $worked-out }
       *[by-both] gemessen { $middle }, zwischen { $least } und { $most }; ausgerechnet { $worked-out }
    }.
