question-nose-mass = Hilft mehr Gewicht in der Nase?
question-mass-place = Ist es wichtig, wo das Gewicht sitzt?
question-fin-size = Helfen größere Flossen?
question-fin-number = Bewirken vier Flossen mehr als drei?
question-fin-shape = Helfen nach hinten gepfeilte Flossen?
question-fin-place = Ist es wichtig, wo die Flossen sitzen?
question-body-length = Hilft ein längerer Rumpf?
question-nose-length = Hilft eine längere Nase?
question-tail-mass = Was bewirkt Gewicht am Heck?
question-string-length = Ist die Länge der Schnur wichtig?
question-change-nose-mass = 20 g Knete mehr in die Nase drücken.
question-change-mass-place = Die Knete 60 mm zum Heck hin versetzen.
question-change-fin-size = Flossen schneiden, die 25 mm weiter abstehen.
question-change-fin-number = Eine vierte Flosse ankleben.
question-change-fin-shape = Flossen schneiden, deren Spitze 25 mm weiter hinten liegt.
question-change-fin-place = Die Flossen 40 mm weiter vorn ankleben.
question-change-body-length = Ein Rohr aus Pappe einsetzen, 60 mm lang.
question-change-nose-length = Eine Nase bauen, die 30 mm länger ist.
question-change-tail-mass = 20 g Knete ans Heck kleben.
question-change-string-length = An einer 20 cm kürzeren Schnur schleudern.
kept-bottle = die Flasche
kept-nose = die Nase
kept-fins = die Flossen
kept-added-mass = das zusätzliche Gewicht
kept-mass-place = der Platz des Gewichts
kept-string-and-turns = Schnur und Umdrehungen
kept-who-swings = wer schleudert
kept-letting-go = wie losgelassen wird
expected =
    { $mass-goes ->
        [nose] Der Schwerpunkt rückt zur Nase,
        [tail] Der Schwerpunkt rückt zum Heck,
       *[stays] Der Schwerpunkt bleibt,
    } { $pressure-goes ->
        [nose] der Druckpunkt zur Nase;
        [tail] der Druckpunkt zum Heck;
       *[stays] der Druckpunkt bleibt;
    } { $separation-is ->
        [more] der Abstand wird größer.
        [less] der Abstand wird kleiner.
       *[stays] der Abstand bleibt gleich.
    }
changeable-nose = die Nase
changeable-body = der Rumpf
changeable-materials = Materialien
changeable-fin-number = Zahl der Flossen
changeable-fin-shape = Form der Flossen
changeable-fin-place = Platz der Flossen
changeable-added-mass = zusätzliches Gewicht
changeable-mass-place = Platz des Gewichts
changeable-swinging = die Schnur
