drawing-pressure-lines = center of|pressure
drawing-mass-lines = center of|mass
drawing-pressure-side-on = center of pressure, side-on
