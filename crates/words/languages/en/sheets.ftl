## What stands on every sheet of the place Paper.

# At the foot of each page.
sheets-foot = A good swing is not permission to launch. Local rules and an adult decide.
# At the foot of each page, where there are several.
# $page (number): which it is
# $of (number): how many there are
sheets-page = Page { $page } of { $of }
# Before a caution, in its frame.
sheets-caution = Take care
