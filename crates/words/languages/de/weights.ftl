weights-uk-coins = Britische Münzen
weights-euro-coins = Euromünzen
weights-us-coins = US-Münzen
weights-australian-coins = Australische Münzen
weights-other-things = Andere Dinge

weight-pence = { $value ->
    [one] { $value }-Penny-Münze
   *[other] { $value }-Pence-Münze
}
weight-pounds = { $value }-Pfund-Münze
weight-euro-cents = { $value }-Cent-Münze
weight-euros = { $value }-Euro-Münze
weight-us-cent = US-Cent
weight-us-nickel = US-Nickel
weight-us-dime = US-Dime
weight-us-quarter = US-Quarter
weight-us-half-dollar = US-Halbdollar
weight-us-dollar = US-Dollarmünze
weight-australian-cents = { $value }-Cent-Münze (AU)
weight-australian-dollars = { $value }-Dollar-Münze (AU)
weight-clay = Knete
weight-sticky-tape = Klebeband
weight-small-paper-clip = Büroklammer (klein)
weight-large-paper-clip = Büroklammer (groß)
weight-metal-washer = Unterlegscheibe
weight-other = etwas anderes
