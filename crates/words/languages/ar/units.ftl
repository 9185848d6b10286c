units-millimetres = المليمتر
units-grams = الغرام
units-inches = البوصة
units-ounces = الأونصة
units-degrees = الدرجة
units-grams-per-square-metre = الغرام لكل متر مربع
