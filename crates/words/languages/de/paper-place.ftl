places-paper = Papier
lead-paper = Silhouetten in wahrer Größe, Protokollblätter, Merkkarten, Unterlagen für die Lehrkraft.
paper-place-lead = Blätter für den Unterricht, zum Drucken. Was ausgeschnitten wird, hat die wahre Größe.
paper-place-size = Papier
paper-place-a4 = A4
paper-place-letter = US Letter
paper-place-cut-out = Silhouette in wahrer Größe
paper-place-cut-out-small = Silhouette auf einem Blatt
paper-place-answers = Antworten: die Silhouette mit beiden Punkten
paper-place-fins = Flossen
paper-place-nose = Nase und Übergänge, zum Rollen
paper-place-strip = Streifen, der zeigt, wohin Flossen kommen
paper-place-tools = Lineal und Wippkante
paper-place-report = Bericht aus dem offenen Heft
paper-place-teacher-pack = Die Unterlagen für die Lehrkraft
paper-place-labels = Etiketten für die Gruppen
paper-place-pupil-pack = Alle diese Blätter, für eine Gruppe
paper-place-for-leaders = Für die Leitung, aus „Vorbereiten“
paper-place-for-pupils = Für jede Gruppe
paper-place-for-cutting = Zum Ausschneiden
paper-place-drawings = Zeichnungen
paper-place-rocket = Die Rakete mit ihrem Lineal
paper-place-outline-drawn = Ihr Umriss
paper-place-air = Die Luft von allen Seiten
paper-place-nothing = Weder diese Rakete noch das Heft hat schon etwas für dieses Blatt.
paper-place-no-rocket = Beschreibe zuerst eine Rakete: Noch gibt es nichts zu zeichnen.
paper-place-not-measured =
    Ihre Punkte sind noch nicht gemessen, und dieses Blatt verrät beide. Wer sie finden soll, sollte
    es vorher nicht sehen.
paper-place-anyway = Trotzdem zeigen
paper-place-save = Als PDF speichern
paper-place-open = Öffnen
paper-place-print = Drucken
paper-place-svg = Speichern, was hier zu sehen ist: als Zeichnung (SVG)
paper-place-png = Speichern, was hier zu sehen ist: als Bild (PNG)
paper-place-outline = Den Umriss für einen Schneider speichern (SVG)
paper-place-table = Als Tabelle speichern
paper-place-before = Seite davor
paper-place-next = Nächste Seite
paper-place-page = Seite { $page } von { $of }
paper-place-scale = Drucke mit 100 % („tatsächliche Größe“), nicht an die Seite angepasst. Ein Balken auf dem Blatt zeigt, ob das gelungen ist.
paper-place-no-size = Eine Zeichnung für sich, auf Papier nicht in wahrer Größe.
paper-place-no-pdf =
    Die Buchstaben dieser Sprache sind nicht unter denen, die jedes PDF hat. Drucke stattdessen hier:
    Das Blatt ist dasselbe, und ohne Ränder gedruckt hat es die wahre Größe.
paper-place-saved = Gespeichert als { $name }, wenn dieser Browser Downloads erlaubt.
paper-place-no-png = Dieser Browser konnte das Bild nicht malen. Speichere es stattdessen als Zeichnung (SVG).
paper-place-making = Blätter werden gemacht: { $done } von { $of }
