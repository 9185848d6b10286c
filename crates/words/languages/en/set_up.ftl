## The place Set up: whoever leads makes the link for a class.

# The name of the place, in the menu and as its heading.
places-set-up = Set up
# Under the heading.
set-up-lead = Everything has a usual value: the link works at once, and changes with what you choose.

# The headings of the cards.
set-up-class = Class
set-up-question-card = Question
set-up-rules-card = Rules
set-up-hall-card = String and hall
set-up-page-card = Page
set-up-places-card = Places that are shown
set-up-kit-card = Kit and timings
set-up-open-card = Change an earlier set-up

# Labels of fields.
set-up-pupils = Pupils
set-up-size = in groups of
# $count (number): how many groups that makes
set-up-groups =
    { $count ->
        [one] { $count } group
       *[other] { $count } groups
    }
set-up-labels = Labels
# A choice of labels.
set-up-labels-colours = a colour each: Red 1, Orange 1, …
# A choice of labels.
# $first (text): the first label, such as “Blue 1”
# $second (text): the second label
set-up-labels-numbers = { $first }, { $second }, …
set-up-language = Language
# A choice of language.
set-up-language-any = that of each computer
set-up-units = Units
set-up-units-metric = mm and g
set-up-units-inch = inches and ounces
# A list, in few words: what is told when. Below stands the choice in full.
set-up-telling-all = all at once
set-up-telling-verdict = verdict after predicting
set-up-telling-points = each after its step
set-up-rocket = Begins with
# A choice of rocket: the one that is on the page, or that came with a set-up.
# $name (text): its name
set-up-rocket-this = { $name }
set-up-rocket-nameless = the rocket on the page
# A button.
set-up-rocket-take = Take the rocket on the page
# A choice of question: one's own.
set-up-own = your own …
set-up-own-label = Your question
# In front of what a question changes, keeps and expects.
set-up-change = <b>Change:</b>
set-up-keep = <b>Keep:</b>
set-up-expect = <b>Expect:</b>
# $minutes (number): how long it takes a group
set-up-minutes =
    { $minutes ->
        [one] About { $minutes } minute for a group, measured and swung again.
       *[other] About { $minutes } minutes for a group, measured and swung again.
    }
# Over buttons that stay pressed.
set-up-may-change = What may be changed (pressed = yes):
set-up-two = Two changes at once
set-up-added = Most added weight
set-up-added-hint = Empty: no limit.
# $rules (text): four letters and digits
set-up-code-of-rules = These are the <b>rules { $rules }</b>. Results carry the name, and are compared under the same rules.
set-up-hall = Hall, clear width
set-up-string = Longest string
set-up-turns = Most turns a second
set-up-places-hint = Pressed places are in the path. Predict stays where Swing is.
# A field was left empty, or holds something else.
# $least (text): the least, as digits
# $most (text): the most, as digits
set-up-bounds = A number from { $least } to { $most }, please. Until then the link keeps the number before.

## The place Set up: the room that a swing needs.

# $string (text): a length with its unit
# $turns (text): such as “0.8 turns a second”
# $across (text): a width with its unit
set-up-room-needed = { $string } of string at { $turns } needs { $across } clear across.
# No hall is typed yet.
set-up-room-ask = Measure the clear width of your hall to see what fits.
# $across (text): a width with its unit
set-up-room-fits = It fits into { $across }.
# $across (text): a width with its unit
set-up-room-none = It does not fit into { $across }.
# $string (text): a length with its unit
# $turns (text): such as “0.8 turns a second”
set-up-room-same = At the same turns a string of { $string } fits ({ $turns }).
# $string (text): a length with its unit
# $turns (text): such as “0.8 turns a second”
set-up-room-longest = The longest that fits: { $string } at { $turns }.
# $string (text): a length with its unit
# $turns (text): such as “0.8 turns a second”
set-up-room-fastest = The fastest that fits: { $turns } with { $string }.
# $across (text): a width with its unit
set-up-room-narrow = No string fits. The narrowest hall for this rocket is { $across } across: go outside, or choose a smaller rocket.
set-up-room-pull = This rocket pulls too hard on any string. Choose a lighter one.
# A button.
# $string (text): a length with its unit
# $turns (text): such as “0.8 turns a second”
set-up-room-take = Use { $string }, { $turns }

# Under string and hall, and under the timings.
set-up-governing =
    Local rules, your school’s own risk assessment and a qualified person decide. This page does not.

## The place Set up: the link.

set-up-link = The link for the class
# Buttons.
set-up-copy = Copy the link
set-up-save = Save
# A link to the place Paper.
set-up-to-paper = Labels, kit list and every other sheet
set-up-link-is = One link for all: it asks which group somebody is. The printed labels have a link for each group.
set-up-code = The code, to be typed
# The rocket is too long for a link.
# $most (number): characters
set-up-too-long = This rocket has too many parts for a link of { $most } characters. Choose another one to begin with, or draw own outlines with fewer corners.
# $file (text): the name of the file
set-up-saved = Saved as { $file }: it opens again here and under Open.
set-up-open = Paste its link or code
set-up-open-wrong = This is no set-up.
set-up-opened = This set-up is in the form now.
set-up-back = Back to the one before

## The labels of the groups, on paper.

# $group (text): the label of the group
set-up-label-open = <b>{ $group }:</b> point a camera here, or type the code under “a link, code or file”.
# $rules (text): four letters and digits
set-up-label-rules = Rules { $rules }. Your label stands in place of names.
set-up-sheet = Labels to cut up

## In the place for whoever leads: a notebook with a set-up.

# Beside a link to the place Set up.
lead-set-up = One link for a whole class: groups, question, rules, language, and what is shown.
# $group (text): the label of the group
# $rules (text): four letters and digits
lead-under-rules = The notebook of { $group } is under the rules { $rules }: detail, help, what is told when and the fair test are fixed.
# A button, and what it did.
lead-lift = Free this notebook from the set-up
lead-lifted = This notebook is free. Its results say that they are under no rules.
