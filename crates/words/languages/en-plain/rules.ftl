rules-fixed =
    { $rule-setting ->
        [detail] How much you see was set for this lesson (rules { $rules }).
        [help] How much help you get was set for this lesson (rules { $rules }).
        [telling] What you are told when was set for this lesson (rules { $rules }).
       *[fair-test] How many changes you may make was set for this lesson (rules { $rules }).
    } To change it, ask your teacher.
rules-changed =
    { $changeable ->
        [nose] In this lesson the nose stays the same (rules { $rules }).
        [body] In this lesson the body stays the same (rules { $rules }).
        [materials] In this lesson you keep what each part is made of (rules { $rules }).
        [fin-number] In this lesson the number of fins stays the same (rules { $rules }).
        [fin-shape] In this lesson the fins keep their shape and size (rules { $rules }).
        [fin-place] In this lesson the fins stay where they are (rules { $rules }).
        [added-mass] In this lesson the weight stays the same (rules { $rules }).
        [mass-place] In this lesson the weight stays where it is (rules { $rules }).
       *[swinging] In this lesson the string stays as long as before (rules { $rules }).
    } Take that change back, or ask your teacher.
rules-several =
    { $count ->
        [one] You made { $count } change. In this lesson you make one at a time (rules { $rules }).
       *[other] You made { $count } changes. In this lesson you make one at a time (rules { $rules }).
    } Take the others back, or ask your teacher.
rules-added =
    In this lesson you add at most { $most } of weight (rules { $rules }). Take some off, or ask your
    teacher.
rules-string =
    In this lesson the string is at most { $most } long (rules { $rules }). Make it shorter, or ask
    your teacher.
rules-turns =
    In this lesson you swing with at most { $most } (rules { $rules }). Swing slower, or ask your
    teacher.
rules-language-kept =
    This lesson is meant to be in { $language }. You chose other words here, and they stay. You can
    change them at the top.
join-lead = Press the name of your group. Then you can start.
