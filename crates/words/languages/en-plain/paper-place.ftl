paper-place-teacher-pack = The pack for your teacher
paper-place-for-leaders = For your teacher, from Set up
paper-place-scale = Print it at 100 % (“actual size”), not fitted to the page. A bar on the sheet tells you if that worked.
paper-place-no-pdf =
    A PDF does not have the letters of this language. Print here instead. The sheet is the same. It
    is true to size where margins are set to none.
