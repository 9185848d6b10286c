moved-not = { $balance-point ->
    [mass] لم يتحرّك مركز الكتلة.
   *[pressure] لم يتحرّك مركز الضغط (من الجانب).
}
moved-point = { $balance-point ->
    [mass] تحرّك مركز الكتلة { $distance }
   *[pressure] تحرّك مركز الضغط (من الجانب) { $distance }
} { $moved-way ->
    [back] إلى الخلف
   *[forward] إلى الأمام
}.
moved-mass-same = لم تتغيّر كتلة الصاروخ.
moved-heavier = صار الصاروخ أثقل بمقدار { $mass }.
moved-lighter = صار الصاروخ أخفّ بمقدار { $mass }.
moved-separation = المسافة بين النقطتين { $became ->
    [grew] زادت
    [shrank] نقصت
   *[went] تغيّرت
} من { $from } إلى { $to }.
moved-separation-stayed = بقيت المسافة بين النقطتين { $to }.
moved-measured = المسافة المقيسة بين النقطتين { $became ->
    [grew] زادت
    [shrank] نقصت
   *[went] تغيّرت
} من { $from } إلى { $to }.
moved-measured-stayed = بقيت المسافة المقيسة بين النقطتين { $to }.
