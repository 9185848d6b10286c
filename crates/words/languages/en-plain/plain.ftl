plain-help = Help with summing up: { $help }.
plain-altered = Somebody took trials out, or put some in, and not on this page.
plain-in-hand = You work on trial { $trial }.
plain-trial-altered = Somebody changed some of this trial by hand, and not on this page.
plain-draft-empty = Written and not locked: nothing.
plain-not-true = Reading { $number } does not count. It cannot be true of this rocket.
plain-middle = Middle value: { $mm } mm from the nose. The readings are { $range } mm apart.
plain-measured-separation = The two points are { $mm } mm apart, measured.
plain-measured-overlap =
    The two points are { $mm } mm apart, measured. Some readings of one reach past some of the
    other.
plain-computed-separation = The two points are { $mm } mm apart, worked out.
plain-taken-back = Taken back, as a slip: { $outcomes }.
plain-swung =
    On { $string } m of string with an arm of { $arm } m, { $turns } turns a second. A block of air,
    one metre long, wide and high, weighed { $density } kg.
plain-conclusion = What we found
plain-table-follows = Keep what stands below. With it this page opens the notebook again.
