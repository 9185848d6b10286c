columns-kind = نوع الصف
columns-group = المجموعة
columns-trial = المحاولة
columns-compared-with = المقارنة مع المحاولة
columns-plan = الخطة
columns-rocket = الصاروخ
columns-rocket-name = اسم الصاروخ
columns-rocket-length = طول الصاروخ (mm)
columns-cutout-length = طول القصاصة (mm)

columns-from = { $balance-point ->
    [mass] مركز الكتلة: القياس من
   *[pressure] مركز الضغط: القياس من
}
columns-guess = { $balance-point ->
    [mass] مركز الكتلة: التخمين (mm)
   *[pressure] مركز الضغط: التخمين (mm)
}
columns-reading = { $balance-point ->
    [mass] مركز الكتلة: القراءة { $number } (mm)
   *[pressure] مركز الضغط: القراءة { $number } (mm)
}
columns-left-out = { $balance-point ->
    [mass] مركز الكتلة: القراءة المستبعدة
   *[pressure] مركز الضغط: القراءة المستبعدة
}
columns-left-out-reason = { $balance-point ->
    [mass] مركز الكتلة: سبب الاستبعاد
   *[pressure] مركز الضغط: سبب الاستبعاد
}
columns-middle = { $balance-point ->
    [mass] مركز الكتلة: القيمة الوسطى من الأنف (mm)
   *[pressure] مركز الضغط: القيمة الوسطى من الأنف (mm)
}
columns-range = { $balance-point ->
    [mass] مركز الكتلة: المدى (mm)
   *[pressure] مركز الضغط: المدى (mm)
}
columns-measured-separation = المسافة المقيسة بين النقطتين (mm)
columns-computed-separation = المسافة المحسوبة بين النقطتين (mm)

columns-prediction = التوقّع { $number }
columns-because = التوقّع { $number }: لأنّ
columns-swings-seen = التوقّع { $number }: تدويرات سبقته
columns-draft = لم يُثبَّت بعد
columns-draft-because = لم يُثبَّت بعد: لأنّ
columns-string = الخيط (m)
columns-arm = الذراع (m)
columns-turns = الدورات في الثانية
columns-air-density = كثافة الهواء (g/m³)
columns-swing = التدوير { $number }
columns-all-swings = التدويرات كلّها معًا
columns-taken-back = ما جرى التراجع عنه { $number }
columns-note = ملاحظة

columns-seal = الختم
columns-altered = غُيّر يدويًّا
columns-place = الموضع في الدفتر
columns-version = إصدار الجدول
columns-level = المستوى
columns-help = المساعدة في كتابة الخلاصة
columns-two-changes = تغييران معًا
columns-in-hand = المحاولة الجارية
columns-telling = ما يُقال ومتى
columns-set-up = إعداد الدرس
