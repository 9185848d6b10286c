refused-table-too-large =
    Das ist zu groß für die Tabelle eines Heftes ({ $kilobytes } KB). Öffnet eine Tabelle, die diese
    Seite gespeichert hat.
refused-no-table =
    Darin ist keine Tabelle eines Heftes. Öffnet eine Tabelle, die diese Seite gespeichert hat, oder
    fügt sie ganz ein, mit ihrer ersten Zeile.
refused-table-cut =
    Die Tabelle in diesem Text endet zu früh: Die Zeile „{ $line }“ fehlt. Kopiert den ganzen Text
    noch einmal.
refused-two-columns =
    Zwei Spalten heißen „{ $column }“. Nehmt eine davon heraus, oder nennt sie anders.
refused-rows-make-none = { $none-because ->
    [trials]
        Diese Zeilen ergeben kein Heft: In ein Heft passen { $most } Versuche, gelöschte mitgezählt.
        Nehmt Zeilen heraus, oder speichert die Tabelle noch einmal.
    [plans]
        Diese Zeilen ergeben kein Heft: In ein Heft passen { $most } Pläne. Nehmt Zeilen heraus,
        oder speichert die Tabelle noch einmal.
   *[numbers]
        Diese Zeilen ergeben kein Heft: Zwei Versuche haben dieselbe Nummer, oder einer hat keine
        oder eine zu große. Nehmt Zeilen heraus, oder speichert die Tabelle noch einmal.
}

refused-in-row = Zeile { $row }: { $fault }
refused-in-cell = Zeile { $row }, Spalte „{ $column }“: { $fault }
refused-in-entry = In „{ $list }“, Nummer { $place }, „{ $key }“: { $fault }

refused-too-many-cells =
    Da sind mehr Zellen als Spalten. Sucht dort nach einem Komma, einem Semikolon oder einem
    Anführungszeichen zu viel, oder speichert die Tabelle noch einmal.
refused-two-rows = Das ist eine zweite Zeile „{ $row-kind }“. Behaltet eine der beiden.
refused-choice = „{ $found }“ ist hier nicht bekannt. Schreibt eines davon: { $choices }.
refused-not-a-number =
    „{ $found }“ ist keine Zahl. Schreibt zum Beispiel 12.5 oder 12,5. Vielleicht hat eine
    Tabellenkalkulation ein Datum daraus gemacht.
refused-ambiguous =
    „{ $found }“ lässt sich auf zwei Arten lesen. Schreibt es ohne Punkt und Komma, oder mit weniger
    Ziffern dahinter.
refused-count = „{ $found }“ muss eine ganze Zahl von { $least } bis { $most } sein.
refused-too-many-characters =
    Dieser Text hat { $count } Zeichen. Platz ist für { $most }: Kürzt ihn.
refused-not-a-group =
    „{ $found }“ ist keine Gruppe. Schreibt eine Farbe auf Englisch und eine Nummer, zum Beispiel
    blue 4.
refused-other-group =
    „{ $found }“ ist eine andere Gruppe als in den Zeilen davor. Ein Heft gehört einer Gruppe:
    Behaltet die Zeilen von einer.
refused-taken =
    Versuch { $trial } steht zweimal da. Gebt jedem Versuch eine eigene Nummer.
refused-empty = Hier steht nichts, und etwas anderes in der Zeile braucht es. Füllt es aus.
refused-not-a-rocket =
    Darin ist keine Rakete ({ $detail }). Kopiert den Link der Rakete noch einmal hinein.
refused-not-a-text = { $found } ist kein Text. Setzt Anführungszeichen darum.
refused-not-a-seal =
    „{ $found }“ ist kein Siegel. Schreibt wieder hin, was dort stand; mit einer leeren Zelle gilt
    der Versuch als geändert.
refused-not-rules =
    „{ $found }“ ist kein Code für Regeln. Er hat vier Buchstaben oder Ziffern, zum Beispiel K7QX.
refused-not-a-class =
    „{ $found }“ kann keine Klasse bezeichnen: Nehmt Buchstaben, Ziffern und Bindestriche, höchstens
    12, und keine Namen.
refused-not-a-notebook =
    Darin ist kein Heft ({ $detail }). Kopiert den Link des Hefts noch einmal hinein.
refused-misplaced =
    „{ $found }“ gehört nicht in eine Zeile „{ $row-kind }“. Nehmt es heraus, oder setzt es in eine
    andere Zeile.
refused-too-many-swings =
    Das sind mehr Schwünge, als eine Rakete haben kann: { $counted }, die zählen, und { $all }
    insgesamt. Nehmt einige heraus.
