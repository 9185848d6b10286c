columns-range = { $balance-point ->
    [mass] Centre of mass: how far readings differ (mm)
   *[pressure] Centre of pressure: how far readings differ (mm)
}
columns-measured-separation = The two points are apart by: measured (mm)
columns-computed-separation = The two points are apart by: worked out (mm)
columns-air-density = Grams that one cubic metre of air weighs
