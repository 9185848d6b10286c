columns-kind = Art der Zeile
columns-group = Gruppe
columns-trial = Versuch
columns-compared-with = Verglichen mit Versuch
columns-plan = Plan
columns-rocket = Rakete
columns-rocket-name = Name der Rakete
columns-rocket-length = Länge der Rakete (mm)
columns-cutout-length = Länge der Silhouette (mm)

columns-from = { $balance-point ->
    [mass] Schwerpunkt: gemessen von
   *[pressure] Druckpunkt: gemessen von
}
columns-guess = { $balance-point ->
    [mass] Schwerpunkt: Schätzung (mm)
   *[pressure] Druckpunkt: Schätzung (mm)
}
columns-reading = { $balance-point ->
    [mass] Schwerpunkt: Messwert { $number } (mm)
   *[pressure] Druckpunkt: Messwert { $number } (mm)
}
columns-left-out = { $balance-point ->
    [mass] Schwerpunkt: weggelassener Messwert
   *[pressure] Druckpunkt: weggelassener Messwert
}
columns-left-out-reason = { $balance-point ->
    [mass] Schwerpunkt: warum weggelassen
   *[pressure] Druckpunkt: warum weggelassen
}
columns-middle = { $balance-point ->
    [mass] Schwerpunkt: mittlerer Wert von der Nase (mm)
   *[pressure] Druckpunkt: mittlerer Wert von der Nase (mm)
}
columns-range = { $balance-point ->
    [mass] Schwerpunkt: Spannweite (mm)
   *[pressure] Druckpunkt: Spannweite (mm)
}
columns-measured-separation = Gemessener Abstand (mm)
columns-computed-separation = Berechneter Abstand (mm)

columns-prediction = Vorhersage { $number }
columns-because = Vorhersage { $number }: weil
columns-swings-seen = Vorhersage { $number }: vorher gesehene Schwünge
columns-draft = Noch nicht festgelegt
columns-draft-because = Noch nicht festgelegt: weil
columns-string = Schnur (m)
columns-arm = Arm (m)
columns-turns = Umdrehungen je Sekunde
columns-air-density = Dichte der Luft (g/m³)
columns-swing = Schwung { $number }
columns-all-swings = Alle Schwünge zusammen
columns-taken-back = Zurückgenommen { $number }
columns-note = Notiz

columns-seal = Siegel
columns-altered = Von Hand geändert
columns-place = Platz im Heft
columns-version = Fassung der Tabelle
columns-level = Stufe
columns-help = Hilfe beim Schlussteil
columns-two-changes = Zwei Änderungen auf einmal
columns-in-hand = Versuch in Arbeit
columns-telling = Was wann gesagt wird
columns-set-up = Vorgaben der Stunde
