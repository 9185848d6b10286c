paper-parts-bar = 100 mm
paper-parts-of = { $rocket }: { $sheet }
paper-parts-cut = { $part }: للقصّ
paper-parts-strip = مواضع الزعانف
paper-parts-tools = مسطرة وحامل للتوازن
paper-parts-solid = خطّ سميك: قصّ
paper-parts-dashed = خطّ متقطّع: طيّ إلى الخلف، والطباعة إلى الخارج
paper-parts-thin = خطّ رفيع: علامة فقط
paper-parts-care-cut = قصّ الكرتون بعيدًا عن أصابعك.
paper-parts-care-bottle =
    لا تقصّ أبدًا قارورة ستحمل ضغطًا، ولا تصنفرها ولا تسخّنها ولا تلصق عليها بغراء ساخن ولا تدهنها.
paper-parts-care-nose = اجعل الأنف غير حادّ: لا معدن ولا طرف مدبّب.
paper-parts-card = اطبع هذه الورقة على كرتون، أو ألصقها على كرتون.
paper-parts-fold-tab = اطوِ كلّ لسان إلى الخلف عند خطّه المتقطّع.
paper-parts-fix-fin = ألصق كلّ لسان بالقارورة بشريط لاصق. يشير السهم إلى الأنف.
paper-parts-bend = لفّها والطباعة إلى الخارج. تلتقي الحافة المستقيمة بالخطّ الرفيع.
paper-parts-glue-tab = ألصق اللسان تحت تلك الحافة.
paper-parts-parts =
    { $count ->
        [zero] ليس لها قطع.
        [one] هي قطعة واحدة.
        [two] تتكوّن من قطعتين. ألصق كلّ لسان تحت القطعة التالية.
        [few] تتكوّن من { $count } قطع. ألصق كلّ لسان تحت القطعة التالية.
        [many] تتكوّن من { $count } قطعة. ألصق كلّ لسان تحت القطعة التالية.
       *[other] تتكوّن من { $count } قطعة. ألصق كلّ لسان تحت القطعة التالية.
    }
paper-parts-ring = لفّ الشريط حلقةً والطباعة إلى الخارج. ألصق لسان طرفه تحت الطرف الآخر.
paper-parts-leaves = اثنِ البتلات إلى الداخل حتى تلتقي حوافّها. ألصق الألسنة الصغيرة تحت البتلة التالية.
paper-parts-round-tip = أغلق الطرف بشريط لاصق ليكون مستديرًا.
paper-parts-put-on = ثبّتها على الصاروخ بشريط لاصق.
paper-parts-large = هذه القطعة أكبر من ورقة واحدة: { $width } mm في { $height } mm.
paper-parts-too-large =
    { $sheets ->
        [zero] لا تتّسع لها أوراق. ارسمها بالمسطرة على كرتون كبير.
        [one] تحتاج إلى أكثر من ورقة واحدة. ارسمها بالمسطرة على كرتون كبير.
        [two] تحتاج إلى أكثر من ورقتين. ارسمها بالمسطرة على كرتون كبير.
        [few] تحتاج إلى أكثر من { $sheets } أوراق. ارسمها بالمسطرة على كرتون كبير.
        [many] تحتاج إلى أكثر من { $sheets } ورقة. ارسمها بالمسطرة على كرتون كبير.
       *[other] تحتاج إلى أكثر من { $sheets } ورقة. ارسمها بالمسطرة على كرتون كبير.
    }
paper-parts-join = قصّ كلّ ورقة عند الخطّ الذي عليه علامات الزائد، وضع علامة الزائد على علامة الزائد، وألصق الأوراق معًا.
paper-parts-trace =
    { $count ->
        [zero] ضعها على الكرتون.
        [one] ضعها على الكرتون وارسم حولها مرّة واحدة.
        [two] ضعها على الكرتون وارسم حولها مرّتين.
        [few] ضعها على الكرتون وارسم حولها { $count } مرّات.
        [many] ضعها على الكرتون وارسم حولها { $count } مرّة.
       *[other] ضعها على الكرتون وارسم حولها { $count } مرّة.
    }
paper-parts-rows = ألصق كلّ صفّ على لسان الصفّ الذي قبله.
paper-parts-wrap = لفّ الشريط حول الجسم عند موضع الزعانف. يلتقي الطرفان.
paper-parts-mark = ضع علامة عند كلّ خطّ، ثمّ انزع الشريط.
paper-parts-ruler-end = قصّ الطرف الذي عنده 0 في وسط الخطّ.
paper-parts-stand-fold = اطوِ الحامل إلى الخلف عند خطوطه المتقطّعة.
paper-parts-stand-tape = ألصق اللسان من الداخل ليقف الحامل كالخيمة.
paper-parts-stand-use = ضع قصاصتك أفقيًا على الحافة العليا، وحرّكها حتى تبقى أفقية.
paper-parts-fin = الزعنفة { $number } من { $of }
paper-parts-piece = { $part }، القطعة { $number } من { $of }
paper-parts-tab = لسان: إلى الخلف
paper-parts-under = لسان: إلى الداخل
paper-parts-narrow-front = الطرف الضيّق نحو الأنف
paper-parts-narrow-rear = الطرف الضيّق نحو الذيل
paper-parts-meets = هنا يلتقي الطرفان
paper-parts-next-row = هنا يتبع الصفّ { $row }
paper-parts-edge = { $part }: هذه الحافة نحو الأنف
paper-parts-row = { $part }، الصفّ { $row }: هذه الحافة نحو الأنف
paper-parts-degrees = { $degrees }°
paper-parts-mm = mm
paper-parts-top = الحافة العليا
