done-reading = { $balance-point ->
    [mass] reading { $reading } of the center of mass.
   *[pressure] reading { $reading } of the center of pressure (side-on).
}
done-guess = { $balance-point ->
    [mass] the guess of the center of mass.
   *[pressure] the guess of the center of pressure (side-on).
}
done-how-read = { $balance-point ->
    [mass] how the center of mass was read.
   *[pressure] how the center of pressure (side-on) was read.
}
