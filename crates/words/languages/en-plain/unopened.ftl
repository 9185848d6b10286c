unopened-too-long = This link is longer than any that this page makes. Copy it again from where you found it.
unopened-newer = A newer page made this link. Load the page again, then open it again.
unopened-unknown =
    This page does not know something in this link: “{ $key }”. Load the page again, then open it
    again.
unopened-changed =
    This link was changed on its way, so we cannot trust its numbers. Copy it again from where you
    found it.
unopened-file-too-large =
    This file is too large for a rocket ({ $kilobytes } KB). Choose a file that this page saved.
