report-view = التقارير
report-paper = على الورق
report-print-groups = طباعة تقارير كلّ المجموعات
report-print-class = طباعة تقرير الصفّ
report-paper-hint =
    صفحة لكلّ مجموعة أو صفحتان: محاولاتها وما كتبته وما وجدتموه فيه عند المراجعة. بلا أسماء ولا
    درجات.
report-tables = لبرنامج جداول: سطر لكلّ محاولة
report-tables-hint = ما كتبته المجموعات وما وجدتموه فيه محفوظ في ملف الصفّ كلّه: حيث تُجمع النتائج.
report-table-point = جدول في ملف، 12.5 بنقطة
report-table-comma = جدول في ملف، 12,5 بفاصلة
report-copy-point = نسخ الجدول بنقاط عشرية
report-copy-comma = نسخ الجدول بفواصل عشرية
report-text = كنصّ عادي
report-text-class = الصفّ كنصّ
report-text-groups = كلّ المجموعات كنصّ
report-saved =
    حُفظ باسم { $name }، إذا كان هذا الحاسوب يسمح بالتنزيل. ابحثوا في مجلد التنزيلات.

report-rules = أُنجز وفق القواعد { $rules }.
report-no-permission =
    التدوير الجيّد ليس إذنًا بالإطلاق. القرار للقواعد المحلية ولتقييم المخاطر في مدرستكم ولشخص مؤهَّل.
report-of = تقرير { $name }
report-of-class = تقرير الصفّ
report-of-class-called = تقرير الصفّ { $label }
report-along =
    { $how-known ->
        [measured] بالمسافة بين النقطتين كما قيست:
       *[worked-out] بالمسافة بين النقطتين كما حُسبت:
    }
report-trials = المحاولات
report-found = ما وُجد فيه
report-found-in-all = ما وُجد في الدفاتر
report-found-in = { $statement } في { $count } من { $of } من الدفاتر.
report-trial = المحاولة { $trial }.
report-trial-of = { $whose }.
report-changed = ما تغيّر: { $what }.
report-measured = المسافة المقيسة: { $separation }.
report-worked-out = المسافة المحسوبة: { $separation }.
report-predicted = التوقّع: { $outcome }.
report-seen = ما شوهد: { $outcome }.
report-conclusion = ما استنتجته المجموعة
report-plans = ما تنوي تجربته
report-wrote = { $statement }: { $said }
report-only-numbers = وصلت من هذه المجموعة أرقام فقط دون كلمات.

report-column-class = الصفّ
report-column-changed = ما تغيّر
report-column-changes = عدد التغييرات
report-column-rules = القواعد
report-column-width = عرض الجسم (mm)
report-column-mass = الكتلة (g)
report-column-mass-computed = مركز الكتلة: محسوب من الأنف (mm)
report-column-pressure-computed = مركز الضغط: محسوب من الأنف (mm)
report-column-mass-readings = مركز الكتلة: عدد القراءات
report-column-pressure-readings = مركز الضغط: عدد القراءات
report-column-prediction = التوقّع
report-column-seen-before = تدويرات شوهدت قبل التوقّع
report-column-two-allowed = يُسمح بتغييرين
report-column-swung-first = دُوّر قبل التوقّع
report-column-example = مُختلَق
report-column-hidden = متروك
report-column-marked = معلَّم
report-column-nose-first = طار والأنف أولاً
report-column-delete-by = يُحذف في
report-column-notebook = الدفتر كاملاً
report-column-statements = العبارات الموجودة
