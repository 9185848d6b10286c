class-chart-name = المسافة بين النقطتين وهل طار الصاروخ والأنف أولاً، في الصفّ كلّه
class-chart-one-mark = علامة لكل محاولة
class-chart-bars = عند كل عمود: عدد المحاولات
class-chart-invented = صفّ مُختلَق للتدريب
class-chart-nose-first = الأنف أولاً
class-chart-not-clear = غير واضح
class-chart-otherwise = ليس الأنف أولاً
class-chart-chance = احتمال الأنف أولاً
class-chart-percent = { $percent } %
class-chart-in-widths = المسافة بين النقطتين بعرض الجسم
class-chart-turning = نصفها والأنف أولاً: عند { $at }
class-chart-turning-band = المخطَّط: من { $from } إلى { $to } (95 %)
class-chart-turning-open = نطاقه بثقة 95 % بلا حدّ
class-chart-gap = نصفها والأنف أولاً: من { $from } إلى { $to }
class-chart-curve = المنحنى: هذا الاحتمال، بالمواءمة
class-chart-curve-band = نطاقه بثقة 95 %
class-chart-square = مربّع: غير واضح
class-chart-ring = حولها حلقة: معلَّمة
class-chart-none = لا محاولة بعد

class-chart-agreement = المسافة المقيسة ناقص المحسوبة، مقابل متوسّطهما
class-chart-difference-in = { $written-in ->
    [millimetres] المقيس ناقص المحسوب، بالمليمترات
   *[inches] المقيس ناقص المحسوب، بالبوصات
}
class-chart-mean-in = { $written-in ->
    [millimetres] متوسّط الاثنين، بالمليمترات
   *[inches] متوسّط الاثنين، بالبوصات
}
class-chart-middle = المتوسّط: { $at }
class-chart-limits = حدود 95 %: من { $from } إلى { $to }
class-chart-larger = كلما كبر المربّع زادت المحاولات
class-chart-agree = 0: الاثنان سواء
