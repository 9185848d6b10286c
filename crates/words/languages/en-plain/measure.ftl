measure-lead =
    Measure both points from the nose tip, along the body. The rocket is empty. Read each three
    times. Take the ruler away in between.
measure-pressure-how = Lay the flat card cut-out on a ruler’s edge: it must not tip. Read at the edge.
measure-range-none = One reading cannot show how far readings are apart.
measure-range-spread = The readings are far apart: measure again?
measure-range = The readings are { $range } apart ({ $least } to { $most }).
measure-separation = The two points are <b>{ $separation }</b> apart.
measure-too-close =
    <b>Too close to say.</b> Some readings of one point reach past some of the other. They cannot
    tell which point is nearer the nose.
measure-beside = You measured, the page worked out
measure-beside-caption = From the nose tip: what you measured, what the page worked out
measure-head-difference = how far apart
measure-row-separation = how far apart
measure-type-both = Write both lengths.
