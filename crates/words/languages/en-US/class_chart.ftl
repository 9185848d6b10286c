class-chart-difference-in = { $written-in ->
    [millimetres] measured less computed, in millimeters
   *[inches] measured less computed, in inches
}
class-chart-mean-in = { $written-in ->
    [millimetres] mean of both, in millimeters
   *[inches] mean of both, in inches
}
