marking-points = The reason names both points: center of mass and center of pressure.
