
places-class = Class
lead-class = gathers what the groups found and shows the pattern.
class-lead =
    Gather what the groups found: paste links, codes and tables, open files, or type numbers from
    paper. It stays on this computer.
class-holds = Trials: { $trials }, groups: { $groups }
class-holds-so-far = Trials: { $trials }
class-invented = All of this is invented, for practice.
class-invented-beside = Some of this is invented, for practice. It does not count beside real results.
class-drop-example = Take the invented results away
class-is-due = The day has passed until which you wanted to keep these results. Save them as a file if you need them, and delete them here.
class-views = Show
class-gather = Gather
class-table = Table


class-in = What was handed in
class-paste = Links, codes, rows of a table: as many as you like, one below the other
class-take-in = Take it in
class-files = Open files …
class-example = Try it with an invented class
class-busy = Texts read: { $done } of { $of }. Trials so far: { $trials }.
class-stop = Stop
class-stopped = Stopped. What came before that is here.
class-new = New trials: { $trials }, whole notebooks: { $notebooks }.
class-undo = Undo this
class-doubled = Here already, counted once: { $count }
class-newer = Newer, with the older one beside it: { $count }
class-words = Lines with nothing to take in: { $count }
class-at-line = Line { $line }
class-invented-one = Invented
class-in-file = { $file }, line { $line }
class-and-more = and { $count } more
class-trial-of = { $group }, trial { $trial }


class-refused = Not taken in, to be mended: { $count }
class-take-all = Take all of them that can be taken as they are
class-mend = The text, to be mended
class-again = Read it again
class-take = Take it all the same
class-leave-out = Leave it out
class-other-rules = { $whose } was made under the rules { $found }, and this class has { $expected }: something else was allowed.
class-no-rules = { $whose } names no rules, and this class has { $expected }.
class-unfinished = { $whose } is not finished: { $swings } of { $expected } swings count.
class-no-number = { $whose } has a length that no rocket has.
class-full = { $whose }: there is no room for more than { $most } results.
class-notebooks-full = There is no room for more than { $most } whole notebooks. The trials of this one were taken in.
class-rocket = This is a rocket without a trial: nothing was found with it. Ask the group for the link to its notebook, or for the code of a trial.
class-set-up = This is the link that a lesson begins with, not what a group found. Ask the group for the link to its notebook.
class-part = Of this notebook { $here } of { $of } parts are here. Paste the others below it and read it again.
class-file = This file cannot be read: it is larger than { $most } MB, or no text.


class-keeping = Label, rules, keeping
class-label = Label of the class
class-label-wrong = Only letters A to Z, digits and hyphens, { $most } at most. No names.
class-delete-by = Delete by
class-kept-here = Kept in this browser on this computer only. Nobody else sees it.
class-save = Save the class as a file
class-delete = Delete all of it …
class-ask-delete = Delete every result of this class from this computer? A file that you saved stays.
class-delete-now = Delete it
class-keep = Keep it
class-deleted = The class was deleted from this computer.
class-saved = Saved as { $name }. Open it here again with “Open files”.
class-rules = Only results under the rules <b>{ $code }</b> are taken in.
class-rules-drop = Take results of any rules
class-rules-none = Results of any rules are taken in.
class-rules-hold = Hold to the rules in Set up


class-grid = Type results from paper
class-grid-how = From the nose tip, in { $unit }; up to three readings with a space between them. Tab goes on, Enter takes the row in.
class-group = Group
class-number = No.
class-trial = Trial
class-predicted = Predicted
class-swing = Swing { $number }
class-changed = What changed
class-add-row = Take the row in
class-row-new = { $whose } is in.
class-row-doubled = { $whose } was here already, the same.
class-row-newer = { $whose } was here with other numbers. These count now; the older ones stand beside them.
class-bad-number = The number of a group is a whole number from 1 to { $most }.
class-bad-trial = The number of a trial is a whole number from 1 to { $most }.
class-bad-reading = “{ $found }” is no length, or one too many: { $most } readings at most, a space between them.
class-empty-row = Type at least one point, or choose a swing.


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
class-rows = Trials: { $shown } of { $all }
class-no-rows = Nothing is gathered yet.
class-more = Show more
class-separation = Separation
class-seen = Seen
class-head-do = Do
class-changes =
    { $count ->
        [one] { $count } change
       *[other] { $count } changes
    }
class-unfair = more than one change
class-worked-out = { $value } worked out
class-swung-first = swung before it was predicted
class-altered = changed by hand
class-is-invented = invented
class-older =
    { $count ->
        [one] { $count } older one kept
       *[other] { $count } older ones kept
    }
class-mark = Mark
class-hide = Leave out
class-remove = Delete
