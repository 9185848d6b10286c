menus-examples = أمثلة
menus-bottles = قارورة فارغة (قياسات شائعة: قيسوا قارورتكم)
menus-litres = { $litres ->
    [zero] { $litres } لتر
    [one] { $litres } لتر
    [two] { $litres } لتر
    [few] { $litres } لترات
    [many] { $litres } لترًا
   *[other] { $litres } لتر
}
menus-puffin = Puffin: صلصال في الأنف وأربع زعانف عند الذيل
menus-tern = Tern: زعانف صغيرة ولا صلصال في الأنف
menus-razorbill = Razorbill: زعانف كبيرة ثقيلة
menus-gannet = Gannet: أنبوب ورقي رفيع
menus-empty-bottle = { $litres ->
    [zero] قارورة فارغة سعتها { $litres } لتر
    [one] قارورة فارغة سعتها { $litres } لتر
    [two] قارورة فارغة سعتها { $litres } لتر
    [few] قارورة فارغة سعتها { $litres } لترات
    [many] قارورة فارغة سعتها { $litres } لترًا
   *[other] قارورة فارغة سعتها { $litres } لتر
}
