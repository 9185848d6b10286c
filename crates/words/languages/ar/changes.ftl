change-section = { $came ->
    [added] إضافة
   *[removed] إزالة
} { $card }: الطول { $length }، { $mass }.
change-nose = { $came ->
    [added] إضافة
   *[removed] إزالة
} { $card }: { $shape }، الطول { $length }، { $mass }.
change-fins = { $came ->
    [added] إضافة
   *[removed] إزالة
} { $card }: { $count ->
    [zero] بلا زعانف
    [one] زعنفة واحدة
    [two] زعنفتان
    [few] { $count } زعانف
    [many] { $count } زعنفة
   *[other] { $count } زعنفة
}، { $sizes }، { $mass }.
change-fin-size = { $fin-size ->
    [root] الجذر
    [tip] الطرف
    [span] الامتداد
    [sweep] الارتداد
   *[length] الطول
} { $size }
change-weight = { $came ->
    [added] إضافة ثقل
   *[removed] إزالة ثقل
}: { $name }، { $mass }، على بُعد { $place } من طرف الأنف.
change-nameless-weight = { $came ->
    [added] إضافة ثقل
   *[removed] إزالة ثقل
}: { $mass }، على بُعد { $place } من طرف الأنف.
change-value = { $card }: { $aspect ->
    [length] الطول
    [width] العرض
    [mass] الكتلة
    [material] المادة
    [shape] الشكل
    [number] العدد
    [outline] المحيط
    [corners] الزوايا
   *[middle] المنتصف
} { $from } ← { $to }.
change-front = { $card }: الطرف الأمامي { $front ->
    [opened] مغلق ← مفتوح
   *[closed] مفتوح ← مغلق
}.
change-corners-moved = { $card }: الزوايا التي نُقلت { $moved } من { $corners }.
change-fin-values = { $card }: { $values }.
change-fin-value = { $fin-value ->
    [root] الجذر
    [tip] الطرف
    [span] الامتداد
    [sweep] الارتداد
    [start] البداية
   *[turned] زاوية الدوران
} { $from } ← { $to }
change-swing = التدوير: { $swing-value ->
    [string] الخيط
    [arm] الذراع
    [turns] السرعة
   *[density] كثافة الهواء
} { $from } ← { $to }.
change-along = تحرّك معه: { $parts }.

change-not-known = غير معروف
change-sheet = صفيحة كتلتها { $density } g/m²
change-corners = { $corners ->
    [zero] { $corners } زاوية
    [one] زاوية واحدة
    [two] زاويتان
    [few] { $corners } زوايا
    [many] { $corners } زاوية
   *[other] { $corners } زاوية
}
change-shape = { $section-shape ->
    [cone] مخروط
    [ogive] أوجيف
    [ellipsoid] مجسّم قطع ناقص
    [paraboloid] مجسّم قطع مكافئ
    [dome] قبّة
    [tube] أنبوب
    [straight-taper] جزء متناقص مستقيم
    [rounded-taper] جزء متناقص مدوّر
   *[neck] عنق
}

changed-added = { $changed-part ->
    [nose] إضافة أنف
    [body] إضافة جزء للجسم
    [taper] إضافة جزء متناقص
    [neck] إضافة عنق
    [bottle] إضافة قارورة
    [fins] إضافة زعانف
   *[weight] إضافة ثقل
}
changed-removed = { $changed-part ->
    [nose] إزالة الأنف
    [body] إزالة جزء من الجسم
    [taper] إزالة الجزء المتناقص
    [neck] إزالة العنق
    [bottle] إزالة القارورة
    [fins] إزالة الزعانف
   *[weight] إزالة ثقل
}
changed-shape = { $changed-part ->
    [nose] شكل الأنف
    [taper] شكل الجزء المتناقص
    [neck] شكل العنق
    [fins] شكل الزعانف
   *[body] شكل الجسم
}
changed-length = { $changed-part ->
    [nose] طول الأنف
    [taper] طول الجزء المتناقص
    [neck] طول العنق
   *[body] طول الجسم
}
changed-width = { $changed-part ->
    [nose] عرض الأنف
    [taper] عرض الجزء المتناقص
    [neck] عرض العنق
   *[body] عرض الجسم
}
changed-mass = { $changed-part ->
    [nose] كتلة الأنف
    [body] كتلة الجسم
    [taper] كتلة الجزء المتناقص
    [neck] كتلة العنق
    [bottle] كتلة القارورة
    [fins] كتلة الزعانف
   *[weight] كتلة الثقل
}
changed-front = { $changed-part ->
    [nose] الطرف الأمامي للأنف
    [taper] الطرف الأمامي للجزء المتناقص
    [neck] الطرف الأمامي للعنق
   *[body] الطرف الأمامي للجسم
}
changed-fin-number = عدد الزعانف
changed-place = { $changed-part ->
    [fins] موضع الزعانف
   *[weight] موضع الثقل
}
changed-swing = { $swing-value ->
    [string] طول الخيط
    [arm] طول الذراع
    [turns] سرعة التدوير
   *[density] كثافة الهواء
}
