## The teacher pack: which part of the lesson gives evidence for which statement of a curriculum.

evidence-how = This lesson can give evidence for these statements; it does not say that anybody meets them. They are put in our own words. Whoever teaches checks them against today’s text.
# The heads of the table.
evidence-statement = Statement
evidence-where = Where
evidence-what = What to look for
# The heads of its parts: a curriculum, and of when.
evidence-england = England: national curriculum, as of 2014. A revised one is due to be published in spring 2027.
evidence-us = USA: Next Generation Science Standards, with no date noted
evidence-australia = Australia: Australian Curriculum, version 9. States differ.
# Below: what a star means.
evidence-star = * From memory, and not looked up.

## The statements. Codes stay as they are.

evidence-ks2-lower = Ages 7 to 9: comparative and fair tests; measuring in standard units; tables and charts
evidence-ks2-upper = Ages 9 to 11: controlling variables; repeated readings; how far results are trusted
evidence-ks2-forces = Year 5, forces: effects of air resistance, of gravity, of levers
evidence-ks3 = Ages 11 to 14*: predictions from science; kinds of variables; errors; data beside prediction
evidence-ks4 = Ages 11 to 16*: moments, force arrows, balanced forces
evidence-ets-compare = 3-5-ETS1-1, -2: a design problem with criteria and limits; solutions compared
evidence-ets-fair = 3-5-ETS1-3: fair tests with variables controlled, to find what to improve
evidence-ps2 = 3-PS2-1, 3-PS2-2*: forces and motion; a pattern that predicts
evidence-ms-ets = MS-ETS1-1 to -4: designs evaluated; test data analysed; a model that gives data
evidence-ms-ps2 = MS-PS2-2: change in motion depends on forces and mass (only with weight as the change)
evidence-practices = Practices 3, 4, 6, 7*: investigations, data, explanations, argument
evidence-ac-measure = AC9S3I03, AC9S5I03, AC9S6I03: measuring and recording with reasonable precision
evidence-ac-fair = AC9S5I02, AC9S6I02: fair, repeatable investigations; risks described
evidence-ac-trends = Years 5 to 6, I04* and I05*: patterns and trends; sources of error
evidence-ac-predict = AC9S7I01, AC9S8I01: questions to investigate; predictions with reasons
evidence-ac-forces = AC9S4U03, AC9S7U04, AC9S10U05: forces and motion
evidence-ac-valid = AC9S10I02: valid investigations that others can repeat
