offered-too-close = كانت النقطتان متقاربتين جدًّا فلا يمكن الحكم.
offered-worked-out = المسافة المحسوبة بين النقطتين { $became ->
    [grew] زادت
    [shrank] نقصت
   *[went] تغيّرت
} من { $from } إلى { $to }.
offered-worked-out-stayed = بقيت المسافة المحسوبة بين النقطتين { $to }.
offered-swing-stayed = بقيت نتيجة التدوير «{ $outcome }».
offered-swing-went = تغيّرت نتيجة التدوير من «{ $before }» إلى «{ $after }».

offered-trial = المحاولة { $trial }: { $found }.
offered-trial-same = المحاولة { $trial } (مثل المحاولة { $other }): { $found }.
offered-trial-change = المحاولة { $trial } ({ $change }): { $found }.
offered-trial-changes = { $count ->
    [zero] المحاولة { $trial } ({ $count } تغيير): { $found }.
    [one] المحاولة { $trial } (تغيير واحد): { $found }.
    [two] المحاولة { $trial } (تغييران): { $found }.
    [few] المحاولة { $trial } ({ $count } تغييرات): { $found }.
    [many] المحاولة { $trial } ({ $count } تغييرًا): { $found }.
   *[other] المحاولة { $trial } ({ $count } تغيير): { $found }.
}
offered-separation = { $how-known ->
    [measured] المسافة المقيسة بين النقطتين { $separation }
   *[worked-out] المسافة المحسوبة بين النقطتين { $separation }
}
offered-nearer = { $how-known ->
    [measured] { $balance-point ->
        [mass] مركز الكتلة أقرب إلى الأنف
       *[pressure] مركز الضغط (من الجانب) أقرب إلى الأنف
    }
   *[worked-out] { $balance-point ->
        [mass] بالحساب: مركز الكتلة أقرب إلى الأنف
       *[pressure] بالحساب: مركز الضغط (من الجانب) أقرب إلى الأنف
    }
}
offered-neither-nearer = { $how-known ->
    [measured] النقطتان متقاربتان جدًّا
   *[worked-out] بالحساب: النقطتان متقاربتان جدًّا
}
offered-seen = «{ $outcome }» في { $seen } من { $swings ->
    [zero] { $swings } تدوير
    [one] تدوير واحد
    [two] تدويرين
    [few] { $swings } تدويرات
    [many] { $swings } تدويرًا
   *[other] { $swings } تدوير
}
offered-mixed = نتائج مختلفة في { $swings ->
    [zero] { $swings } تدوير
    [one] تدوير واحد
    [two] تدويرين
    [few] { $swings } تدويرات
    [many] { $swings } تدويرًا
   *[other] { $swings } تدوير
}
offered-swings = التدويرات: { $seen }.
offered-predicted = { $came-true ->
    [yes] كنّا قد توقّعنا «{ $outcome }»، وقد تحقّق ذلك.
    [no] كنّا قد توقّعنا «{ $outcome }»، ولم يتحقّق ذلك.
   *[open] كنّا قد توقّعنا «{ $outcome }».
}

offered-behind = في المحاولة { $trial } دفع الهواء خلف مركز الكتلة، ولذلك فإنّ الأنف …
offered-ahead = في المحاولة { $trial } دفع الهواء أمام مركز الكتلة، ولذلك فإنّ الأنف …
offered-close = في المحاولة { $trial } كانت النقطتان متقاربتين، ولذلك فإنّ الهواء …
offered-although = في المحاولة { $trial } كانت نتيجة التدوير «{ $outcome }». { $balance-point ->
    [mass] كان مركز الكتلة أقرب إلى الأنف، و…
   *[pressure] كان مركز الضغط (من الجانب) أقرب إلى الأنف، و…
}
offered-sideways = عندما يدور الصاروخ جانبيًّا، يدفعه الهواء عند …
offered-longer = المسافة الأطول بين النقطتين تعني أنّ الهواء …

