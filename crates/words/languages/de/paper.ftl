paper-notebook-of = Heft von { $group }
paper-rocket-of = Die Rakete von Versuch { $trial }
paper-note = <b>Versuch { $trial }:</b> { $note }
paper-plans = <b>Was wir als Nächstes versuchen:</b> { $plans }
paper-found-out = Was wir herausgefunden haben
paper-initials =
    Kürzel der erwachsenen Person, Platz vor je drei Schwüngen geprüft: ____ ____ ____ ____
paper-no-permission =
    Ein guter Schwung ist keine Erlaubnis zum Starten. Es entscheiden die örtlichen Regeln, die
    Gefährdungsbeurteilung eurer Schule und eine sachkundige Person.
paper-swings = Was wir sahen, Schwung für Schwung
paper-head-swings = Schwünge
paper-readings = Was wir geschätzt und gemessen haben, von der Nasenspitze aus
paper-head-point = Punkt
paper-head-guess = Schätzung
paper-head-middle = Mitte
paper-head-range = Spannweite
paper-from-tail = { $point } (vom Heck aus gemessen)
paper-left-out = { $point }, Messwert { $number } weggelassen
paper-left-out-because = { $point }, Messwert { $number } weggelassen: { $reason }
paper-not-true = { $point }, Messwert { $number } zählt nicht: Er kann nicht stimmen
paper-which-swings = { $seen }, Nr. { $numbers }
