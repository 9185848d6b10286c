## Behind “Undone:” and “Done again:”, with its full stop: what it was.

done-name = the rocket’s name.
done-weighed = what the whole rocket weighs, or a name.
done-another = another rocket.
# $name (text): its name
done-another-named = another rocket, { $name }.
done-swung = how the rocket is swung.
# $trial (number): the number of the trial
# $trial-deed (begun | brought-back | deleted | taken-back): what was done with it
done-trial = { $trial-deed ->
    [begun] trial { $trial } begun.
    [brought-back] trial { $trial } brought back.
    [deleted] trial { $trial } deleted.
   *[taken-back] trial { $trial } taken back.
}
# A box of the conclusion.
# $statement (claim | evidence | reason | trust): which
done-written = { $statement ->
    [claim] the claim.
    [evidence] the evidence.
    [reason] the reason.
   *[trust] the trust.
}
done-order = the order of the trials.
done-plans = the plans.
done-group = the group’s label.
done-in-hand = which trial is in hand.
done-settings = the settings.
# $reading (number): which of the three
# $balance-point (mass | pressure): which of the two points
done-reading = { $balance-point ->
    [mass] reading { $reading } of the centre of mass.
   *[pressure] reading { $reading } of the centre of pressure (side-on).
}
# $balance-point (mass | pressure): which of the two points
done-guess = { $balance-point ->
    [mass] the guess of the centre of mass.
   *[pressure] the guess of the centre of pressure (side-on).
}
# $balance-point (mass | pressure): which of the two points
done-how-read = { $balance-point ->
    [mass] how the centre of mass was read.
   *[pressure] how the centre of pressure (side-on) was read.
}
# The measured lengths of rocket and cut-out.
done-lengths = the lengths.
# The outcome that is chosen for a prediction.
done-choice = the choice.
# The reason for it.
done-reason = the reason.
done-note = the note.
# The trial that a trial is compared with.
done-compared = what it is compared with.
# Anything else of a trial.
done-other = something of it.
