faults-to-mend = { $count ->
    [one] Put one thing right
   *[other] Put { $count } things right
}
faults-scroll = (more below)
faults-field = { $measure ->
    [shape] { $card }, shape
    [length] { $card }, length
    [width] { $card }, width
    [front-end] { $card }, front end
    [mass] { $card }, mass
    [how-many] { $card }, how many
    [start] { $card }, start
    [turned-by] { $card }, turned by
    [along-the-body] { $card }, along the body
    [outer-edge] { $card }, outside edge
    [out-from-the-body] { $card }, out from the body
    [slants-back-by] { $card }, leans back by
    [outline] { $card }, shape
    [name] { $card }, name
   *[place] { $card }, place
}
