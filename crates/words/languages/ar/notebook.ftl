notebook-holds = { $count ->
    [zero] لا محاولات
    [one] محاولة واحدة
    [two] محاولتان
    [few] { $count } محاولات
    [many] { $count } محاولة
   *[other] { $count } محاولة
}
notebook-holds-of = { $count ->
    [zero] لا محاولات، { $name }
    [one] محاولة واحدة، { $name }
    [two] محاولتان، { $name }
    [few] { $count } محاولات، { $name }
    [many] { $count } محاولة، { $name }
   *[other] { $count } محاولة، { $name }
}
notebook-is-open = هذا دفتر { $group }: { $holds }.
notebook-twin = يوجد هنا دفتر آخر باسم { $group } أيضًا: أعطوا أحدهما اسمًا آخر.
notebook-taken = يوجد هنا دفتر آخر باسم { $group } أيضًا. هل هو لكم؟
notebook-two-tabs = كتب تبويب آخر في هذا الدفتر أيضًا. دفتركم محفوظ إلى جانبه كدفتر مستقلّ.
notebook-unreadable = المحفوظ هناك ليس دفترًا تستطيع هذه النسخة من الصفحة قراءته. سيبقى كما هو.
notebook-is-deleted = حُذف دفتر { $group } من هذا الحاسوب.
notebook-open-already = هذا الدفتر مفتوح أصلاً.
notebook-is-here = وصل دفتر { $group }.
notebook-of-several = رقم { $number } من { $count }: { $sentence }
notebook-not-opened = لم يُفتح: { $names }. تعرض الصفحة صاروخًا واحدًا: افتحوا كلاًّ وحده.
notebook-nameless = صاروخ بلا اسم
notebook-reading-fault = القراءة { $number }: { $fault } وحتى ذلك الحين لا تُحسَب.
notebook-guess-fault = تخمينكم: { $fault }
notebook-rocket-fault = طول الصاروخ: { $fault }
notebook-cutout-fault = طول القصاصة: { $fault }
