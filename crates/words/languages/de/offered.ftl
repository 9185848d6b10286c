offered-too-close = Die beiden Punkte lagen zu dicht beieinander, um es zu sagen.
offered-worked-out = Der berechnete Abstand { $became ->
    [grew] wuchs von { $from } auf { $to }
    [shrank] schrumpfte von { $from } auf { $to }
   *[went] ging von { $from } auf { $to }
}.
offered-worked-out-stayed = Der berechnete Abstand blieb bei { $to }.
offered-swing-stayed = Beim Schleudern blieb es bei „{ $outcome }“.
offered-swing-went = Beim Schleudern wurde aus „{ $before }“ nun „{ $after }“.

offered-trial = Versuch { $trial }: { $found }.
offered-trial-same = Versuch { $trial } (wie Versuch { $other }): { $found }.
offered-trial-change = Versuch { $trial } ({ $change }): { $found }.
offered-trial-changes = { $count ->
    [one] Versuch { $trial } ({ $count } Änderung): { $found }.
   *[other] Versuch { $trial } ({ $count } Änderungen): { $found }.
}
offered-separation = { $how-known ->
    [measured] gemessener Abstand { $separation }
   *[worked-out] berechneter Abstand { $separation }
}
offered-nearer = { $how-known ->
    [measured] { $balance-point ->
        [mass] Schwerpunkt näher an der Nase
       *[pressure] Druckpunkt (von der Seite) näher an der Nase
    }
   *[worked-out] { $balance-point ->
        [mass] berechnet: Schwerpunkt näher an der Nase
       *[pressure] berechnet: Druckpunkt (von der Seite) näher an der Nase
    }
}
offered-neither-nearer = { $how-known ->
    [measured] Punkte zu dicht beieinander
   *[worked-out] berechnet: Punkte zu dicht beieinander
}
offered-seen = { $swings ->
    [one] { $outcome } bei { $seen } von { $swings } Schwung
   *[other] { $outcome } bei { $seen } von { $swings } Schwüngen
}
offered-mixed = { $swings ->
    [one] verschiedene Ergebnisse bei { $swings } Schwung
   *[other] verschiedene Ergebnisse bei { $swings } Schwüngen
}
offered-swings = Schwünge: { $seen }.
offered-predicted = { $came-true ->
    [yes] Wir hatten „{ $outcome }“ vorhergesagt, und so kam es.
    [no] Wir hatten „{ $outcome }“ vorhergesagt, und so kam es nicht.
   *[open] Wir hatten „{ $outcome }“ vorhergesagt.
}

offered-behind = In Versuch { $trial } drückte die Luft hinter dem Schwerpunkt; deshalb hat die Nase …
offered-ahead = In Versuch { $trial } drückte die Luft vor dem Schwerpunkt; deshalb hat die Nase …
offered-close =
    In Versuch { $trial } lagen die beiden Punkte dicht beieinander; deshalb hat die Luft …
offered-although = In Versuch { $trial } war das Ergebnis „{ $outcome }“. { $balance-point ->
    [mass] Der Schwerpunkt lag näher an der Nase, und …
   *[pressure] Der Druckpunkt (von der Seite) lag näher an der Nase, und …
}
offered-sideways = Wenn sich die Rakete quer stellt, drückt die Luft auf …
offered-longer = Ein größerer Abstand der beiden Punkte bedeutet, dass die Luft …

offered-one-reading = { $balance-point ->
    [mass] In Versuch { $trial } zählt ein Messwert für den Schwerpunkt.
   *[pressure] In Versuch { $trial } zählt ein Messwert für den Druckpunkt (von der Seite).
}
offered-within = Unsere { $how-many ->
    [two] zwei Messwerte
   *[three] drei Messwerte
} { $balance-point ->
    [mass] für den Schwerpunkt
   *[pressure] für den Druckpunkt (von der Seite)
} in Versuch { $trial } liegen höchstens { $range } auseinander.
offered-left-out = In Versuch { $trial } haben wir den Messwert { $reading } ohne Begründung weggelassen.
offered-left-out-because = In Versuch { $trial } haben wir den Messwert { $reading } weggelassen: { $reason }.
offered-overlap =
    In Versuch { $trial } überlappen sich die beiden Spannweiten: zu knapp, um es zu sagen.
offered-not-measured = Der Abstand in Versuch { $trial } ist berechnet, nicht gemessen.
offered-alike =
    Die Abstände in den Versuchen { $before } und { $after } lassen sich nicht unterscheiden.
offered-changes = { $count ->
    [2] In Versuch { $trial } haben sich zwei Sachen geändert: { $changes }.
    [3] In Versuch { $trial } haben sich drei Sachen geändert: { $changes }.
    [4] In Versuch { $trial } haben sich vier Sachen geändert: { $changes }.
    [5] In Versuch { $trial } haben sich fünf Sachen geändert: { $changes }.
    [one] In Versuch { $trial } hat sich eine Sache geändert: { $changes }.
   *[other] In Versuch { $trial } haben sich { $count } Sachen geändert: { $changes }.
}
offered-few-swings = { $swings ->
    [0] In Versuch { $trial } wurde nicht geschleudert, oder kein Schwung zählt.
    [one] In Versuch { $trial } zählt nur ein Schwung.
   *[other] In Versuch { $trial } zählen nur zwei Schwünge.
}
offered-disagree = Die Schwünge von Versuch { $trial } waren verschieden.
offered-not-predicted = Für Versuch { $trial } haben wir nichts vorhergesagt.
offered-predicted-late = In Versuch { $trial } haben wir erst nach dem Schleudern vorhergesagt.
offered-altered = Versuch { $trial } wurde außerhalb des Hefts geändert.

asked-happened = Was ist dann passiert?
asked-numbers = Welche Zahlen der Versuche { $before } und { $after } zeigen es?
asked-why = Warum war das Ergebnis von Versuch { $trial } „{ $outcome }“? Wo drückte die Luft?
asked-overlap =
    In Versuch { $trial } überlappen sich die beiden Spannweiten. Was könnt ihr trotzdem sagen, und was nicht?
asked-differ = { $balance-point ->
    [mass] Eure Messwerte für den Schwerpunkt in Versuch { $trial } liegen { $range } auseinander. Was ändert das?
   *[pressure] Eure Messwerte für den Druckpunkt (von der Seite) in Versuch { $trial } liegen { $range } auseinander. Was ändert das?
}
asked-always = { $statement ->
    [claim] Was habt ihr geändert, und was ist dann passiert?
    [evidence] Welche Zahlen und welche Schwünge zeigen es?
    [reason] Warum ist es passiert? Wo drückte die Luft?
   *[trust] Wie sicher seid ihr? Messt jeden Punkt dreimal, um es herauszufinden.
}
