language-label = اللغة
language-failed =
    تعذّر تحميل { $language }، فبقيت الصفحة كما كانت. تحقّقوا من الشبكة ثم اختاروها من جديد.
