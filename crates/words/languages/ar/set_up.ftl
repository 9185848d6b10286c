places-set-up = إعداد الدرس
set-up-lead = لكلّ شيء قيمة معتادة: الرابط يعمل فورًا ويتغيّر مع ما تختارونه.
set-up-class = الصفّ
set-up-question-card = السؤال
set-up-rules-card = القواعد
set-up-hall-card = الخيط والقاعة
set-up-page-card = الصفحة
set-up-places-card = الأماكن الظاهرة
set-up-kit-card = الأدوات والأوقات
set-up-open-card = تعديل إعداد سابق
set-up-pupils = التلاميذ
set-up-size = في مجموعات من
set-up-groups =
    { $count ->
        [zero] لا مجموعات
        [one] مجموعة واحدة
        [two] مجموعتان
        [few] { $count } مجموعات
        [many] { $count } مجموعة
       *[other] { $count } مجموعة
    }
set-up-labels = الأسماء
set-up-labels-colours = لون لكلّ مجموعة: أحمر 1، …
set-up-labels-numbers = { $first }، { $second }، …
set-up-language = اللغة
set-up-language-any = لغة كلّ حاسوب
set-up-units = الوحدات
set-up-units-metric = mm و g
set-up-units-inch = بوصات وأونصات
set-up-telling-all = كلّ شيء فورًا
set-up-telling-verdict = النتيجة بعد التوقّع
set-up-telling-points = كلٌّ بعد خطوته
set-up-rocket = يبدأ بـ
set-up-rocket-this = { $name }
set-up-rocket-nameless = الصاروخ الذي على الصفحة
set-up-rocket-take = خذ الصاروخ الذي على الصفحة
set-up-own = سؤال خاص …
set-up-own-label = سؤالكم
set-up-change = <b>ما يتغيّر:</b>
set-up-keep = <b>ما يبقى:</b>
set-up-expect = <b>المتوقّع:</b>
set-up-minutes =
    { $minutes ->
        [zero] بلا وقت لكلّ مجموعة، مع القياس والتدوير من جديد.
        [one] نحو دقيقة لكلّ مجموعة، مع القياس والتدوير من جديد.
        [two] نحو دقيقتين لكلّ مجموعة، مع القياس والتدوير من جديد.
        [few] نحو { $minutes } دقائق لكلّ مجموعة، مع القياس والتدوير من جديد.
        [many] نحو { $minutes } دقيقة لكلّ مجموعة، مع القياس والتدوير من جديد.
       *[other] نحو { $minutes } دقيقة لكلّ مجموعة، مع القياس والتدوير من جديد.
    }
set-up-may-change = ما يجوز تغييره (مضغوط = نعم):
set-up-two = تغييران معًا
set-up-added = أقصى ثقل مضاف
set-up-added-hint = فارغ: بلا حدّ.
set-up-code-of-rules = هذه هي <b>القواعد { $rules }</b>. تحمل النتائج هذا الاسم، وتُقارن تحت القواعد نفسها.
set-up-hall = القاعة، العرض الخالي
set-up-string = أطول خيط
set-up-turns = أقصى عدد من الدورات في الثانية
set-up-places-hint = الأماكن المضغوطة ظاهرة في المسار. يبقى التوقّع حيث يوجد التدوير.
set-up-bounds = عدد من { $least } إلى { $most } من فضلكم. وحتى ذلك الحين يحتفظ الرابط بالعدد السابق.
set-up-room-needed = خيط طوله { $string } مع { $turns } يحتاج إلى عرض خالٍ قدره { $across }.
set-up-room-ask = قيسوا العرض الخالي للقاعة لتروا ما يناسبها.
set-up-room-fits = يتّسع له عرض { $across }.
set-up-room-none = لا يتّسع له عرض { $across }.
set-up-room-same = بعدد الدورات نفسه يناسب خيط طوله { $string } ({ $turns }).
set-up-room-longest = أطول ما يناسب: { $string } مع { $turns }.
set-up-room-fastest = أسرع ما يناسب: { $turns } مع { $string }.
set-up-room-narrow = لا يناسب أيّ خيط. أضيق قاعة لهذا الصاروخ عرضها { $across }: اخرجوا إلى الهواء الطلق أو اختاروا صاروخًا أصغر.
set-up-room-pull = هذا الصاروخ يشدّ بقوة زائدة مع أيّ خيط. اختاروا صاروخًا أخفّ.
set-up-room-take = استعمال { $string }، { $turns }
set-up-governing =
    القرار للقواعد المحلية ولتقييم المخاطر في مدرستكم ولشخص مؤهَّل. أما هذه الصفحة فلا تقرّر.
set-up-link = رابط الصفّ
set-up-copy = نسخ الرابط
set-up-save = حفظ
set-up-to-paper = البطاقات وقائمة الأدوات وسائر الأوراق
set-up-link-is = رابط واحد للجميع: يسأل كلّ مجموعة عن اسمها. وعلى البطاقات المطبوعة رابط لكلّ مجموعة.
set-up-code = الرمز للكتابة باليد
set-up-too-long = في هذا الصاروخ أجزاء كثيرة لا يتّسع لها رابط من { $most } حرف. اختاروا صاروخًا آخر للبداية، أو ارسموا الزعانف بزوايا أقلّ.
set-up-saved = حُفظ باسم { $file }: يُفتح من جديد هنا وتحت «فتح».
set-up-open = ألصقوا رابطه أو رمزه
set-up-open-wrong = هذا ليس إعدادًا لدرس.
set-up-opened = هذا الإعداد في الاستمارة الآن.
set-up-back = العودة إلى السابق
set-up-label-open = <b>{ $group }:</b> وجّهوا الكاميرا إلى هنا، أو اكتبوا الرمز تحت «رابط أو رمز أو ملف».
set-up-label-rules = القواعد { $rules }. اسم مجموعتكم يحلّ محلّ الأسماء.
set-up-sheet = بطاقات للقصّ
lead-set-up = رابط واحد لصفّ كامل: المجموعات والسؤال والقواعد واللغة وما يظهر.
lead-under-rules = دفتر { $group } تحت القواعد { $rules }: التفصيل والمساعدة وما يُقال ومتى والاختبار العادل محدّدة.
lead-lift = تحرير هذا الدفتر من الإعداد
lead-lifted = هذا الدفتر حرّ الآن. تقول نتائجه إنها بلا قواعد.
