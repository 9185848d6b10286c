strip-apart = المسافة <value>{ $separation }</value>
strip-wrong-way = المسافة <value>{ $separation }</value> بالترتيب الخاطئ
strip-in-view = <aside>أثناء دورانه حول محوره؛ </aside>في هذا المنظر { $separation }
strip-body-widths = { $widths } من عرض الجسم
strip-likely = على الأرجح من { $low } إلى { $high }
strip-likely-open = على الأرجح …

strip-measure-first = <b>قيسوا أولًا.</b> تظهر النتيجة المحسوبة هنا بعد أن تقيسوها.
strip-predict-first = <b>توقّعوا أولًا.</b> ماذا سيفعل وهو معلّق بخيطه؟
strip-stale-readings = قراءاتكم للصاروخ كما كان قبل أن تغيّروه.
strip-last-drawn = <b>هذا آخر صاروخ أمكن رسمه.</b> صحّحوا ما هو معلَّم.

strip-mass-nearer = مركز الكتلة أقرب إلى الأنف.
strip-pressure-nearer = الترتيب خاطئ: مركز الضغط أقرب إلى الأنف.
strip-same-place = النقطتان في الموضع نفسه.

strip-spoken = المسافة بين النقطتين { $separation }.

strip-point = { $of-points ->
    [mass] مركز الكتلة { $place }
   *[pressure] مركز الضغط (من الجانب) { $place }
}
strip-point-measured = { $of-points ->
    [mass] مركز الكتلة: المقيس <b>{ $measured }</b>؛ المحسوب { $worked-out }
   *[pressure] مركز الضغط (من الجانب): المقيس <b>{ $measured }</b>؛ المحسوب { $worked-out }
}{ $differs ->
    [differs] <b>: القيمتان مختلفتان</b>
   *[agrees] {""}
}
strip-point-range = { $of-points ->
    [mass] مركز الكتلة: المقيس <b>{ $measured }</b>، من { $least } إلى { $most }؛ المحسوب { $worked-out }
   *[pressure] مركز الضغط (من الجانب): المقيس <b>{ $measured }</b>، من { $least } إلى { $most }؛ المحسوب { $worked-out }
}{ $differs ->
    [differs] <b>: القيمتان مختلفتان</b>
   *[agrees] {""}
}

strip-nothing-drawn = لا يمكن رسم هذا الصاروخ بعد: صحّحوا أولًا ما هو مذكور أدناه.
