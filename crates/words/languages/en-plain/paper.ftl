paper-initials = Space checked before every three swings, the adult signs: ____ ____ ____ ____
paper-no-permission =
    A good swing does not mean that you may launch. Local rules, your school’s own risk assessment
    and a qualified person decide.
paper-head-range = How far apart
