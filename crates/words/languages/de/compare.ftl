compare-no-trial =
    Es gibt noch keinen Versuch. Messt, sagt vorher und schleudert: Dann stehen die Ergebnisse
    hier.
compare-trial = Versuch { $trial }
compare-trial-of = Versuch { $trial }: { $name }
compare-planned = Geplant: { $plan }
compare-note = Sie hat das getan, weil … und was ihr euch sonst merken wollt.
compare-we-thought = Wir dachten
compare-we-saw = Wir sahen
compare-together = Zusammen
compare-nothing-thought = nichts
compare-not-counted = { $outcome } (zählt nicht)
compare-as-predicted = Sie hat getan, was ihr vorhergesagt habt. Stimmte auch eure Begründung?
compare-not-as-predicted =
    Sie hat etwas anderes getan: Jetzt habt ihr etwas herausgefunden. Was könnte der Grund sein?
compare-moment = Drehmomente: Von der Seite drückt die Luft im Druckpunkt, { $distance } ({ $how-known ->
    [measured] gemessen
   *[worked-out] berechnet
}) vom Schwerpunkt entfernt. Druck × dieser Abstand dreht die Rakete: { $goes-back ->
    [tail] Das Heck geht nach hinten, die Nase gegen die Luft.
   *[nose] Die Nase geht nach hinten, das Heck gegen die Luft.
} Die Silhouette steht für Luft genau von der Seite; beim Geradeausflug drückt die Luft an einer anderen Stelle. Mit Wasser darin liegt der Schwerpunkt woanders und wandert.
compare-next = Was wir als Nächstes versuchen
compare-begin-plan = Mit der Rakete oben beginnen<aside>: { $plan }</aside>
compare-remove-plan = Von der Liste nehmen<aside>: { $plan }</aside>
compare-one-change = Eine Änderung zum Ausprobieren
compare-plan-example = größere Flossen
compare-add-plan = Hinzufügen
compare-write-first = Schreibt erst, was ihr ausprobieren wollt.
compare-trials = Die Versuche
compare-trials-of = Die Versuche von { $group }
compare-head-trial = Versuch
compare-head-changed = Was sich änderte
compare-head-nearer = Näher an der Nase
compare-head-separation = Abstand
compare-head-widths = Rumpfbreiten
compare-head-mass = Masse
compare-head-predicted = Wir sagten vorher
compare-head-do = Tun
compare-in-hand = (gerade offen)
compare-later = später:
compare-nothing-yet = noch nichts
compare-swung-first = vor der Vorhersage geschleudert
compare-altered = von Hand geändert, außerhalb der Seite
compare-seen = { $outcome } <aside>({ $seen } von { $swings })</aside>
compare-swings = { $swings ->
    [one] ({ $swings } Schwung)
   *[other] ({ $swings } Schwünge)
}
compare-taken-back = zurückgenommen: { $outcomes }
compare-open = Öffnen<aside>: Versuch { $trial }</aside>
compare-copy = Kopieren<aside>: Versuch { $trial }</aside>
compare-pair = Nebeneinander<aside>, Versuch { $trial }</aside>
compare-delete = Löschen<aside>: Versuch { $trial }</aside>
compare-move-up = Versuch { $trial } nach oben
compare-move-down = Versuch { $trial } nach unten
compare-baseline = Ausgangsversuch
compare-nothing-changed = nichts
compare-changes = { $count ->
    [2] zwei Änderungen
    [3] drei Änderungen
    [4] vier Änderungen
    [one] eine Änderung
   *[other] { $count } Änderungen
}
compare-changes-allowed = { $count ->
    [2] zwei Änderungen (erlaubt)
    [3] drei Änderungen (erlaubt)
    [4] vier Änderungen (erlaubt)
    [one] eine Änderung (erlaubt)
   *[other] { $count } Änderungen (erlaubt)
}
compare-since = seit Versuch { $trial }
compare-too-close = zu dicht beieinander
compare-mass = Schwerpunkt
compare-pressure = Druckpunkt
compare-one-place = beide an einer Stelle
compare-measured = { $separation } gemessen
compare-worked-out = { $separation } berechnet
compare-notebook-altered =
    Versuche wurden von Hand aus diesem Heft genommen oder hineingesetzt, außerhalb der Seite.
    Ein Zeichen wie dieses zeigt eine Änderung von Hand. Es kann nicht zeigen, dass jemand zu
    einer früheren Datei zurückgekehrt ist.
compare-deleted = Gelöscht:
compare-deleted-trial = Versuch { $trial }
compare-bring-back = Versuch { $trial } zurückholen
compare-is-deleted = Versuch { $trial } ist gelöscht. Unten lässt er sich zurückholen.
compare-is-back = Versuch { $trial } ist wieder da und gerade offen.
compare-is-back-closed = Versuch { $trial } ist wieder da. Öffnet ihn, um weiterzumachen.
compare-is-first = Versuch { $trial } ist schon der erste.
compare-is-last = Versuch { $trial } ist schon der letzte.
charts-swings = Abstand und was wir sahen
charts-swings-hint =
    Jeder Punkt ist ein Schwung. Sucht einen aus: Was sagt er? Seht jetzt alle an: Gibt es ein
    Muster? Ein bis zwei Rumpfbreiten sind eine Gewohnheit, keine Erlaubnis.
charts-as-table = Dasselbe als Tabelle
charts-swings-table = Abstand und Schwünge
charts-how = Wie
charts-swing = Schwung { $number }
charts-is-measured = gemessen
charts-is-worked-out = berechnet
charts-series = Abstand über die Versuche
charts-series-table = Abstand in jedem Versuch
charts-head-measured = Gemessen
charts-head-from = Von
charts-head-to = Bis
charts-head-worked-out = Berechnet
charts-no-pair = Eine der beiden Raketen kann nicht gezeichnet werden.
charts-pair = Versuch { $left } und Versuch { $right } nebeneinander
charts-pair-neither = Beide wie berechnet.
charts-pair-one = Beide wie berechnet; Versuch { $trial } gemessen: { $separation }.
charts-pair-both =
    Beide wie berechnet; Versuch { $left } gemessen: { $left-separation }; Versuch { $right }
    gemessen: { $right-separation }.
