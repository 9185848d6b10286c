## The place Class: whoever leads gathers what the groups found.

# The name of the place, in the menu and as its heading.
places-class = Class
# In For whoever leads, behind a link to the place.
lead-class = gathers what the groups found and shows the pattern.
# Under the heading, while nothing is gathered.
class-lead =
    Gather what the groups found: paste links, codes and tables, open files, or type numbers from
    paper. It stays on this computer.
# Under the heading.
# $trials (number): how many trials were gathered
# $groups (number): of how many groups
class-holds = Trials: { $trials }, groups: { $groups }
# The same while they come in.
# $trials (number): how many trials were gathered so far
class-holds-so-far = Trials: { $trials }
class-invented = All of this is invented, for practice.
class-invented-beside = Some of this is invented, for practice. It does not count beside real results.
# A button.
class-drop-example = Take the invented results away
# The day has passed until which the results should be kept.
class-is-due = The day has passed until which you wanted to keep these results. Save them as a file if you need them, and delete them here.
# What a row of buttons is for, for screen readers.
class-views = Show
# The names of the views.
class-gather = Gather
class-table = Table

## Where results come in.

class-in = What was handed in
class-paste = Links, codes, rows of a table: as many as you like, one below the other
class-take-in = Take it in
# A button that opens a window to choose files.
class-files = Open files …
class-example = Try it with an invented class
# While files are read.
# $done (number): how many texts were read
# $of (number): of how many
# $trials (number): how many trials there are so far
class-busy = Texts read: { $done } of { $of }. Trials so far: { $trials }.
class-stop = Stop
class-stopped = Stopped. What came before that is here.
# What was taken in last.
# $trials (number): how many trials are new
# $notebooks (number): how many notebooks came whole
class-new = New trials: { $trials }, whole notebooks: { $notebooks }.
# A button: the class as it was before.
class-undo = Undo this
# A line that opens a list.
# $count (number): how many
class-doubled = Here already, counted once: { $count }
# A line that opens a list.
# $count (number): how many
class-newer = Newer, with the older one beside it: { $count }
# A line that opens a list.
# $count (number): how many
class-words = Lines with nothing to take in: { $count }
# Where something stands in what was pasted.
# $line (number): the line
class-at-line = Line { $line }
# In place of where something stands, of the invented class.
class-invented-one = Invented
# Where something stands in a file.
# $file (text): the name of the file
# $line (number): the line
class-in-file = { $file }, line { $line }
# At the end of a list that is longer.
# $count (number): how many more
class-and-more = and { $count } more
# A result.
# $group (text): the label of the group
# $trial (number): the number of the trial
class-trial-of = { $group }, trial { $trial }

## What was not taken in, and why.

# The heading of a list.
# $count (number): how many
class-refused = Not taken in, to be mended: { $count }
class-take-all = Take all of them that can be taken as they are
# The label of a box with a text, for screen readers.
class-mend = The text, to be mended
# The buttons.
class-again = Read it again
class-take = Take it all the same
class-leave-out = Leave it out
# $whose (text): the group and the trial
# $found (text): the code of its rules
# $expected (text): the code of the rules of the class
class-other-rules = { $whose } was made under the rules { $found }, and this class has { $expected }: something else was allowed.
# $whose (text): the group and the trial
# $expected (text): the code of the rules of the class
class-no-rules = { $whose } names no rules, and this class has { $expected }.
# $whose (text): the group and the trial
# $swings (number): how many swings count
# $expected (number): how many there should be
class-unfinished = { $whose } is not finished: { $swings } of { $expected } swings count.
# $whose (text): the group and the trial
class-no-number = { $whose } has a length that no rocket has.
# $whose (text): the group and the trial
# $most (number): how many results there is room for
class-full = { $whose }: there is no room for more than { $most } results.
# $most (number): how many notebooks there is room for
class-notebooks-full = There is no room for more than { $most } whole notebooks. The trials of this one were taken in.
class-rocket = This is a rocket without a trial: nothing was found with it. Ask the group for the link to its notebook, or for the code of a trial.
class-set-up = This is the link that a lesson begins with, not what a group found. Ask the group for the link to its notebook.
# $here (number): how many parts are here
# $of (number): how many there are
class-part = Of this notebook { $here } of { $of } parts are here. Paste the others below it and read it again.
# $most (number): the size in MB
class-file = This file cannot be read: it is larger than { $most } MB, or no text.

## How it is kept.

class-keeping = Label, rules, keeping
class-label = Label of the class
# $most (number): how many letters there may be
class-label-wrong = Only letters A to Z, digits and hyphens, { $most } at most. No names.
class-delete-by = Delete by
class-kept-here = Kept in this browser on this computer only. Nobody else sees it.
class-save = Save the class as a file
class-delete = Delete all of it …
class-ask-delete = Delete every result of this class from this computer? A file that you saved stays.
class-delete-now = Delete it
class-keep = Keep it
class-deleted = The class was deleted from this computer.
# $name (text): the name of the file
class-saved = Saved as { $name }. Open it here again with “Open files”.
# $code (text): four letters
class-rules = Only results under the rules <b>{ $code }</b> are taken in.
class-rules-drop = Take results of any rules
class-rules-none = Results of any rules are taken in.
class-rules-hold = Hold to the rules in Set up

## Numbers from paper, a row a trial.

# A line that opens the row.
class-grid = Type results from paper
# $unit (text): the unit of the lengths
class-grid-how = From the nose tip, in { $unit }; up to three readings with a space between them. Tab goes on, Enter takes the row in.
class-group = Group
class-number = No.
class-trial = Trial
class-predicted = Predicted
# $number (number): which swing
class-swing = Swing { $number }
class-changed = What changed
class-add-row = Take the row in
# $whose (text): the group and the trial
class-row-new = { $whose } is in.
# $whose (text): the group and the trial
class-row-doubled = { $whose } was here already, the same.
# $whose (text): the group and the trial
class-row-newer = { $whose } was here with other numbers. These count now; the older ones stand beside them.
# $most (number): the largest number
class-bad-number = The number of a group is a whole number from 1 to { $most }.
# $most (number): the largest number
class-bad-trial = The number of a trial is a whole number from 1 to { $most }.
# $found (text): what was typed
# $most (number): how many readings there may be
class-bad-reading = “{ $found }” is no length, or one too many: { $most } readings at most, a space between them.
class-empty-row = Type at least one point, or choose a swing.

## The table.

class-sort = Sort by
class-sort-came = as they came
class-sort-group = group
class-sort-separation = separation
class-sort-outcome = outcome
class-filter = Show
class-filter-all = all
class-filter-marked = marked
class-filter-hidden = left out
class-filter-unfair = more than one change
class-filter-odd = readings that look odd
class-filter-twice = with an older one
# $shown (number): how many rows the filter lets through
# $all (number): how many there are
class-rows = Trials: { $shown } of { $all }
class-no-rows = Nothing is gathered yet.
class-more = Show more
# Heads of columns.
class-separation = Separation
class-seen = Seen
class-head-do = Do
# $count (number): how many things changed
class-changes =
    { $count ->
        [one] { $count } change
       *[other] { $count } changes
    }
class-unfair = more than one change
# $value (text): the separation with its unit
class-worked-out = { $value } worked out
class-swung-first = swung before it was predicted
class-altered = changed by hand
class-is-invented = invented
# $count (number): how many older ones there are
class-older =
    { $count ->
        [one] { $count } older one kept
       *[other] { $count } older ones kept
    }
# Buttons of a row.
class-mark = Mark
class-hide = Leave out
class-remove = Delete
