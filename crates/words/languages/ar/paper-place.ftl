places-paper = ورق
lead-paper = قصاصات بالحجم الحقيقي وأوراق تسجيل وبطاقات تذكير وملف لمن يدرّس.
paper-place-lead = أوراق للدرس جاهزة للطباعة. ما يُقصّ منها مرسوم بالحجم الحقيقي.
paper-place-sheets = أيّ ورقة
paper-place-how = كيف
paper-place-preview = ما يُطبع
paper-place-size = الورق
paper-place-a4 = A4
paper-place-letter = US Letter
paper-place-cut-out = القصاصة بالحجم الحقيقي
paper-place-cut-out-small = القصاصة على ورقة واحدة
paper-place-answers = الإجابات: القصاصة مع النقطتين
paper-place-pupil-pack = كل هذه الأوراق لمجموعة واحدة
paper-place-for-pupils = لكل مجموعة
paper-place-for-cutting = للقصّ
paper-place-of = الصاروخ هو الموصوف في الصفحة: { $rocket }.
paper-place-of-nameless = الصاروخ هو الموصوف في الصفحة.
paper-place-no-rocket = صِف صاروخًا أولًا: لا شيء يُرسم بعد.
paper-place-not-measured =
    لم تُقَس نقطتاه بعد، وهذه الورقة تكشف كلتيهما. لا ينبغي أن يراها قبل ذلك من عليه أن يجدهما.
paper-place-anyway = اعرضها مع ذلك
paper-place-save = احفظ بصيغة PDF
paper-place-open = افتحه
paper-place-print = اطبع
paper-place-svg = احفظ هذه الصفحة رسمًا (SVG)
paper-place-outline = احفظ المحيط لآلة القصّ (SVG)
paper-place-before = الصفحة السابقة
paper-place-next = الصفحة التالية
paper-place-page = الصفحة { $page } من { $of }
paper-place-scale = اطبع بنسبة 100 % («الحجم الفعلي») دون ملاءمة للصفحة. على الورقة شريط يبيّن هل نجح ذلك.
paper-place-no-pdf =
    حروف هذه اللغة ليست من الحروف التي في كل ملف PDF. اطبع من هنا بدلًا من ذلك: الورقة هي نفسها،
    وحجمها حقيقي إذا طُبعت بلا هوامش.
paper-place-saved = حُفظ باسم { $name } إن كان هذا المتصفح يسمح بالتنزيل.
paper-place-making = تُعدّ الأوراق: { $done } من { $of }
paper-place-stop = توقف
