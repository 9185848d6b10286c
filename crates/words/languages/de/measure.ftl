measure-lead =
    Messt beide Punkte von der Nasenspitze aus am Rumpf entlang. Die Rakete ist leer. Drei
    Messwerte von jedem Punkt: Nehmt das Lineal dazwischen weg.
measure-slip = Messwert { $number }: { $sentence }
measure-mass = Schwerpunkt
measure-pressure = Druckpunkt (von der Seite)
measure-mass-how =
    Legt die Schnur als Schlinge um die Rakete, bis sie waagerecht hängt. Lest an der Schnur ab.
measure-pressure-how =
    Balanciert die flache Pappsilhouette auf der Kante eines Lineals. Lest an der Kante ab.
measure-from = Gemessen von<aside>, { $balance-point ->
    [mass] Schwerpunkt
   *[pressure] Druckpunkt (von der Seite)
}</aside>
measure-from-nose = der Nase
measure-from-tail = dem Heck
measure-guess = Erst schätzen<aside>: { $balance-point ->
    [mass] Schwerpunkt
   *[pressure] Druckpunkt (von der Seite)
}, von der Nasenspitze aus, Einheit: { $unit }</aside>
measure-guessed = Eure Schätzung war { $distance } von der Nase.
measure-no-guess = Es wurde nicht geschätzt.
measure-reading = Messwert { $number }<aside>, { $balance-point ->
    [mass] Schwerpunkt
   *[pressure] Druckpunkt (von der Seite)
}, Einheit: { $unit }</aside>
measure-apart = Was macht ihr damit?
measure-keep-all = alle behalten
measure-leave-out = Messwert { $number } weglassen
measure-why = Warum?
measure-middle = Mittlerer Wert: <b>{ $distance } von der Nase</b>.
measure-middle-both =
    Mittlerer Wert: <b>{ $distance } von der Nase</b> ({ $from-tail } vom Heck).
measure-range-none = Ein einzelner Messwert hat keine Spannweite.
measure-range-close = Die Messwerte liegen dicht beieinander.
measure-range-spread = Die Messwerte liegen weit auseinander: noch einmal messen?
measure-range = Spannweite: { $range } ({ $least } bis { $most }).
measure-separation = Gemessener Abstand: <b>{ $separation }</b>.
measure-widths = Das sind { $widths } Rumpfbreiten.
measure-mass-nearer = Der Schwerpunkt liegt näher an der Nase.
measure-pressure-nearer = Der Druckpunkt (von der Seite) liegt näher an der Nase.
measure-neither-nearer = Beide Punkte liegen an derselben Stelle.
measure-too-close =
    <b>Zu dicht beieinander.</b> Die Spannweiten der beiden Punkte überlappen sich: Diese
    Messwerte können nicht sagen, welcher Punkt näher an der Nase liegt.
measure-beside = Gemessen neben berechnet
measure-beside-caption = Von der Nasenspitze aus: gemessen neben berechnet
measure-head-what = was
measure-head-measured = gemessen
measure-head-worked-out = berechnet
measure-head-difference = Unterschied
measure-row-separation = Abstand
measure-other-scale = Die Silhouette ist kleiner oder größer als die Rakete
measure-rocket-length = Länge der Rakete<aside>, Einheit: { $unit }</aside>
measure-cutout-length = Länge der Silhouette<aside>, Einheit: { $unit }</aside>
measure-type-both = Gebt beide Längen ein.
