## On the page that shows when the program has stopped.

# The notebook that was open. The link makes it a file.
# $group (text): the label of the group, such as “Blue 3”
crash-notebook =
    The notebook of <b>{ $group }</b> was open: <link>save it as a file</link>.
    Open that file here later, if the notebook is not there any more.
