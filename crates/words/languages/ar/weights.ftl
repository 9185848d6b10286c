weights-uk-coins = عملات بريطانية
weights-euro-coins = عملات اليورو
weights-us-coins = عملات أمريكية
weights-australian-coins = عملات أسترالية
weights-other-things = أشياء أخرى

weight-pence = { $value ->
    [zero] { $value } بنس
    [one] بنس واحد
    [two] بنسان
    [few] { $value } بنسات
    [many] { $value } بنسًا
   *[other] { $value } بنس
}
weight-pounds = { $value ->
    [zero] { $value } جنيه إسترليني
    [one] جنيه إسترليني واحد
    [two] جنيهان إسترلينيان
    [few] { $value } جنيهات إسترلينية
    [many] { $value } جنيهًا إسترلينيًا
   *[other] { $value } جنيه إسترليني
}
weight-euro-cents = { $value ->
    [zero] { $value } سنت (يورو)
    [one] سنت واحد (يورو)
    [two] سنتان (يورو)
    [few] { $value } سنتات (يورو)
    [many] { $value } سنتًا (يورو)
   *[other] { $value } سنت (يورو)
}
weight-euros = { $value ->
    [zero] { $value } يورو
    [one] يورو واحد
    [two] { $value } يورو
    [few] { $value } يورو
    [many] { $value } يورو
   *[other] { $value } يورو
}
weight-us-cent = سنت أمريكي
weight-us-nickel = نيكل أمريكي (5 سنتات)
weight-us-dime = دايم أمريكي (10 سنتات)
weight-us-quarter = ربع دولار أمريكي
weight-us-half-dollar = نصف دولار أمريكي
weight-us-dollar = دولار أمريكي معدني
weight-australian-cents = { $value ->
    [zero] { $value } سنت (أستراليا)
    [one] سنت واحد (أستراليا)
    [two] سنتان (أستراليا)
    [few] { $value } سنتات (أستراليا)
    [many] { $value } سنتًا (أستراليا)
   *[other] { $value } سنت (أستراليا)
}
weight-australian-dollars = { $value ->
    [zero] { $value } دولار أسترالي
    [one] دولار أسترالي واحد
    [two] دولاران أستراليان
    [few] { $value } دولارات أسترالية
    [many] { $value } دولارًا أستراليًا
   *[other] { $value } دولار أسترالي
}
weight-clay = صلصال
weight-sticky-tape = شريط لاصق
weight-small-paper-clip = مشبك ورق (صغير)
weight-large-paper-clip = مشبك ورق (كبير)
weight-metal-washer = حلقة معدنية
weight-other = شيء آخر
