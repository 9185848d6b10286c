typed-empty = Hier muss eine Zahl stehen, zum Beispiel { $example }.
typed-unreadable = Das kann ich nicht lesen. Tippt zum Beispiel { $example }.
typed-not-whole = Hier muss eine ganze Zahl stehen.
typed-ambiguous = Ist das { $small } oder { $large }?
typed-no-length = Hier muss eine Länge stehen, zum Beispiel 120 mm.
typed-no-mass = Hier muss eine Masse stehen, zum Beispiel 20 g.
typed-without-unit = Hier muss eine Zahl ohne Einheit stehen, zum Beispiel { $example }.

typed-as-length = 120 oder 12,5 oder 12 cm
typed-as-inches = 4,5 oder 4 1/2 oder 115 mm
typed-as-mass = 20 oder 7,5
typed-as-ounces = 0,75 oder 21 g
typed-as-count = 4
typed-as-angle = 45

typed-units-mm = millimeter millimetern
typed-units-cm = zentimeter zentimetern
typed-units-m = meter metern
typed-units-in = zoll " ” ″ “
typed-units-g = gramm
typed-units-kg = kilogramm kilo
typed-units-oz = unze unzen
typed-units-mg = milligramm
typed-units-degrees = grad
typed-units-fins = flosse flossen
