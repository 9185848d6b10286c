rules-under = Nach den Regeln { $rules } gemacht.
rules-fixed =
    { $rule-setting ->
        [detail] Wie ausführlich die Seite ist, steht für diese Stunde fest (Regeln { $rules }).
        [help] Wie viel Hilfe es gibt, steht für diese Stunde fest (Regeln { $rules }).
        [telling] Was wann gesagt wird, steht für diese Stunde fest (Regeln { $rules }).
       *[fair-test] Wie viele Änderungen auf einmal erlaubt sind, steht für diese Stunde fest (Regeln { $rules }).
    } Soll es anders sein, fragt, wer die Stunde leitet.
rules-changed =
    { $changeable ->
        [nose] In dieser Stunde bleibt die Nase gleich (Regeln { $rules }).
        [body] In dieser Stunde bleibt der Rumpf gleich (Regeln { $rules }).
        [materials] In dieser Stunde bleibt gleich, woraus die Teile sind und was sie wiegen (Regeln { $rules }).
        [fin-number] In dieser Stunde bleibt die Zahl der Flossen gleich (Regeln { $rules }).
        [fin-shape] In dieser Stunde behalten die Flossen Form und Größe (Regeln { $rules }).
        [fin-place] In dieser Stunde bleiben die Flossen, wo sie sind (Regeln { $rules }).
        [added-mass] In dieser Stunde bleibt das zusätzliche Gewicht gleich (Regeln { $rules }).
        [mass-place] In dieser Stunde bleibt das Gewicht, wo es ist (Regeln { $rules }).
       *[swinging] In dieser Stunde bleibt die Schnur so lang wie vorher (Regeln { $rules }).
    } Macht diese Änderung rückgängig, oder fragt, wer die Stunde leitet.
rules-several =
    { $count ->
        [one] Es ist { $count } Änderung, und in dieser Stunde ist nur eine auf einmal erlaubt (Regeln { $rules }).
       *[other] Es sind { $count } Änderungen, und in dieser Stunde ist nur eine auf einmal erlaubt (Regeln { $rules }).
    } Macht die anderen rückgängig, oder fragt, wer die Stunde leitet.
rules-added =
    In dieser Stunde kommen höchstens { $most } Gewicht dazu (Regeln { $rules }). Nehmt etwas weg,
    oder fragt, wer die Stunde leitet.
rules-string =
    In dieser Stunde ist die Schnur höchstens { $most } lang (Regeln { $rules }). Nehmt sie kürzer,
    oder fragt, wer die Stunde leitet.
rules-turns =
    In dieser Stunde wird mit höchstens { $most } geschleudert (Regeln { $rules }). Schleudert
    langsamer, oder fragt, wer die Stunde leitet.
rules-language-kept =
    Diese Stunde ist für { $language } gedacht. Hier hat jemand eine andere Sprache gewählt, und die
    bleibt. Oben könnt ihr sie wechseln.
rules-begun = Ihr seid { $group } (Regeln { $rules }). Das Heft eurer Gruppe ist offen.
places-join = Welche Gruppe seid ihr?
join-lead = Drückt auf den Namen eurer Gruppe. Dann kann es losgehen.
join-here = schon hier: { $holds }
join-nothing = Hier ist kein Link einer Klasse offen. Öffnet den Link oder den Code, den ihr bekommen habt.
