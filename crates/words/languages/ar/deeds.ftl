deed-added = { $changed-part ->
    [nose] أُضيف أنف.
    [body] أُضيف جزء إلى الجسم.
    [taper] أُضيف جزء متناقص.
    [neck] أُضيف عنق.
    [bottle] أُضيفت قارورة.
    [fins] أُضيفت زعانف.
   *[weight] أُضيف ثقل.
}
deed-removed = { $changed-part ->
    [nose] أُزيل الأنف.
    [body] أُزيل جزء من الجسم.
    [taper] أُزيل الجزء المتناقص.
    [neck] أُزيل العنق.
    [bottle] أُزيلت القارورة.
    [fins] أُزيلت زعانف.
   *[weight] أُزيل ثقل.
}
deed-length = صار { $changed-part ->
    [nose] الأنف
    [taper] الجزء المتناقص
    [neck] العنق
   *[body] الجسم
} { $how-much ->
    [more] أطول
   *[less] أقصر
}.
deed-width = صار { $changed-part ->
    [nose] الأنف
    [taper] الجزء المتناقص
    [neck] العنق
   *[body] الجسم
} { $how-much ->
    [more] أعرض
   *[less] أضيق
}.
deed-weight = { $changed-part ->
    [nose] صار الأنف
    [body] صار الجسم
    [taper] صار الجزء المتناقص
    [neck] صار العنق
    [bottle] صارت القارورة
    [fins] صارت الزعانف
   *[weight] صار الثقل
} { $how-much ->
    [more] أثقل
   *[less] أخفّ
}.
deed-mass = { $changed-part ->
    [nose] تغيّرت كتلة الأنف.
    [body] تغيّرت كتلة الجسم.
    [taper] تغيّرت كتلة الجزء المتناقص.
    [neck] تغيّرت كتلة العنق.
    [bottle] تغيّرت كتلة القارورة.
    [fins] تغيّرت كتلة الزعانف.
   *[weight] تغيّرت كتلة الثقل.
}
deed-shape = { $changed-part ->
    [nose] تغيّر شكل الأنف.
    [taper] تغيّر شكل الجزء المتناقص.
    [neck] تغيّر شكل العنق.
    [fins] تغيّر شكل الزعانف.
   *[body] تغيّر شكل الجسم.
}
deed-front = { $changed-part ->
    [nose] تغيّر الطرف الأمامي للأنف.
    [taper] تغيّر الطرف الأمامي للجزء المتناقص.
    [neck] تغيّر الطرف الأمامي للعنق.
   *[body] تغيّر الطرف الأمامي للجسم.
}
deed-moved = { $changed-part ->
    [fins] نُقلت الزعانف
   *[weight] نُقل ثقل
} { $moved-way ->
    [back] إلى الخلف
   *[forward] إلى الأمام
}.
deed-fin-number = { $how-much ->
    [more] زاد عدد الزعانف.
   *[less] نقص عدد الزعانف.
}
deed-fin-size = { $how-much ->
    [more] صارت الزعانف أكبر.
   *[less] صارت الزعانف أصغر.
}
deed-fins-turned = أُديرت الزعانف حول الجسم.
deed-string = { $how-much ->
    [more] صار الخيط أطول.
   *[less] صار الخيط أقصر.
}
deed-turns = { $how-much ->
    [more] دُوّر الصاروخ أسرع.
   *[less] دُوّر الصاروخ أبطأ.
}
deed-arm = تغيّر طول الذراع.
deed-density = تغيّرت كثافة الهواء.
