drawing-air-graphs = Center of pressure and turning moment against the angle of the air
drawing-pressure = center of pressure
drawing-mass = center of mass
