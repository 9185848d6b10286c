teacher-lesson = Die Stunde, Minute für Minute
teacher-idea = Die Idee: zwei Punkte
teacher-wrong = Zehn verbreitete falsche Vorstellungen
teacher-answers = Lösungen
teacher-demonstration = Zum Vorführen
teacher-hazards = Gefahren, für eure eigene Gefährdungsbeurteilung
teacher-evidence = Belege für den Lehrplan
teacher-may-change = Geändert werden darf: { $things }.
teacher-limits = Schnur: höchstens { $string }. Tempo: höchstens { $turns }.
teacher-added = Zusätzliches Gewicht: höchstens { $mass }.
teacher-changes =
    { $at-once ->
        [one] Eine Änderung auf einmal.
       *[two] Zwei Änderungen auf einmal sind erlaubt.
    }
teacher-answers-for = Für alle, die anleiten, nicht für die Klasse: Hier steht, was die Kinder herausfinden sollen.
teacher-questions = Was bei jeder Frage herauskommt, zuerst bei der dieser Stunde
teacher-goes =
    { $mass-goes ->
        [nose] zur Nase
        [tail] zum Heck
       *[stays] bleibt
    }
teacher-becomes =
    { $separation-is ->
        [more] größer
        [less] kleiner
       *[stays] gleich
    }
teacher-own = das findet die Klasse heraus
teacher-rocket = Die Rakete, mit der jede Gruppe beginnt
teacher-air = Was die Luft tut
teacher-worked-out = Aus der Beschreibung ausgerechnet. Was eine Gruppe misst, kann um einige Millimeter abweichen, und das zählt.
teacher-no-rocket = Diese Vorgaben beginnen mit keiner Rakete: Die beiden Punkte jeder Gruppe sind die Lösung.
teacher-read = Wie man Ergebnisse liest
teacher-read-sign = Abstand ist Druckpunkt weniger Schwerpunkt, beide ab der Nasenspitze. Unter null liegt der Druckpunkt näher an der Nase.
teacher-read-rule = Eine Faustregel, ohne Quelle: Üblich sind ein bis zwei Rumpfbreiten Abstand. Bei einer handlangen Flaschenrakete gehen weniger als { $apart } oft mit Überschlag oder Seitwärtsflug einher.
teacher-read-turning = Der Wendepunkt ist der Abstand, bei dem die Hälfte der Raketen der Klasse mit der Nase voran fliegt. Nahe daran tun sie das eine oder das andere: Schleudert diese noch einmal. Er zählt mehr als die Faustregel.
teacher-read-overlap = Wo sich die Messwerte beider Punkte überschneiden, ist es zu knapp, um es zu sagen.
teacher-read-string = Das Kreisen zieht eine lange Rakete in ihre Bahn: Auch eine Rakete ohne Abstand kann gelenkt aussehen.
teacher-read-predicted = Eine Vorhersage braucht einen Grund und muss nicht eintreffen. Hinterher berichtigt sie niemand.
teacher-read-full = Ein voller Schluss nennt beide Punkte, die Zahlen zweier Versuche, und wohin die Luft die Rakete gedreht hat.
teacher-read-cover = Die Vertretungsstunde: In ihrer erfundenen Tabelle fliegt die Hälfte der Raketen ab etwa { $apart } mit der Nase voran.
teacher-show-lead = Bevor irgendjemand vorhersagt: zwei Raketen, die sich in einer Sache unterscheiden, von euch geschleudert. Fünf Minuten.
teacher-show-before = Vorher
teacher-show-alike = Baut zwei gleiche Raketen. Drückt Knete in die Nase von nur einer.
teacher-show-try = Probiert beide ohne die Klasse, mit der Vorsicht, die unten steht. Eine sollte mit der Nase voran fliegen, die andere nicht. Tun es beide, so schneidet von jeder Flosse der Rakete ohne Knete die halbe Länge ab.
teacher-show-class = Mit der Klasse
teacher-show-look = Haltet beide hoch. „Was ist verschieden?“ Nur die Knete.
teacher-show-guess = Alle zeigen mit der Hand, was jede tun wird. Sagt nichts dazu.
teacher-show-swing = Schleudert jede dreimal.
teacher-show-ask = „Was habt ihr gesehen? Warum?“ Schreibt jeden Grund an, und beurteilt keinen.
teacher-show-holds = Ausgerechnet für { $string } Schnur, { $turns } und eine Rakete von { $length }: unsere eigene Rechnung, und niemandes Regel. Bei mehr als 1,5 m Schnur oder 200 g fragt zuerst, wer an eurer Schule dafür einsteht.
teacher-show-two = Zwei Änderungen auf einmal (zwei Minuten, nichts wird geschleudert)
teacher-show-which = „Mehr Knete, und größere Flossen: Jetzt fliegt sie mit der Nase voran. Was von beiden war es?“ Das kann niemand wissen. Darum ändert jede Gruppe eine Sache.
teacher-show-still = Ohne Halle (nichts wird geschleudert)
teacher-show-hang = Hängt eine Rakete waagerecht auf, niedrig über einem Tisch, und balanciert ihre Pappsilhouette auf einem Lineal. Haltet beide nebeneinander: Welcher der beiden Punkte liegt näher an der Nase? Drückt Knete in die Nase und hängt sie noch einmal auf: Welcher Punkt ist gewandert?
teacher-cover-for = Für die Vertretung: Das braucht keinen Bildschirm, keine Rakete und keine Physik. Kopiert diese Seite, eine für zwei Kinder. Nötig sind Bleistifte, Lineale, kariertes Papier; für die Zusatzaufgabe Pappe, Scheren und Klebeband.
teacher-cover-never = Heute wird nichts geschleudert und nichts gestartet.
teacher-cover-start = Lest zum Anfang die nächsten Zeilen vor; alle decken die letzte Spalte mit Papier ab und beginnen mit Aufgabe 1.
