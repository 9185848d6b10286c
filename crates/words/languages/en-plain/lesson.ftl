lesson-not-swung = no swings yet
lesson-mixed = not all the same
lesson-claim = What we found
lesson-evidence = What shows it
lesson-reason = Why it is so
lesson-trust = How sure we are
lesson-room-trials = A notebook has room for { $most } trials. Deleted ones count too.
