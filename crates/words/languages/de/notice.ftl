notice-parts =
    { $have } von { $all-parts } Teilen sind da. Es fehlen noch: { $missing }. Öffnet sie
    genauso, in beliebiger Reihenfolge.

notice-link-cut =
    <b>Dieser Link wurde abgeschnitten.</b> Sein Ende fehlt. Prüft jede Zahl, oder bittet noch
    einmal um den Link.
notice-link-cut-before =
    <b>Dieser Link wurde abgeschnitten.</b> Es fehlen: { $missing }. Prüft jede Zahl, oder
    bittet noch einmal um den Link.
notice-missing-sections = { $count ->
    [one] { $count } Teil des Rumpfs
   *[other] { $count } Teile des Rumpfs
}
notice-missing-fins = { $count ->
    [one] { $count } Satz Flossen
   *[other] { $count } Sätze Flossen
}
notice-missing-weights = { $count ->
    [one] { $count } Gewicht
   *[other] { $count } Gewichte
}
notice-missing-swings = die Schleuderversuche

notice-link-damaged =
    <b>Der Link konnte nicht geöffnet werden.</b> { $why } Was ihr seht, ist nicht aus dem
    Link.
notice-file-fault = <b>Das konnte nicht geöffnet werden.</b> { $why }
notice-kept-this =
    Diese Rakete ist jetzt auf diesem Computer gespeichert. War vorher eine andere
    gespeichert, bringt Rückgängig sie zurück.
notice-keeps-nothing =
    <b>Dieser Browser speichert nichts.</b> Eure Rakete und euer Heft sind weg, wenn diese
    Seite geschlossen wird. Kopiert den Link oder speichert eine Datei.
notice-not-kept =
    <b>Die letzten Änderungen sind nicht gespeichert.</b> Der Browser hat es abgelehnt,
    vielleicht weil sein Platz für diese Seite voll ist. Was vorher gespeichert war, ist noch
    da, und die Seite versucht es von selbst noch einmal. Bis diese Meldung verschwindet,
    kopiert den Link oder speichert eine Datei.
notice-save = Speichern
notice-deleted =
    <b>Alles von dieser Seite wurde auf diesem Computer gelöscht.</b> Wir haben nachgesehen:
    Nichts ist übrig. Dateien, die ihr gespeichert habt, und den Verlauf des Browsers kann
    diese Seite nicht löschen. Was ihr ab jetzt eingebt, wird wieder gespeichert.
notice-left = { $left ->
    [one] <b>Nicht alles konnte gelöscht werden: { $left } Eintrag ist übrig.</b> Löscht die Daten dieser Seite in den Einstellungen des Browsers.
   *[other] <b>Nicht alles konnte gelöscht werden: { $left } Einträge sind übrig.</b> Löscht die Daten dieser Seite in den Einstellungen des Browsers.
}
notice-opened = Geöffnet. Rückgängig bringt die letzte Rakete zurück.
notice-started = { $name } ist da. Rückgängig bringt die letzte Rakete zurück.
notice-copied = { $link-holds ->
    [rocket] Link kopiert. Er enthält die Rakete
   *[notebook-too] Link kopiert. Er enthält die Rakete und das Heft
}; { $link-opens ->
    [anywhere] fügt ihn ein, wo ihr wollt.
   *[in-the-page] fügt ihn an einem anderen Computer dort ein, wo man einen Link öffnet.
}
notice-copy-by-hand = Kopieren ist hier gesperrt. Markiert das und drückt Strg und C:
notice-saved =
    Gespeichert als <b>{ $name }</b>, wenn dieser Browser Downloads erlaubt. Erscheint keine
    Datei, kopiert stattdessen den Link.
notice-close = <aside>Meldung </aside>schließen

notice-other =
    Eine andere Rakete, <b>{ $name }</b>, ist auf diesem Computer gespeichert, von früher oder
    aus einem anderen Tab. Änderungen an dieser hier werden nicht gespeichert: Sie stehen in
    der Adresszeile.
notice-other-unnamed =
    Eine andere Rakete, <b>ohne Namen</b>, ist auf diesem Computer gespeichert, von früher
    oder aus einem anderen Tab. Änderungen an dieser hier werden nicht gespeichert: Sie stehen
    in der Adresszeile.
notice-show-kept = Die gespeicherte zeigen
notice-unreadable =
    <b>Was auf diesem Computer gespeichert ist, kann hier nicht gelesen werden.</b> Vielleicht
    ist es von einer neueren Fassung dieser Seite; es bleibt, wie es ist. Änderungen an dieser
    Rakete werden nicht gespeichert: Sie stehen in der Adresszeile.
notice-save-kept = Das Gespeicherte als Datei speichern
notice-emptied =
    Alles, was auf diesem Computer gespeichert war, wurde in einem anderen Tab gelöscht.
    Änderungen hier werden nicht gespeichert: Sie stehen in der Adresszeile.
notice-keep-rocket = Diese Rakete speichern
notice-keep-instead = Stattdessen diese speichern

notice-keeping-nothing =
    <b>Dieser Browser speichert nichts.</b> Der Link in der Adresszeile enthält die ganze
    Rakete: Kopiert ihn, bevor ihr die Seite schließt.
notice-keeping-refused =
    <b>Eure letzten Änderungen sind nicht gespeichert: Der Browser hat es abgelehnt.</b> Die
    Seite versucht es bei eurer nächsten Änderung noch einmal. Der Link in der Adresszeile
    enthält die ganze Rakete: Kopiert ihn, bevor ihr die Seite schließt.
notice-keeping =
    Wird in diesem Browser gespeichert, während ihr tippt, bis ihr euch abmeldet oder seine
    Daten gelöscht werden. Um sicherzugehen, kopiert den Link oder speichert eine Datei.
    Nichts wird irgendwohin geschickt.
notice-keeping-other =
    Diese Rakete ist nicht auf diesem Computer gespeichert. Sie steht in der Adresszeile.

notice-lost =
    <b>Was ihr zuletzt geschrieben habt, ist nicht auf diesem Computer gespeichert.</b> Der
    Browser lehnt es ab. Speichert das Heft als Datei, bevor ihr die Seite schließt; öffnet
    die Datei später hier.
notice-lost-before = Macht dasselbe mit jedem Heft, das ihr vorher offen hattet.
notice-save-notebook = Das Heft als Datei speichern
