trial-because = { $outcome }، لأنّ <value>{ $because }</value>
trial-compared-with = المقارنة مع
trial-with-nothing = لا شيء: إنها المحاولة الأساسية
trial-with = المحاولة { $trial }
trial-with-deleted = المحاولة { $trial } (محذوفة)
trial-is-baseline = هذه هي المحاولة الأساسية: تُقارَن بها المحاولات الأخرى.
trial-unchanged = لم يتغيّر شيء منذ المحاولة { $trial }.
trial-change-one = غيّروا <b>شيئًا واحدًا</b> في الصاروخ أعلاه، وتتبعه هذه المحاولة.
trial-since = منذ المحاولة { $trial }:
trial-undo-change = التراجع عن هذا التغيير<aside>: { $change }</aside>
trial-things-changed = { $count ->
    [zero] لم يتغيّر شيء.
    [one] تغيّر شيء واحد. هل هو السبب؟
    [two] تغيّر شيئان. أيّهما السبب؟
    [few] تغيّرت { $count } أشياء. أيّها السبب؟
    [many] تغيّر { $count } شيئًا. أيّها السبب؟
   *[other] تغيّر { $count } شيء. أيّها السبب؟
}
trial-several-allowed = من يقود الدرس يسمح بذلك، والجدول يذكره.
trial-undo-all-but-one = تراجعوا عن الجميع إلا واحدًا ليكون الاختبار عادلاً.
trial-table-says-so = الجدول يذكر ذلك.
trial-point-moved-too = نقل ذلك إحدى النقطتين أيضًا: انظروا إلى الرسم أعلاه.
trial-moved-too = ما تحرّك أيضًا (محسوب): { $sentences }
