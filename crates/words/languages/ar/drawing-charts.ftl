drawing-chart = المسافة بين النقطتين وما شوهد، نقطة لكل تدوير
drawing-chart-blank = مخطط للملء: المسافة بين النقطتين وما شوهد
drawing-one-dot = نقطة لكل تدوير، ومعها رقم المحاولة
drawing-band = المعتاد: من عرض الجسم إلى ضعفه
drawing-zero = 0: النقطتان في موضع واحد
drawing-mass-nearer-arrow = → مركز الكتلة أقرب إلى الأنف
drawing-pressure-nearer-arrow = مركز الضغط أقرب إلى الأنف ←
drawing-separation-in = { $written-in ->
    [millimetres] المسافة بين النقطتين بالمليمترات
   *[inches] المسافة بين النقطتين بالبوصات
}
drawing-filled = ممتلئة: مقيسة
drawing-hollow = مفتوحة: محسوبة
drawing-range = مدى المسافة
drawing-series = المسافة بين النقطتين عبر المحاولات، مقيسة ومحسوبة
drawing-trial-axis = المحاولة
drawing-dot = نقطة: مقيس
drawing-diamond = معيّن: محسوب
drawing-bar = عمود: مدى ما قيس
drawing-mass-nearer = مركز الكتلة أقرب إلى الأنف
drawing-pressure-nearer = مركز الضغط أقرب إلى الأنف

drawing-dots = { $count ->
    [zero] { $count } نقطة
    [one] نقطة واحدة
    [two] نقطتان
    [few] { $count } نقاط
    [many] { $count } نقطة
   *[other] { $count } نقطة
}
drawing-row =
    { drawing-dots } في صف «{ $row }»، { $spread ->
        [in-one-place] عند { $to }
       *[apart] من { $from } إلى { $to }
    }:
drawing-row-origin = { $origin ->
    [all-measured] بالقياس.
    [all-computed] بالحساب.
   *[both] { $measured } بالقياس و{ $computed } بالحساب.
}
drawing-no-swing = لا تدوير بعد.
drawing-practice =
    المعتاد، من عرض الجسم إلى ضعفه، { $spread ->
        [in-one-place] عند { $to }
       *[apart] من { $from } إلى { $to }
    }.
drawing-trial =
    المحاولة { $trial }: { $known ->
        [nothing] لا مسافة
        [by-ruler] بالقياس { $middle }، بين { $least } و{ $most }
        [by-figures] بالحساب { $worked-out }
       *[by-both] بالقياس { $middle }، بين { $least } و{ $most }؛ بالحساب { $worked-out }
    }.
