moved-not = { $balance-point ->
    [mass] The center of mass did not move.
   *[pressure] The center of pressure (side-on) did not move.
}
moved-point = { $balance-point ->
    [mass] The center of mass moved { $distance }
   *[pressure] The center of pressure (side-on) moved { $distance }
} { $moved-way ->
    [back] back
   *[forward] forward
}.
