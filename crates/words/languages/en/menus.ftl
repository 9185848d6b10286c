## The menus of rockets to begin with.

# The title of a menu: rockets that come with the page.
menus-examples = Examples
# The title of a menu: bottles of several sizes.
menus-bottles = An empty bottle (typical sizes: measure yours)
# A bottle in that menu.
# $litres (number): how much it holds
menus-litres = { $litres } litre
