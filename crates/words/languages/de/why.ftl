why-hidden = Verdeckt, bis ihr vorhergesagt habt.
why-how-sure = Wie sicher ist das?
why-likely = { $likely } auseinander
why-angle = Winkel zwischen der Nase und der anströmenden Luft
why-in-words = Die Rakete in Worten
why-as-table = Die Rakete als Tabelle
why-caution =
    Der Druckpunkt der Pappsilhouette steht für Luft von der Seite. Ein guter Abstand ist keine
    Erlaubnis zum Schleudern oder Starten. Es entscheiden die Regeln am Ort, die
    Gefährdungsbeurteilung eurer Schule und eine sachkundige Person. Diese Seite entscheidet nicht.
why-ruler = Lineal ablesbar auf
why-scales = Waage ablesbar auf

why-sure-wait = <b>Wie sicher sind eure Messwerte?</b> Wird ausgerechnet.
why-sure-readings =
    <b>Wie sicher sind eure Messwerte?</b> Wenn nur Lineal und Waage ungenau sind, ist der Abstand
    auf ± { $readings } bekannt. Mit allem, was niemand gemessen hat (wie schwer die Pappe ist,
    Boden und Hals der Flasche, Klebstoff), liegt er bei etwa 19 von 20 solchen Raketen zwischen
    { $low } und { $high }. Das kommt dabei heraus: { $outcomes }.
why-matter-most = Am meisten kommt es auf diese Messwerte an: { $readings }.
why-more-readings = { $before }; { $more }
why-sums = { $agreement ->
    [agree] <b>Wie sicher ist unsere Rechnung?</b> Dafür gibt es mehrere veröffentlichte Rechnungen. Sie sagen alle: { $outcomes }.
   *[differ] <b>Wie sicher ist unsere Rechnung?</b> Dafür gibt es mehrere veröffentlichte Rechnungen. Sie sagen: { $outcomes }.
}
why-sums-band = { $agreement ->
    [agree] <b>Wie sicher ist unsere Rechnung?</b> Dafür gibt es mehrere veröffentlichte Rechnungen. Den Druckpunkt (von vorn) sehen sie zwischen { $least } und { $most }, und alle sagen: { $outcomes }.
   *[differ] <b>Wie sicher ist unsere Rechnung?</b> Dafür gibt es mehrere veröffentlichte Rechnungen. Den Druckpunkt (von vorn) sehen sie zwischen { $least } und { $most }, und sie sagen: { $outcomes }.
}
why-outcome = { $sum-says ->
    [self-righting] richtet sich selbst auf
    [straight-start-only] nur bei geradem Start
    [broadside] quer
   *[swaps-ends] dreht sich um
}
why-more-outcomes = { $before } oder { $more }

why-lines-cross =
    Wo sich die beiden Linien kreuzen, dreht die Luft die Rakete nicht. Voller Punkt: angestoßen,
    kommt sie zurück. Offener Punkt: angestoßen, dreht sie sich weg.
why-lines-apart =
    Die beiden Linien kreuzen sich nicht: Außer an den beiden Enden dreht die Luft die Rakete bei
    jedem Winkel in dieselbe Richtung. Voller Punkt: angestoßen, kommt sie zurück. Offener Punkt:
    angestoßen, dreht sie sich weg.
why-pushes = Luft von der Seite drückt bei { $side }, Luft von vorn bei { $front }
why-pushes-side = Luft von der Seite drückt bei { $side }
why-rolls =
    Eine fliegende Rakete dreht sich um ihre Längsachse und zeigt mehr oder weniger von ihren
    Flossen: Die beiden Punkte sind dann { $least } bis { $most } auseinander. Der kleinste Abstand
    zählt. Zeichnung und Pappsilhouette zeigen eine Ansicht, in der sie { $drawn } auseinander sind.
why-cut-out =
    Eine Pappsilhouette steht für Luft von der Seite: Ihr Druckpunkt (von der Seite) liegt bei { $side }.
why-nose-on =
    Fliegt die Rakete gerade, trifft die Luft auf die Nase: Dann liegt der Druckpunkt (von vorn) bei
    { $front }. Wer vorsichtig ist, nimmt den, der näher an der Nase liegt.
