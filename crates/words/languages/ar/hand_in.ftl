hand-in-nothing = لم يُكتب شيء بعد: ما يخرج هو الصاروخ.
hand-in-notebook-of = دفتر { $group } مع الصاروخ
hand-in-save = حفظ الدفتر في ملف
hand-in-copy-link = نسخ رابط يضمّ كلّ شيء
hand-in-print = طباعة الدفتر
hand-in-what-is-in-it =
    يُفتح الملف والرابط من جديد تحت «رابط أو رمز أو ملف». وفيهما لون المجموعة ورقمها وما
    كتبتموه.
hand-in-tables = لبرنامج جداول أو كنصّ عادي
hand-in-table-point = جدول في ملف، 12.5 بنقطة
hand-in-table-comma = جدول في ملف، 12,5 بفاصلة
hand-in-copy-table-point = نسخ الجدول بنقاط عشرية
hand-in-copy-table-comma = نسخ الجدول بفواصل عشرية
hand-in-plain-text = نصّ عادي
hand-in-show-symbols = رموز QR والدفتر كلّه كرموز للكتابة
hand-in-hide-symbols = إخفاء رموز QR
hand-in-result = نتيجة المحاولة { $trial } كرمز قصير: أرقام واسم المجموعة دون كلمات
hand-in-code-of = رمز المحاولة { $trial }
hand-in-copy-code = نسخ هذا الرمز
hand-in-too-large = هذا الدفتر أكبر من أن يُعرض كرموز. احفظوه في ملف.
hand-in-read-all =
    اقرؤوها كلّها بهاتف، بأيّ ترتيب، والصقوا النصوص تحت «رابط أو رمز أو ملف»؛ أو اكتبوها.
    وتخبركم الصفحة بما ينقص.
hand-in-part-of = الجزء { $number } من { $count }
hand-in-part = الجزء { $number }
result-measured =
    هذه نتيجة { $group }، المحاولة { $trial }: مركز الكتلة { $mass }، مركز الضغط { $pressure }،
    المسافة بين النقطتين { $separation } (مقيسة).
result-worked-out =
    هذه نتيجة { $group }، المحاولة { $trial }: المسافة بين النقطتين { $separation } (محسوبة).
result-of = هذه نتيجة { $group }، المحاولة { $trial }:
result-predicted = التوقّع: { $outcome }.
result-seen = ما شوهد: { $outcomes }.
result-not-swung = لم يُدوَّر.
result-altered = غُيّر شيء فيها يدويًّا خارج الصفحة.
hand-in-saved =
    حُفظ باسم { $name }، إذا كان هذا الحاسوب يسمح بالتنزيل. ابحثوا في مجلد التنزيلات.
hand-in-no-link = هذا الدفتر لا يتّسع له رابط. الرابط يحمل الصاروخ وحده: احفظوا الدفتر في ملف.
share-title = الصاروخ وحده
share-print = طباعة الصاروخ
share-save = حفظ الصاروخ في ملف
share-code-title = رمز لكتابته على ورق، ثم إدخاله حيث يُفتح رابط
share-code = الرمز
share-code-hint =
    حروف كبيرة أو صغيرة، بمسافات أو دونها: لا فرق؛ واتركوا أرقام الأسطر. الحرف الأخير من كلّ سطر
    يكشف الأخطاء.
share-point-at-link = أو وجّهوا هاتفًا أو جهازًا لوحيًّا إلى هذا
share-point-at-code = أو اقرؤوا الرمز بهاتف
share-link = الرابط
share-open-again =
    <b>لفتح هذا الصاروخ من جديد:</b> وجّهوا هاتفًا إلى الرمز، أو افتحوا Noseward وأدخلوا هذا
    الرمز تحت «رابط أو رمز أو ملف».
share-open-again-typed =
    <b>لفتح هذا الصاروخ من جديد:</b> افتحوا Noseward وأدخلوا هذا الرمز تحت «رابط أو رمز أو ملف».
share-no-permission = المسافة الجيّدة بين النقطتين ليست إذنًا بالتدوير أو الإطلاق.
