## In the place Hand in: the notebook’s ways out of this computer.

hand-in-nothing = Nothing is written yet: what goes out is the rocket.
# The heading.
# $group (text): the label of the group
hand-in-notebook-of = The notebook of { $group }, with the rocket
# The buttons.
hand-in-save = Save the notebook as a file
hand-in-copy-link = Copy a link to all of it
hand-in-print = Print the notebook
hand-in-what-is-in-it =
    File and link open again under “a link, code or file”. They hold the group’s colour and
    number, and what you wrote.
# A line that opens the buttons below.
hand-in-tables = For a spreadsheet, or as plain text
hand-in-table-point = Table as a file, 12.5 with a point
hand-in-table-comma = Table as a file, 12,5 with a comma
hand-in-copy-table-point = Copy the table, with points
hand-in-copy-table-comma = Copy the table, with commas
hand-in-plain-text = Plain text
# A button, before and after.
hand-in-show-symbols = QR symbols, and the whole notebook as codes
hand-in-hide-symbols = Hide the QR symbols
# Above the code of one trial.
# $trial (number): the number of the trial
hand-in-result =
    The result of trial { $trial } as a short code: numbers and the group’s label, no words
# What that code is called for a screen reader.
# $trial (number): the number of the trial
hand-in-code-of = The code of trial { $trial }
hand-in-copy-code = Copy this code
hand-in-too-large = This notebook is too large for symbols. Save it as a file.
# Above the symbols.
hand-in-read-all =
    Read all of them with a phone, in any order, and paste the texts under “a link, code or
    file”; or type them. The page says which are missing.
# Above a symbol.
# $number (number): which part
# $count (number): how many parts there are
hand-in-part-of = Part { $number } of { $count }
# What the code of a part is called for a screen reader.
# $number (number): which part
hand-in-part = Part { $number }

## One result in words, for whoever opened its code: several sentences, one behind the other.

# $group (text): the label of the group
# $trial (number): the number of the trial
# $mass (text): where the centre of mass is, with its unit
# $pressure (text): where the centre of pressure is, with its unit
# $separation (text): how far apart they are, with its unit
result-measured =
    This is the result of { $group }, trial { $trial }: centre of mass { $mass }, centre of
    pressure { $pressure }, separation { $separation } (measured).
# $group (text): the label of the group
# $trial (number): the number of the trial
# $separation (text): how far apart the two points are, with its unit
result-worked-out =
    This is the result of { $group }, trial { $trial }: separation { $separation } (worked out).
# Where nothing is known of the points. Another sentence follows.
# $group (text): the label of the group
# $trial (number): the number of the trial
result-of = This is the result of { $group }, trial { $trial }:
# $outcome (text): what the group predicted
result-predicted = Predicted: { $outcome }.
# $outcomes (text): what was seen
result-seen = Seen: { $outcomes }.
result-not-swung = Not swung.
result-altered = Something in it was changed by hand, outside of the page.

## What is said when something went out.

# $name (text): the name of the file
hand-in-saved = Saved as { $name }, if this computer allows downloads. Look in Downloads.
hand-in-no-link =
    This notebook does not fit into a link. The link holds the rocket alone: save the notebook
    as a file.

## In the place Hand in, and on paper: the rocket alone.

# The heading.
share-title = The rocket alone
# The buttons.
share-print = Print the rocket
share-save = Save the rocket as a file
share-code-title = A code to write down, and to type where a link is opened
# What the code is called for a screen reader.
share-code = The code
share-code-hint =
    Capital letters or small, spaces or none: all the same; leave out the numbers of the rows.
    The last character of each row finds slips.
# Above a symbol: one of two.
share-point-at-link = Or point a phone or tablet at this
share-point-at-code = Or read the code with a phone
# The label of a field that cannot be changed.
share-link = The link
# On paper, beside the symbol: one of two.
share-open-again =
    <b>To open this rocket again:</b> point a phone at the symbol, or open Noseward and type
    this code under “a link, code or file”.
share-open-again-typed =
    <b>To open this rocket again:</b> open Noseward and type this code under “a link, code or
    file”.
share-no-permission = A good separation is not permission to swing or launch.
