pupil-record = Protokoll eines Versuchs
pupil-all-in = Einheit jeder Länge: { $unit }.
pupil-string = Länge der Schnur
pupil-turns = Umdrehungen in zehn Sekunden
pupil-hang = Hängt sie niedrig. Füße und Gesichter weg.
pupil-moved = Was hat sich seit dem Versuch davor verschoben?
pupil-moved-nose = zur Nase
pupil-moved-tail = zum Heck
pupil-moved-not = gar nicht
pupil-moved-far = wie weit
pupil-results = Ergebnisse der Klasse
pupil-results-how =
    Eine Zeile für jeden Versuch. Messwerte von der Nasenspitze aus in { $unit }: bis zu drei, mit
    Platz dazwischen.
pupil-results-key = Schreibt die Nummer von dem, was ein Schwung gezeigt hat:
pupil-charts = Diagramme zum Zeichnen
pupil-squares = Kariertes Papier
pupil-squares-how = Schreibt an jede Achse, was sie zeigt, und die Einheit dazu.
pupil-squares-name = Kariertes Papier mit zwei Achsen, zum Zeichnen
pupil-cards = Karten für die Tests
pupil-card-cutting = Flaschen schneidet eine erwachsene Person. Schneidet Pappe von den Fingern weg.
pupil-card-flat =
    Die Silhouette ist eine einzige flache Lage Pappe, ohne Klebeband, ohne Kleber und ohne
    irgendetwas anderes darauf.
pupil-card-ready = Bevor ihr schleudert
pupil-card-line =
    Markiert eine Linie, ganz herum: Darin steht niemand. Die erwachsene Person sagt, wie weit weg von
    der Person, die schleudert: ______ m
pupil-card-record = Schreibt es auf
pupil-card-readings = Schreibt alle drei Messwerte auf, und von welchem Ende aus ihr gemessen habt.
pupil-card-odd = Sieht einer seltsam aus? Er bleibt. Schreibt daneben, was ihr vermutet.
pupil-card-prediction = Schreibt auf, was sie tun wird und warum, bevor ihr schleudert.
pupil-card-swings = Schreibt auf, was jeder von drei Schwüngen gezeigt hat.
pupil-card-slipped =
    Ist die Schnur verrutscht? Schreibt auch das auf, und schleudert noch einmal.
pupil-roles = Wer macht was
pupil-roles-how = Verteilt die Karten. In einer kleinen Gruppe hat jemand auch zwei.
pupil-role-ruler = Lineal
pupil-role-ruler-does =
    Du misst beide Punkte von der Nasenspitze aus. Nimm das Lineal nach jedem Messwert weg.
pupil-role-string = Schnur
pupil-role-string-does =
    Du hältst die Schnur niedrig, bis die Rakete waagerecht hängt. Du klebst sie auf beiden Seiten
    fest und ziehst dreimal kräftig daran.
pupil-role-swinger = Schleudern
pupil-role-swinger-does =
    Du schleuderst die Rakete waagerecht über dem Kopf. Dann Arm hoch, bis sie ruhig hängt. Greif
    nicht danach.
pupil-role-space = Ausguck
pupil-role-space-does =
    Du schaust auf die markierte Linie, nicht auf die Rakete. Tritt jemand darüber? Ruf Stopp.
pupil-role-nose = Nase beobachten
pupil-role-nose-does =
    Du beobachtest die Nase fünf Umdrehungen lang und zählst die Umdrehungen in zehn Sekunden. Du
    sagst, was sie getan hat.
pupil-role-pencil = Bleistift
pupil-role-pencil-does =
    Du schreibst jeden Messwert, die Vorhersage und jeden Schwung auf. Lies alles noch einmal vor.
