notebook-holds = { $count ->
    [0] keine Versuche
    [one] 1 Versuch
   *[other] { $count } Versuche
}
notebook-holds-of = { $count ->
    [0] keine Versuche, { $name }
    [one] 1 Versuch, { $name }
   *[other] { $count } Versuche, { $name }
}
notebook-is-open = Dies ist das Heft von { $group }: { $holds }.
notebook-twin = Noch ein Heft hier heißt { $group }: Gebt einem davon einen anderen Namen.
notebook-taken = Noch ein Heft hier heißt { $group }. Ist es eures?
notebook-two-tabs =
    Ein anderer Tab hat auch in dieses Heft geschrieben. Eures liegt daneben, als eigenes Heft.
notebook-unreadable =
    Was dort gespeichert ist, ist kein Heft, das diese Fassung der Seite lesen kann. Es bleibt,
    wie es ist.
notebook-is-deleted = Das Heft von { $group } ist von diesem Computer gelöscht.
notebook-open-already = Dieses Heft ist schon offen.
notebook-is-here = Das Heft von { $group } ist da.
notebook-of-several = Nummer { $number } von { $count }: { $sentence }
notebook-not-opened =
    Nicht geöffnet: { $names }. Die Seite zeigt eine Rakete: Öffnet jede einzeln.
notebook-nameless = eine Rakete ohne Namen
notebook-reading-fault = Messwert { $number }: { $fault } Bis dahin zählt er nicht.
notebook-guess-fault = Eure Schätzung: { $fault }
notebook-rocket-fault = Länge der Rakete: { $fault }
notebook-cutout-fault = Länge der Silhouette: { $fault }
