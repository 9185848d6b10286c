drawing-rocket = { $name }، مرسوم بمقياس رسم ومعه نقطتاه
drawing-rocket-nameless = الصاروخ، مرسوم بمقياس رسم ومعه نقطتاه
drawing-pair = { $left } و{ $right }، مرسومان بمقياس رسم واحد على مسطرة واحدة
drawing-side-on-at = من الجانب، { $place }
drawing-side-on-measured = من الجانب، مقيس
drawing-measured-at = مقيس، { $place }
drawing-points-apart = المسافة { $separation }
drawing-pressure-lines = مركز|الضغط
drawing-mass-lines = مركز|الكتلة
drawing-pressure-side-on = مركز الضغط، من الجانب
drawing-drag-fins = اسحبوا إلى أعلى أو أسفل لتحريك الزعانف
drawing-drag-weight = اسحبوا إلى أعلى أو أسفل لتحريك هذا الثقل

drawing-qr-link = رمز QR: رابط إلى هذا الصاروخ
drawing-qr-code = رمز QR: الرمز الذي بجانبه
