## Why the table of a notebook, from a spreadsheet or in a text, could not be opened, behind “That could not be opened.” Whoever reads it has the table before them: keys of columns, kinds of rows and choices are English words in every language.

# $kilobytes (number): its size
refused-table-too-large =
    This is too large to be the table of a notebook ({ $kilobytes } KB). Open a table that this
    page saved.
refused-no-table =
    There is no table of a notebook in this. Open a table that this page saved, or paste all of
    it, with its first row.
# $line (text): the line that should stand below the table
refused-table-cut =
    The table in this text ends too early: the line “{ $line }” is missing. Copy the whole text
    again.
# $column (text): the key of both columns
refused-two-columns =
    Two columns are called “{ $column }”. Take one of them out, or call it something else.
# These rows cannot stand together.
# $none-because (trials | plans | numbers): too many trials or plans, or two trials of the same number
# $most (number): how many there can be; not said of numbers
refused-rows-make-none =
    These rows make no notebook: { $none-because ->
        [trials] a notebook has room for { $most } trials, deleted ones included
        [plans] a notebook has room for { $most } plans
       *[numbers] two trials have the same number, or one has none, or too large a one
    }. Take rows out, or save the table again.

## Where it is, before one of the sentences below, which begin accordingly.

# $row (number): which row, as a spreadsheet counts
# $fault (text): what is wrong, as a sentence
refused-in-row = Row { $row }: { $fault }
# $row (number): which row, as a spreadsheet counts
# $column (text): the key of the column
# $fault (text): what is wrong, as a sentence
refused-in-cell = Row { $row }, column “{ $column }”: { $fault }
# In a notebook file.
# $list (text): the key of the list in the file
# $place (number): which of the list
# $key (text): the key of the value
# $fault (text): what is wrong, as a sentence
refused-in-entry = In “{ $list }”, number { $place }, “{ $key }”: { $fault }

## What is wrong in a row, in a cell, or with a value of a file. The place stands before it, with a colon.

refused-too-many-cells =
    there are more cells than columns. Look there for a comma, a semicolon or a quotation mark
    too many, or save the table again.
# $row-kind (text): its kind, such as “conclusion”
refused-two-rows = this is a second row “{ $row-kind }”. Keep one of the two.
# $found (text): what stands there
# $choices (text): what may stand there, with semicolons between
refused-choice = “{ $found }” is not known here. Write one of these: { $choices }.
# $found (text): what stands there
refused-not-a-number =
    “{ $found }” is not a number. Write, for example, 12.5 or 12,5. A spreadsheet may have made a
    date of it.
# $found (text): what stands there, such as “1,234”
refused-ambiguous =
    “{ $found }” can be read in two ways. Write it without a mark, or with fewer digits behind
    the mark.
# $found (text): what stands there
# $least (number): the least that may stand there
# $most (number): the most
refused-count = “{ $found }” must be a whole number from { $least } to { $most }.
# $count (number): how many characters it has
# $most (number): how many it may have
refused-too-many-characters =
    this text has { $count } characters. There is room for { $most }: shorten it.
# $found (text): what stands there
refused-not-a-group =
    “{ $found }” is no group. Write a colour and a number, such as blue 4.
# $found (text): what stands there
refused-other-group =
    “{ $found }” is another group than in the rows before. A notebook is of one group: keep the
    rows of one.
# $trial (number): the number of the trial
refused-taken =
    trial { $trial } stands there twice. Give each trial a number of its own.
refused-empty = this is empty, and something else in the row needs it. Fill it in.
# $detail (text): why not, the front of a sentence on links, codes and files
refused-not-a-rocket =
    there is no rocket in this ({ $detail }). Copy the link of the rocket into it again.
# $found (text): what stands there
refused-not-a-text = { $found } is no text. Put quotation marks round it.
# $found (text): what stands there
refused-not-a-seal =
    “{ $found }” is no seal. Put back what stood there; with an empty cell the trial counts as
    altered.
# in the table of a class
# $found (text): what stands there
refused-not-rules = “{ $found }” is no code of rules. It has four letters or digits, such as K7QX.
# $found (text): what stands there
refused-not-a-class =
    “{ $found }” cannot tell a class: use letters, digits and hyphens, 12 at most, and no names.
# $detail (text): why not, the front of a sentence on links, codes and files
refused-not-a-notebook =
    there is no notebook in this ({ $detail }). Copy the link of the notebook into it again.
# $found (text): what stands there
# $row-kind (text): the kind of the row, such as “plan”
refused-misplaced =
    “{ $found }” does not belong into a row “{ $row-kind }”. Take it out, or move it to another
    row.
# $counted (number): how many swings there can be that count
# $all (number): how many there can be with those that do not
refused-too-many-swings =
    there are more swings than a rocket can have: { $counted } that count, { $all } in all. Take
    some out.
