lead-lesson-of = درس { $group }
lead-detail = مقدار التفصيل
lead-help = المساعدة في كتابة الخلاصة
lead-telling = ما يُقال ومتى
lead-allow-two = السماح بتغييرين معًا
lead-loses-nothing =
    تغيير هذه الخيارات لا يُضيع شيئًا. الأعمار للاسترشاد فقط؛ والقراءات هي نفسها في كلّ مستوى.
    ولصفّ كامل هناك «إعداد الدرس».
lead-delete-asks = هل يُحذف دفتر { $group } من هذا الحاسوب؟ لا يمكن استعادته.
lead-delete = حذف هذا الدفتر
lead-delete-now = احذفه
lead-keep = احتفظ به
lead-words = ثلاثون كلمة مع صور، بلغة واحدة أو لغتين، على الشاشة وعلى الورق.
computer-check = فحص هذا الحاسوب
computer-caption = ما يسمح به هذا الحاسوب، وما العمل حين لا يسمح
computer-what = ماذا
computer-here = هنا
computer-to-do = ما العمل
computer-copy = نسخ الرابط
computer-copy-works = يعمل: «نسخ الرابط» تحت «المزيد».
computer-copy-barred =
    تحت «التسليم» حدّدوا الرابط واضغطوا Ctrl وC، أو اكتبوا الرمز على ورق، أو وجّهوا هاتفًا إلى
    رمز QR.
computer-save = حفظ الملفات
computer-save-works = يعمل: «حفظ في ملف» تحت «المزيد».
computer-save-barred = استخدموا الرابط، أو اكتبوا على ورق الرمز الموجود تحت «التسليم».
computer-pick = فتح الملفات
computer-pick-works = يعمل: «رابط أو رمز أو ملف» تحت «الصاروخ».
computer-pick-barred =
    افتحوا الملف في محرّر نصوص وانسخوه كلّه والصقوه تحت «رابط أو رمز أو ملف». أو أدخلوا رمزه
    هناك.
computer-print = الطباعة
computer-print-works = يعمل: «طباعة» تحت «المزيد» و«التسليم».
computer-print-barred =
    ارسموا اعتمادًا على جدول الأرقام تحت «لماذا؟»، أو افتحوا الرابط على حاسوب متّصل بطابعة.
computer-camera = الكاميرا
computer-not-used = غير ضرورية
computer-camera-to-do =
    لا تُطلب الكاميرا إلا في مكان «الصفّ». يقرأ الهاتف رمز QR بكاميرته هو.
computer-keeping = الاحتفاظ بصاروخكم
computer-keeping-barred =
    انسخوا الرابط أو احفظوا ملفًا أو اكتبوا الرمز على ورق قبل إغلاق الصفحة.
computer-keeping-refused =
    ربما امتلأت المساحة التي يخصّصها المتصفّح لهذه الصفحة. تحاول الصفحة مرة أخرى عند كلّ تغيير؛
    وحتى ذلك الحين احفظوا ملفًا أو انسخوا الرابط. حذف الدفاتر التي لم تعودوا تحتاجون إليها يوفّر
    مكانًا.
computer-keeping-allowed =
    يبقى محفوظًا إلى أن تسجّلوا الخروج أو تُمسح بيانات المتصفّح: بعض المدارس تفعل ذلك كلّ يوم.
    انسخوا الرابط للاطمئنان.
computer-offline = دون شبكة
computer-offline-works = تُفتح هذه الصفحة هنا دون شبكة، في هذا المتصفّح.
computer-offline-file = هذه الصفحة ملف: لا تحتاج إلى شبكة.
computer-offline-barred = أبقوا الصفحة مفتوحة، أو احصلوا عليها كملف واحد (أسفل الصفحة).
computer-offline-not-yet =
    ما زال المتصفّح يخزّن الصفحة. إذا لم يتغيّر ذلك فاحصلوا عليها كملف واحد (أسفل الصفحة).
computer-frame = داخل صفحة أخرى
computer-framed = هذه الصفحة داخل صفحة أخرى قد تمنعها من التخزين والحفظ والطباعة.
computer-own-tab = <link>افتحوها في تبويب خاص بها</link>، أو انسخوا الرابط وافتحوه.
computer-nothing-to-do = لا شيء مطلوب.
computer-window = النافذة
computer-window-size = { $width } في { $height }
computer-narrow = أضيق ممّا صُمّمت له هذه الصفحة: وسّعوا النافذة أو صغّروا الخط.
computer-wide-enough = عريضة بما يكفي.
computer-is-barred = ممنوع
computer-is-refused = مرفوض
computer-is-allowed = مسموح
computer-works = يعمل
computer-not-yet = ليس بعد
computer-not-tried = لم يُجرَّب
computer-trying = قيد التجربة
computer-yes = نعم
computer-no = لا
computer-try = جرّبوه
computer-about-copy = النسخ
computer-about-save = الحفظ
computer-about-pick = الفتح
computer-about-print = الطباعة
computer-asks-copy = هل سمح المتصفّح للصفحة بالنسخ؟
computer-asks-save = هل وصل ملف باسم noseward-try.txt؟
computer-asks-pick = هل فُتحت نافذة لاختيار ملف؟ (أغلقوها.)
computer-asks-print = هل فُتحت نافذة للطباعة؟ (أغلقوها.)
computer-one-way-left =
    إذا لم ينجح أيّ من ذلك فتبقى طريقة واحدة: اكتبوا على ورق الرمز الموجود تحت «التسليم»،
    وأدخلوه تحت «رابط أو رمز أو ملف» على حاسوب آخر.
computer-saved = حفظ Noseward هذا الملف.

lead-language = لغة الصفحة
lead-language-unread =
    <b>{ $language }:</b> لم يقرأ أي معلّم جملها كلها بعد. إذا كانت إحداها خاطئة أو غريبة فاكتبوا أين
    هي وما ينبغي أن تقوله، وأرسلوا الاثنين إلى من أعطاكم هذه الصفحة. أما التحذيرات والقواعد فقارنوها بما
    لديكم.
lead-language-kept = من يختار لغة أخرى في الأعلى تُحفظ له على ذلك الحاسوب.
