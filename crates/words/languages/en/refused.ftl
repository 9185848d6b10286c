## Why a code, a file or a text could not be opened, behind “That could not be opened.”

# It is too long.
refused-too-long =
    This code is longer than any that this page makes. Copy it again from where it came from.
# A file is too large to be opened.
# $kilobytes (number): its size
refused-notebook-too-large =
    This file is too large to be a notebook ({ $kilobytes } KB). Choose a file that this page
    saved.
# It is of a later version.
# $text-kind (code | file | table): what it is
refused-newer =
    This { $text-kind ->
        [code] code
        [file] file
       *[table] table
    } was made by a newer version of this page. Reload the page, then open it again.
# It is of a later version.
# $text-kind (code | file | table): what it is
# $key (text): what is not known, as a program calls it
refused-unknown =
    This { $text-kind ->
        [code] code
        [file] file
       *[table] table
    } has something that this version of the page does not know: “{ $key }”. Reload the page,
    then open it again.

## There is nothing in a text that the page knows.

# What was looked for is the code of a rocket.
refused-no-code = There is no code in this. A code begins with R1.
# What was looked for is the code of a part of a notebook.
refused-no-part = There is no part of a notebook in this. A part begins with N1.
# What was looked for is the code of a result.
refused-no-result = There is no result in this. The code of a result begins with T1.
# What was looked for is a notebook file.
refused-no-notebook =
    There is no notebook in this. Choose a notebook file that this page saved.
# What was looked for is anything.
refused-nothing =
    There is no rocket and no notebook in this. Choose a file that this page saved, or paste all
    of a link, a code or a text.

## What is wrong with a code that was typed from paper. Its rows have numbers there.

# The code ends before it should.
# $row (number): the first row that is not whole
refused-ends-early = The code ends too early: row { $row } is missing or short.
# $row (number): which row
# $character (text): a letter or a sign
refused-character =
    Row { $row } has “{ $character }”, which no code has: compare it with the paper.
# $row (number): which row
refused-row = Row { $row } has a wrong character: compare it with the paper.
# Two or more rows are wrong.
# $rows (text): all but the last, such as “2, 4”
# $last (number): the last
refused-rows = Rows { $rows } and { $last } are wrong: compare them with the paper.
# $row (number): which row
refused-too-few = Row { $row } has a character too few: compare it with the paper.
# $row (number): which row
refused-too-many = Row { $row } has a character too many: compare it with the paper.
# $row (number): which row
refused-missing-row = Row { $row } is missing.
# $row (number): which row
refused-row-twice = Row { $row } is there twice. Take one of the two out.
# $one (number): which row
# $other (number): the row after it
refused-swapped = Rows { $one } and { $other } have changed places.
# No row shows where it is wrong.
refused-code-wrong =
    Something in this code is wrong, and its rows do not tell where. Compare each row with the
    paper.

## A notebook that comes in parts, each a code.

# Before one of the sentences on codes.
# $part (number): which part
# $fault (text): what is wrong with it, as a sentence
refused-in-part = Part { $part }: { $fault }
refused-other-notebook =
    This part belongs to another notebook, or to the same one at another time. Finish this one,
    or begin anew.
refused-parts-disagree =
    All parts are here, and together they make no notebook. Read them anew.

## What is wrong with a file, which somebody may have changed in a text editor.

# Its end is missing.
# $line (number): its last line
refused-ends-in-line =
    This file ends too early, in line { $line }. Part of it is missing: copy or save it again.
# It is no JSON.
# $line (number): where reading stopped
# $column (number): where reading stopped
# $detail (text): what is wrong, for whoever writes programs: in English in every language
refused-syntax =
    The file cannot be read at line { $line }, column { $column }. Look there for a comma,
    quotation mark or bracket too many or too few ({ $detail }).
# Something else stands there than should.
# $saved (rocket | notebook): what the file is of
# $line (number): where reading stopped
# $column (number): where reading stopped
# $detail (text): what is wrong, for whoever writes programs: in English in every language
refused-content =
    Something does not belong in a { $saved ->
        [rocket] rocket
       *[notebook] notebook
    } file at line { $line }, column { $column }, or just before it: { $detail }. Mend it there,
    or save the { $saved ->
        [rocket] rocket
       *[notebook] notebook
    } again.
# $crowd (sections | fin-sets | corners | weights): of what there is too much
# $count (number): how many there are
refused-crowded =
    A rocket in this has { $count } { $crowd ->
        [sections] body sections
        [fin-sets] sets of fins
        [corners] corners in one fin
       *[weights] weights
    }, more than there can be. Take some out, then open it again.
# What was read makes no notebook.
# $none-because (trials | plans | numbers): too many trials or plans, or two trials of the same number
# $most (number): how many there can be; not said of numbers
refused-no-notebook-of =
    These trials make no notebook: { $none-because ->
        [trials] a notebook has room for { $most } trials, deleted ones included
        [plans] a notebook has room for { $most } plans
       *[numbers] two trials have the same number, or one has none, or too large a one
    }. Save the notebook again.
