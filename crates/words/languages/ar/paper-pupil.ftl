pupil-record = سجلّ محاولة واحدة
pupil-all-in = وحدة كلّ طول: { $unit }.
pupil-string = طول الخيط
pupil-turns = عدد الدورات في عشر ثوانٍ
pupil-hang = علّقوه منخفضًا. أبعدوا الأقدام والوجوه.
pupil-moved = ما الذي تحرّك منذ المحاولة السابقة؟
pupil-moved-nose = نحو الأنف
pupil-moved-tail = نحو الذيل
pupil-moved-not = لم يتحرّك
pupil-moved-far = كم تحرّك
pupil-results = نتائج الصفّ
pupil-results-how =
    سطر لكلّ محاولة. القراءات من طرف الأنف بوحدة { $unit }: ثلاث على الأكثر، مع فراغ بينها.
pupil-results-key = اكتبوا رقم ما أظهره التدوير:
pupil-charts = مخططات للرسم
pupil-squares = ورق مربّعات
pupil-squares-how = اكتبوا على كلّ محور ما يبيّنه ووحدته.
pupil-squares-name = ورق مربّعات بمحورين، للرسم
pupil-cards = بطاقات الاختبارات
pupil-card-cutting = شخص بالغ يقصّ الزجاجات. قصّوا الكرتون بعيدًا عن أصابعكم.
pupil-card-flat = القصاصة طبقة واحدة مسطّحة من الكرتون، بلا شريط لاصق ولا غراء ولا أي شيء آخر عليها.
pupil-card-ready = قبل التدوير
pupil-card-line =
    ارسموا خطًا دائرة كاملة: لا يقف أحد داخله. يقول الشخص البالغ كم يبعد عن الشخص الذي يدوّر: ______ م
pupil-card-record = اكتبوه
pupil-card-readings = اكتبوا القراءات الثلاث كلّها، ومن أيّ طرف قستم.
pupil-card-odd = هل تبدو إحداها غريبة؟ تبقى كما هي. اكتبوا بجانبها ما تظنّون.
pupil-card-prediction = اكتبوا ماذا سيفعل ولماذا، قبل التدوير.
pupil-card-swings = اكتبوا ما أظهره كلّ تدوير من ثلاثة.
pupil-card-slipped = هل انزلق الخيط؟ اكتبوا ذلك أيضًا، ودوّروا مرة أخرى.
pupil-roles = من يفعل ماذا
pupil-roles-how = وزّعوا البطاقات. في المجموعة الصغيرة قد يأخذ الواحد بطاقتين.
pupil-role-ruler = المسطرة
pupil-role-ruler-does = أنت تقيس النقطتين من طرف الأنف. ارفع المسطرة بعد كلّ قراءة.
pupil-role-string = الخيط
pupil-role-string-does =
    أنت تمسك الخيط منخفضًا حتى يتدلّى الصاروخ أفقيًّا. تلصقه من الجانبين، ثم تشدّه بقوة ثلاث مرات.
pupil-role-swinger = التدوير
pupil-role-swinger-does =
    أنت تدوّر الصاروخ أفقيًّا فوق رأسك. ثم ارفع ذراعك حتى يتدلّى ساكنًا. لا تمسك به.
pupil-role-space = مراقبة المكان
pupil-role-space-does = أنت تنظر إلى الخط المرسوم لا إلى الصاروخ. هل تجاوزه أحد؟ صِح «قف».
pupil-role-nose = مراقبة الأنف
pupil-role-nose-does =
    أنت تراقب الأنف خمس دورات، وتعدّ الدورات في عشر ثوانٍ. ثم تقول ما فعل.
pupil-role-pencil = القلم
pupil-role-pencil-does =
    أنت تكتب كلّ قراءة والتوقّع وكلّ تدوير. اقرأ كلّ واحد منها بصوت عالٍ مرة أخرى.
