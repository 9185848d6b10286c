measure-range = The readings differ by { $range } ({ $least } to { $most }).
measure-separation = The two points are <b>{ $separation }</b> apart.
