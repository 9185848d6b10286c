## The teacher pack: the list of hazards, on paper and as rows for a spreadsheet. It judges nothing.

# Above the table.
hazards-how = These are prompts, and not all there is. Fill in what applies where you are, and add what is missing.
# The heads of its columns; the last two stay empty for whoever assesses.
hazards-step = Step
hazards-what = Hazard
hazards-measure = Our measure
hazards-checked = Who checked
# The steps.
hazards-cutting = Cutting
hazards-building = Building
hazards-hanging = Hanging
hazards-swinging = Swinging
hazards-launching = Launching
hazards-landing = Landing
hazards-home = At home
hazards-cover = Cover lesson
# The hazards, in the order of the steps.
hazards-blade = Fingers are cut, by a blade or by the raw edge of a bottle.
hazards-nose = A hard or sharp nose hits somebody: metal, stones, points.
hazards-weakened = A bottle that is to hold pressure is cut, sanded, hot-glued or painted.
hazards-falls = The rocket falls on feet, or swings into a face.
hazards-circle = Somebody or something is within the circle, or comes into it.
hazards-slips = String, knot or tape gives way, and the rocket flies off.
hazards-eyes = Something hits an eye.
hazards-heavy = A long string or a heavy rocket pulls hard and flies far.
hazards-grabs = Somebody grabs the rocket before it has slowed down.
hazards-full = There is water or pressure in the bottle that is swung.
hazards-employer = It is launched outside the rules of the employer.
hazards-bottle = The bottle is scratched, dented, old, or of an unknown kind.
hazards-limit = The pressure goes above the school’s own limit.
hazards-pumping = Somebody is too near, leans over the rocket, or has bare eyes while it is pumped up.
hazards-stays = It does not lift off, and is still full of pressure.
hazards-catches = Somebody runs after it, or tries to catch it.
hazards-lies = It lies on a roof, in a tree, on a line or on a road.
hazards-alone = Rockets are swung or launched at home.
hazards-covered = A cover lesson swings or launches.
