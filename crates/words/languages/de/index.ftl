index-title = Noseward: Findet die zwei Punkte eurer Flaschenrakete
index-description =
    Zeichnet eine Rakete aus einer Getränkeflasche nach ein paar Messungen mit dem Lineal und
    seht ihren Schwerpunkt und ihren Druckpunkt. Nichts wird installiert, nichts wird verschickt.
index-skip-place = Zum Arbeitsplatz springen
index-skip-drawing = Zur Zeichnung springen
index-path = Die Stunde
index-tools = Werkzeuge
index-new-version = Es gibt eine neue Fassung dieser Seite.
index-load-new = Ladet sie, wann es euch passt
index-notebook = Dieses Heft
index-purpose = Fliegt eure Flaschenrakete mit der Nase voran?
index-heading = Noseward: Fliegt eure Flaschenrakete mit der Nase voran?
index-drawing = Zeichnung
index-loading = Das Karopapier wird geholt …
index-failed-late =
    Das dauert lange. Wartet bei einer langsamen Leitung noch etwas. Kommt nichts, hilft eines
    davon. Eine Rakete, die mit einem Link kam, bleibt in der Adresszeile.
index-failed-ended =
    Die Zeichnung konnte nicht beginnen. Eure Rakete bleibt in der Adresszeile: Kopiert die
    Adresse, um sie zu behalten.
index-failed-elsewhere =
    Die Zeichnung konnte nicht beginnen. Ladet die Seite noch einmal, versucht einen anderen
    Browser oder arbeitet auf Papier.
index-failed-again = Die Seite noch einmal laden
index-failed-frame = Steht diese Seite in einer anderen, so kann es daran liegen.
index-failed-tab = In einem eigenen Tab öffnen
index-failed-copy = Oder kopiert ihre Adresse in einen neuen Tab:
index-failed-address = Die Adresse dieser Seite
index-failed-browser =
    Versucht einen anderen Browser: Dieser ist vielleicht zu alt oder sperrt Skripte oder
    WebAssembly.
index-failed-file = Die Seite als eine Datei holen, für diesen Computer oder einen anderen
index-failed-on-paper = Arbeitet auf Papier: Die Stunde steht weiter unten auf dieser Seite.
index-failed-paper = Zur Stunde auf Papier
index-failed-delete = Alles auf diesem Computer löschen
index-failed-deletes =
    Löscht die Rakete, die Hefte und alles andere von dieser Seite auf diesem Computer. Das
    lässt sich nicht rückgängig machen. Links, Codes und Dateien, die ihr gemacht habt, gehen
    weiterhin.
index-failed-delete-now = Jetzt alles löschen
index-failed-deleted = Alles von dieser Seite wurde auf diesem Computer gelöscht.
index-failed-left = Nicht alles konnte gelöscht werden. Übrige Einträge:
index-failed-reason = Für alle, die diesen Computer betreuen:
index-failed-blocked = Das Skript, das die Seite startet, kam nicht an oder wurde gesperrt.
index-failed-old = Dieser Browser ist zu alt: Er kennt keine JavaScript-Module.
index-no-scripts =
    Diese Seite zeichnet mit Skripten, und die sind hier ausgeschaltet. Bittet die Leute, die
    diesen Computer betreuen, Skripte für diese Adresse zu erlauben. Die Stunde auf Papier unten
    geht auch ohne.
index-more = Für die IT und auf Papier
index-try-file = Eine Datei, um das Öffnen zu prüfen; sie wird nicht gelesen
index-privacy = Für IT und Datenschutz: was diese Seite aufhebt und verschickt
index-privacy-origin =
    <b>Eine Herkunft.</b> Jede Datei kommt von der Adresse dieser Seite. Es gibt keine
    Schriften, Bilder, Zähler oder Skripte von anderswo.
index-privacy-sent =
    <b>Nichts wird verschickt.</b> Sind die Seite und ihre Kopie für den Gebrauch ohne Netz
    geladen, stellt sie keine Anfrage mehr. Bei einem späteren Besuch kommt die Seite aus dem
    Speicher des Browsers; der Browser fragt den Server vielleicht, ob es eine neuere gibt. Die
    Rakete in einem Link steht hinter dem Zeichen #, das Browser nicht an Server schicken; mit
    ihrem Namen steht sie vielleicht im Verlauf des Browsers.
