drawing-air-graphs = Where the air pushes, and which way it turns the rocket, from each side
drawing-push = Where the air pushes each part when the rocket flies straight
