rocket-begin = ابدؤوا بـ
rocket-begin-bottle = قارورتنا
rocket-begin-example = مثال
rocket-begin-open = رابط أو رمز أو ملف
rocket-open-file = ملف حُفظ من هنا
rocket-open-text = أو ألصقوا رابطًا أو نص ملف، أو اكتبوا رمزًا
rocket-open-pasted = فتح هذا النص

rocket-name = اسم الصاروخ (لا أسماؤكم)
rocket-units = الوحدات
rocket-how-much = مقدار ما يظهر
rocket-main-ones = الأهم فقط
rocket-all-measurements = كل القياسات

rocket-in-unit = بوحدة { $unit }
rocket-shape = الشكل
rocket-length = الطول
rocket-straight-part = الجزء المستقيم
rocket-shoulder = الكتف
rocket-neck = العنق
rocket-width = العرض
rocket-width-rear = العرض عند الطرف الخلفي
rocket-width-base = العرض عند القاعدة
rocket-front-end = الطرف الأمامي
rocket-front-open = مفتوح
rocket-front-closed = مغلق (قاع قارورة)
rocket-weighs = الكتلة
rocket-all-weigh = كتلتها كلها معًا
rocket-square-metre = كتلة المتر المربع
rocket-made-of = مصنوع من
rocket-weighed = وُزن بالميزان
rocket-another-sheet = صفيحة أخرى
rocket-weighed-with = وُزن مع الجزء الذي أمامه
rocket-how-many = العدد
rocket-fin-start = البداية، من طرف الأنف
rocket-fin-root = على طول الجسم
rocket-fin-root-trade = الجذر
rocket-fin-tip = الحافة الخارجية
rocket-fin-tip-trade = الطرف
rocket-fin-span = من الجسم إلى الخارج
rocket-fin-span-trade = الامتداد
rocket-fin-sweep = الميل إلى الخلف
rocket-fin-sweep-trade = الارتداد
rocket-turned-by = زاوية الدوران
rocket-outline = المحيط
rocket-four-sided = رباعي الأضلاع
rocket-by-corners = محيط خاص، زاوية زاوية
rocket-own-outline = { $corners ->
    [zero] محيط خاص له { $corners } زاوية: انظروا كل القياسات.
    [one] محيط خاص له زاوية واحدة: انظروا كل القياسات.
    [two] محيط خاص له زاويتان: انظروا كل القياسات.
    [few] محيط خاص له { $corners } زوايا: انظروا كل القياسات.
    [many] محيط خاص له { $corners } زاوية: انظروا كل القياسات.
   *[other] محيط خاص له { $corners } زاوية: انظروا كل القياسات.
}
rocket-corners = الزوايا بالترتيب: الأمامية على الجسم، ثم حول الخارج، ثم الخلفية على الجسم.
rocket-corner-field = { $corner-axis ->
    [along] الزاوية { $corner }، طولًا
   *[out] الزاوية { $corner }، إلى الخارج
}
rocket-corner-remove = إزالة<aside> الزاوية { $corner }</aside>
rocket-corner-add = إضافة زاوية
rocket-weights = الأثقال
rocket-what-it-is = ما هو
rocket-its-name = اسمه
rocket-middle = المنتصف، من طرف الأنف
rocket-measured = ما قيس على الصاروخ بعد بنائه
rocket-measured-note =
    اتركوا هذا فارغًا إلى أن يُبنى. ما تقيسونه يحل محل ما حُسب. أما الموضع الذي يتوازن عنده
    معلّقًا، والموضع الذي تتوازن عنده قصاصة الكرتون، فمكانهما في خطوة القياس.
rocket-whole-weighs = كتلة الصاروخ كله
rocket-bottle = القارورة

rocket-soft-tip = <b>اجعلوا الطرف ليّنًا ومدوّرًا.</b>
rocket-scissors = <b>المقص للكرتون فقط.</b> القوارير والبلاستيك والإسفنج وخشب البلسا يقصّها شخص بالغ. غطّوا الحواف بشريط لاصق.
rocket-taped = <b>في الداخل ومثبّت بشريط لاصق:</b> يجب ألّا ينفلت الثقل. لا شيء صلبًا أو حادًّا في الخارج.

rocket-part-button = { $move-or-copy ->
    [up] إلى الأمام<aside> { $part }</aside>
    [down] إلى الخلف<aside> { $part }</aside>
    [copy] نسخ<aside> { $part }</aside>
   *[remove] إزالة<aside> { $part }</aside>
}
rocket-add-nose = إضافة أنف
rocket-add-tube = إضافة أنبوب
rocket-add-taper = إضافة جزء متناقص
rocket-add-neck = إضافة عنق
rocket-add-fins = إضافة زعانف
rocket-add-weight = إضافة ثقل

rocket-dome = قاع قارورة
rocket-dome-trade = أنف: قاع قارورة (قبّة)
rocket-egg = بيضة
rocket-egg-trade = أنف: بيضة (مجسّم قطع ناقص)
rocket-ogive = قوس مدبّب
rocket-ogive-trade = أنف: قوس مدبّب (أوجيف)
rocket-paraboloid = قوس مدوّر
rocket-paraboloid-trade = أنف: قوس مدوّر (مجسّم قطع مكافئ)
rocket-cone = مستقيم إلى الرأس
rocket-cone-trade = أنف: مستقيم إلى الرأس (مخروط)

rocket-tube = أنبوب
rocket-straight-taper = جزء متناقص، مستقيم
rocket-rounded-taper = جزء متناقص، مدوّر (كتف)
rocket-neck-shape = عنق
