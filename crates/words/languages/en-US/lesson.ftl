lesson-mass = center of mass
lesson-pressure = center of pressure (side-on)
lesson-grey = Gray
