paper-place-no-pdf =
    A PDF does not have the letters of this language. Print here instead. The sheet is the same. It
    is true to size where margins are set to none.
paper-place-no-png = This browser could not paint that picture. Save it as a drawing (SVG).
paper-place-outline = Save the edge for a cutter (SVG)
paper-place-outline-drawn = Its edge
paper-place-no-size = A drawing only. On paper it is not true to size.
paper-place-not-measured =
    Its points have not been measured yet, and this sheet tells both. Who is to find them should not
    see it before.
