crash-notebook =
    The notebook of <b>{ $group }</b> was open: <link>save it as a file</link>.
    If the notebook is gone later, open that file here.
