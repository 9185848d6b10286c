notice-parts =
    { $have } of { $all-parts } parts are here. Still missing: { $missing }. Open them in the
    same way. The order does not matter.
notice-missing-sections = { $count ->
    [one] { $count } body part
   *[other] { $count } body parts
}
notice-link-damaged =
    <b>The link did not open.</b> { $why } What you see is not from the link.
notice-file-fault = <b>That did not open.</b> { $why }
notice-kept-this =
    This rocket is kept on this computer now. If another was kept, Undo brings it back.
notice-keeps-nothing =
    <b>Nothing is kept here.</b> Your rocket and your notebook are gone when you close this page.
    Copy the link, or save a file.
notice-not-kept =
    <b>What you did last is not kept.</b> The room for this page may be full. What was kept
    before is still there. The page tries again by itself. Till this message goes, copy the link
    or save a file.
notice-deleted =
    <b>All that this page kept on this computer is gone.</b> We checked: nothing is left. Files
    that you saved are still there, and so is the list of pages that you saw. What you write from
    now on is kept again.
notice-left =
    <b>Not all of it is gone: { $left } pieces are left.</b> Ask the adult: the browser’s own
    settings can delete the rest.
notice-copied = { $link-holds ->
    [rocket] Link copied. It holds the rocket.
   *[notebook-too] Link copied. It holds the rocket and the notebook.
} { $link-opens ->
    [anywhere] You can put it anywhere.
   *[in-the-page] On another computer, put it where a link is opened.
}
notice-copy-by-hand = The page may not copy here. Mark this and press Ctrl and C:
notice-saved =
    Saved as <b>{ $name }</b>, if this computer lets us. If no file comes, copy the link.
notice-other =
    Another rocket, <b>{ $name }</b>, is kept on this computer, from before or from another
    window. This one is not kept: only the address bar holds it.
notice-other-unnamed =
    Another rocket, <b>without a name</b>, is kept on this computer, from before or from another
    window. This one is not kept: only the address bar holds it.
notice-unreadable =
    <b>This page cannot read what is kept on this computer.</b> It may be from a newer page, and
    stays as it is. This rocket is not kept: only the address bar holds it.
notice-emptied =
    Somebody deleted all that was kept on this computer, in another window. This rocket is not
    kept: only the address bar holds it.
notice-keep-instead = Keep this one now
notice-keeping-nothing =
    <b>Nothing is kept here.</b> The link in the address bar holds the whole rocket. Copy it
    before you close the page.
notice-keeping-refused =
    <b>What you did last is not kept.</b> The page tries again when you next change something. The
    link in the address bar holds the whole rocket. Copy it before you close the page.
notice-keeping =
    What you write is kept on this computer. At some schools it is gone when you sign out. To be
    sure, copy the link or save a file. Nothing is sent anywhere.
notice-lost =
    <b>What you wrote last is not kept on this computer.</b> Save the notebook as a file before
    you close the page. Open the file here later.
