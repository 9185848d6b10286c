## The menus of rockets to begin with.

# The title of a menu: rockets that come with the page.
menus-examples = Examples
# The title of a menu: bottles of several sizes.
menus-bottles = An empty bottle (typical sizes: measure yours)
# A bottle in that menu.
# $litres (number): how much it holds
menus-litres = { $litres } litre
# A rocket in the menu of examples: Puffin, Tern, Razorbill and Gannet are its names, and stay.
menus-puffin = Puffin: clay in the nose, four fins at the tail
# A rocket in that menu.
menus-tern = Tern: small fins, no clay in the nose
# A rocket in that menu.
menus-razorbill = Razorbill: large, heavy fins
# A rocket in that menu.
menus-gannet = Gannet: a slim paper tube
# What has begun, in “… is here”.
# $litres (number): how much it holds
menus-empty-bottle = an empty { $litres } litre bottle
