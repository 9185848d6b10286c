forms-no-names = (keine Namen)
forms-sideways =
    Wenn die Tabelle abgeschnitten ist, schiebt sie zur Seite: mit dem Finger oder mit Tab und
    den Pfeiltasten.
