## Deleting everything of this page from this computer, in the place for adults.

# The button that asks.
delete-ask = Delete everything on this computer
# The question.
delete-question =
    <b>Delete this rocket and everything else of this page from this computer?</b>
    It cannot be undone. Links, codes and files you have made still work.
# The button that does it.
delete-now = Delete everything now
# The button that does not.
delete-keep = Keep it
