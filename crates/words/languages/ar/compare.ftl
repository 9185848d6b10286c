compare-no-trial = لا توجد محاولة بعد. قيسوا وتوقّعوا ودوّروا: عندئذ تظهر النتائج هنا.
compare-trial = المحاولة { $trial }
compare-trial-of = المحاولة { $trial }: { $name }
compare-planned = المخطَّط: { $plan }
compare-note = فعل ذلك لأنّ … وأيّ شيء آخر تريدون تذكّره.
compare-we-thought = ظننّا
compare-we-saw = رأينا
compare-together = الخلاصة
compare-nothing-thought = لا شيء
compare-not-counted = { $outcome } (لا يُحسَب)
compare-as-predicted = فعل ما توقّعتموه. هل كان سببكم صحيحًا أيضًا؟
compare-not-as-predicted = فعل شيئًا آخر: لقد اكتشفتم شيئًا الآن. ما السبب يا ترى؟
compare-moment = العزوم: من الجانب يدفع الهواء عند مركز الضغط، على بُعد { $distance } ({ $how-known ->
    [measured] مقيس
   *[worked-out] محسوب
}) من مركز الكتلة. الدفع × هذه المسافة يدير الصاروخ: { $goes-back ->
    [tail] يتراجع ذيله ويتّجه أنفه نحو الهواء.
   *[nose] يتراجع أنفه ويتّجه ذيله نحو الهواء.
} تمثّل القصاصة هواءً قادمًا من الجانب تمامًا؛ أمّا عند الطيران المستقيم فيدفع الهواء في موضع آخر. وإذا كان في الداخل ماء فمركز الكتلة في موضع آخر ويتحرّك.
compare-next = ما سنجرّبه بعد ذلك
compare-begin-plan = البدء به بالصاروخ أعلاه<aside>: { $plan }</aside>
compare-remove-plan = حذفه من القائمة<aside>: { $plan }</aside>
compare-one-change = تغيير واحد لتجربته
compare-plan-example = زعانف أكبر
compare-add-plan = إضافته
compare-write-first = اكتبوا أولاً ما ستجرّبونه.
compare-trials = المحاولات
compare-trials-of = محاولات { $group }
compare-head-trial = المحاولة
compare-head-changed = ما تغيّر
compare-head-nearer = الأقرب إلى الأنف
compare-head-separation = المسافة بين النقطتين
compare-head-widths = بعرض الجسم
compare-head-mass = الكتلة
compare-head-predicted = توقّعنا
compare-head-do = الإجراءات
compare-in-hand = (مفتوحة الآن)
compare-later = لاحقًا:
compare-nothing-yet = لا شيء بعد
compare-swung-first = دُوّر قبل التوقّع
compare-altered = غُيّر يدويًّا خارج الصفحة
compare-seen = { $outcome } <aside>({ $seen } من { $swings })</aside>
compare-swings = { $swings ->
    [zero] (لا تدوير)
    [one] (تدوير واحد)
    [two] (تدويران)
    [few] ({ $swings } تدويرات)
    [many] ({ $swings } تدويرًا)
   *[other] ({ $swings } تدوير)
}
compare-taken-back = تُراجع عنه: { $outcomes }
compare-open = فتح<aside> المحاولة { $trial }</aside>
compare-copy = نسخ<aside> المحاولة { $trial }</aside>
compare-pair = جنبًا إلى جنب<aside>، المحاولة { $trial }</aside>
compare-delete = حذف<aside> المحاولة { $trial }</aside>
compare-move-up = نقل المحاولة { $trial } إلى الأعلى
compare-move-down = نقل المحاولة { $trial } إلى الأسفل
compare-baseline = المحاولة الأساسية
compare-nothing-changed = لا شيء
compare-changes = { $count ->
    [zero] لا تغيير
    [one] تغيير واحد
    [two] تغييران
    [few] { $count } تغييرات
    [many] { $count } تغييرًا
   *[other] { $count } تغيير
}
compare-changes-allowed = { $count ->
    [zero] لا تغيير (مسموح)
    [one] تغيير واحد (مسموح)
    [two] تغييران (مسموح بهما)
    [few] { $count } تغييرات (مسموح بها)
    [many] { $count } تغييرًا (مسموح بها)
   *[other] { $count } تغيير (مسموح بها)
}
compare-since = منذ المحاولة { $trial }
compare-too-close = متقاربتان جدًّا
compare-mass = مركز الكتلة
compare-pressure = مركز الضغط
compare-one-place = كلتاهما في موضع واحد
compare-measured = { $separation } (مقيسة)
compare-worked-out = { $separation } (محسوبة)
compare-notebook-altered =
    أُخذت محاولات من هذا الدفتر أو أُضيفت إليه يدويًّا خارج الصفحة. علامة كهذه تدلّ على تغيير
    يدوي. لكنها لا تستطيع أن تُظهر أنّ أحدًا عاد إلى ملف أقدم.
compare-deleted = محذوفة:
compare-deleted-trial = المحاولة { $trial }
compare-bring-back = استعادة المحاولة { $trial }
compare-is-deleted = حُذفت المحاولة { $trial }. يمكن استعادتها في الأسفل.
compare-is-back = عادت المحاولة { $trial } وهي مفتوحة الآن.
compare-is-back-closed = عادت المحاولة { $trial }. افتحوها للمتابعة.
compare-is-first = المحاولة { $trial } هي الأولى أصلاً.
compare-is-last = المحاولة { $trial } هي الأخيرة أصلاً.
charts-swings = المسافة بين النقطتين وما رأيناه
charts-swings-hint =
    كلّ نقطة تمثّل تدويرًا واحدًا. اختاروا واحدة: ماذا تقول؟ انظروا الآن إليها كلّها: هل هناك
    نمط؟ مقدار عرض الجسم مرة إلى مرتين عادة وليس إذنًا.
charts-as-table = الشيء نفسه كجدول
charts-swings-table = المسافة بين النقطتين والتدويرات
charts-how = كيف
charts-swing = التدوير { $number }
charts-is-measured = مقيسة
charts-is-worked-out = محسوبة
charts-series = المسافة بين النقطتين عبر المحاولات
charts-series-table = المسافة بين النقطتين في كلّ محاولة
charts-head-measured = مقيسة
charts-head-from = من
charts-head-to = إلى
charts-head-worked-out = محسوبة
charts-no-pair = لا يمكن رسم أحد الصاروخين.
charts-pair = المحاولة { $left } والمحاولة { $right } جنبًا إلى جنب
charts-pair-neither = كلاهما كما حُسب.
charts-pair-one = كلاهما كما حُسب؛ المحاولة { $trial } كما قيست: { $separation }.
charts-pair-both =
    كلاهما كما حُسب؛ المحاولة { $left } كما قيست: { $left-separation }؛ المحاولة { $right } كما
    قيست: { $right-separation }.
