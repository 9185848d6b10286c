## The rules of a lesson that was set up: what a group meets where it would break one.

# It stands wherever results come from.
# $rules (text): four letters and digits
rules-under = Made under the rules { $rules }.
# A group tries to change a setting that is fixed.
# $rule-setting (detail | help | telling | fair-test): which setting
# $rules (text): four letters and digits
rules-fixed =
    { $rule-setting ->
        [detail] How much detail there is was set for this lesson (rules { $rules }).
        [help] How much help there is was set for this lesson (rules { $rules }).
        [telling] What is told when was set for this lesson (rules { $rules }).
       *[fair-test] How many changes at once was set for this lesson (rules { $rules }).
    } If it should change, ask whoever leads.
# A group tries to lock a prediction, or to record a swing, with something changed.
# $changeable (nose | body | materials | fin-number | fin-shape | fin-place | added-mass | mass-place | swinging): what was changed
# $rules (text): four letters and digits
rules-changed =
    { $changeable ->
        [nose] In this lesson the nose stays the same (rules { $rules }).
        [body] In this lesson the body stays the same (rules { $rules }).
        [materials] In this lesson what parts are made of, and their mass, stays the same (rules { $rules }).
        [fin-number] In this lesson the number of fins stays the same (rules { $rules }).
        [fin-shape] In this lesson the fins keep their shape and size (rules { $rules }).
        [fin-place] In this lesson the fins stay where they are (rules { $rules }).
        [added-mass] In this lesson the added weight stays the same (rules { $rules }).
        [mass-place] In this lesson the weight stays where it is (rules { $rules }).
       *[swinging] In this lesson the string stays as long as before (rules { $rules }).
    } Undo that change, or ask whoever leads.
# $count (number): how many changes there are, two or more
# $rules (text): four letters and digits
rules-several =
    { $count ->
        [one] There is { $count } change, and in this lesson only one is allowed at a time (rules { $rules }).
       *[other] There are { $count } changes, and in this lesson only one is allowed at a time (rules { $rules }).
    } Undo the others, or ask whoever leads.
# $most (text): the most, with its unit
# $rules (text): four letters and digits
rules-added =
    In this lesson at most { $most } of weight is added (rules { $rules }). Take some off, or ask
    whoever leads.
# $most (text): the most, with its unit
# $rules (text): four letters and digits
rules-string =
    In this lesson the string is at most { $most } long (rules { $rules }). Make it shorter, or ask
    whoever leads.
# $most (text): the most, such as “0.8 turns a second”
# $rules (text): four letters and digits
rules-turns =
    In this lesson it is swung with at most { $most } (rules { $rules }). Swing it slower, or ask
    whoever leads.
# A set-up was opened, and its language is another than somebody chose here.
# $language (text): the name of the language of the lesson
rules-language-kept =
    This lesson is meant to be in { $language }. You chose another language here, and it stays. You
    can change it at the top.
# A set-up was opened: which group somebody is now.
# $group (text): the label of the group
# $rules (text): four letters and digits
rules-begun = You are { $group } (rules { $rules }). The notebook of your group is open.

## “Which group are you?”: the page that a link for a whole class opens.

# The name of the place, and its heading.
places-join = Which group are you?
# Over the labels of the groups, which are buttons.
join-lead = Press your group’s label. Then you can start.
# Beside a label: this group’s notebook is on this computer already.
# $holds (text): what is in it, such as “3 trials”
join-here = here already: { $holds }
# Where no link waits.
join-nothing = No class link is open here. Open the link or the code that you were given.
