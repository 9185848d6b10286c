typed-empty = يلزم هنا عدد، مثل { $example }.
typed-unreadable = لا أستطيع قراءة هذا. اكتبوا مثلًا { $example }.
typed-not-whole = يلزم هنا عدد صحيح.
typed-ambiguous = أهو { $small } أم { $large }؟
typed-no-length = يلزم هنا طول، مثل 120 mm.
typed-no-mass = تلزم هنا كتلة، مثل 20 g.
typed-without-unit = يلزم هنا عدد بلا وحدة، مثل { $example }.

typed-as-length = 120 أو 12.5 أو 12 cm
typed-as-inches = 4.5 أو 4 1/2 أو 115 mm
typed-as-mass = 20 أو 7.5
typed-as-ounces = 0.75 أو 21 g
typed-as-count = 4
typed-as-angle = 45

typed-units-mm = مم ملم مليمتر ملّيمتر مليمترات مليمترًا
typed-units-cm = سم سنتيمتر سنتيمترات سنتيمترًا سنتمتر
typed-units-m = م متر أمتار مترًا
typed-units-in = بوصة بوصات إنش " ” ″
typed-units-g = غ غم جم غرام غرامات غرامًا جرام جرامات
typed-units-kg = كغ كغم كجم كيلوغرام كيلوجرام
typed-units-oz = أونصة أونصات
typed-units-mg = ملغ ملغم مليغرام
typed-units-degrees = درجة درجات
typed-units-fins = زعنفة زعانف
