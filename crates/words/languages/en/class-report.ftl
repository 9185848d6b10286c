## The place Class: what is given back.

# The name of the view.
report-view = Reports
# The heading of the buttons for paper.
report-paper = On paper
report-print-groups = Print the reports of all groups
report-print-class = Print the report of the class
report-paper-hint =
    A page for each group, or two: its trials, what it wrote, and what you found in it under Marking.
    No names, no grades.
# The heading of the buttons for tables.
report-tables = For a spreadsheet: a row for each trial
report-tables-hint =
    What the groups wrote, and what you found in it, is in the file of the whole class: see where
    it is gathered.
report-table-point = Table as a file, 12.5 with a point
report-table-comma = Table as a file, 12,5 with a comma
report-copy-point = Copy the table, with points
report-copy-comma = Copy the table, with commas
# The heading of the buttons for text.
report-text = As plain text
report-text-class = The class as text
report-text-groups = All groups as text

# $name (text): the name of the file
report-saved = Saved as { $name }, if this computer allows downloads. Look in Downloads.

## On paper and in text.

# $rules (text): four letters and digits
report-rules = Made under the rules { $rules }.
# At the end of every report on paper.
report-no-permission =
    A good swing is not permission to launch. Local rules, your school’s own risk assessment and
    a qualified person decide.

# The title.
# $name (text): the label of the group
report-of = Report of { $name }
# The title, where the class has no label.
report-of-class = Report of the class
# The title.
# $label (text): the label of the class
report-of-class-called = Report of the class { $label }
# Before what the chart says.
# $how-known (measured | worked-out): which separation stands in the chart
report-along =
    { $how-known ->
        [measured] With the separation as it was measured:
       *[worked-out] With the separation as it was worked out:
    }
# Headings.
report-trials = The trials
report-found = What was found in it
report-found-in-all = What was found in the notebooks
# $statement (text): a whole sentence
# $count (number): in how many notebooks
# $of (number): of how many
report-found-in = { $statement } In { $count } of { $of } notebooks.
# The beginning of a line. What the trial came to follows in sentences.
# $trial (number): the number of the trial
report-trial = Trial { $trial }.
# $whose (text): the group and the trial
report-trial-of = { $whose }.
# $what (text): what was changed, in few words
report-changed = Changed: { $what }.
# $separation (text): with its unit
report-measured = Separation measured: { $separation }.
# $separation (text): with its unit
report-worked-out = Separation worked out: { $separation }.
# $outcome (text): what was predicted
report-predicted = Predicted: { $outcome }.
# $outcome (text): what was seen
report-seen = Seen: { $outcome }.
# Headings.
report-conclusion = What the group concluded
report-plans = What it plans
# $statement (text): the name of a box of the conclusion, such as “Claim”
# $said (text): what the group wrote
report-wrote = { $statement }: { $said }
report-only-numbers = Only numbers came from this group, and no words.

## The heads of the columns in a spreadsheet. The key of the column follows in square brackets. Short, and without commas, semicolons, quotation marks and square brackets.

# The label of a class.
report-column-class = Class
report-column-changed = What changed
report-column-changes = Number of changes
report-column-rules = Rules
report-column-width = Width of the body (mm)
report-column-mass = Mass (g)
report-column-mass-computed = Centre of mass: worked out from the nose (mm)
report-column-pressure-computed = Centre of pressure: worked out from the nose (mm)
report-column-mass-readings = Centre of mass: number of readings
report-column-pressure-readings = Centre of pressure: number of readings
report-column-prediction = Prediction
report-column-seen-before = Swings seen before predicting
report-column-two-allowed = Two changes allowed
report-column-swung-first = Swung before predicting
report-column-example = Invented
# Whoever leads left it out of charts and figures.
report-column-hidden = Left out
# Whoever leads marked it, to come back to it.
report-column-marked = Marked
report-column-nose-first = Flew nose-first
report-column-delete-by = Delete by
report-column-notebook = Whole notebook
# A number that stands for the statements that were found.
report-column-statements = Statements found
