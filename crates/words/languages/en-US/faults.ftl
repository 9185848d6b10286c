faults-to-mend = { $count ->
    [one] One thing to fix
   *[other] { $count } things to fix
}
