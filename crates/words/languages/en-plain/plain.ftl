plain-middle = Middle value: { $mm } mm from the nose. The readings differ by { $range } mm.
plain-measured-separation = The two points are { $mm } mm apart, measured.
plain-measured-overlap =
    The two points are { $mm } mm apart, measured; the readings of the two points overlap.
plain-computed-separation = The two points are { $mm } mm apart, worked out.
plain-swung =
    Swung on { $string } m of string with an arm of { $arm } m, { $turns } turns a second. One
    cubic metre of the air weighed { $density } kg.
