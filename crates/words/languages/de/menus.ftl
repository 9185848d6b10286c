menus-examples = Beispiele
menus-bottles = Eine leere Flasche (übliche Maße: messt eure nach)
menus-litres = { $litres } Liter
menus-puffin = Puffin: Knete in der Nase, vier Flossen am Heck
menus-tern = Tern: kleine Flossen, keine Knete in der Nase
menus-razorbill = Razorbill: große, schwere Flossen
menus-gannet = Gannet: ein schmales Rohr aus Papier
menus-empty-bottle = Eine leere { $litres }-Liter-Flasche
