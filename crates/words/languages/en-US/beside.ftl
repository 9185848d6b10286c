beside-agree = { $balance-point ->
    [mass] The center of mass: measured and worked out agree to within { $distance }.
   *[pressure] The center of pressure (side-on): measured and worked out agree to within { $distance }.
}
beside-differ = { $balance-point ->
    [mass] The center of mass: measured { $distance } nearer the { $nearer-end ->
        [nose] nose
       *[tail] tail
    } than worked out.
   *[pressure] The center of pressure (side-on): measured { $distance } nearer the { $nearer-end ->
        [nose] nose
       *[tail] tail
    } than worked out.
}
