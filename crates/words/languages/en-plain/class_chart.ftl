class-chart-name = How far apart the points are, and if it flew nose-first, for the whole class
class-chart-in-widths = how far apart, in body widths
class-chart-turning-open = it may be anywhere (95 %)
class-chart-curve = curve: that chance
class-chart-agreement = Measured take away worked out, and the middle of both
class-chart-difference-in = { $written-in ->
    [millimetres] measured take away worked out, in millimetres
   *[inches] measured take away worked out, in inches
}
class-chart-mean-in = { $written-in ->
    [millimetres] middle of both, in millimetres
   *[inches] middle of both, in inches
}
class-chart-middle = middle: { $at }
