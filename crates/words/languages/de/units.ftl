units-millimetres = Millimetern
units-grams = Gramm
units-inches = Zoll
units-ounces = Unzen
units-degrees = Grad
units-grams-per-square-metre = Gramm je Quadratmeter
