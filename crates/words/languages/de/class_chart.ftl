class-chart-name = Abstand und ob sie mit der Nase voran flog, über die ganze Klasse
class-chart-one-mark = ein Zeichen je Versuch
class-chart-bars = am Balken: wie viele Versuche
class-chart-invented = Erfundene Klasse, zum Üben
class-chart-nose-first = Nase voran
class-chart-not-clear = nicht klar
class-chart-otherwise = nicht Nase voran
class-chart-chance = Chance für Nase voran
class-chart-percent = { $percent } %
class-chart-in-widths = Abstand in Rumpfbreiten
class-chart-turning = Hälfte Nase voran: bei { $at }
class-chart-turning-band = schraffiert: { $from } bis { $to } (95 %)
class-chart-turning-open = ihr 95-%-Band hat kein Ende
class-chart-gap = Hälfte Nase voran: bei { $from } bis { $to }
class-chart-curve = Kurve: diese Chance, angepasst
class-chart-curve-band = ihr 95-%-Band
class-chart-square = Quadrat: nicht klar
class-chart-ring = Ring: markiert
class-chart-none = noch kein Versuch

class-chart-agreement = Gemessener minus ausgerechneter Abstand, über dem Mittel der beiden
class-chart-difference-in = { $written-in ->
    [millimetres] gemessen minus ausgerechnet, in mm
   *[inches] gemessen minus ausgerechnet, in Zoll
}
class-chart-mean-in = { $written-in ->
    [millimetres] Mittel der beiden, in mm
   *[inches] Mittel der beiden, in Zoll
}
class-chart-middle = Mittel: { $at }
class-chart-limits = 95-%-Grenzen: { $from } bis { $to }
class-chart-larger = je größer, desto mehr Versuche
class-chart-agree = 0: beide gleich
