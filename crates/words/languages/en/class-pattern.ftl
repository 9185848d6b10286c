## The place Class: what the trials of all groups come to.

# The name of the view.
class-pattern = Pattern
# The buttons above the chart.
class-measured = measured
class-computed = worked out
class-in-lengths = in lengths
class-in-widths = in body widths
class-names = Show groups
class-board = Big screen
class-board-leave = Leave the big screen
# What a row of buttons is for, for screen readers.
class-along = The separation is
# A distance.
# $value (number): how many body widths
class-widths =
    { $value ->
        [one] { $value } body width
       *[other] { $value } body widths
    }
# Some trials have no such separation.
# $count (number): how many
class-without = Trials without such a separation: { $count }
class-nothing-yet = Nothing to show yet: gather what the groups found.

## What the chart says.

# The turning point, where rockets with more separation fly nose-first.
# $at (text): the separation
class-turns = Half of these rockets fly nose-first at a separation of { $at }.
# The same, where those with less do.
# $at (text): the separation
class-turns-below = Half of these rockets fly nose-first at a separation of { $at }, and below it more do: the other way round than expected. Are the two points mixed up?
# $least (text): the smallest separation
# $most (text): the largest
class-band = It may lie anywhere between { $least } and { $most } (95 %).
class-band-open = These trials hardly tell where it is: it may lie anywhere.
# $trials (number): how many trials there are
# $least (number): how many it takes
class-too-few = There are { $trials } trials with a separation and a clear outcome. A turning point takes { $least } at least.
# $least (text): the smallest separation
# $most (text): the largest
class-all-nose-first = All flew nose-first, from { $least } to { $most }. Nothing tells where that begins.
# $least (text): the smallest separation
# $most (text): the largest
class-none-nose-first = None flew nose-first, from { $least } to { $most }. Nothing tells where that begins.
# $at (text): the separation
class-same = All have the same separation, { $at }: it cannot tell what makes the difference.
# $from (text): the largest separation of those that did not
# $to (text): the smallest of those that did
class-parted = All rockets with { $to } or more flew nose-first, and none with { $from } or less. The turning point is in that gap. How sharp it is, these trials do not tell.
# $from (text): the largest separation of those that did
# $to (text): the smallest of those that did not
class-parted-below = All rockets with { $from } or less flew nose-first, and none with { $to } or more: the other way round than expected. Are the two points mixed up?
class-level = Nose-first is as likely with little separation as with much: these trials show no turning point.

## What would settle it.

class-settle = What would settle it
# $at (text): a separation
# $share (number): a percentage
class-next-narrows = One more trial with a separation of { $at }: it should narrow the turning point by about { $share } %.
# $at (text): a separation
class-next-gap = A trial with a separation of { $at }, in the gap.
# $at (text): a separation
# $from (text): where nothing was tried begins
# $to (text): where it ends
class-next-untried = A trial with a separation of { $at }: nothing was tried between { $from } and { $to }.

## Predictions, fair tests, agreement.

class-also = What else the class found
# $right (number): how many came true
# $of (number): of how many
class-before = Predictions made before swinging that came true: { $right } of { $of }
# $right (number): how many came true
# $of (number): of how many
class-after = Predictions made after swings were seen that came true: { $right } of { $of }
# $count (number): how many
class-unjudged = Predictions that the swings say nothing about: { $count }
# $fair (number): how many
# $of (number): of how many
class-fair = Trials that changed one thing, or none: { $fair } of { $of }
# $mean (text): a length, with its sign
# $count (number): of how many trials
class-agreement = Measured less worked out: { $mean } on average, of { $count } trials.
# $least (text): a length, with its sign
# $most (text): a length, with its sign
class-limits = 95 of 100 rockets should differ by { $least } to { $most }.
# $count (number): how many
class-other-sign = Trials in which the two ways disagree about which point is nearer the nose: { $count }

## For whoever leads alone.

# A line that opens a list.
# $count (number): how many
class-odd = Readings that look odd, to ask about: { $count }
# Each of these follows the group and the trial.
# $balance-point (mass | pressure): which point
# $at (text): where it was read
# $length (text): how long the rocket is
class-odd-outside =
    { $balance-point ->
        [mass] The centre of mass was read at { $at }, outside of the rocket, which is { $length } long.
       *[pressure] The centre of pressure was read at { $at }, outside of the rocket, which is { $length } long.
    }
# $balance-point (mass | pressure): which point
# $range (text): the largest reading less the smallest
class-odd-range =
    { $balance-point ->
        [mass] The readings of the centre of mass differ by { $range }.
       *[pressure] The readings of the centre of pressure differ by { $range }.
    }
# $separation (text): the separation
# $length (text): how long the rocket is
class-odd-longer = The two points are { $separation } apart, and the rocket is { $length } long.
class-odd-equal = All three readings of both points are the same: was it read once and written three times?
# $mass (text): how far the centre of mass is from what was worked out
# $pressure (text): the same of the centre of pressure
class-odd-slip = Both points are off from what was worked out by about the same, { $mass } and { $pressure }: was the ruler’s zero at the nose tip?
# $separation (text): the separation
class-odd-nose = It flew nose-first with a separation of { $separation }. A discovery, or two readings that changed places?
# $separation (text): the separation
class-odd-not-nose = It did not fly nose-first with a separation of { $separation }. A discovery, or two readings that changed places?

## The timer of the big screen.

class-timer = Timer
# $minutes (number): how many
class-minutes = { $minutes } min
class-timer-stop = Stop the timer
class-timer-over = Time is up.
# For screen readers.
# $minutes (number): whole minutes
class-timer-left = { $minutes } min left
