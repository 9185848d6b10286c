predict-lead = Versuch { $trial }. Was wird die Rakete an ihrer Schnur tun?
predict-again = Noch einmal nachdenken: Die erste Vorhersage bleibt
predict-fair = Ein fairer Versuch ändert eine Sache
predict-outcomes = An der Schnur fliegt sie
predict-because = weil …
predict-lock = Die Vorhersage festlegen
predict-add = Dies als spätere Vorhersage hinzufügen
predict-stays =
    Ist sie einmal festgelegt, ändert diese Seite sie nie. Erst dann könnt ihr einen Schwung
    festhalten.
predict-locked = Festgelegt:
predict-later = Später:
predict-after = { $count ->
    [one] nach { $count } Schwung geschrieben
   *[other] nach { $count } Schwüngen geschrieben
}
predict-altered =
    Etwas in diesem Versuch wurde von Hand geändert, außerhalb der Seite: in einer Datei, einer
    Tabelle oder einem Code.
predict-first-choose = Wählt erst, was die Rakete tun wird. Legt dann die Vorhersage fest.
predict-why = Warum glaubt ihr das? Auch eine Vermutung hat einen Grund: Schreibt ihn auf.
predict-several-changes =
    Seit Versuch { $trial } hat sich mehr als eine Sache geändert: Hinterher kann niemand sagen,
    welche es war. Oben könnt ihr eine zurücknehmen.
predict-or-again = Oder drückt noch einmal, um sie so festzulegen.
predict-already = Das habt ihr schon vorhergesagt.
predict-beside = Eure neue Vorhersage steht neben der ersten.
predict-now-cards = Festgelegt. Als Nächstes: die Karten, zusammen mit der erwachsenen Person.
