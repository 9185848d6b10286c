drawing-circle =
    Der Schwung von oben gesehen: Rakete und Schnur reichen { $reach } Meter weit von der Mitte;
    niemand steht näher als { $clear } Meter
drawing-reach = Rakete und Schnur reichen { $reach } m
drawing-nobody-inside = darin steht niemand
drawing-along = Die Rakete an der Schnur entlang gesehen, zu ihrer Bahn gedreht, die nach links läuft
drawing-flies-this-way = fliegt dorthin
drawing-angle-graph = Winkel zwischen Nase und Bahn über der Zeit
drawing-rest-band = bis 10° neben der Ruhelage
drawing-angle-axis = Winkel zwischen Nase und Bahn
drawing-time-axis = Zeit in Sekunden
drawing-nose-first = Nase voran
drawing-side-on = von der Seite
drawing-tail-first = Heck voran
drawing-across = quer zur Bahn
drawing-across-at = quer, bei { $angle }°
drawing-still-swinging = pendelt noch
drawing-starts = Wohin jeder Anfangswinkel führt, von Nase voran bis Heck voran
drawing-starts-at = beginnt bei { $angle }°
