slips-not-a-number = Hier gehört eine Zahl hin.
slips-below-zero = Ein Lineal zeigt nichts unter null. Ist da ein Vorzeichen zu viel?
slips-zero = Das ist null. Lasst es leer, wenn nichts gemessen wurde.
slips-other-unit = { $slip-size ->
    [small] Nur { $typed }
   *[large] { $typed }
}: { $slip-cause ->
    [centimetres] in Zentimetern abgelesen
    [inches] in Zoll abgelesen
    [millimetres] in Millimetern abgelesen
   *[zero] eine Null zu viel
}? Meint ihr { $meant }?
slips-rocket =
    Das Lineal sagt { $measured }, die Beschreibung { $described }. Messt noch einmal, oder
    ändert die Beschreibung.
slips-cutout =
    Eine Silhouette von { $cutout } für eine Rakete von { $rocket }? Messt sie noch einmal.
slips-scaled =
    Die Silhouette ist { $percent } % so lang wie die Rakete. Ihre Messwerte werden auf die
    Rakete umgerechnet.
slips-guess = Diese Schätzung liegt außerhalb der Rakete, die { $rocket } lang ist.
slips-beyond = { $balance-point ->
    [mass] Das liegt jenseits der Rakete, die { $length } lang ist.
   *[pressure] Das liegt jenseits der Silhouette, die { $length } lang ist.
}
slips-near-end = { $balance-point ->
    [mass] Nur { $reading }: Kein Punkt liegt so nah am Ende einer Rakete von { $length }. Messt noch einmal.
   *[pressure] Nur { $reading }: Kein Punkt liegt so nah am Ende einer Silhouette von { $length }. Messt noch einmal.
}
slips-from-tail = Wurde das vom Heck aus abgelesen? Dann sind es { $distance } von der Nase.
slips-from-nose = Wurde das von der Nase aus abgelesen? Dann sind es { $distance } vom Heck.
slips-left-out = Ihr lasst diesen Messwert weg. Sagt, warum.
slips-apart =
    Dieser Messwert liegt abseits der beiden anderen. Er bleibt aufgeschrieben. Entscheidet, ob
    ihr ihn weglasst, und sagt, warum.
slips-only-one =
    Ein einzelner Messwert kann nicht zeigen, wie weit Messwerte auseinanderliegen. Nehmt noch
    zwei.
slips-not-counted = Er zählt nicht, bis er geändert ist.
slips-not-used = Sie wird nicht verwendet, bis sie geändert ist.