index-privacy-accounts =
    <b>Keine Konten, keine Cookies, keine Namen.</b> Nichts fragt nach Namen, Adresse, Alter oder
    Foto. Eine Gruppe ist eine Farbe und eine Zahl, und was ihr in die Felder für Wörter schreibt.
    Die Seite bittet um eine Berechtigung, die Kamera, wenn in „Klasse“ QR-Codes gelesen werden;
    kein Bild wird aufgehoben oder gesendet. In die Zwischenablage schreibt sie, wenn jemand auf
    „Kopieren“ drückt.
index-privacy-kept =
    <b>Was aufgehoben wird</b>, liegt allein in diesem Browser: die Rakete, die Hefte der Gruppen
    mit allem, was darin steht, der letzte Link, die gewählten Einheiten, Sprache und Ansicht,
    eine Zahl, nach der das Kennzeichen einer neuen Gruppe gewählt wird (Local Storage,
    Schlüssel, die mit noseward/ beginnen; welches Heft ein Tab offen hat, auch in seinem Session
    Storage), eine zweite Kopie davon für den Fall, dass der Browser abbricht (IndexedDB, die
    Datenbank noseward), und eine Kopie der Dateien der Seite (Cache Storage). „Alles auf diesem
    Computer löschen“ unter „Für alle, die anleiten“ leert sie alle. Wer diesen Computer als
    Nächstes benutzt, kann diese Hefte bis dahin öffnen.
index-privacy-needs =
    <b>Was sie braucht:</b> Skripte und WebAssembly von ihrer eigenen Adresse: Chrome oder Edge
    97, Firefox 102, Safari 16 oder neuer. Sie arbeitet auch, wenn Speicher, Herunterladen,
    Zwischenablage, Dateiauswahl und Service Worker gesperrt sind.
index-privacy-policy =
    <b>Content Security Policy:</b> Die Seite bringt ihre eigene mit; sie erlaubt Skripte,
    Formate und Verbindungen nur von der eigenen Adresse und kein Skript im Text der Seite.
index-privacy-licence =
    <b>Lizenz:</b> MIT. Wer diese Kopie betreibt, ist für den Server und dessen Protokolle
    verantwortlich.
index-paper = Die Stunde auf Papier
index-paper-heading = Fliegt sie mit der Nase voran? Die Stunde auf Papier
index-paper-adult =
    Geschleudert wird nur mit der erwachsenen Person, in einer Halle oder draußen. Nur leere
    Raketen: kein Wasser, keine Luft hineingepumpt.
index-paper-eyes =
    Schutzbrille auf: wer schleudert und alle, die zusehen. Dann kräftig an der Schnur ziehen.
index-paper-line =
    Eine Person schleudert; alle anderen stehen außerhalb der markierten Linie. Wickelt die
    Schnur nie um die Finger.
index-paper-stop =
    Ruft irgendjemand Stopp, wird aufgehört. Arm hoch, bis sie still hängt; vorher geht niemand
    hinein.
index-paper-scissors =
    Scheren nur für Karton. Flaschen, Kunststoff, Schaum und Balsaholz schneidet eine erwachsene
    Person. Klebt Kanten ab.
index-paper-local =
    Es entscheiden die örtlichen Regeln, die Gefährdungsbeurteilung eurer Schule und eine
    sachkundige Person. Diese Seite entscheidet nicht. Sie ist keine Erlaubnis zum Starten.
index-paper-need =
    <b>Ihr braucht</b> für jede Gruppe: eine leere Sprudelflasche, Karton, Klebeband, Schere,
    Lineal, etwa 1 m Schnur, Knete, Karton für eine Silhouette, Schutzbrillen für alle, die
    schleudern oder zusehen, Kreide oder Kegel, um eine Linie zu markieren.
index-paper-build =
    <b>Bauen.</b> Klebt eine Nase und drei oder vier Flossen aus Karton an die Flasche. Macht die
    Spitze weich und rund. Gewichte kommen nach innen, festgeklebt: Sie dürfen sich nicht lösen.
index-paper-mass =
    <b>Schwerpunkt.</b> Legt die Schnur um die Rakete und schiebt sie, bis die Rakete waagerecht
    hängt. Messt von der Nasenspitze bis zur Schnur. Dreimal.
