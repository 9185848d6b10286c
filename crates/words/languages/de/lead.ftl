lead-lesson-of = Die Stunde von { $group }
lead-detail = Ausführlichkeit
lead-help = Hilfe beim Schlussteil
lead-telling = Was wann gesagt wird
lead-allow-two = Zwei Änderungen auf einmal erlauben
lead-loses-nothing =
    Wer das ändert, verliert nichts. Die Altersangaben sind Anhaltspunkte; gemessen wird auf
    jeder Stufe gleich. Für eine ganze Klasse
    gibt es „Vorbereiten“.
lead-delete-asks =
    Das Heft von { $group } von diesem Computer löschen? Es lässt sich nicht zurückholen.
lead-delete = Dieses Heft löschen
lead-delete-now = Löschen
lead-keep = Behalten
lead-words = Dreißig Wörter mit Bildern, in einer oder zwei Sprachen, auf dem Bildschirm und auf Papier.
computer-check = Diesen Computer prüfen
computer-caption = Was dieser Computer erlaubt, und was zu tun ist, wo er es nicht tut
computer-what = Was
computer-here = Hier
computer-to-do = Was zu tun ist
computer-copy = Den Link kopieren
computer-copy-works = Geht: „Link kopieren“ unter „Mehr“.
computer-copy-barred =
    Markiert den Link unter „Abgeben“ und drückt Strg und C, schreibt den Code auf oder haltet
    ein Telefon auf den QR-Code.
computer-save = Dateien speichern
computer-save-works = Geht: „Als Datei speichern“ unter „Mehr“.
computer-save-barred = Nehmt den Link, oder schreibt den Code unter „Abgeben“ auf.
computer-pick = Dateien öffnen
computer-pick-works = Geht: „einen Link, Code oder eine Datei“ unter „Rakete“.
computer-pick-barred =
    Öffnet die Datei in einem Textprogramm, kopiert alles und fügt es unter „einen Link, Code
    oder eine Datei“ ein. Oder tippt dort ihren Code.
computer-print = Drucken
computer-print-works = Geht: „Drucken“ unter „Mehr“ und „Abgeben“.
computer-print-barred =
    Zeichnet nach der Zahlentabelle unter „Warum?“, oder öffnet den Link auf einem Computer mit
    Drucker.
computer-camera = Kamera
computer-not-used = Nicht nötig
computer-camera-to-do =
    Nur der Ort Klasse fragt nach der Kamera. Ein Telefon liest den QR-Code mit seiner eigenen
    Kamera.
computer-keeping = Eure Rakete behalten
computer-keeping-barred =
    Kopiert den Link, speichert eine Datei oder schreibt den Code auf, bevor ihr die Seite
    schließt.
computer-keeping-refused =
    Der Platz, den der Browser dieser Seite gibt, ist vielleicht voll. Die Seite versucht es bei
    jeder Änderung noch einmal; speichert bis dahin eine Datei oder kopiert den Link. Hefte zu
    löschen, die ihr nicht mehr braucht, schafft Platz.
computer-keeping-allowed =
    Es hält, bis ihr euch abmeldet oder die Daten des Browsers gelöscht werden: Manche Schulen
    tun das jeden Tag. Kopiert zur Sicherheit den Link.
computer-offline = Ohne Netz
computer-offline-works = Diese Seite öffnet sich hier ohne Netz, in diesem Browser.
computer-offline-file = Diese Seite ist eine Datei: Sie braucht kein Netz.
computer-offline-barred =
    Lasst die Seite offen, oder holt sie euch als eine Datei (unten auf der Seite).
computer-offline-not-yet =
    Der Browser speichert die Seite noch. Wenn sich das nicht ändert, holt sie euch als eine
    Datei (unten auf der Seite).
computer-frame = In einer anderen Seite
computer-framed =
    Diese Seite steht in einer anderen, die ihr das Behalten, Speichern und Drucken verwehren
    kann.
computer-own-tab =
    <link>Öffnet sie in einem eigenen Tab</link>, oder kopiert den Link und öffnet ihn.
computer-nothing-to-do = Nichts zu tun.
computer-window = Fenster
computer-window-size = { $width } mal { $height }
computer-narrow =
    Schmaler, als diese Seite gedacht ist: Macht das Fenster breiter oder die Schrift kleiner.
computer-wide-enough = Breit genug.
computer-is-barred = Gesperrt
computer-is-refused = Verweigert
computer-is-allowed = Erlaubt
computer-works = Geht
computer-not-yet = Noch nicht
computer-not-tried = Nicht versucht
computer-trying = Wird versucht
computer-yes = Ja
computer-no = Nein
computer-try = Ausprobieren
computer-about-copy = Kopieren
computer-about-save = Speichern
computer-about-pick = Öffnen
computer-about-print = Drucken
computer-asks-copy = Hat der Browser die Seite kopieren lassen?
computer-asks-save = Ist eine Datei namens noseward-try.txt angekommen?
computer-asks-pick =
    Ist ein Fenster zum Auswählen einer Datei aufgegangen? (Schließt es wieder.)
computer-asks-print = Ist ein Fenster zum Drucken aufgegangen? (Schließt es wieder.)
computer-one-way-left =
    Wenn nichts davon geht, bleibt ein Weg: Schreibt den Code unter „Abgeben“ auf Papier und
    tippt ihn auf einem anderen Computer unter „einen Link, Code oder eine Datei“ ein.
computer-saved = Diese Datei hat Noseward gespeichert.

lead-language = Die Sprache der Seite
lead-language-unread =
    <b>{ $language }:</b> Noch hat keine Lehrkraft jeden Satz gelesen. Ist einer falsch oder klingt
    er seltsam, schreibt auf, wo er steht und wie er lauten sollte, und schickt beides der Person,
    von der ihr diese Seite habt. Warnungen und Regeln: Vergleicht sie mit euren eigenen.
lead-language-kept = Wer oben eine andere Sprache wählt, behält sie auf dem jeweiligen Computer.
