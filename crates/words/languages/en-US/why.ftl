why-caution =
    The cut-out’s center of pressure stands for air from the side. A good separation is not
    permission to swing or launch. Local rules, your school’s own risk assessment and a
    qualified person decide. This page does not.
why-sums-band = { $agreement ->
    [agree] <b>How sure is our sum?</b> There are several published sums for this. They put the center of pressure (nose-on) between { $least } and { $most }, and all say: { $outcomes }.
   *[differ] <b>How sure is our sum?</b> There are several published sums for this. They put the center of pressure (nose-on) between { $least } and { $most }, and say: { $outcomes }.
}
why-cut-out =
    A card cut-out stands for air from the side: its center of pressure (side-on) is at { $side }.
why-nose-on =
    Flying straight, the air meets the nose: then the center of pressure (nose-on) is at { $front }.
    The one nearer the nose is the more cautious of the two.
why-nose-on-rolls =
    Flying straight, the air meets the nose: then the center of pressure (nose-on) is at { $front },
    or as far back as { $rear } in another roll. The one nearer the nose is the more cautious of
    the two.
why-mass-at = { $found ->
    [by-hand] The center of mass is measured, { $at } from the nose tip.
   *[by-sum] The center of mass is { $at } from the nose tip.
}
why-pressure-at = { $found ->
    [by-hand] The center of pressure (side-on), which a card cut-out finds, is measured, { $at } from the nose tip.
   *[by-sum] The center of pressure (side-on), which a card cut-out finds, is { $at } from the nose tip.
}
why-apart =
    In this view they are { $drawn } apart, and { $least } in the least favorable roll.
why-point-measured =
    { $which-point ->
        [mass] The center of mass
       *[pressure] The center of pressure (side-on)
    } was measured, at { $at }. Worked out: { $worked-out }, { $compared ->
        [more] { $by } more
        [less] { $by } less
       *[the-same] the same
    }.
why-row-mass-at = Center of mass, from the nose tip
why-row-side-on = Center of pressure (side-on), from the nose tip
why-row-nose-on = Center of pressure (nose-on), from the nose tip
why-row-least-apart = Separation in the least favorable roll
why-table-note =
    All distances are from the nose tip. Separation counts as positive when the center of mass
    is nearer the nose.
