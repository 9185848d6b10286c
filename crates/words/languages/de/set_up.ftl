places-set-up = Vorbereiten
set-up-lead = Alles hat einen üblichen Wert: Der Link geht sofort und ändert sich mit dem, was ihr wählt.
set-up-class = Klasse
set-up-question-card = Frage
set-up-rules-card = Regeln
set-up-hall-card = Schnur und Halle
set-up-page-card = Seite
set-up-places-card = Orte, die zu sehen sind
set-up-kit-card = Material und Zeiten
set-up-open-card = Frühere Vorgaben ändern
set-up-pupils = Kinder
set-up-size = in Gruppen zu
set-up-groups =
    { $count ->
        [one] { $count } Gruppe
       *[other] { $count } Gruppen
    }
set-up-labels = Namen
set-up-labels-colours = je eine Farbe: Rot 1, Orange 1, …
set-up-labels-numbers = { $first }, { $second }, …
set-up-language = Sprache
set-up-language-any = die jedes Computers
set-up-units = Einheiten
set-up-units-metric = mm und g
set-up-units-inch = Zoll und Unzen
set-up-telling-all = alles sofort
set-up-telling-verdict = Ergebnis nach Vorhersage
set-up-telling-points = jedes nach seinem Schritt
set-up-rocket = Beginnt mit
set-up-rocket-this = { $name }
set-up-rocket-nameless = die Rakete auf der Seite
set-up-rocket-take = Die Rakete auf der Seite nehmen
set-up-own = eine eigene …
set-up-own-label = Eure Frage
set-up-change = <b>Ändern:</b>
set-up-keep = <b>Gleich lassen:</b>
set-up-expect = <b>Zu erwarten:</b>
set-up-minutes =
    { $minutes ->
        [one] Etwa { $minutes } Minute für eine Gruppe, wieder gemessen und geschleudert.
       *[other] Etwa { $minutes } Minuten für eine Gruppe, wieder gemessen und geschleudert.
    }
set-up-may-change = Was geändert werden darf (gedrückt = ja):
set-up-two = Zwei Änderungen auf einmal
set-up-added = Höchstes Zusatzgewicht
set-up-added-hint = Leer: keine Grenze.
set-up-code-of-rules = Das sind die <b>Regeln { $rules }</b>. Ergebnisse tragen diesen Namen und werden unter gleichen Regeln verglichen.
set-up-hall = Halle, freie Breite
set-up-string = Längste Schnur
set-up-turns = Höchstens Umdrehungen je Sekunde
set-up-places-hint = Gedrückte Orte stehen im Weg. „Vorhersagen“ bleibt, wo „Schleudern“ ist.
set-up-bounds = Eine Zahl von { $least } bis { $most }, bitte. Bis dahin behält der Link die Zahl davor.
set-up-room-needed = { $string } Schnur bei { $turns } brauchen { $across } freie Breite.
set-up-room-ask = Messt die freie Breite der Halle, dann steht hier, was hineinpasst.
set-up-room-fits = Das passt in { $across }.
set-up-room-none = Das passt nicht in { $across }.
set-up-room-same = Bei gleich vielen Umdrehungen passt eine Schnur von { $string } ({ $turns }).
set-up-room-longest = Die längste, die passt: { $string } bei { $turns }.
set-up-room-fastest = Am schnellsten passt: { $turns } mit { $string }.
set-up-room-narrow = Keine Schnur passt. Die schmalste Halle für diese Rakete hat { $across } freie Breite: Geht nach draußen, oder nehmt eine kleinere Rakete.
set-up-room-pull = Diese Rakete zieht an jeder Schnur zu stark. Nehmt eine leichtere.
set-up-room-take = { $string }, { $turns } nehmen
set-up-governing =
    Es entscheiden die Regeln am Ort, die Gefährdungsbeurteilung eurer Schule und eine sachkundige
    Person. Diese Seite entscheidet nicht.
set-up-link = Der Link für die Klasse
set-up-copy = Link kopieren
set-up-save = Speichern
set-up-to-paper = Schilder, Materialliste und alle anderen Blätter
set-up-link-is = Ein Link für alle: Er fragt, welche Gruppe jemand ist. Auf den gedruckten Schildern steht für jede Gruppe ein eigener.
set-up-code = Der Code zum Eintippen
set-up-too-long = Diese Rakete hat zu viele Teile für einen Link von { $most } Zeichen. Beginnt mit einer anderen, oder zeichnet eigene Umrisse mit weniger Ecken.
set-up-saved = Als { $file } gespeichert: Die Datei öffnet sich wieder hier und unter „Öffnen“.
set-up-open = Link oder Code einfügen
set-up-open-wrong = Das sind keine Vorgaben.
set-up-opened = Diese Vorgaben stehen jetzt im Formular.
set-up-back = Zurück zu denen davor
set-up-label-open = <b>{ $group }:</b> Haltet eine Kamera darauf, oder tippt den Code unter „einen Link, Code oder eine Datei“ ein.
set-up-label-rules = Regeln { $rules }. Euer Schild steht an der Stelle von Namen.
set-up-sheet = Schilder zum Ausschneiden
lead-set-up = Ein Link für eine ganze Klasse: Gruppen, Frage, Regeln, Sprache, und was zu sehen ist.
lead-under-rules = Das Heft von { $group } steht unter den Regeln { $rules }: Ausführlichkeit, Hilfe, was wann gesagt wird und der faire Versuch stehen fest.
lead-lift = Dieses Heft von den Vorgaben befreien
lead-lifted = Dieses Heft ist frei. Seine Ergebnisse sagen, dass sie unter keinen Regeln stehen.
