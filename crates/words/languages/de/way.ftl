way-done = (erledigt)
way-undo = Rückgängig
way-redo = Wiederholen
way-more = Mehr
way-copy-link = Link kopieren
way-save = Als Datei speichern
way-print = Die Rakete drucken
way-large = Groß, für den Beamer

way-baseline = Versuch { $trial }, der Ausgangspunkt
way-compared = Versuch { $trial }, verglichen mit Versuch { $with }
way-changed =
    seit Versuch { $trial } geändert: Versuch { $next } beginnt, wenn ihr messt oder
    vorhersagt
way-bring-back = Versuch { $trial } zurückholen

way-back = Zurück zur Rakete
way-change-one = Eine Sache ändern

way-mend = Berichtigt zuerst, was markiert ist.
way-to-measure = Weiter: Findet beide Punkte der echten Rakete.
way-to-predict = Weiter: Sagt, was sie tun wird, bevor ihr sie schleudert.
way-first-measure =
    Zuerst eine Schätzung und drei Messwerte für jeden Punkt. Keine Rakete zur Hand? Geht
    weiter.
way-to-swing = Festgelegt. Weiter: die Karten, mit der erwachsenen Person.
way-first-choose = Wählt zuerst, sagt warum, und legt es fest.
way-to-compare = Weiter: Hat sie getan, was ihr dachtet?
way-first-lock = Legt zuerst eine Vorhersage fest.
way-first-swings = Zuerst dreimal schleudern und jedes Mal aufschreiben.
way-to-conclude = Weiter: Ändert eine Sache und testet noch einmal, oder sagt, was ihr herausgefunden habt.
way-to-hand-in = Weiter: Hebt es auf und gebt es ab.
way-round-again = Das ist der ganze Weg. Ändert eine Sache und geht ihn noch einmal.