offered-one-reading = { $balance-point ->
    [mass] في المحاولة { $trial } تُحسَب قراءة واحدة لمركز الكتلة.
   *[pressure] في المحاولة { $trial } تُحسَب قراءة واحدة لمركز الضغط (من الجانب).
}
offered-within = { $how-many ->
    [two] لا تتباعد قراءتانا
   *[three] لا تتباعد قراءاتنا الثلاث
} { $balance-point ->
    [mass] لمركز الكتلة
   *[pressure] لمركز الضغط (من الجانب)
} في المحاولة { $trial } بأكثر من { $range }.
offered-left-out = في المحاولة { $trial } استبعدنا القراءة { $reading } دون سبب.
offered-left-out-because = في المحاولة { $trial } استبعدنا القراءة { $reading }: { $reason }.
offered-overlap = يتداخل المدَيان في المحاولة { $trial }: متقاربتان جدًّا فلا يمكن الحكم.
offered-not-measured = المسافة بين النقطتين في المحاولة { $trial } محسوبة وليست مقيسة.
offered-alike =
    المسافتان في المحاولتين { $before } و{ $after } متقاربتان جدًّا فلا يمكن التمييز بينهما.
offered-changes = { $count ->
    [zero] في المحاولة { $trial } لم يتغيّر شيء: { $changes }.
    [one] في المحاولة { $trial } تغيّر شيء واحد: { $changes }.
    [two] في المحاولة { $trial } تغيّر شيئان: { $changes }.
    [few] في المحاولة { $trial } تغيّرت { $count } أشياء: { $changes }.
    [many] في المحاولة { $trial } تغيّر { $count } شيئًا: { $changes }.
   *[other] في المحاولة { $trial } تغيّر { $count } شيء: { $changes }.
}
offered-few-swings = { $swings ->
    [zero] في المحاولة { $trial } لم يُدوَّر الصاروخ، أو لا يُحسَب أيّ تدوير.
    [one] في المحاولة { $trial } يُحسَب تدوير واحد فقط.
    [two] في المحاولة { $trial } يُحسَب تدويران فقط.
    [few] في المحاولة { $trial } تُحسَب { $swings } تدويرات فقط.
    [many] في المحاولة { $trial } يُحسَب { $swings } تدويرًا فقط.
   *[other] في المحاولة { $trial } يُحسَب { $swings } تدوير فقط.
}
offered-disagree = لم تتّفق تدويرات المحاولة { $trial }.
offered-not-predicted = لم نتوقّع شيئًا للمحاولة { $trial }.
offered-predicted-late = في المحاولة { $trial } توقّعنا بعد التدوير.
offered-altered = غُيّرت المحاولة { $trial } خارج الدفتر.

asked-happened = ماذا حدث بعد ذلك؟
asked-numbers = أيّ أرقام من المحاولتين { $before } و{ $after } تُظهر ذلك؟
asked-why = لماذا كانت نتيجة تدوير المحاولة { $trial } «{ $outcome }»؟ أين دفع الهواء؟
asked-overlap = في المحاولة { $trial } يتداخل المدَيان. ماذا يمكنكم أن تقولوا مع ذلك، وماذا لا يمكنكم؟
asked-differ = { $balance-point ->
    [mass] تختلف قراءاتكم لمركز الكتلة في المحاولة { $trial } بمقدار { $range }. ماذا يغيّر ذلك؟
   *[pressure] تختلف قراءاتكم لمركز الضغط (من الجانب) في المحاولة { $trial } بمقدار { $range }. ماذا يغيّر ذلك؟
}
asked-always = { $statement ->
    [claim] ماذا غيّرتم، وماذا حدث؟
    [evidence] أيّ أرقام وأيّ تدويرات تُظهر ذلك؟
    [reason] لماذا حدث ذلك؟ أين دفع الهواء؟
   *[trust] ما مدى تأكّدكم؟ قيسوا كلّ نقطة ثلاث مرات لتعرفوا.
}
