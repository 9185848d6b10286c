paper-place-no-pdf =
    A PDF does not have the letters of this language. Print here instead. The sheet is the same. It
    is true to size where margins are set to none.
