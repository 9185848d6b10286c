menus-examples = Rockets
menus-bottles = An empty bottle (measure yours to be sure)
menus-gannet = Gannet: a thin paper tube
