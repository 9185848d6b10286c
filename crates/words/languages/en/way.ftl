## Over every place: the path, the tools, which trial it is; under it: the way on.

# For screen readers, behind the name of a step that is done.
way-done = (done)
# A button.
way-undo = Undo
# A button.
way-redo = Redo
# The label of a menu.
way-more = More
# In that menu, and where the page keeps nothing.
way-copy-link = Copy link
# In that menu.
way-save = Save as a file
# In that menu.
way-print = Print the rocket
# In that menu: a switch that makes all larger.
way-large = Large, for a projector

# The line under the path: the first trial, which others are compared with.
# $trial (number): its number
way-baseline = trial { $trial }, the baseline
# The line under the path: a later trial.
# $trial (number): its number
# $with (number): the number of the one it is compared with
way-compared = trial { $trial }, compared with trial { $with }
# The line under the path: the rocket is no longer that of the trial.
# $trial (number): the number of the trial
# $next (number): the number of the one that would begin
way-changed =
    changed since trial { $trial }: trial { $next } begins when you measure or predict
# The button behind that: the rocket of the trial comes back.
# $trial (number): its number
way-bring-back = Bring trial { $trial } back

# The button at the end of the path, and beside it.
way-back = Back to the rocket
# A button in the place Compare.
way-change-one = Change one thing

## Beside the button to the next step: why one goes on, or what comes before.

# In the place Rocket.
way-mend = First put right what is marked.
# In the place Rocket.
way-to-measure = Next: find both points of the real rocket.
# In the place Measure.
way-to-predict = Next: say what it will do, before you swing it.
# In the place Measure.
way-first-measure = First a guess and three readings of each point. No rocket at hand? Go on.
# In the place Predict.
way-to-swing = Locked. Next: the cards, with the adult.
# In the place Predict.
way-first-choose = First choose, say why, and lock it.
# In the place Swing.
way-to-compare = Next: did it do what you thought?
# In the place Swing.
way-first-lock = First lock a prediction.
# In the place Swing.
way-first-swings = First three swings, each recorded.
# In the place Compare.
way-to-conclude = Next: change one thing and test again, or say what you found out.
# In the place Conclude.
way-to-hand-in = Next: keep it, and hand it in.
# In the place Hand in.
way-round-again = That is the whole path. Change one thing, and go round again.
