## Units in full, as a screen reader says them behind “in”.

units-millimetres = millimetres
units-grams = grams
units-inches = inches
units-ounces = ounces
units-degrees = degrees
units-grams-per-square-metre = grams per square metre
