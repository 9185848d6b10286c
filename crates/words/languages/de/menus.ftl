menus-examples = Beispiele
menus-bottles = Eine leere Flasche (übliche Maße: messt eure nach)
menus-litres = { $litres } Liter
