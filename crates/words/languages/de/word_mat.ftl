mat-lead = Dreißig Wörter, jedes mit einem Bild: für die Wand oder für euren Tisch.
mat-beside = Daneben
mat-beside-none = keine zweite Sprache
mat-print = Die Wörtertafel drucken
mat-parts = Die Rakete und ihre Teile
mat-points = Zwei Punkte und die Luft
mat-outcomes = An der Schnur und in der Luft
mat-test = Testen und messen

term-nose = Nase (Raketenspitze)
means-nose = Der vordere Teil. Ganz vorn ist die Nasenspitze, an der das Lineal beginnt.
term-tube = Rohr
means-tube = Der gerade Teil des Rumpfs, vorn genauso breit wie hinten.
term-taper = Verjüngung
means-taper = Ein Teil des Rumpfs, der zu einem Ende hin schmaler wird.
term-neck = Flaschenhals
means-neck = Das schmale, offene Ende der Flasche, am Heck der Rakete.
term-width = Rumpfbreite (Kaliber)
means-width = Wie weit es quer durch den Rumpf ist, wo er am breitesten ist.
term-ballast = Ballast
means-ballast = Gewicht, das ihr mit Absicht hinzufügt, zum Beispiel Knete in der Nase.
term-fin = Flosse
means-fin = Ein flaches Stück, das nahe am Heck absteht und gegen das die Luft drückt.
term-root = Wurzel (einer Flosse)
means-root = Die Kante der Flosse, die am Rumpf festsitzt.
term-tip = Spitze (einer Flosse)
means-tip = Die Außenkante der Flosse, weg vom Rumpf.
term-span = Spannweite (einer Flosse)
means-span = Wie weit die Flosse vom Rumpf absteht.
term-sweep = Pfeilung (einer Flosse)
means-sweep = Wie weit die Spitze vorn hinter der Wurzel zurückliegt.

term-mass = Schwerpunkt
means-mass = Der Punkt, an dem die Rakete waagerecht an einer Schnur hängt.
term-side-on = Druckpunkt (von der Seite)
means-side-on = Wo die Luft im Mittel drückt, wenn sie genau von der Seite kommt.
term-nose-on = Druckpunkt (von vorn)
means-nose-on =
    Wo die Luft sie im Mittel zur Seite drückt, wenn ihre Nase fast genau in den Wind zeigt.
term-separation = Abstand
means-separation = Wie weit Schwerpunkt und Druckpunkt auseinander liegen.
term-cut-out = Pappsilhouette
means-cut-out =
    Die Rakete von der Seite, aus Pappe: Wo sie im Gleichgewicht ist, liegt der Druckpunkt (von
    der Seite).
term-angle = Anstellwinkel
means-angle = Der Winkel zwischen der Nase und der Richtung, aus der die Luft kommt.

term-swing-test = Schleudertest
means-swing-test =
    Mit der erwachsenen Person: Eine Person schleudert die Rakete an einer Schnur im Kreis, alle
    beobachten die Nase.
term-self-righting = Richtet sich selbst auf
means-self-righting =
    Die Luft dreht die Rakete wieder mit der Nase nach vorn, wohin sie auch zeigt.
term-broadside = Quer
means-broadside = Die Luft hält die Rakete quer, mit der Seite zum Wind.
term-swaps-ends = Dreht sich um
means-swaps-ends = Die Luft dreht die Rakete um, sodass sie mit dem Heck voran fliegt.

term-fair-test = Fairer Versuch
means-fair-test = Ihr ändert nur eine Sache und lasst alles andere gleich.
term-variable = Variable
means-variable =
    Alles in einem Versuch, was sich ändern kann, zum Beispiel wie viel Knete in der Nase ist.
term-prediction = Vorhersage
means-prediction = Was ihr glaubt, das geschehen wird, und warum: gesagt vor dem Test.
term-reading = Messwert
means-reading = Eine Zahl, die ihr an einem Lineal oder einer Waage ablest.
term-repeat = Wiederholung
means-repeat = Dasselbe noch einmal gemessen, auf dieselbe Weise.
term-middle = Mittlerer Wert (Median)
means-middle = Ordnet die Messwerte, den kleinsten zuerst: Er ist der in der Mitte.
term-range = Spannweite (von Messwerten)
means-range = Wie weit es vom kleinsten Messwert bis zum größten ist.
term-uncertainty = Unsicherheit
means-uncertainty =
    Wie weit der wahre Wert gut und gern von dem entfernt sein kann, den ihr gefunden habt.
term-evidence = Belege
means-evidence = Die Messwerte und Schwünge, die zeigen, ob ihr recht habt.
