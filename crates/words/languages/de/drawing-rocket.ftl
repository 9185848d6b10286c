drawing-rocket = { $name }, maßstäblich gezeichnet, mit den beiden Punkten
drawing-rocket-nameless = Die Rakete, maßstäblich gezeichnet, mit den beiden Punkten
drawing-pair = { $left } und { $right }, in einem Maßstab an einem Lineal gezeichnet
drawing-side-on-at = seitlich, { $place }
drawing-side-on-measured = seitlich, gemessen
drawing-measured-at = gemessen, { $place }
drawing-points-apart = { $separation } auseinander
drawing-pressure-lines = Druck-|punkt
drawing-mass-lines = Schwer-|punkt
drawing-pressure-side-on = Druckpunkt, seitlich
drawing-drag-fins = Nach oben oder unten ziehen, um die Flossen zu verschieben
drawing-drag-weight = Nach oben oder unten ziehen, um dieses Gewicht zu verschieben

drawing-qr-link = QR-Code: ein Link zu dieser Rakete
drawing-qr-code = QR-Code: der Code daneben
