slips-not-a-number = يلزم هنا عدد.
slips-below-zero = لا تُظهر المسطرة شيئًا تحت الصفر. هل هناك إشارة زائدة؟
slips-zero = هذا صفر. اتركوه فارغًا إذا لم يُقَس شيء.
slips-other-unit = { $slip-size ->
    [small] { $typed } فقط
   *[large] { $typed }
}: { $slip-cause ->
    [centimetres] هل قُرئت بالسنتيمتر
    [inches] هل قُرئت بالبوصة
    [millimetres] هل قُرئت بالمليمتر
   *[zero] هل هناك صفر زائد
}؟ هل تقصدون { $meant }؟
slips-rocket =
    المسطرة تقول { $measured } والوصف يقول { $described }. قيسوا مرة أخرى أو غيّروا الوصف.
slips-cutout = قصاصة طولها { $cutout } لصاروخ طوله { $rocket }؟ قيسوها مرة أخرى.
slips-scaled = طول القصاصة { $percent } % من طول الصاروخ. تُحوَّل قراءاتها إلى مقاس الصاروخ.
slips-guess = هذا التخمين يقع خارج الصاروخ، وطوله { $rocket }.
slips-beyond = { $balance-point ->
    [mass] هذا يقع خارج الصاروخ، وطوله { $length }.
   *[pressure] هذا يقع خارج القصاصة، وطولها { $length }.
}
slips-near-end = { $balance-point ->
    [mass] { $reading } فقط: لا تقع نقطة بهذا القرب من طرف صاروخ طوله { $length }. قيسوا مرة أخرى.
   *[pressure] { $reading } فقط: لا تقع نقطة بهذا القرب من طرف قصاصة طولها { $length }. قيسوا مرة أخرى.
}
slips-from-tail = هل قُرئ هذا من الذيل؟ إذن فهو { $distance } من الأنف.
slips-from-nose = هل قُرئ هذا من الأنف؟ إذن فهو { $distance } من الذيل.
slips-left-out = أنتم تستبعدون هذه القراءة. اذكروا السبب.
slips-apart =
    هذه القراءة بعيدة عن القراءتين الأخريين. تبقى مسجَّلة. قرّروا هل تستبعدونها واذكروا السبب.
slips-only-one = قراءة واحدة لا تُظهر مدى اختلاف القراءات. خذوا قراءتين أخريين.
slips-not-counted = لا تُحسَب حتى تُغيَّر.
slips-not-used = لا يُستخدَم حتى يُغيَّر.
