## What parts are cut from: in a list, and where two rockets differ. The size tells sheets apart.

material-paper = printer paper (80 g/m²)
material-thin-card = thin card (160 g/m²)
material-card = card (220 g/m²)
material-thick-card = thick card (300 g/m²)
material-thin-corrugated = thin corrugated card (1.5 mm)
# Cardboard of packing boxes.
material-box-card = box card (3 mm)
material-corrugated-plastic = corrugated plastic (4 mm)
material-polystyrene = polystyrene foam (5 mm)
material-balsa = balsa (3 mm)
# Cut from a drinks bottle.
material-bottle-wall = bottle wall
