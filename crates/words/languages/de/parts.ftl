part-nose = Nase
part-tube = Rohr
part-taper = Verjüngung
part-neck = Hals
part-fins = Flossen
part-weight = Gewicht
part-numbered = { $part } { $number }
