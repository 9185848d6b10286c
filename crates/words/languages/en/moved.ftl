## In Predict and in Compare: what moved with a change. “Back” is towards the tail.

# $balance-point (mass | pressure): which of the two points
moved-not = { $balance-point ->
    [mass] The centre of mass did not move.
   *[pressure] The centre of pressure (side-on) did not move.
}
# $balance-point (mass | pressure): which of the two points
# $distance (text): how far, with its unit
# $moved-way (back | forward): towards the tail or the nose
moved-point = { $balance-point ->
    [mass] The centre of mass moved { $distance }
   *[pressure] The centre of pressure (side-on) moved { $distance }
} { $moved-way ->
    [back] back
   *[forward] forward
}.
moved-mass-same = The rocket weighs the same.
# $mass (text): how much, with its unit
moved-heavier = The rocket is { $mass } heavier.
# $mass (text): how much, with its unit
moved-lighter = The rocket is { $mass } lighter.
# What became of the distance between the two points.
# $from (text): what it was, with its unit
# $to (text): what it is, with its unit
# $became (grew | shrank | went): which word fits; “went” where one of them is below zero
moved-separation = The separation { $became ->
    [grew] grew
    [shrank] shrank
   *[went] went
} from { $from } to { $to }.
# $to (text): what it is, with its unit
moved-separation-stayed = The separation stayed at { $to }.
# The same, where both were measured.
# $from (text): what it was, with its unit
# $to (text): what it is, with its unit
# $became (grew | shrank | went): which word fits; “went” where one of them is below zero
moved-measured = The measured separation { $became ->
    [grew] grew
    [shrank] shrank
   *[went] went
} from { $from } to { $to }.
# $to (text): what it is, with its unit
moved-measured-stayed = The measured separation stayed at { $to }.
