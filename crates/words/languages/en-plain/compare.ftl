compare-no-trial =
    There is no trial yet. Measure, predict and swing. Then you see here what came out.
compare-note = It did this because … and what else to keep in mind.
compare-remove-plan = Take it off<aside>: { $plan }</aside>
compare-head-separation = How far apart
compare-altered = changed by hand, not on this page
compare-baseline = first to compare
compare-too-close = too close to say
compare-notebook-altered =
    Somebody took trials out of this notebook, or put some in, and not on this page. A mark such
    as this one shows a change by hand. It cannot show that somebody went back to an older file.
compare-is-back = Trial { $trial } is back. You can go on with it now.
charts-swings = How far apart, and what we saw
charts-swings-hint =
    Each dot is one swing. Pick one: what does it tell? Now look at all of them. Do they tell you
    something together? Many people build rockets with the points one to two body widths apart.
    That does not mean that you may swing or launch.
charts-swings-table = Swings, and how far apart
charts-series = How far apart in each trial
charts-series-table = How far apart in each trial
charts-no-pair = The page cannot draw one of the two rockets.
charts-pair-neither = Both as the page worked them out.
charts-pair-one = Both as the page worked them out. Trial { $trial }, measured: { $separation } apart.
charts-pair-both =
    Both as the page worked them out. Trial { $left }, measured: { $left-separation } apart. Trial
    { $right }, measured: { $right-separation } apart.
