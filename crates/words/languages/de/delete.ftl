delete-ask = Alles auf diesem Computer löschen
delete-question =
    <b>Diese Rakete und alles andere von dieser Seite auf diesem Computer löschen?</b>
    Das lässt sich nicht rückgängig machen. Links, Codes und Dateien, die ihr gemacht habt,
    gehen weiterhin.
delete-now = Jetzt alles löschen
delete-keep = Behalten
