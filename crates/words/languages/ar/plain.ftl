plain-notebook = دفتر المجموعة { $group }
plain-level = المستوى: { $level }.
plain-help = المساعدة في كتابة الخلاصة: { $help }.
plain-two-changes = تغييران معًا: { $allowed ->
    [allowed] مسموح
   *[not-allowed] غير مسموح
}.
plain-telling = ما يُقال ومتى: { $telling }.
plain-altered = أُخذت محاولات من الدفتر أو أُضيفت إليه يدويًّا خارج الصفحة.
plain-in-hand = الجارية: المحاولة { $trial }.

plain-trial = المحاولة { $trial }: { $name }
plain-deleted = المحاولة { $trial } (محذوفة): { $name }
plain-compared = المقارنة مع المحاولة { $trial }.
plain-compared-with-none = لا مقارنة مع محاولة أخرى.
plain-plan = الخطة: { $plan }
plain-note = ملاحظة: { $note }
plain-trial-altered = غُيّر شيء في هذه المحاولة يدويًّا خارج الصفحة.

plain-not-predicted = التوقّع: لا شيء بعد.
plain-predicted = { $count ->
    [zero] التوقّع قبل أيّ تدوير: { $outcome }.
    [one] التوقّع بعد تدوير واحد: { $outcome }.
    [two] التوقّع بعد تدويرين: { $outcome }.
    [few] التوقّع بعد { $count } تدويرات: { $outcome }.
    [many] التوقّع بعد { $count } تدويرًا: { $outcome }.
   *[other] التوقّع بعد { $count } تدوير: { $outcome }.
}
plain-later = { $count ->
    [zero] لاحقًا، قبل أيّ تدوير: { $outcome }.
    [one] لاحقًا، بعد تدوير واحد: { $outcome }.
    [two] لاحقًا، بعد تدويرين: { $outcome }.
    [few] لاحقًا، بعد { $count } تدويرات: { $outcome }.
    [many] لاحقًا، بعد { $count } تدويرًا: { $outcome }.
   *[other] لاحقًا، بعد { $count } تدوير: { $outcome }.
}
plain-draft = مكتوب ولم يُثبَّت: { $outcome }.
plain-draft-empty = مكتوب ولم يُثبَّت: دون نتيجة.
plain-because = لأنّ: { $because }

plain-rocket-length = طول الصاروخ: { $mm } mm.
plain-cutout-length = طول القصاصة: { $mm } mm.
plain-guess = { $balance-point ->
    [mass] تخمين مركز الكتلة: { $mm } mm من الأنف.
   *[pressure] تخمين مركز الضغط (من الجانب): { $mm } mm من الأنف.
}
plain-readings = { $balance-point ->
    [mass] قراءات مركز الكتلة
   *[pressure] قراءات مركز الضغط (من الجانب)
}، { $from-end ->
    [nose] من الأنف
   *[tail] من الذيل
}: { $readings }.
plain-reading = { $mm } mm
plain-no-reading = لا شيء
plain-left-out = استُبعدت القراءة { $number }.
plain-not-true = القراءة { $number } لا تُحسَب: لا يمكن أن تصحّ لهذا الصاروخ.
plain-middle = القيمة الوسطى: { $mm } mm من الأنف، المدى { $range } mm.
plain-measured-separation = المسافة المقيسة بين النقطتين: { $mm } mm.
plain-measured-overlap =
    المسافة المقيسة بين النقطتين: { $mm } mm؛ وقراءات النقطتين متداخلة.
plain-computed-separation = المسافة المحسوبة بين النقطتين: { $mm } mm.

plain-taken-back = جرى التراجع عنه لأنه سُجّل خطأً: { $outcomes }.
plain-not-swung = التدويرات: لا شيء بعد.
plain-swings = التدويرات، { $counted } من { $wanted }: { $outcomes }.
plain-together = كلّها معًا: { $outcome }.
plain-swung =
    التدوير بخيط طوله { $string } m وذراع طولها { $arm } m، عدد الدورات في الثانية { $turns }،
    في هواء كثافته { $density } kg/m³.

plain-plans = الخطط
plain-conclusion = الخلاصة
plain-statement = { $statement }: { $said }
plain-no-statement = { $statement }: لا شيء بعد.
plain-table-follows = احتفظوا بما يلي: به تفتح هذه الصفحة الدفتر من جديد.
