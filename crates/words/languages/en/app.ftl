## Messages over the place, about what was just done.

# A text is on the clipboard.
app-copied = Copied.
# Undo, where it meets what cannot be undone.
app-facts =
    What is locked, and swings that are recorded, can’t be undone. If the last swing was a
    slip, take it back under Swing. Undo once more takes back what was done before.
# A part of the page is missing.
app-waits =
    What you asked for waits: a part of the page could not be loaded. See that the network is
    there, then ask again.
# After Undo.
# $what (text): the change that was taken back, with its full stop, such as “Fins: span 50 mm → 75 mm.”
app-undone = Undone: { $what }
# After Undo, where it was one of several trials.
# $trial (number): the number of the trial
# $what (text): the change that was taken back, with its full stop, such as “the note.”
app-undone-in = Undone in trial { $trial }: { $what }
# After Redo.
# $what (text): the change that was made again, with its full stop
app-done-again = Done again: { $what }
# After Redo, where it was one of several trials.
# $trial (number): the number of the trial
# $what (text): the change that was made again, with its full stop
app-done-again-in = Done again in trial { $trial }: { $what }
