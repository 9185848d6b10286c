beside-agree = { $balance-point ->
    [mass] Der Schwerpunkt: Gemessen und berechnet stimmen bis auf { $distance } überein.
   *[pressure] Der Druckpunkt (von der Seite): Gemessen und berechnet stimmen bis auf { $distance } überein.
}
beside-differ = { $balance-point ->
    [mass] Der Schwerpunkt: gemessen { $distance } näher { $nearer-end ->
        [nose] an der Nase
       *[tail] am Heck
    } als berechnet.
   *[pressure] Der Druckpunkt (von der Seite): gemessen { $distance } näher { $nearer-end ->
        [nose] an der Nase
       *[tail] am Heck
    } als berechnet.
}
beside-cannot-tell =
    Aber eure Messwerte liegen selbst { $range } auseinander: Sie können es nicht sagen. Noch
    einmal messen?
beside-other-end = Wurde vom anderen Ende der Rakete aus gemessen?
beside-tail-heavier = Ist das Heck schwerer als beschrieben: Klebeband, Leim, dicke Flossen?
beside-tail-lighter = Ist das Heck leichter als beschrieben, oder ist mehr Ballast in der Nase?
beside-scales =
    Die Waage sagt { $scales }, die Teile zusammen ergeben { $parts }. Fehlt ein Teil?
beside-weigh = Was wiegt die ganze Rakete auf der Waage?
beside-card = Ist die Pappe überall gleich: kein Klebeband, kein Leim, keine doppelte Pappe?
beside-flat =
    Ist die Silhouette flach, und sind ihre Flossen in der richtigen Größe geschnitten?
beside-how-long = Wie lang ist die Silhouette? Ihre Länge ergibt ihren Maßstab.
beside-which-view =
    Eine ungerade Zahl von Flossen sieht von jeder Seite anders aus: Welche Ansicht wurde
    ausgeschnitten?
