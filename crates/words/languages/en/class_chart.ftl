## In the charts of a class, in the place Class, on a big screen and on paper: short, there is little room.

# The name of the chart, for screen readers.
class-chart-name = Separation and whether it flew nose-first, over the whole class
# Over it, where every trial has a mark of its own.
class-chart-one-mark = one mark a trial
# Over it, where there are too many trials for that.
class-chart-bars = on each bar: how many trials
# Over it, where nobody measured the data.
class-chart-invented = Invented class, for practice
# A row of the chart.
class-chart-nose-first = nose-first
# A row of the chart: neither nose-first nor otherwise in most swings.
class-chart-not-clear = not clear
# A row of the chart.
class-chart-otherwise = not nose-first
# Over the axis at the right.
class-chart-chance = chance of nose-first
# At that axis.
# $percent (number): how many of 100
class-chart-percent = { $percent } %
# What the axis is, where it is not in millimetres or inches.
class-chart-in-widths = separation in body widths
# At the line where the curve passes one half.
# $at (text): such as “31 mm”, or “0.36” on an axis in body widths
class-chart-turning = half fly nose-first at { $at }
# Where that line may be.
# $from (text): such as “24”
# $to (text): such as “39 mm”
class-chart-turning-band = hatched: { $from } to { $to } (95 %)
# The same, where the trials hardly tell.
class-chart-turning-open = its 95 % band has no end
# Above the gap, where one separation parts all trials.
# $from (text): such as “24”
# $to (text): such as “39 mm”
class-chart-gap = half fly nose-first at { $from } to { $to }
# What the curve is.
class-chart-curve = curve: that chance, fitted
# What is shaded round it.
class-chart-curve-band = its 95 % band
# What a square is.
class-chart-square = square: not clear
# What a ring round a mark is.
class-chart-ring = ringed: marked
# There is no trial.
class-chart-none = no trial yet

## In the small chart of how both ways to find the separation agree.

# The name of the chart, for screen readers.
class-chart-agreement = Measured less computed separation, against the mean of both
# The axis upwards.
# $written-in (millimetres | inches): the unit
class-chart-difference-in = { $written-in ->
    [millimetres] measured less computed, in millimetres
   *[inches] measured less computed, in inches
}
# The axis across.
# $written-in (millimetres | inches): the unit
class-chart-mean-in = { $written-in ->
    [millimetres] mean of both, in millimetres
   *[inches] mean of both, in inches
}
# What the line in the middle is.
# $at (text): such as “−3 mm”
class-chart-middle = mean: { $at }
# What the two broken lines are.
# $from (text): such as “−14”
# $to (text): such as “9 mm”
class-chart-limits = 95 % limits: { $from } to { $to }
# What a square is, where there are too many trials for a mark each.
class-chart-larger = the larger, the more trials
# What the line at 0 is.
class-chart-agree = 0: both the same
