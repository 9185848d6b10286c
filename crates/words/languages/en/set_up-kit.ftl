## The kit list: in the place Set up, and on paper.

# The heading of the list.
# $groups (number): how many groups
# $pupils (number): how many pupils
kit-title =
    { $groups ->
        [one] Kit for { $groups } group, pupils: { $pupils }
       *[other] Kit for { $groups } groups, pupils: { $pupils }
    }
# The heads of its columns.
kit-thing = What
kit-count = How many
kit-spares = Spares
kit-swap = Instead
# Things, and what does instead.
kit-bottle = plastic drinks bottle, empty and dry
kit-bottle-swap = a tube of rolled card
kit-card = sheet of stiff card, A4 or Letter
kit-card-swap = cereal boxes
kit-tape = roll of sticky tape
kit-tape-swap = one roll for two groups
kit-clay = 50 g of modelling clay
kit-clay-swap = coins in sticky tape
kit-string = 3 m of strong string
kit-string-swap = builder’s line
kit-ruler = 30 cm ruler
kit-ruler-swap = a printed paper ruler, checked against a real one
kit-scissors = pair of scissors
kit-scissors-swap = parts that are cut beforehand
kit-computer = computer or tablet
kit-computer-swap = the lesson on paper, typed in later
kit-scales = kitchen scales, to 1 g
kit-scales-swap = the masses that the page works out
kit-hole-punch = hole punch
kit-hole-punch-swap = a pencil and a piece of clay below the card
kit-markers = markers for the edge of the space
kit-markers-swap = school bags, or chalk
kit-eye-protection = eye protection, for whoever swings
kit-eye-protection-swap = none: without it nobody swings
kit-stopwatch = stopwatch
kit-stopwatch-swap = a clock with a second hand

## The timings.

# The label of a list, and its choices.
plan-label = There is
plan-hour = one lesson of 60 minutes
plan-two-hours = two lessons of 60 minutes
plan-half-day = half a day (3 hours)
# The heads of the columns.
plan-from = From
plan-minutes = Minutes
plan-step = What happens
# $lesson (number): which lesson, where there are several
plan-lesson = Lesson { $lesson }
# The last row.
plan-all = Altogether
# The steps.
plan-hook = You swing two rockets, one steady and one not. Everybody guesses why.
plan-open = Groups open the link and read the question.
plan-build = Groups build their rocket and describe it on the page.
plan-measure = Groups find both points, each read three times.
plan-predict = Groups predict what it will do, and lock that.
plan-swing = One group after the other swings three times; the others watch from outside the space.
plan-break = Break.
plan-change = Groups change one thing, measure, predict and swing again.
plan-compare = The class compares: what changed, and what it did.
plan-conclude = Groups conclude and hand in.
# Below: what swinging one after the other comes to.
# $minutes (number): with one decimal
plan-each =
    { $minutes ->
        [one] One group swings at a time: that is { $minutes } minute for each, the first time.
       *[other] One group swings at a time: that is { $minutes } minutes for each, the first time.
    }
# The same where it is less than two minutes.
plan-short = With so many groups that is tight: let half of them swing in another lesson, or have a second space with a second adult.
