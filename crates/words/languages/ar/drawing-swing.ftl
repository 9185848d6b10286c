drawing-circle =
    التدوير من أعلى: يصل الصاروخ والخيط إلى { $reach } متر من الوسط، ولا يقف أحد ضمن { $clear } متر
drawing-reach = مدى الصاروخ والخيط { $reach } م
drawing-nobody-inside = لا يقف أحد داخل هذا الخط
drawing-along = الصاروخ منظورًا إليه على امتداد الخيط، مائلًا عن مساره المتجه إلى اليسار
drawing-flies-this-way = يطير إلى هنا
drawing-angle-graph = الزاوية بين الأنف والمسار مع الزمن
drawing-rest-band = ضمن 10° من وضع السكون
drawing-angle-axis = الزاوية بين الأنف والمسار
drawing-time-axis = الزمن بالثواني
drawing-nose-first = الأنف أولا
drawing-side-on = من الجانب
drawing-tail-first = الذيل أولا
drawing-across = عرضيّ على مساره
drawing-across-at = عرضيّ، عند { $angle }°
drawing-still-swinging = لا يزال يتأرجح
drawing-starts = ما تؤدي إليه كل زاوية بداية، من الأنف أولًا إلى الذيل أولًا
drawing-starts-at = يبدأ عند { $angle }°
