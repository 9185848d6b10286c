question-nose-mass = هل يفيد ثقل أكبر في الأنف؟
question-mass-place = هل يهمّ مكان الثقل؟
question-fin-size = هل تفيد زعانف أكبر؟
question-fin-number = هل تفعل أربع زعانف أكثر من ثلاث؟
question-fin-shape = هل تفيد زعانف مائلة إلى الخلف؟
question-fin-place = هل يهمّ مكان الزعانف؟
question-body-length = هل يفيد جسم أطول؟
question-nose-length = هل يفيد أنف أطول؟
question-tail-mass = ماذا يفعل ثقل عند الذيل؟
question-string-length = هل يهمّ طول الخيط؟
question-change-nose-mass = اضغطوا 20 g أخرى من الصلصال في الأنف.
question-change-mass-place = انقلوا الصلصال 60 mm نحو الذيل.
question-change-fin-size = قصّوا زعانف أبرز بمقدار 25 mm.
question-change-fin-number = أضيفوا زعنفة رابعة.
question-change-fin-shape = قصّوا زعانف طرفها أبعد إلى الخلف بمقدار 25 mm.
question-change-fin-place = ألصقوا الزعانف أقرب إلى الأنف بمقدار 40 mm.
question-change-body-length = أضيفوا أنبوبًا من الكرتون طوله 60 mm.
question-change-nose-length = اصنعوا أنفًا أطول بمقدار 30 mm.
question-change-tail-mass = ألصقوا 20 g من الصلصال عند الذيل.
question-change-string-length = دوّروا بخيط أقصر بمقدار 20 cm.
kept-bottle = القارورة
kept-nose = الأنف
kept-fins = الزعانف
kept-added-mass = الثقل المضاف
kept-mass-place = مكان الثقل
kept-string-and-turns = الخيط وعدد الدورات
kept-who-swings = من يدوّر
kept-letting-go = طريقة الإفلات
expected =
    { $mass-goes ->
        [nose] يتحرّك مركز الكتلة نحو الأنف،
        [tail] يتحرّك مركز الكتلة نحو الذيل،
       *[stays] يبقى مركز الكتلة،
    } { $pressure-goes ->
        [nose] ومركز الضغط نحو الأنف؛
        [tail] ومركز الضغط نحو الذيل؛
       *[stays] ويبقى مركز الضغط؛
    } { $separation-is ->
        [more] وتكبر المسافة بينهما.
        [less] وتصغر المسافة بينهما.
       *[stays] وتبقى المسافة بينهما.
    }
changeable-nose = الأنف
changeable-body = الجسم
changeable-materials = المواد
changeable-fin-number = عدد الزعانف
changeable-fin-shape = شكل الزعانف
changeable-fin-place = مكان الزعانف
changeable-added-mass = الثقل المضاف
changeable-mass-place = مكان الثقل
changeable-swinging = الخيط
