paper-notebook-of = دفتر { $group }
paper-rocket-of = صاروخ المحاولة { $trial }
paper-note = <b>المحاولة { $trial }:</b> { $note }
paper-plans = <b>ما سنجرّبه بعد ذلك:</b> { $plans }
paper-found-out = ما اكتشفناه
paper-initials =
    توقيع الشخص البالغ بالأحرف الأولى، فُحص المكان قبل كلّ ثلاثة تدويرات: ____ ____ ____ ____
paper-no-permission =
    التدوير الجيّد ليس إذنًا بالإطلاق. القرار للقواعد المحلية ولتقييم المخاطر في مدرستكم ولشخص
    مؤهَّل.
paper-swings = ما رأيناه، تدويرًا بعد تدوير
paper-head-swings = التدويرات
paper-readings = ما خمّنّاه وقسناه من طرف الأنف
paper-head-point = النقطة
paper-head-guess = التخمين
paper-head-middle = الوسط
paper-head-range = المدى
paper-from-tail = { $point } (القراءات من الذيل)
paper-left-out = { $point }، استُبعدت القراءة { $number }
paper-left-out-because = { $point }، استُبعدت القراءة { $number }: { $reason }
paper-not-true = { $point }، القراءة { $number } لا تُحسَب: لا يمكن أن تكون صحيحة
paper-which-swings = { $seen }، رقم { $numbers }
