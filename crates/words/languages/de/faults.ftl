faults-to-mend = { $count ->
    [one] Eine Angabe ist zu berichtigen
   *[other] { $count } Angaben sind zu berichtigen
}
faults-scroll = (hier scrollen)
faults-line = <button>{ $field }</button>: { $sentence }

faults-rocket-name = Name der Rakete
faults-body = Rumpf
faults-fins = Flossen
faults-weights = Gewichte
faults-measured = Gemessen
faults-bottle = Flasche
faults-field = { $measure ->
    [shape] { $card }, Form
    [length] { $card }, Länge
    [width] { $card }, Breite
    [front-end] { $card }, vorderes Ende
    [mass] { $card }, Masse
    [how-many] { $card }, Anzahl
    [start] { $card }, Anfang
    [turned-by] { $card }, gedreht um
    [along-the-body] { $card }, am Rumpf entlang
    [outer-edge] { $card }, Außenkante
    [out-from-the-body] { $card }, vom Rumpf nach außen
    [slants-back-by] { $card }, nach hinten versetzt um
    [outline] { $card }, Umriss
    [name] { $card }, Name
   *[place] { $card }, Stelle
}
