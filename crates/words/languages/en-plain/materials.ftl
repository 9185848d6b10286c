material-paper = plain paper (80 g/m²)
material-thin-corrugated = thin box card (1.5 mm)
material-corrugated-plastic = plastic box card (4 mm)
material-polystyrene = hard white foam (5 mm)
