part-nose = الأنف
part-tube = الأنبوب
part-taper = الجزء المتناقص
part-neck = العنق
part-fins = الزعانف
part-weight = الثقل
part-numbered = { $part } { $number }
