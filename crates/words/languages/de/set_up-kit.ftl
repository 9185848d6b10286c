kit-title =
    { $groups ->
        [one] Material für { $groups } Gruppe, Kinder: { $pupils }
       *[other] Material für { $groups } Gruppen, Kinder: { $pupils }
    }
kit-thing = Was
kit-count = Wie viele
kit-spares = Ersatz
kit-swap = Stattdessen
kit-bottle = Getränkeflasche aus Plastik, leer und trocken
kit-bottle-swap = ein Rohr aus gerollter Pappe
kit-card = Bogen feste Pappe, A4 oder Letter
kit-card-swap = Müslischachteln
kit-tape = Rolle Klebeband
kit-tape-swap = eine Rolle für zwei Gruppen
kit-clay = 50 g Knete
kit-clay-swap = Münzen in Klebeband
kit-string = 3 m feste Schnur
kit-string-swap = Maurerschnur
kit-ruler = Lineal, 30 cm
kit-ruler-swap = ein gedrucktes Papierlineal, mit einem echten verglichen
kit-scissors = Schere
kit-scissors-swap = vorher geschnittene Teile
kit-computer = Computer oder Tablet
kit-computer-swap = die Stunde auf Papier, später eingetippt
kit-scales = Küchenwaage, auf 1 g genau
kit-scales-swap = die Massen, die die Seite ausrechnet
kit-hole-punch = Locher
kit-hole-punch-swap = ein Bleistift, und Knete unter der Pappe
kit-markers = Zeichen für den Rand des Platzes
kit-markers-swap = Schultaschen, oder Kreide
kit-eye-protection = Schutzbrille, für den, der schleudert
kit-eye-protection-swap = nichts: Ohne sie schleudert niemand
kit-stopwatch = Stoppuhr
kit-stopwatch-swap = eine Uhr mit Sekundenzeiger
plan-label = Zeit
plan-hour = eine Stunde von 60 Minuten
plan-two-hours = zwei Stunden von 60 Minuten
plan-half-day = ein halber Tag (3 Stunden)
plan-from = Ab
plan-minutes = Minuten
plan-step = Was geschieht
plan-lesson = Stunde { $lesson }
plan-all = Zusammen
plan-hook = Wer leitet, schleudert zwei Raketen, eine ruhige und eine andere. Alle raten, warum.
plan-open = Die Gruppen öffnen den Link und lesen die Frage.
plan-build = Die Gruppen bauen ihre Rakete und beschreiben sie auf der Seite.
plan-measure = Die Gruppen finden beide Punkte, jeden dreimal abgelesen.
plan-predict = Die Gruppen sagen voraus, was sie tun wird, und legen das fest.
plan-swing = Eine Gruppe nach der anderen schleudert dreimal; die anderen sehen von außerhalb des Platzes zu.
plan-break = Pause.
plan-change = Die Gruppen ändern eine Sache, messen, sagen voraus und schleudern noch einmal.
plan-compare = Die Klasse vergleicht: was geändert wurde und was es bewirkt hat.
plan-conclude = Die Gruppen ziehen ihren Schluss und geben ab.
plan-each =
    { $minutes ->
        [one] Es schleudert eine Gruppe auf einmal: Das ist beim ersten Mal { $minutes } Minute für jede.
       *[other] Es schleudert eine Gruppe auf einmal: Das sind beim ersten Mal { $minutes } Minuten für jede.
    }
plan-short = Bei so vielen Gruppen ist das knapp: Lasst die Hälfte in einer anderen Stunde schleudern, oder richtet einen zweiten Platz mit einer zweiten erwachsenen Person ein.