why-nose-on-rolls =
    Fliegt die Rakete gerade, trifft die Luft auf die Nase: Dann liegt der Druckpunkt (von vorn) bei
    { $front } oder, anders um die Längsachse gedreht, bis zu { $rear } weit hinten. Wer vorsichtig
    ist, nimmt den, der näher an der Nase liegt.
why-nose-on-hardly = Fliegt die Rakete gerade, drückt die Luft sie kaum zur Seite.
why-at-angle = { $turning ->
    [only-nudged] { $angle }°: Die Luft drückt { $place } hinter der Nasenspitze und dreht die Rakete nur, wenn sie angestoßen wird.
    [back] { $angle }°: Die Luft drückt { $place } hinter der Nasenspitze und dreht sie zurück, mit der Nase voran.
   *[away] { $angle }°: Die Luft drückt { $place } hinter der Nasenspitze und dreht die Nase weg.
}
why-at-angle-hardly = { $turning ->
    [only-nudged] { $angle }°: Die Luft dreht die Rakete nur, wenn sie angestoßen wird.
    [back] { $angle }°: Die Luft dreht sie zurück, mit der Nase voran.
   *[away] { $angle }°: Die Luft dreht die Nase weg.
}

why-last-drawn = Das ist die letzte Rakete, die gezeichnet werden konnte.
why-is = { $name } ist { $length } lang und { $width } breit. Gewicht: { $mass }.
why-is-nameless = Die Rakete ist { $length } lang und { $width } breit. Gewicht: { $mass }.
why-untold = Wo ihre beiden Punkte liegen, steht hier, sobald ihr sie gemessen habt.
why-mass-at = { $found ->
    [by-hand] Der Schwerpunkt liegt, gemessen, { $at } hinter der Nasenspitze.
   *[by-sum] Der Schwerpunkt liegt { $at } hinter der Nasenspitze.
}
why-pressure-at = { $found ->
    [by-hand] Der Druckpunkt (von der Seite), den eine Pappsilhouette findet, liegt, gemessen, { $at } hinter der Nasenspitze.
   *[by-sum] Der Druckpunkt (von der Seite), den eine Pappsilhouette findet, liegt { $at } hinter der Nasenspitze.
}
why-apart =
    In dieser Ansicht sind sie { $drawn } auseinander und { $least }, wenn die Rakete am
    ungünstigsten um ihre Längsachse gedreht ist.
why-point-measured =
    { $which-point ->
        [mass] Der Schwerpunkt
       *[pressure] Der Druckpunkt (von der Seite)
    } wurde gemessen, bei { $at }. Ausgerechnet: { $worked-out }, { $compared ->
        [more] { $by } mehr
        [less] { $by } weniger
       *[the-same] ebenso viel
    }.
why-weighed = { $compared ->
    [more] Die ganze Rakete wurde gewogen: { $mass }. Die Teile ergeben zusammen { $parts }, { $by } mehr.
    [less] Die ganze Rakete wurde gewogen: { $mass }. Die Teile ergeben zusammen { $parts }, { $by } weniger.
   *[the-same] Die ganze Rakete wurde gewogen: { $mass }. Die Teile ergeben zusammen { $parts }, ebenso viel.
}

why-row-length = Länge
why-row-width = Breite des Rumpfs
why-row-mass = Masse
why-row-mass-at = Schwerpunkt, ab Nasenspitze
why-row-side-on = Druckpunkt (von der Seite), ab Nasenspitze
why-row-nose-on = Druckpunkt (von vorn), ab Nasenspitze
why-row-across = Wo die Luft bei 90° drückt, jedes Teil mit seinem eigenen Luftwiderstand
why-row-apart = Abstand in dieser Ansicht
why-row-least-apart = Abstand in der ungünstigsten Drehung um die Längsachse
why-row-body-widths = Derselbe in Rumpfbreiten
why-none = keiner
why-table-title = Die Rakete
why-table-note =
    Alle Längen zählen ab der Nasenspitze. Der Abstand gilt als positiv, wenn der Schwerpunkt
    näher an der Nase liegt.
why-push-bars = Gerader Flug: wie sich der Druck der Luft verteilt
why-parts = Die Teile in Zahlen
why-part = Teil
why-weighs = Masse
why-hangs-at = Schwerpunkt bei
why-pushed = Druck (für Fachleute: Anstieg der Kraft je Radiant)
why-pushed-at = bei
