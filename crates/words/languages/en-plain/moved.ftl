moved-separation = The points were { $from } apart and are { $to } apart now.
moved-separation-stayed = The points stayed { $to } apart.
moved-measured = You measured { $from } apart before and { $to } apart now.
moved-measured-stayed = You measured { $to } apart, the same as before.
