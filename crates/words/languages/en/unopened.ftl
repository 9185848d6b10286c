## Why a link could not be opened, behind “The link could not be opened.”

# It is too long.
unopened-too-long = This link is longer than any that this page makes. Copy it again from where it came from.
# It is of a later version.
unopened-newer = This link was made by a newer version of this page. Reload the page, then open it again.
# It is of a later version.
# $key (text): what is not known, as a program calls it
unopened-unknown =
    This link has something that this version of the page does not know: “{ $key }”. Reload
    the page, then open it again.
# Its end is missing.
unopened-cut-short = This link was cut short on its way. Copy the whole link and open it again.
# Its checksum is wrong.
unopened-changed =
    This link was changed on its way, so its numbers cannot be trusted. Copy it again from
    where it came from.

## Why a file could not be opened, behind “That could not be opened.”

# It is not read at all.
# $kilobytes (number): its size
unopened-file-too-large =
    This file is too large to be a rocket ({ $kilobytes } KB). Choose a file that this page
    saved.
