units-grams-per-square-metre = grams a square metre
