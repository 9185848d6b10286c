drawing-air-graphs = Where the air pushes, and which way it turns the rocket, from each side
