done-name = der Name der Rakete.
done-weighed = was die ganze Rakete wiegt, oder ein Name.
done-another = eine andere Rakete.
done-another-named = eine andere Rakete, { $name }.
done-swung = wie die Rakete geschleudert wird.
done-trial = { $trial-deed ->
    [begun] Versuch { $trial } begonnen.
    [brought-back] Versuch { $trial } zurückgeholt.
    [deleted] Versuch { $trial } gelöscht.
   *[taken-back] Versuch { $trial } zurückgenommen.
}
done-written = { $statement ->
    [claim] die Behauptung.
    [evidence] die Belege.
    [reason] die Begründung.
   *[trust] das Vertrauen.
}
done-order = die Reihenfolge der Versuche.
done-plans = die Pläne.
done-group = der Name der Gruppe.
done-in-hand = welcher Versuch gerade offen ist.
done-settings = die Einstellungen.
done-reading = { $balance-point ->
    [mass] Messwert { $reading } für den Schwerpunkt.
   *[pressure] Messwert { $reading } für den Druckpunkt (von der Seite).
}
done-guess = { $balance-point ->
    [mass] die Schätzung des Schwerpunkts.
   *[pressure] die Schätzung des Druckpunkts (von der Seite).
}
done-how-read = { $balance-point ->
    [mass] wie der Schwerpunkt gemessen wurde.
   *[pressure] wie der Druckpunkt (von der Seite) gemessen wurde.
}
done-lengths = die Längen.
done-choice = die Auswahl.
done-reason = die Begründung.
done-note = die Notiz.
done-compared = womit er verglichen wird.
done-other = etwas daran.