index-paper-pressure =
    <b>Druckpunkt (von der Seite).</b> Schneidet die Seitenansicht der Rakete mit allen Flossen
    aus einem Stück Karton: kein Klebeband, kein Kleber. Legt sie quer über die Kante eines
    Lineals, bis sie im Gleichgewicht ist, und messt von ihrer Nasenspitze. Dreimal. Ist die
    Silhouette kleiner oder größer als die Rakete? Nehmt mal der Länge der Rakete und teilt durch
    die der Silhouette.
index-paper-separation =
    <b>Abstand</b> = Druckpunkt − Schwerpunkt. Ist er größer als null, liegt der Schwerpunkt näher
    an der Nase. Überschneiden sich die Messungen der zwei Punkte, ist es zu knapp.
index-paper-predict =
    <b>Sagt vorher</b>, was die Rakete an der Schnur tun wird, und warum. Schreibt es auf, bevor
    jemand schleudert.
index-paper-swing =
    <b>Schleudern, mit der erwachsenen Person.</b> Klebt die Schnur am Schwerpunkt fest.
    Schutzbrille auf; zieht kräftig an der Schnur. Die erwachsene Person prüft den Platz, und
    wieder vor je drei Schwüngen: Markiert bei 1 m Schnur und 0,8 Umdrehungen je Sekunde eine
    Linie rundherum, 9,5 m von der Person, die schleudert (ausgerechnet für Loslassen bis 20°
    aufwärts, ohne Luftwiderstand; steiler fliegt sie weiter; keine Erlaubnis). Ist weniger
    Platz? Dann nicht hier. Schleudert waagerecht über dem Kopf, dreimal: gleiche Schnur, gleich
    viele Umdrehungen in zehn Sekunden.
index-paper-change =
    <b>Ändert eine Sache</b>: Knete in der Nase, Größe der Flossen, Zahl der Flossen oder ihren
    Platz. Messt beide Punkte noch einmal, sagt noch einmal vorher, schleudert noch einmal.
index-paper-results =
    Ergebnisse. Ausgang: Nase voran, ruhig / Nase voran nach Wackeln / seitwärts oder taumelnd /
    Heck voran / Schnur verrutscht, noch einmal / nicht sicher
index-paper-column-changed = Was geändert wurde
index-paper-column-mass-mm = Schwerpunkt, mm
index-paper-column-pressure-mm = Druckpunkt, mm
index-paper-column-separation-mm = Abstand, mm
index-paper-column-because = Vorhersage, weil
index-paper-column-outcomes = Ausgang 1, 2, 3
index-paper-first = nichts (erste Rakete)
index-paper-initials = Kürzel der erwachsenen Person, Platz geprüft: ………
index-paper-found =
    Wir haben herausgefunden, dass … Unser Beleg ist … Das leuchtet ein, weil … So sehr trauen wir
    dem, weil …
index-paper-print = Die Stunde drucken
index-edition = Fassung, Datum, Nummer und Compiler dieser Seite:
index-one-file = Diese Seite als eine Datei holen, für einen Computer ohne Internet
index-licences = Lizenzen dessen, woraus diese Seite gemacht ist
index-single = Das ist die Seite als eine Datei: Sie braucht kein Internet.
index-crash = Etwas in dieser Seite ging kaputt, und sie blieb stehen.
index-crash-again = Eure Rakete ist in diesem Link: noch einmal öffnen
index-crash-copy = Kopiert den Link vorher, um sicherzugehen:
index-crash-link = Der Link mit eurer Rakete
index-crash-twice =
    Geht sie mit dieser Rakete wieder kaputt, beginnt mit einer anderen: Nichts, was aufgehoben
    war, wird gelöscht.
index-crash-afresh = Mit einer anderen Rakete beginnen
index-damaged = Diese Seite braucht einmal das Netz
index-damaged-part =
    Ein Teil von ihr fehlt auf diesem Computer oder ist beschädigt, und das Netz ist nicht zu
    erreichen. Was ihr hier geschrieben habt, ist noch da. Eine Rakete, die mit einem Link kam,
    bleibt in der Adresszeile.
index-damaged-load =
    Verbindet diesen Computer, dann ladet die Seite mit dem Knopf des Browsers noch einmal.
