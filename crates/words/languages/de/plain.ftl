plain-notebook = Heft der Gruppe { $group }
plain-level = Stufe: { $level }.
plain-help = Hilfe beim Schlussteil: { $help }.
plain-two-changes = Zwei Änderungen auf einmal: { $allowed ->
    [allowed] erlaubt
   *[not-allowed] nicht erlaubt
}.
plain-telling = Was wann gesagt wird: { $telling }.
plain-altered =
    Von Hand wurden Versuche herausgenommen oder hineingesetzt, außerhalb der Seite.
plain-in-hand = In Arbeit: Versuch { $trial }.

plain-trial = Versuch { $trial }: { $name }
plain-deleted = Versuch { $trial } (gelöscht): { $name }
plain-compared = Verglichen mit Versuch { $trial }.
plain-compared-with-none = Mit keinem anderen Versuch verglichen.
plain-plan = Plan: { $plan }
plain-note = Notiz: { $note }
plain-trial-altered =
    Etwas in diesem Versuch wurde von Hand geändert, außerhalb der Seite.

plain-not-predicted = Vorhergesagt: noch nichts.
plain-predicted = Vorhergesagt { $count ->
    [0] vor jedem Schwung
    [one] nach { $count } Schwung
   *[other] nach { $count } Schwüngen
}: { $outcome }.
plain-later = Später, { $count ->
    [0] vor jedem Schwung
    [one] nach { $count } Schwung
   *[other] nach { $count } Schwüngen
}: { $outcome }.
plain-draft = Geschrieben und nicht festgelegt: { $outcome }.
plain-draft-empty = Geschrieben und nicht festgelegt: kein Ergebnis.
plain-because = Weil: { $because }

plain-rocket-length = Länge der Rakete: { $mm } mm.
plain-cutout-length = Länge der Silhouette: { $mm } mm.
plain-guess = { $balance-point ->
    [mass] Schätzung für den Schwerpunkt: { $mm } mm von der Nase.
   *[pressure] Schätzung für den Druckpunkt (von der Seite): { $mm } mm von der Nase.
}
plain-readings = { $balance-point ->
    [mass] Messwerte für den Schwerpunkt
   *[pressure] Messwerte für den Druckpunkt (von der Seite)
}, { $from-end ->
    [nose] von der Nase aus
   *[tail] vom Heck aus
}: { $readings }.
plain-reading = { $mm } mm
plain-no-reading = keiner
plain-left-out = Messwert { $number } ist weggelassen.
plain-not-true =
    Messwert { $number } zählt nicht: Er kann für diese Rakete nicht stimmen.
plain-middle = Mittlerer Wert: { $mm } mm von der Nase, Spannweite { $range } mm.
plain-measured-separation = Gemessener Abstand: { $mm } mm.
plain-measured-overlap =
    Gemessener Abstand: { $mm } mm; die Messwerte der beiden Punkte überlappen sich.
plain-computed-separation = Berechneter Abstand: { $mm } mm.

plain-taken-back = Zurückgenommen, weil es ein Versehen war: { $outcomes }.
plain-not-swung = Schwünge: noch keine.
plain-swings = Schwünge, { $counted } von { $wanted }: { $outcomes }.
plain-together = Alle zusammen: { $outcome }.
plain-swung =
    Geschleudert an { $string } m Schnur mit { $arm } m Arm, { $turns } Umdrehungen je Sekunde, in
    Luft von { $density } kg/m³.

plain-plans = Pläne
plain-conclusion = Schlussteil
plain-statement = { $statement }: { $said }
plain-no-statement = { $statement }: noch nichts.
plain-table-follows = Behaltet, was folgt: Damit öffnet diese Seite das Heft wieder.
