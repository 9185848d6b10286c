places-class = الصفّ
lead-class = يجمع ما وجدته المجموعات ويُظهر النمط.
class-lead =
    اجمعوا ما وجدته المجموعات: الصقوا روابط ورموزًا وجداول، أو افتحوا ملفات، أو اكتبوا أرقامًا من
    الورق. ويبقى ذلك على هذا الحاسوب.
class-holds = المحاولات: { $trials }، المجموعات: { $groups }
class-holds-so-far = المحاولات: { $trials }
class-invented = كلّ هذا مُختلَق للتدريب.
class-invented-beside = بعض هذا مُختلَق للتدريب. ولا يُحسَب بجانب النتائج الحقيقية.
class-drop-example = إزالة النتائج المُختلَقة
class-is-due = مضى اليوم الذي أردتم الاحتفاظ بهذه النتائج حتى نهايته. احفظوها في ملف إن كنتم تحتاجون إليها، واحذفوها من هنا.
class-views = العرض
class-gather = الجمع
class-table = الجدول

class-in = ما سُلِّم
class-paste = روابط ورموز وأسطر من جداول: بأيّ عدد، واحدًا تحت الآخر
class-take-in = أخذها
class-files = فتح ملفات …
class-example = التجربة بصفّ مُختلَق
class-busy = النصوص المقروءة: { $done } من { $of }. المحاولات حتى الآن: { $trials }.
class-stop = إيقاف
class-stopped = توقّف. وما جاء قبل ذلك موجود هنا.
class-new = المحاولات الجديدة: { $trials }، الدفاتر الكاملة: { $notebooks }.
class-undo = التراجع عن هذا
class-doubled = موجودة من قبل، وتُحسَب مرة واحدة: { $count }
class-newer = أحدث، والأقدم بجانبها: { $count }
class-words = أسطر ليس فيها ما يُؤخذ: { $count }
class-at-line = السطر { $line }
class-invented-one = مُختلَق
class-in-file = { $file }، السطر { $line }
class-and-more = و{ $count } غيرها
class-trial-of = { $group }، المحاولة { $trial }

class-refused = لم تُؤخذ وتحتاج إلى تصحيح: { $count }
class-take-all = أخذ كلّ ما يمكن أخذه كما هو
class-mend = النصّ المطلوب تصحيحه
class-again = قراءته من جديد
class-take = أخذها مع ذلك
class-leave-out = تركها
class-other-rules = أُنجزت { $whose } وفق القواعد { $found }، ولهذا الصفّ القواعد { $expected }: كان المسموح شيئًا آخر.
class-no-rules = لا تذكر { $whose } أيّ قواعد، ولهذا الصفّ القواعد { $expected }.
class-unfinished = لم تكتمل { $whose }: التدويرات المحسوبة { $swings } من { $expected }.
class-no-number = في { $whose } طول ليس لأيّ صاروخ.
class-full = { $whose }: لا مكان لأكثر من { $most } من النتائج.
class-notebooks-full = لا مكان لأكثر من { $most } من الدفاتر الكاملة. أُخذت محاولات هذا الدفتر.
class-rocket = هذا صاروخ بلا محاولة: لم يُكتشف به شيء. اطلبوا من المجموعة رابط دفترها أو رمز إحدى المحاولات.
class-set-up = هذا هو الرابط الذي يبدأ به الدرس، وليس ما وجدته مجموعة. اطلبوا من المجموعة رابط دفترها.
class-part = من أجزاء هذا الدفتر وصل { $here } من { $of }. الصقوا البقية تحته واقرؤوه من جديد.
class-file = لا يمكن قراءة هذا الملف: حجمه أكبر من { $most } MB، أو ليس نصًّا.

class-keeping = الرمز والقواعد والحفظ
class-label = رمز الصفّ
class-label-wrong = حروف من A إلى Z وأرقام وشرطات فقط، { $most } على الأكثر. بلا أسماء.
class-delete-by = يُحذف في
class-kept-here = محفوظ في هذا المتصفّح على هذا الحاسوب فقط. لا يراه أحد غيركم.
class-save = حفظ الصفّ في ملف
class-delete = حذف كلّ شيء …
class-ask-delete = هل تُحذف كلّ نتائج هذا الصفّ من هذا الحاسوب؟ يبقى الملف الذي حفظتموه.
class-delete-now = حذف
class-keep = إبقاء
class-deleted = حُذف الصفّ من هذا الحاسوب.
class-saved = حُفظ باسم { $name }. افتحوه هنا من جديد عبر «فتح ملفات».
class-rules = لا تُؤخذ إلّا النتائج التي وفق القواعد <b>{ $code }</b>.
class-rules-drop = أخذ النتائج وفق أيّ قواعد
class-rules-none = تُؤخذ النتائج وفق أيّ قواعد.
class-rules-hold = الالتزام بقواعد «إعداد الدرس»

class-grid = كتابة نتائج من الورق
class-grid-how = من طرف الأنف، بوحدة { $unit }؛ حتى ثلاث قراءات بينها مسافة. ينتقل Tab إلى التالي، ويأخذ Enter السطر.
class-group = المجموعة
class-number = الرقم
class-trial = المحاولة
class-predicted = التوقّع
class-swing = التدوير { $number }
class-changed = ما تغيّر
class-add-row = أخذ السطر
class-row-new = أُخذت { $whose }.
class-row-doubled = كانت { $whose } هنا من قبل، كما هي.
class-row-newer = كانت { $whose } هنا بأرقام أخرى. تُحسَب هذه الآن، وتبقى القديمة بجانبها.
class-bad-number = رقم المجموعة عدد صحيح من 1 إلى { $most }.
class-bad-trial = رقم المحاولة عدد صحيح من 1 إلى { $most }.
class-bad-reading = «{ $found }» ليس طولاً، أو قراءة زائدة: { $most } قراءات على الأكثر، بينها مسافة.
class-empty-row = اكتبوا نقطة واحدة على الأقلّ، أو اختاروا تدويرًا.

class-sort = الترتيب
class-sort-came = كما وصلت
class-sort-group = حسب المجموعة
class-sort-separation = حسب المسافة بين النقطتين
class-sort-outcome = حسب النتيجة
class-filter = العرض
class-filter-all = الكلّ
class-filter-marked = المعلَّمة
class-filter-hidden = المتروكة
class-filter-unfair = أكثر من تغيير
class-filter-odd = قراءات تبدو غريبة
class-filter-twice = بجانبها أقدم
class-rows = المحاولات: { $shown } من { $all }
class-no-rows = لم يُجمَع شيء بعد.
class-more = عرض المزيد
class-separation = المسافة بين النقطتين
class-seen = ما شوهد
class-head-do = الإجراءات
class-changes =
    { $count ->
        [zero] لا تغيير
        [one] تغيير واحد
        [two] تغييران
        [few] { $count } تغييرات
        [many] { $count } تغييرًا
       *[other] { $count } تغيير
    }
class-unfair = أكثر من تغيير
class-worked-out = { $value } (محسوبة)
class-swung-first = دُوّر قبل التوقّع
class-altered = غُيّر يدويًّا
class-is-invented = مُختلَق
class-older =
    { $count ->
        [zero] لا أقدم محفوظة
        [one] واحدة أقدم محفوظة
        [two] اثنتان أقدم محفوظتان
        [few] { $count } أقدم محفوظة
        [many] { $count } أقدم محفوظة
       *[other] { $count } أقدم محفوظة
    }
class-mark = تعليم
class-hide = ترك
class-remove = حذف
