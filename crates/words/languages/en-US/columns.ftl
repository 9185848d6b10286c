columns-from = { $balance-point ->
    [mass] Center of mass: read from
   *[pressure] Center of pressure: read from
}
columns-guess = { $balance-point ->
    [mass] Center of mass: guess (mm)
   *[pressure] Center of pressure: guess (mm)
}
columns-reading = { $balance-point ->
    [mass] Center of mass: reading { $number } (mm)
   *[pressure] Center of pressure: reading { $number } (mm)
}
columns-left-out = { $balance-point ->
    [mass] Center of mass: reading left out
   *[pressure] Center of pressure: reading left out
}
columns-left-out-reason = { $balance-point ->
    [mass] Center of mass: why it is left out
   *[pressure] Center of pressure: why it is left out
}
columns-middle = { $balance-point ->
    [mass] Center of mass: middle value from the nose (mm)
   *[pressure] Center of pressure: middle value from the nose (mm)
}
columns-range = { $balance-point ->
    [mass] Center of mass: range (mm)
   *[pressure] Center of pressure: range (mm)
}
