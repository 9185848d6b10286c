sheets-foot =
    A good swing does not mean that you may let it take off. The rules where you live and an adult
    say if you may.
