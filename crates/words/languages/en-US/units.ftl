units-millimetres = millimeters
units-grams-per-square-metre = grams per square meter
