done-swung = how the rocket swings.
done-trial = { $trial-deed ->
    [begun] trial { $trial } begun.
    [brought-back] trial { $trial } brought back.
    [deleted] trial { $trial } taken out.
   *[taken-back] trial { $trial } taken back.
}
done-written = { $statement ->
    [claim] what we found.
    [evidence] what shows it.
    [reason] why it is so.
   *[trust] how sure we are.
}
done-group = the group’s colour or number.
done-in-hand = which trial you work on.
done-settings = what was set for the lesson.
