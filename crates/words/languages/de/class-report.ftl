report-view = Berichte
report-paper = Auf Papier
report-print-groups = Berichte aller Gruppen drucken
report-print-class = Bericht der Klasse drucken
report-paper-hint =
    Eine Seite je Gruppe, oder zwei: ihre Versuche, was sie geschrieben hat, und was ihr beim
    Durchsehen darin gefunden habt. Keine Namen, keine Noten.
report-tables = Für eine Tabellenkalkulation: eine Zeile je Versuch
report-tables-hint =
    Was die Gruppen geschrieben haben und was ihr darin gefunden habt, steht in der Datei der
    ganzen Klasse: dort, wo gesammelt wird.
report-table-point = Tabelle als Datei, 12.5 mit Punkt
report-table-comma = Tabelle als Datei, 12,5 mit Komma
report-copy-point = Tabelle kopieren, mit Punkten
report-copy-comma = Tabelle kopieren, mit Kommas
report-text = Als einfacher Text
report-text-class = Die Klasse als Text
report-text-groups = Alle Gruppen als Text
report-saved =
    Gespeichert als { $name }, falls dieser Computer das Herunterladen erlaubt. Seht unter
    „Downloads“ nach.

report-rules = Nach den Regeln { $rules } gemacht.
report-no-permission =
    Ein guter Schwung ist keine Erlaubnis zum Starten. Es entscheiden die Regeln am Ort, die
    Gefährdungsbeurteilung eurer Schule und eine sachkundige Person.
report-of = Bericht: { $name }
report-of-class = Bericht der Klasse
report-of-class-called = Bericht der Klasse { $label }
report-along =
    { $how-known ->
        [measured] Mit dem Abstand, wie er gemessen wurde:
       *[worked-out] Mit dem Abstand, wie er berechnet wurde:
    }
report-trials = Die Versuche
report-found = Was darin gefunden wurde
report-found-in-all = Was in den Heften gefunden wurde
report-found-in = { $statement } In { $count } von { $of } Heften.
report-trial = Versuch { $trial }.
report-trial-of = { $whose }.
report-changed = Geändert: { $what }.
report-measured = Abstand gemessen: { $separation }.
report-worked-out = Abstand berechnet: { $separation }.
report-predicted = Vorhergesagt: { $outcome }.
report-seen = Gesehen: { $outcome }.
report-conclusion = Was die Gruppe folgert
report-plans = Was sie vorhat
report-wrote = { $statement }: { $said }
report-only-numbers = Von dieser Gruppe kamen nur Zahlen und keine Worte.

report-column-class = Klasse
report-column-changed = Was geändert wurde
report-column-changes = Zahl der Änderungen
report-column-rules = Regeln
report-column-width = Breite des Rumpfs (mm)
report-column-mass = Masse (g)
report-column-mass-computed = Schwerpunkt: berechnet von der Nase (mm)
report-column-pressure-computed = Druckpunkt: berechnet von der Nase (mm)
report-column-mass-readings = Schwerpunkt: Zahl der Messwerte
report-column-pressure-readings = Druckpunkt: Zahl der Messwerte
report-column-prediction = Vorhersage
report-column-seen-before = Vor der Vorhersage gesehene Schwünge
report-column-two-allowed = Zwei Änderungen erlaubt
report-column-swung-first = Vor der Vorhersage geschleudert
report-column-example = Erfunden
report-column-hidden = Weggelassen
report-column-marked = Markiert
report-column-nose-first = Flog mit der Nase voran
report-column-delete-by = Löschen bis
report-column-notebook = Ganzes Heft
report-column-statements = Gefundene Aussagen
