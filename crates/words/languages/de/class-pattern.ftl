
class-pattern = Pattern
class-measured = measured
class-computed = worked out
class-in-lengths = in lengths
class-in-widths = in body widths
class-names = Groups shown
class-board = Big screen
class-board-leave = Leave the big screen
class-along = The separation is
class-widths =
    { $value ->
        [one] { $value } body width
       *[other] { $value } body widths
    }
class-without = Trials without such a separation: { $count }
class-nothing-yet = Nothing to show yet: gather what the groups found.


class-turns = Half of these rockets fly nose-first at a separation of { $at }.
class-turns-below = Half of these rockets fly nose-first at a separation of { $at }, and below it more do: the other way round than expected. Are the two points mixed up?
class-band = It may lie anywhere between { $least } and { $most } (95 %).
class-band-open = These trials hardly tell where it is: it may lie anywhere.
class-too-few = There are { $trials } trials with a separation and a clear outcome. A turning point takes { $least } at least.
class-all-nose-first = All flew nose-first, from { $least } to { $most }. Nothing tells where that begins.
class-none-nose-first = None flew nose-first, from { $least } to { $most }. Nothing tells where that begins.
class-same = All have the same separation, { $at }: it cannot tell what makes the difference.
class-parted = All rockets with { $to } or more flew nose-first, and none with { $from } or less. The turning point is in that gap. How sharp it is, these trials do not tell.
class-parted-below = All rockets with { $from } or less flew nose-first, and none with { $to } or more: the other way round than expected. Are the two points mixed up?
class-level = Nose-first is as likely with little separation as with much: these trials show no turning point.


class-settle = What would settle it
class-next-narrows = One more trial with a separation of { $at }: it should narrow the turning point by about { $share } %.
class-next-gap = A trial with a separation of { $at }, in the gap.
class-next-untried = A trial with a separation of { $at }: nothing was tried between { $from } and { $to }.


class-also = What else the class found
class-before = Predictions made before swinging that came true: { $right } of { $of }
class-after = Predictions made after swings were seen that came true: { $right } of { $of }
class-unjudged = Predictions that the swings say nothing about: { $count }
class-fair = Trials that changed one thing, or none: { $fair } of { $of }
class-agreement = Measured less worked out: { $mean } on average, of { $count } trials.
class-limits = 95 of 100 rockets should differ by { $least } to { $most }.
class-other-sign = Trials in which the two ways disagree about which point is nearer the nose: { $count }


class-odd = Readings that look odd, to ask about: { $count }
class-odd-outside =
    { $balance-point ->
        [mass] The centre of mass was read at { $at }, outside of the rocket, which is { $length } long.
       *[pressure] The centre of pressure was read at { $at }, outside of the rocket, which is { $length } long.
    }
class-odd-range =
    { $balance-point ->
        [mass] The readings of the centre of mass differ by { $range }.
       *[pressure] The readings of the centre of pressure differ by { $range }.
    }
class-odd-longer = The two points are { $separation } apart, and the rocket is { $length } long.
class-odd-equal = All three readings of both points are the same: was it read once and written three times?
class-odd-slip = Both points are off from what was worked out by about the same, { $mass } and { $pressure }: was the ruler’s zero at the nose tip?
class-odd-nose = It flew nose-first with a separation of { $separation }. A discovery, or two readings that changed places?
class-odd-not-nose = It did not fly nose-first with a separation of { $separation }. A discovery, or two readings that changed places?


class-timer = Timer
class-minutes = { $minutes } min
class-timer-stop = Stop the timer
class-timer-over = Time is up.
class-timer-left = { $minutes } min left
