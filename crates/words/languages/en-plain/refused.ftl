refused-too-long =
    This code is longer than any that this page makes. Copy it again from where you found it.
refused-notebook-too-large =
    This file is too large for a notebook ({ $kilobytes } KB). Choose a file that this page saved.
refused-newer =
    A newer page made this { $text-kind ->
        [code] code
        [file] file
       *[table] table
    }. Load the page again, then open it again.
refused-unknown =
    This page does not know something in this { $text-kind ->
        [code] code
        [file] file
       *[table] table
    }: “{ $key }”. Load the page again, then open it again.
refused-no-result = No trial is in this. The code of how a trial came out begins with T1.
refused-nothing =
    There is no rocket and no notebook in this. Choose a file that this page saved. Or copy all of
    a link or a code.
refused-ends-early = The code ends too soon. Row { $row } is missing or short.
refused-character =
    Row { $row } has “{ $character }”, which no code has. Look at the paper again.
refused-row = Row { $row } has a wrong letter or number. Look at the paper again.
refused-rows = Rows { $rows } and { $last } are wrong. Look at the paper again.
refused-too-few = Row { $row } is one letter or number too short. Look at the paper again.
refused-too-many = Row { $row } is one letter or number too long. Look at the paper again.
refused-code-wrong =
    Something in this code is wrong, and its rows do not tell where. Check each row against the
    paper.
refused-other-notebook =
    This part is of another notebook, or of this one at another time. Get the rest of this one
    first, or start again.
refused-parts-disagree =
    All parts are here, but they do not make a notebook. Read them again.
refused-ends-in-line =
    This file ends too soon, in line { $line }. Some of it is missing. Copy or save it again.
refused-crowded =
    A rocket in this has { $count } { $crowd ->
        [sections] body parts
        [fin-sets] sets of fins
        [corners] corners in one fin
       *[weights] weights
    }, more than there can be. Take some out, then open it again.
refused-no-notebook-of =
    These trials do not make a notebook. { $none-because ->
        [trials] There is room for { $most } trials, and deleted ones count
        [plans] There is room for { $most } plans
       *[numbers] Two have the same number, or one has none, or too large a one
    }. Save the notebook again.
