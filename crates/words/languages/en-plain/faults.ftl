faults-to-mend = { $count ->
    [one] Put one thing right
   *[other] Put { $count } things right
}
