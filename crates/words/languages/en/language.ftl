## The choice of the language, at the top of every place.

# Names the list of languages, for screen readers.
language-label = Language
# A message at the top.
# $language (text): its own name for itself
language-failed =
    { $language } could not be loaded, so the page stays as it was. Look at the network, then
    choose it again.
