marking-view = المراجعة
marking-none =
    لم يصل أيّ دفتر كاملاً بعد. ما يُقرأ موجود في رابط الدفتر أو ملفه أو أجزائه؛ أمّا رمز المحاولة
    والسطر المنقول عن الورق فأرقام فقط.
marking-whose = الدفتر
marking-previous = السابق
marking-next = التالي
marking-at = الدفتر { $number } من { $of }
marking-print = طباعة تقريره
marking-text = تقريره كنصّ
marking-of-class = { $group } ({ $class })
marking-one-of = { $name }، الدفتر { $number } من { $of }
marking-wrote = ما كتبته مجموعة { $name }
marking-invented = مُختلَق للتدريب
marking-data = بيانات المجموعة نفسها
marking-found = ما تجدونه فيه
marking-how = اضغطوا ما ينطبق. لا تضغط الصفحة شيئًا من تلقاء نفسها: تحت بعض العبارات ما تعرفه عنها.
marking-nothing = لا شيء
marking-of-readings =
    { $count ->
        [zero] لا قراءات
        [one] قراءة واحدة
        [two] قراءتان، المدى { $range }
        [few] { $count } قراءات، المدى { $range }
        [many] { $count } قراءة، المدى { $range }
       *[other] { $count } قراءة، المدى { $range }
    }
marking-seen = { $outcome } <aside>({ $seen } من { $swings })</aside>
marking-only-numbers = وصلت أرقام فقط من: { $groups }. ليس فيها ما يُراجَع.

marking-answers = يجيب الادّعاء عن السؤال.
marking-fits = يوافق الادّعاء بيانات المجموعة نفسها.
marking-numbers = يذكر الدليل أرقامًا من محاولتين على الأقلّ.
marking-points = يذكر السبب النقطتين: مركز الكتلة ومركز الضغط.
marking-which-way = يقول السبب في أيّ اتجاه يدير الهواء الصاروخ.
marking-one-change = تغيّر شيء واحد في كلّ مرة.
marking-predicted = كان التوقّع قبل التدوير.
marking-repeated = قيست كلّ نقطة أكثر من مرة.
marking-how-sure = تقول المجموعة ما مدى تأكّدها، ولماذا.
marking-next-step = تقول المجموعة ما ستجرّبه بعد ذلك.

marking-question = كان السؤال: { $question }
marking-no-question = لم يُحدَّد سؤال.
marking-measured = المحاولات التي قيست فيها المسافة بين النقطتين: { $count } من { $of }
marking-changes = المحاولات المقارَنة التي لم يتغيّر فيها أكثر من شيء واحد: { $count } من { $of }
marking-before = المحاولات التي كان توقّعها قبل التدوير: { $count } من { $of }
marking-readings = المحاولات التي قيست فيها كلتا النقطتين أكثر من مرة: { $count } من { $of }
marking-plans = الخطط في قائمة المجموعة: { $count }
marking-followed = من المحاولة { $before } إلى المحاولة { $after } تغيّرت المسافة بين النقطتين من { $from } إلى { $to }، وما شوهد من «{ $was }» إلى «{ $is }».
marking-turned =
    { $balance-point ->
        [mass] في المحاولة { $trial } كان مركز الكتلة أقرب إلى الأنف؛ وشوهد: «{ $seen }».
       *[pressure] في المحاولة { $trial } كان مركز الضغط أقرب إلى الأنف؛ وشوهد: «{ $seen }».
    }

example-claim-more = باعد تغييرنا بين النقطتين، من { $from } إلى { $to }.
example-claim-less = لم يباعد تغييرنا بين النقطتين: قبله { $from } وبعده { $to }.
example-claim-vague = طار صاروخنا أفضل في المرة الثانية.
example-claim-wrong = الزعانف لا تهمّ، ولا الثقل.
example-evidence = في المحاولة 1 كانت المسافة { $from } ورأينا «{ $was }». وفي المحاولة 2 كانت { $to } ورأينا «{ $is }».
example-evidence-one = في المحاولة 2 رأينا «{ $is }».
example-evidence-vague = رأينا ذلك جميعًا.
example-reason-behind = يدفع الهواء عند مركز الضغط. وهو خلف مركز الكتلة، لذلك يدير الهواء الذيل إلى الخلف والأنف نحو الريح.
example-reason-ahead = يدفع الهواء عند مركز الضغط. وهو ليس بعيدًا بما يكفي خلف مركز الكتلة، لذلك لا يدير الهواء الأنف نحو الريح.
example-reason-vague = لأنّنا صنعناه جيّدًا.
example-reason-one = مركز الكتلة في موضع آخر الآن.
example-reason-wrong = يدفع الهواء على الأنف، لذلك يتقدّم الأنف.
example-trust = قسنا ثلاث مرات ودوّرنا ثلاث مرات، لذلك نحن متأكّدون إلى حدّ بعيد.
example-trust-sure = نحن متأكّدون تمامًا.
example-trust-not = لا نعرف.
example-plan = زعنفة إضافية واحدة
