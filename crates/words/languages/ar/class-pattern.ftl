class-pattern = النمط
class-measured = مقيسة
class-computed = محسوبة
class-in-lengths = طولاً
class-in-widths = بعرض الجسم
class-names = إظهار المجموعات
class-board = شاشة كبيرة
class-board-leave = مغادرة الشاشة الكبيرة
class-along = المسافة بين النقطتين
class-widths =
    { $value ->
        [zero] { $value } من عرض الجسم
        [one] { $value } من عرض الجسم
        [two] { $value } من عرض الجسم
        [few] { $value } من عرض الجسم
        [many] { $value } من عرض الجسم
       *[other] { $value } من عرض الجسم
    }
class-without = محاولات بلا مسافة كهذه: { $count }
class-nothing-yet = لا شيء للعرض بعد: اجمعوا أولاً ما وجدته المجموعات.

class-turns = يطير نصف هذه الصواريخ والأنف أولاً عند مسافة { $at } بين النقطتين.
class-turns-below = يطير نصف هذه الصواريخ والأنف أولاً عند مسافة { $at } بين النقطتين، وما دونها أكثر: عكس المتوقّع. هل اختلطت النقطتان؟
class-band = قد تقع في أي موضع بين { $least } و{ $most } (95 %).
class-band-open = لا تكاد هذه المحاولات تدلّ على موضعها: قد تقع في أي مكان.
class-too-few = عدد المحاولات ذات المسافة والنتيجة الواضحة: { $trials }. تحتاج نقطة التحوّل إلى { $least } على الأقل.
class-all-nose-first = طارت كلها والأنف أولاً، من { $least } إلى { $most }. لا شيء يدلّ على بداية ذلك.
class-none-nose-first = لم يطر أي منها والأنف أولاً، من { $least } إلى { $most }. لا شيء يدلّ على بداية ذلك.
class-same = المسافة نفسها في كل المحاولات، { $at }: لا يمكن أن تبيّن سبب الفرق.
class-parted = طارت كل الصواريخ من { $to } فأكثر والأنف أولاً، ولم يطر كذلك أي صاروخ حتى { $from }. نقطة التحوّل في هذه الفجوة. أمّا حدّتها فلا تبيّنها هذه المحاولات.
class-parted-below = طارت كل الصواريخ حتى { $from } والأنف أولاً، ولم يطر كذلك أي صاروخ من { $to } فأكثر: عكس المتوقّع. هل اختلطت النقطتان؟
class-level = احتمال الأنف أولاً واحد بمسافة قليلة وبمسافة كبيرة: لا تُظهر هذه المحاولات نقطة تحوّل.

class-settle = ما الذي يحسم الأمر
class-next-narrows = محاولة أخرى بمسافة { $at }: ينبغي أن تضيّق نقطة التحوّل بنحو { $share } %.
class-next-gap = محاولة بمسافة { $at }، داخل الفجوة.
class-next-untried = محاولة بمسافة { $at }: لم يُجرَّب شيء بين { $from } و{ $to }.

class-also = ماذا وجد الصفّ أيضًا
class-before = توقّعات قبل التدوير تحقّقت: { $right } من { $of }
class-after = توقّعات بعد رؤية تدوير تحقّقت: { $right } من { $of }
class-unjudged = توقّعات لا يقول التدوير عنها شيئًا: { $count }
class-fair = محاولات غيّرت شيئًا واحدًا أو لم تغيّر: { $fair } من { $of }
class-agreement = المقيس ناقص المحسوب: { $mean } في المتوسّط، من { $count } من المحاولات.
class-limits = ينبغي أن يكون الفرق في 95 من 100 صاروخ من { $least } إلى { $most }.
class-other-sign = محاولات تختلف فيها الطريقتان في أي النقطتين أقرب إلى الأنف: { $count }

class-odd = قراءات تبدو غريبة، للسؤال عنها: { $count }
class-odd-outside =
    { $balance-point ->
        [mass] قُرئ مركز الكتلة عند { $at }، خارج الصاروخ الذي طوله { $length }.
       *[pressure] قُرئ مركز الضغط عند { $at }، خارج الصاروخ الذي طوله { $length }.
    }
class-odd-range =
    { $balance-point ->
        [mass] تختلف قراءات مركز الكتلة بمقدار { $range }.
       *[pressure] تختلف قراءات مركز الضغط بمقدار { $range }.
    }
class-odd-longer = المسافة بين النقطتين { $separation }، وطول الصاروخ { $length }.
class-odd-equal = القراءات الثلاث لكل من النقطتين متطابقة: هل قُرئت مرة وكُتبت ثلاثًا؟
class-odd-slip = تبتعد النقطتان عن المحسوب بالمقدار نفسه تقريبًا، { $mass } و{ $pressure }: هل كان صفر المسطرة عند طرف الأنف؟
class-odd-nose = طار والأنف أولاً بمسافة { $separation }. اكتشاف، أم قراءتان تبادلتا مكانيهما؟
class-odd-not-nose = لم يطر والأنف أولاً بمسافة { $separation }. اكتشاف، أم قراءتان تبادلتا مكانيهما؟

class-timer = المؤقّت
class-minutes = { $minutes } دقيقة
class-timer-stop = أوقف المؤقّت
class-timer-over = انتهى الوقت.
class-timer-left = بقي { $minutes } دقيقة
