rocket-begin = Beginnt mit
rocket-begin-bottle = unserer Flasche
rocket-begin-example = einem Beispiel
rocket-begin-open = einem Link, einem Code oder einer Datei
rocket-open-file = Eine Datei, die hier gespeichert wurde
rocket-open-text = Oder fügt einen Link oder den Text einer Datei ein, oder tippt einen Code
rocket-open-pasted = Diesen Text öffnen

rocket-name = Name der Rakete (nicht eurer)
rocket-units = Einheiten
rocket-how-much = Wie viel gezeigt wird
rocket-main-ones = Die wichtigsten
rocket-all-measurements = Alle Maße

rocket-in-unit = in { $unit }
rocket-shape = Form
rocket-length = Länge
rocket-straight-part = Gerader Teil
rocket-shoulder = Schulter
rocket-neck = Hals
rocket-width = Breite
rocket-width-rear = Breite am hinteren Ende
rocket-width-base = Breite unten
rocket-front-end = Vorderes Ende
rocket-front-open = offen
rocket-front-closed = geschlossen (Boden einer Flasche)
rocket-weighs = Wiegt
rocket-all-weigh = Alle zusammen wiegen
rocket-square-metre = Ein Quadratmeter wiegt
rocket-made-of = Besteht aus
rocket-weighed = mit der Waage gewogen
rocket-another-sheet = andere Pappe oder Folie
rocket-weighed-with = mit dem Teil davor gewogen
rocket-how-many = Wie viele
rocket-fin-start = Anfang, von der Nasenspitze
rocket-fin-root = Am Rumpf entlang
rocket-fin-root-trade = Wurzel
rocket-fin-tip = Außenkante
rocket-fin-tip-trade = Spitze
rocket-fin-span = Vom Rumpf nach außen
rocket-fin-span-trade = Spannweite
rocket-fin-sweep = Nach hinten versetzt um
rocket-fin-sweep-trade = Pfeilung
rocket-turned-by = Gedreht um
rocket-outline = Umriss
rocket-four-sided = mit vier Seiten
rocket-by-corners = eigener Umriss, Ecke für Ecke
rocket-own-outline = { $corners ->
    [one] Eigener Umriss mit { $corners } Ecke: siehe alle Maße.
   *[other] Eigener Umriss mit { $corners } Ecken: siehe alle Maße.
}
rocket-corners = Ecken der Reihe nach: die vordere am Rumpf, außen herum, die hintere am Rumpf.
rocket-corner-field = { $corner-axis ->
    [along] Ecke { $corner }, längs
   *[out] Ecke { $corner }, nach außen
}
rocket-corner-remove = <aside>Ecke { $corner } </aside>entfernen
rocket-corner-add = Ecke hinzufügen
rocket-weights = Gewichte
rocket-what-it-is = Was es ist
rocket-its-name = Sein Name
rocket-middle = Mitte, von der Nasenspitze
rocket-measured = An der fertigen Rakete gemessen
rocket-measured-note =
    Lasst das leer, bis sie gebaut ist. Was ihr messt, tritt an die Stelle des Berechneten.
    Wo sie waagerecht hängt und wo ihre Pappsilhouette im Gleichgewicht ist, gehört unter
    Messen.
rocket-whole-weighs = Die ganze Rakete wiegt
rocket-bottle = Flasche

rocket-soft-tip = <b>Macht die Spitze weich und rund.</b>
rocket-scissors = <b>Schere nur für Pappe.</b> Flaschen, Plastik, Schaumstoff und Balsaholz schneidet eine erwachsene Person. Kanten mit Klebeband abdecken.
rocket-taped = <b>Innen, festgeklebt:</b> Ein Gewicht darf sich nicht lösen. Nichts Hartes oder Spitzes außen.

rocket-part-button = { $move-or-copy ->
    [up] <aside>{ $part } </aside>nach vorn
    [down] <aside>{ $part } </aside>nach hinten
    [copy] <aside>{ $part } </aside>kopieren
   *[remove] <aside>{ $part } </aside>entfernen
}
rocket-add-nose = Nase hinzufügen
rocket-add-tube = Rohr hinzufügen
rocket-add-taper = Verjüngung hinzufügen
rocket-add-neck = Hals hinzufügen
rocket-add-fins = Flossen hinzufügen
rocket-add-weight = Gewicht hinzufügen

rocket-dome = Flaschenboden
rocket-dome-trade = Nase: Flaschenboden (Kuppel)
rocket-egg = Ei
rocket-egg-trade = Nase: Ei (Ellipsoid)
rocket-ogive = Spitzbogen
rocket-ogive-trade = Nase: Spitzbogen (Ogive)
rocket-paraboloid = Rundbogen
rocket-paraboloid-trade = Nase: Rundbogen (Paraboloid)
rocket-cone = gerade zur Spitze
rocket-cone-trade = Nase: gerade zur Spitze (Kegel)

rocket-tube = Rohr
rocket-straight-taper = Verjüngung, gerade
rocket-rounded-taper = Verjüngung, gerundet (Schulter)
rocket-neck-shape = Hals
