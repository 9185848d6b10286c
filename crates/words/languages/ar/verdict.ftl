verdict-open = { $comes-out ->
    [self-righting] يعتدل من تلقاء نفسه؟
    [straight-start-only] عند الانطلاق المستقيم فقط؟
    [at-an-angle] مائل؟
    [broadside] عرضيّ؟
   *[swaps-ends] ينقلب طرفاه؟
}
verdict-agreed = { $comes-out ->
    [self-righting] يعتدل من تلقاء نفسه.
    [straight-start-only] عند الانطلاق المستقيم فقط.
    [at-an-angle] مائل.
    [broadside] عرضيّ.
   *[swaps-ends] ينقلب طرفاه.
}
verdict-probably = { $comes-out ->
    [self-righting] على الأرجح: يعتدل من تلقاء نفسه.
    [straight-start-only] على الأرجح: عند الانطلاق المستقيم فقط.
    [at-an-angle] على الأرجح: مائل.
    [broadside] على الأرجح: عرضيّ.
   *[swaps-ends] على الأرجح: ينقلب طرفاه.
}
verdict-too-close = متقارب جدًا ولا يمكن الحكم.

verdict-means-open = تُحسب الآن درجة الثقة بذلك.
verdict-means-too-close = يتوقّف الأمر على ما لا يُعرف بدقة.
verdict-means-self-righting = يعيد الهواء هذا الصاروخ إلى وضع الأنف أولًا مهما كان اتجاهه.
verdict-means-straight-start-only = يطير والأنف أولًا إذا انطلق كذلك، لكنه قد يستقر على وضع آخر.
verdict-means-tilted = يبقيه الهواء مائلًا بزاوية { $angle }°.
verdict-means-swaps-ends = يدير الهواء هذا الصاروخ ليطير والذيل أولًا.
verdict-not-all-sums = ليست كل الحسابات المنشورة متفقة على ذلك.
verdict-overlap = قراءاتكم متداخلة.

verdict-picture = الصاروخ في حالة السكون والريح من اليسار

verdict-will-open = { $comes-out ->
    [self-righting] ما سيفعله الهواء: يعتدل من تلقاء نفسه؟
    [straight-start-only] ما سيفعله الهواء: عند الانطلاق المستقيم فقط؟
    [at-an-angle] ما سيفعله الهواء: مائل؟
    [broadside] ما سيفعله الهواء: عرضيّ؟
   *[swaps-ends] ما سيفعله الهواء: ينقلب طرفاه؟
}
verdict-will-agreed = { $comes-out ->
    [self-righting] ما سيفعله الهواء: يعتدل من تلقاء نفسه.
    [straight-start-only] ما سيفعله الهواء: عند الانطلاق المستقيم فقط.
    [at-an-angle] ما سيفعله الهواء: مائل.
    [broadside] ما سيفعله الهواء: عرضيّ.
   *[swaps-ends] ما سيفعله الهواء: ينقلب طرفاه.
}
verdict-will-probably = { $comes-out ->
    [self-righting] ما سيفعله الهواء: على الأرجح يعتدل من تلقاء نفسه.
    [straight-start-only] ما سيفعله الهواء: على الأرجح عند الانطلاق المستقيم فقط.
    [at-an-angle] ما سيفعله الهواء: على الأرجح مائل.
    [broadside] ما سيفعله الهواء: على الأرجح عرضيّ.
   *[swaps-ends] ما سيفعله الهواء: على الأرجح ينقلب طرفاه.
}
verdict-will-too-close = ما سيفعله الهواء: متقارب جدًا ولا يمكن الحكم.
verdict-two-fins = تثبّته الزعنفتان في مستوى واحد فقط؛ والمستوى الآخر هو الذي يحسم.

verdict-in-all-tries = { $comes-out ->
    [self-righting] يعتدل من تلقاء نفسه في كل التجارب
    [straight-start-only] عند الانطلاق المستقيم فقط في كل التجارب
    [at-an-angle] مائل في كل التجارب
    [broadside] عرضيّ في كل التجارب
   *[swaps-ends] ينقلب طرفاه في كل التجارب
}
verdict-in-tries = { $comes-out ->
    [self-righting] يعتدل من تلقاء نفسه في { $tries } من 100 تجربة
    [straight-start-only] عند الانطلاق المستقيم فقط في { $tries } من 100 تجربة
    [at-an-angle] مائل في { $tries } من 100 تجربة
    [broadside] عرضيّ في { $tries } من 100 تجربة
   *[swaps-ends] ينقلب طرفاه في { $tries } من 100 تجربة
}
