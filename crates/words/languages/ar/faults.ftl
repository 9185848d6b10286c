faults-to-mend = { $count ->
    [zero] لا شيء يحتاج إلى تصحيح
    [one] شيء واحد يحتاج إلى تصحيح
    [two] شيئان يحتاجان إلى تصحيح
    [few] { $count } أشياء تحتاج إلى تصحيح
    [many] { $count } شيئًا يحتاج إلى تصحيح
   *[other] { $count } شيء يحتاج إلى تصحيح
}
faults-scroll = (مرّر هنا)
faults-line = <button>{ $field }</button>: { $sentence }

faults-rocket-name = اسم الصاروخ
faults-body = الجسم
faults-fins = الزعانف
faults-weights = الأثقال
faults-measured = ما قيس
faults-bottle = القارورة
faults-field = { $measure ->
    [shape] { $card }، الشكل
    [length] { $card }، الطول
    [width] { $card }، العرض
    [front-end] { $card }، الطرف الأمامي
    [mass] { $card }، الكتلة
    [how-many] { $card }، العدد
    [start] { $card }، البداية
    [turned-by] { $card }، زاوية الدوران
    [along-the-body] { $card }، على طول الجسم
    [outer-edge] { $card }، الحافة الخارجية
    [out-from-the-body] { $card }، من الجسم إلى الخارج
    [slants-back-by] { $card }، الميل إلى الخلف
    [outline] { $card }، المحيط
    [name] { $card }، الاسم
   *[place] { $card }، الموضع
}
