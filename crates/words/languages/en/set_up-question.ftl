## The place Set up: the questions to choose from.

question-nose-mass = Does more weight in the nose help?
question-mass-place = Does it matter where the weight sits?
question-fin-size = Do larger fins help?
question-fin-number = Do four fins do more than three?
question-fin-shape = Do fins that lean back help?
question-fin-place = Does it matter where the fins sit?
question-body-length = Does a longer body help?
question-nose-length = Does a longer nose help?
question-tail-mass = What does weight at the tail do?
question-string-length = Does the length of the string matter?

## What is changed for each question.

question-change-nose-mass = Press 20 g more clay into the nose.
question-change-mass-place = Move the clay 60 mm towards the tail.
question-change-fin-size = Cut fins that stand out 25 mm further.
question-change-fin-number = Add a fourth fin.
question-change-fin-shape = Cut fins with the tip 25 mm further back.
question-change-fin-place = Tape the fins 40 mm further forward.
question-change-body-length = Add a tube of card, 60 mm long.
question-change-nose-length = Make a nose that is 30 mm longer.
question-change-tail-mass = Tape 20 g of clay to the tail.
question-change-string-length = Swing on a string that is 20 cm shorter.

## What is kept the same, in a list.

kept-bottle = the bottle
kept-nose = the nose
kept-fins = the fins
kept-added-mass = the added weight
kept-mass-place = the place of the weight
kept-string-and-turns = string and turns
kept-who-swings = who swings
kept-letting-go = how it is let go

## What is expected.

# $mass-goes (nose | tail | stays): where the centre of mass goes
# $pressure-goes (nose | tail | stays): where the centre of pressure goes
# $separation-is (more | less | stays): what becomes of the separation
expected =
    { $mass-goes ->
        [nose] The centre of mass moves towards the nose,
        [tail] The centre of mass moves towards the tail,
       *[stays] The centre of mass stays,
    } { $pressure-goes ->
        [nose] the centre of pressure towards the nose;
        [tail] the centre of pressure towards the tail;
       *[stays] the centre of pressure stays;
    } { $separation-is ->
        [more] the separation grows.
        [less] the separation shrinks.
       *[stays] the separation is the same.
    }

## What may be changed: buttons that stay pressed.

changeable-nose = the nose
changeable-body = the body
changeable-materials = materials
changeable-fin-number = number of fins
changeable-fin-shape = shape of the fins
changeable-fin-place = place of the fins
changeable-added-mass = added weight
changeable-mass-place = place of the weight
changeable-swinging = the string
