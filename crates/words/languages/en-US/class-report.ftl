report-column-mass-computed = Center of mass: worked out from the nose (mm)
report-column-pressure-computed = Center of pressure: worked out from the nose (mm)
report-column-mass-readings = Center of mass: number of readings
report-column-pressure-readings = Center of pressure: number of readings
