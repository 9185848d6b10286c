drawing-mass-nearer-arrow = center of mass nearer the nose →
drawing-pressure-nearer-arrow = ← center of pressure nearer the nose
drawing-separation-in = { $written-in ->
    [millimetres] separation in millimeters
   *[inches] separation in inches
}
drawing-mass-nearer = center of mass nearer the nose
drawing-pressure-nearer = center of pressure nearer the nose
