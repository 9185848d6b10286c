## Messages over the place.

# A notebook came in parts, and some are missing.
# $have (number): how many parts are here
# $all-parts (number): how many there are
# $missing (text): the numbers of the others, with commas
notice-parts =
    { $have } of { $all-parts } parts are here. Still missing: { $missing }. Open them in the
    same way, in any order.

# A link ended too early, and nobody can say what is missing.
notice-link-cut =
    <b>This link was cut short.</b> Its end is missing. Check every number, or ask for the
    link again.
# A link ended too early.
# $missing (text): what is missing, with commas
notice-link-cut-before =
    <b>This link was cut short.</b> Missing: { $missing }. Check every number, or ask for the
    link again.
# In that list.
# $count (number): how many
notice-missing-sections = { $count ->
    [one] { $count } body section
   *[other] { $count } body sections
}
# In that list.
# $count (number): how many
notice-missing-fins = { $count ->
    [one] { $count } set of fins
   *[other] { $count } sets of fins
}
# In that list.
# $count (number): how many
notice-missing-weights = { $count ->
    [one] { $count } weight
   *[other] { $count } weights
}
# In that list.
notice-missing-swings = the swings

# A link was changed on its way.
# $why (text): what is wrong with it, as a sentence
notice-link-damaged =
    <b>The link could not be opened.</b> { $why } What is shown is not from the link.
# A file, or a text that was pasted.
# $why (text): what is wrong with it, as a sentence
notice-file-fault = <b>That could not be opened.</b> { $why }
# After the button that keeps the rocket on the page.
notice-kept-this =
    This rocket is kept on this computer now. If another was kept, undo brings it back.
# A browser that bars it. A button to copy the link follows.
notice-keeps-nothing =
    <b>This browser keeps nothing.</b> Your rocket and your notebook are gone when this page
    is closed. Copy the link, or save a file.
# A browser whose room is full. Buttons for both follow.
notice-not-kept =
    <b>The last changes are not kept.</b> The browser refused, perhaps because its room for
    this page is full. What was kept before is still there, and the page tries again by
    itself. Until this message goes, copy the link or save a file.
# A button.
notice-save = Save
# After deleting.
notice-deleted =
    <b>Everything of this page was deleted from this computer.</b> We checked: nothing is
    left. This page cannot delete files you saved, or the browser’s history. What you type
    from now on is kept again.
# After deleting, where something would not go.
# $left (number): how many entries of the browser are left
notice-left =
    <b>Not everything could be deleted: { $left } entries are left.</b> Delete the data of
    this site in the browser’s own settings.
# After a link was opened.
notice-opened = Opened. Undo brings the last rocket back.
# After an example or a bottle was chosen.
# $name (text): its name
notice-started = { $name } is here. Undo brings the last rocket back.
# After copying the link.
# $link-holds (rocket | notebook-too): the rocket, or the rocket and the notebook
# $link-opens (anywhere | in-the-page): whether the link leads to the page
notice-copied = { $link-holds ->
    [rocket] Link copied. It holds the rocket
   *[notebook-too] Link copied. It holds the rocket and the notebook
}; { $link-opens ->
    [anywhere] paste it anywhere.
   *[in-the-page] on another computer paste it where a link is opened.
}
# Over a text to copy by hand.
notice-copy-by-hand = Copying is blocked here. Select this and press Ctrl and C:
# After saving.
# $name (text): the name of the file
notice-saved =
    Saved as <b>{ $name }</b>, if this browser allows downloads. If no file appears, copy the
    link instead.
# The button that takes the message away. What stands in aside is for screen readers.
notice-close = Close<aside> message</aside>

## Messages about a rocket that is kept in the place of the one on the page.

# Another rocket is kept.
# $name (text): its name
notice-other =
    Another rocket, <b>{ $name }</b>, is kept on this computer, from before or from another
    tab. Changes to this one are not kept: the address bar holds them.
# Another rocket is kept, and has no name.
notice-other-unnamed =
    Another rocket, <b>without a name</b>, is kept on this computer, from before or from
    another tab. Changes to this one are not kept: the address bar holds them.
# A button.
notice-show-kept = Show the kept one
# Something else is kept.
notice-unreadable =
    <b>What is kept on this computer cannot be read here.</b> It may be from a newer version
    of this page, and is left as it is. Changes to this rocket are not kept: the address bar
    holds them.
# A button.
notice-save-kept = Save what is kept as a file
# Another tab has deleted everything.
notice-emptied =
    Everything kept on this computer was deleted in another tab. Changes here are not kept:
    the address bar holds them.
# A button.
notice-keep-rocket = Keep this rocket
# A button.
notice-keep-instead = Keep this one instead

## The line under the measurements: what is kept where.

# A browser that keeps nothing.
notice-keeping-nothing =
    <b>This browser keeps nothing.</b> The link in the address bar holds the whole rocket:
    copy it before you close the page.
# A browser that refused the last changes.
notice-keeping-refused =
    <b>Your last changes are not kept: the browser refused.</b> The page tries again at your
    next change. The link in the address bar holds the whole rocket: copy it before you close
    the page.
# As it should be.
notice-keeping =
    Kept in this browser as you type, until you sign out or its data are cleared. To be sure,
    copy the link or save a file. Nothing is sent anywhere.
# Something else is kept.
notice-keeping-other = This rocket is not kept on this computer. The address bar holds it.

## A warning: the notebook is nowhere but in this tab.

# The warning. A button to save it follows.
notice-lost =
    <b>What you wrote last is not kept on this computer.</b> The browser refuses. Save the
    notebook as a file before you close the page; open the file here later.
# Behind that, where other notebooks were open before.
notice-lost-before = Do the same with each notebook that you had open before.
# The button.
notice-save-notebook = Save the notebook as a file
