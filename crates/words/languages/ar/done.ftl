done-name = اسم الصاروخ.
done-weighed = كتلة الصاروخ كله أو اسم.
done-another = صاروخ آخر.
done-another-named = صاروخ آخر، { $name }.
done-swung = طريقة تدوير الصاروخ.
done-trial = { $trial-deed ->
    [begun] بدء المحاولة { $trial }.
    [brought-back] استعادة المحاولة { $trial }.
    [deleted] حذف المحاولة { $trial }.
   *[taken-back] إلغاء المحاولة { $trial }.
}
done-written = { $statement ->
    [claim] الادّعاء.
    [evidence] الدليل.
    [reason] السبب.
   *[trust] الثقة.
}
done-order = ترتيب المحاولات.
done-plans = الخطط.
done-group = اسم المجموعة.
done-in-hand = المحاولة المفتوحة.
done-settings = الإعدادات.
done-reading = { $balance-point ->
    [mass] القراءة { $reading } لمركز الكتلة.
   *[pressure] القراءة { $reading } لمركز الضغط (من الجانب).
}
done-guess = { $balance-point ->
    [mass] تخمين مركز الكتلة.
   *[pressure] تخمين مركز الضغط (من الجانب).
}
done-how-read = { $balance-point ->
    [mass] طريقة قراءة مركز الكتلة.
   *[pressure] طريقة قراءة مركز الضغط (من الجانب).
}
done-lengths = الأطوال.
done-choice = الاختيار.
done-reason = السبب.
done-note = الملاحظة.
done-compared = ما تُقارَن به.
done-other = شيء فيها.
