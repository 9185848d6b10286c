slips-other-unit = { $slip-size ->
    [small] Only { $typed }
   *[large] { $typed }
}: { $slip-cause ->
    [centimetres] read in centimeters
    [inches] read in inches
    [millimetres] read in millimeters
   *[zero] one zero too many
}? Did you mean { $meant }?
