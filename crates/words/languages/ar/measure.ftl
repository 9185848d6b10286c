measure-lead =
    قيسوا النقطتين من طرف الأنف على طول الجسم. الصاروخ فارغ. ثلاث قراءات لكلّ نقطة: ارفعوا
    المسطرة بين قراءة وأخرى.
measure-slip = القراءة { $number }: { $sentence }
measure-mass = مركز الكتلة
measure-pressure = مركز الضغط (من الجانب)
measure-mass-how = لفّوا الخيط حول الصاروخ حتى يتدلّى أفقيًّا. اقرؤوا عند الخيط.
measure-pressure-how = وازِنوا قصاصة الكرتون المسطّحة على حافة مسطرة. اقرؤوا عند الحافة.
measure-from = القياس من<aside>، { $balance-point ->
    [mass] مركز الكتلة
   *[pressure] مركز الضغط (من الجانب)
}</aside>
measure-from-nose = الأنف
measure-from-tail = الذيل
measure-guess = خمّنوا أولاً<aside> { $balance-point ->
    [mass] مركز الكتلة
   *[pressure] مركز الضغط (من الجانب)
}، من طرف الأنف، الوحدة: { $unit }</aside>
measure-guessed = كان تخمينكم { $distance } من الأنف.
measure-no-guess = لم يُسجَّل تخمين.
measure-reading = القراءة { $number }<aside>، { $balance-point ->
    [mass] مركز الكتلة
   *[pressure] مركز الضغط (من الجانب)
}، الوحدة: { $unit }</aside>
measure-apart = ماذا تفعلون بها؟
measure-keep-all = الاحتفاظ بكلّ القراءات
measure-leave-out = استبعاد القراءة { $number }
measure-why = لماذا؟
measure-middle = القيمة الوسطى: <b>{ $distance } من الأنف</b>.
measure-middle-both = القيمة الوسطى: <b>{ $distance } من الأنف</b> ({ $from-tail } من الذيل).
measure-range-none = قراءة واحدة لا مدى لها.
measure-range-close = القراءات متقاربة.
measure-range-spread = القراءات متباعدة: هل تقيسون مرة أخرى؟
measure-range = المدى: { $range } (من { $least } إلى { $most }).
measure-separation = المسافة المقيسة بين النقطتين: <b>{ $separation }</b>.
measure-widths = وهذا { $widths } من عرض الجسم.
measure-mass-nearer = مركز الكتلة أقرب إلى الأنف.
measure-pressure-nearer = مركز الضغط (من الجانب) أقرب إلى الأنف.
measure-neither-nearer = النقطتان في الموضع نفسه.
measure-too-close =
    <b>متقاربتان جدًّا.</b> مدى قراءات النقطتين متداخل: لا تستطيع هذه القراءات أن تحدّد أيّ نقطة
    أقرب إلى الأنف.
measure-beside = المقيس إلى جانب المحسوب
measure-beside-caption = من طرف الأنف: المقيس إلى جانب المحسوب
measure-head-what = ماذا
measure-head-measured = مقيس
measure-head-worked-out = محسوب
measure-head-difference = الفرق
measure-row-separation = المسافة بين النقطتين
measure-other-scale = القصاصة أصغر من الصاروخ أو أكبر منه
measure-rocket-length = طول الصاروخ<aside>، الوحدة: { $unit }</aside>
measure-cutout-length = طول القصاصة<aside>، الوحدة: { $unit }</aside>
measure-type-both = أدخلوا الطولين.
