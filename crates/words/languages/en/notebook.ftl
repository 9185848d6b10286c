## What is said when notebooks are opened and put away.

# What a notebook holds, in a list and behind its label.
# $count (number): how many trials
notebook-holds = { $count ->
    [0] no trials
    [one] 1 trial
   *[other] { $count } trials
}
# The same with the rocket of the last trial.
# $count (number): how many trials
# $name (text): the name of that rocket
notebook-holds-of = { $count ->
    [0] no trials, { $name }
    [one] 1 trial, { $name }
   *[other] { $count } trials, { $name }
}
# $group (text): the label of the group
# $holds (text): what it holds, as above
notebook-is-open = This is the notebook of { $group }: { $holds }.
# Behind that.
# $group (text): the label of the group
notebook-twin = Another notebook here is { $group } too: give one of them another label.
# When a label is chosen that another notebook has.
# $group (text): the label of the group
notebook-taken = Another notebook here is { $group } too. Is it yours?
notebook-two-tabs =
    Another tab has written in this notebook too. Yours is kept beside it, as a notebook of its
    own.
notebook-unreadable =
    What is kept there is no notebook that this version of the page can read. It stays as it is.
# $group (text): the label of the group
notebook-is-deleted = The notebook of { $group } is deleted from this computer.
notebook-open-already = This notebook is open already.
# Where several were opened at once: a line each.
# $group (text): the label of the group
notebook-is-here = The notebook of { $group } is here.
# $number (number): which of the texts
# $count (number): how many texts there were
# $sentence (text): what is wrong with it
notebook-of-several = Number { $number } of { $count }: { $sentence }
# $names (text): the names of rockets, with commas between
notebook-not-opened = Not opened: { $names }. The page shows one rocket: open each alone.
# Among those names.
notebook-nameless = a rocket without a name

## In the place Measure, below a field with something that is no length.

# $number (number): which reading
# $fault (text): what is wrong with it, as a sentence
notebook-reading-fault = Reading { $number }: { $fault } Until then it does not count.
# $fault (text): what is wrong with it, as a sentence
notebook-guess-fault = Your guess: { $fault }
# $fault (text): what is wrong with it, as a sentence
notebook-rocket-fault = Length of the rocket: { $fault }
# $fault (text): what is wrong with it, as a sentence
notebook-cutout-fault = Length of the cut-out: { $fault }
