## The place Paper: sheets to print, true to size.

# The name of the place, in the menu and as its heading.
places-paper = Paper
# Behind a link to the place.
lead-paper = Cut-outs true to size, record sheets, cue cards, a pack for whoever teaches.
# Below the heading.
paper-place-lead = Sheets for the lesson, to print. What is to be cut out is true to size.
paper-place-size = Paper
paper-place-a4 = A4
paper-place-letter = US Letter
# Names of sheets.
paper-place-cut-out = Cut-out at true size
paper-place-cut-out-small = Cut-out on one sheet
paper-place-answers = Answers: the cut-out with both points
paper-place-fins = Fins
paper-place-nose = Nose and tapers, to roll
paper-place-strip = Strip that shows where fins go
paper-place-tools = Ruler and balance stand
paper-place-report = Report of the open notebook
paper-place-teacher-pack = The pack for whoever teaches
paper-place-labels = Labels of the set-up
paper-place-pupil-pack = All of these, for one group
# Names of groups of sheets.
paper-place-for-leaders = For whoever leads, from Set up
paper-place-for-pupils = For each group
paper-place-for-cutting = To cut out
paper-place-drawings = Drawings
# Names of drawings.
paper-place-rocket = The rocket with its ruler
paper-place-outline-drawn = Its outline
paper-place-air = The air from every side
# Where a rocket has no fins, say, or the notebook no trials.
paper-place-nothing = Neither this rocket nor the notebook has anything for this sheet yet.
# Where there is no rocket to draw.
paper-place-no-rocket = First describe a rocket: there is nothing to draw yet.
# In place of the answers.
paper-place-not-measured =
    Its points have not been measured yet, and this sheet tells both. Whoever is to find them should
    not see it before.
paper-place-anyway = Show it all the same
# Buttons.
paper-place-save = Save as PDF
paper-place-open = Open it
paper-place-print = Print
paper-place-svg = Save what is shown as a drawing (SVG)
# The same in points of colour.
paper-place-png = Save what is shown as a picture (PNG)
paper-place-outline = Save the outline for a cutter (SVG)
paper-place-table = Save as a table
paper-place-before = Page before
paper-place-next = Next page
# Between these two buttons.
# $page (number): which page is shown
# $of (number): how many there are
paper-place-page = Page { $page } of { $of }
# Below the buttons.
paper-place-scale = Print it at 100 % (“actual size”), not fitted to the page. A bar on the sheet tells whether that worked.
# Below the buttons, and on the page, where a drawing is shown.
paper-place-no-size = A drawing by itself, not true to size on paper.
# Where the fonts of a PDF lack letters.
paper-place-no-pdf =
    The letters of this language are not among those that every PDF has. Print here instead: the
    sheet is the same, and it is true to size where margins are set to none.
# Said when a file was saved.
# $name (text): the name of the file
paper-place-saved = Saved as { $name }, if this browser allows downloads.
# Where the browser paints no picture.
paper-place-no-png = This browser could not paint that picture. Save it as a drawing (SVG) instead.
# While a pack is made.
# $done (number): how many sheets are made
# $of (number): how many there are
paper-place-making = Making sheets: { $done } of { $of }
