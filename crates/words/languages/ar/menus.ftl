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
