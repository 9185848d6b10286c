## In the place Predict: what a group thinks that the rocket will do.

# Below the heading.
# $trial (number): the number of the trial
predict-lead = Trial { $trial }. On its string, what will the rocket do?
# A line that opens the form once more.
predict-again = Think again: the first prediction stays
# The heading over what changed.
predict-fair = A fair test changes one thing
# The name of the row of buttons: what it will do. For a screen reader.
predict-outcomes = On the string it will fly
# The label of the room for the reason.
predict-because = because …
# The button below it, and what it says once there is a prediction.
predict-lock = Lock the prediction
predict-add = Add this as a later prediction
# Beside the button.
predict-stays = Once it is locked, this page never changes it. Only then can you record a swing.
# Before what was predicted, for example “Locked: nose first, steady”.
predict-locked = Locked:
# Before what was predicted again.
predict-later = Later:
# Behind it, where the group had seen something by then.
# $count (number): how many swings
predict-after = { $count ->
    [one] written after { $count } swing
   *[other] written after { $count } swings
}
predict-altered =
    Something in this trial was changed by hand, outside of the page: in a file, a table or a
    code.

## What is said when a prediction is locked.

predict-first-choose = First choose what the rocket will do. Then lock the prediction.
predict-why = Why do you think so? Even a guess has a reason: write it down.
# $trial (number): the number of the trial it is compared with
predict-several-changes =
    More than one thing has changed since trial { $trial }: afterwards nobody can tell which of
    them did it. Above you can take one back.
predict-or-again = Or press again to lock it as it is.
predict-already = That is what you predicted already.
predict-beside = Your new prediction stands beside the first one.
predict-now-cards = Locked. Next: the cards, with the adult.
