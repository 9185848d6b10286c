hand-in-nothing = Noch ist nichts geschrieben: Hinaus geht die Rakete.
hand-in-notebook-of = Das Heft von { $group }, mit der Rakete
hand-in-save = Das Heft als Datei speichern
hand-in-copy-link = Einen Link auf alles kopieren
hand-in-print = Das Heft drucken
hand-in-what-is-in-it =
    Datei und Link öffnet ihr wieder unter „einen Link, Code oder eine Datei“. Darin stehen
    Farbe und Nummer der Gruppe und was ihr geschrieben habt.
hand-in-tables = Für eine Tabellenkalkulation oder als einfacher Text
hand-in-table-point = Tabelle als Datei, 12.5 mit Punkt
hand-in-table-comma = Tabelle als Datei, 12,5 mit Komma
hand-in-copy-table-point = Tabelle kopieren, mit Punkten
hand-in-copy-table-comma = Tabelle kopieren, mit Kommas
hand-in-plain-text = Einfacher Text
hand-in-show-symbols = QR-Codes und das ganze Heft als Codes zum Abtippen
hand-in-hide-symbols = Die QR-Codes ausblenden
hand-in-result =
    Das Ergebnis von Versuch { $trial } als kurzer Code: Zahlen und der Name der Gruppe, keine
    Wörter
hand-in-code-of = Der Code von Versuch { $trial }
hand-in-copy-code = Diesen Code kopieren
hand-in-too-large = Dieses Heft ist zu groß für QR-Codes. Speichert es als Datei.
hand-in-read-all =
    Lest alle mit einem Telefon, in beliebiger Reihenfolge, und fügt die Texte unter „einen
    Link, Code oder eine Datei“ ein; oder tippt sie. Die Seite sagt, welche fehlen.
hand-in-part-of = Teil { $number } von { $count }
hand-in-part = Teil { $number }
result-measured =
    Dies ist das Ergebnis von { $group }, Versuch { $trial }: Schwerpunkt { $mass }, Druckpunkt
    { $pressure }, Abstand { $separation } (gemessen).
result-worked-out =
    Dies ist das Ergebnis von { $group }, Versuch { $trial }: Abstand { $separation }
    (berechnet).
result-of = Dies ist das Ergebnis von { $group }, Versuch { $trial }:
result-predicted = Vorhergesagt: { $outcome }.
result-seen = Gesehen: { $outcomes }.
result-not-swung = Nicht geschleudert.
result-altered = Etwas darin wurde von Hand geändert, außerhalb der Seite.
hand-in-saved =
    Gespeichert als { $name }, falls dieser Computer das Herunterladen erlaubt. Seht unter
    „Downloads“ nach.
hand-in-no-link =
    Dieses Heft passt nicht in einen Link. Der Link enthält nur die Rakete: Speichert das Heft
    als Datei.
share-title = Nur die Rakete
share-print = Die Rakete drucken
share-save = Die Rakete als Datei speichern
share-code-title = Ein Code zum Aufschreiben und zum Eintippen, wo ein Link geöffnet wird
share-code = Der Code
share-code-hint =
    Große oder kleine Buchstaben, mit oder ohne Leerzeichen: alles gleich; lasst die
    Zeilennummern weg. Das letzte Zeichen jeder Zeile findet Tippfehler.
share-point-at-link = Oder haltet ein Telefon oder Tablet darauf
share-point-at-code = Oder lest den Code mit einem Telefon
share-link = Der Link
share-open-again =
    <b>So öffnet ihr diese Rakete wieder:</b> Haltet ein Telefon auf den QR-Code, oder öffnet
    Noseward und tippt diesen Code unter „einen Link, Code oder eine Datei“ ein.
share-open-again-typed =
    <b>So öffnet ihr diese Rakete wieder:</b> Öffnet Noseward und tippt diesen Code unter „einen
    Link, Code oder eine Datei“ ein.
share-no-permission = Ein guter Abstand ist keine Erlaubnis zum Schleudern oder Starten.
