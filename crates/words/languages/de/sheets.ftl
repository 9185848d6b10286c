sheets-foot =
    Ein guter Schwung ist keine Erlaubnis zum Starten. Örtliche Regeln und eine erwachsene Person entscheiden.
sheets-page = Seite { $page } von { $of }
sheets-caution = Vorsicht
