swing-caution =
    <b>Fragt die erwachsene Person, bevor ihr schleudert.</b> In der Halle oder draußen. Leer:
    kein Wasser, keine Luft hineingepumpt. Schutzbrille auf, dann kräftig an der Schnur ziehen.
    Eine Person schleudert; alle anderen stehen außerhalb der markierten Linie. Ruft irgendjemand
    Stopp, wird aufgehört. Es entscheiden die Regeln am Ort, die Gefährdungsbeurteilung eurer
    Schule und eine sachkundige Person. Diese Seite entscheidet nicht.
swing-ask = Fragt die erwachsene Person, bevor ihr schleudert.
swing-limit =
    Schleudert das nicht. Kürzere Schnur, weniger Umdrehungen, leichtere Rakete: Fragt die
    erwachsene Person.

swing-room = Schnur, Umdrehungen und der Platz, den sie brauchen
swing-string = Schnur
swing-turns = Umdrehungen je Sekunde
swing-arm = Arm, Schulter bis Hand
swing-model = Was sie an der Schnur tun müsste, ausgerechnet
swing-hidden = Verdeckt, bis ihr vorhergesagt habt.
swing-start = Nase beginnt bei
swing-density = Ein Kubikmeter Luft wiegt
swing-slider = Wo die Nase beginnt: 0° vorn, 180° hinten

swing-ambiguous = Ist das { $small } oder { $large }?
swing-needs-angle = Hier gehört ein Winkel von 0 bis 180 Grad hin.
swing-unreadable = { $setup ->
    [string] Das ist nicht zu lesen. Schreibt zum Beispiel 1,5 oder 150 cm.
    [arm] Das ist nicht zu lesen. Schreibt zum Beispiel 0,7 oder 70 cm.
    [density] Das ist nicht zu lesen. Schreibt zum Beispiel 1,2.
   *[turns] Das ist nicht zu lesen. Schreibt zum Beispiel 1.
}
swing-no-number = Hier gehört eine Zahl hin.
swing-out-of-bounds = Nehmt eine Zahl von { $least } bis { $most }.
swing-hangs-down =
    So langsam hängt die Schnur nach unten: Nehmt die Werte nur als grobe Richtschnur.
swing-too-slow =
    So langsam hängt die Schnur fast senkrecht nach unten: Da gibt es nichts auszurechnen.
swing-turns-a-second = { $turns ->
    [one] { $turns } Umdrehung je Sekunde
   *[other] { $turns } Umdrehungen je Sekunde
}

swing-nothing-yet =
    Noch nichts zu schleudern. Berichtigt zuerst, was unter der Zeichnung aufgeführt ist.
swing-number-first = Noch nichts zu schleudern. Berichtigt zuerst die Zahl oben.
swing-wait = Wird ausgerechnet …
swing-trying = Jeder Anfang wird durchprobiert …

swing-too-close =
    An der Schnur zu knapp, um es zu sagen. Von 20 Versuchen mit euren Messwerten: { $tries }.
swing-tries = { $string-ending ->
    [from-any-start] in etwa { $tries } dreht sie sich aus jeder Lage mit der Nase voran
    [once-it-is] in etwa { $tries } bleibt sie mit der Nase voran, wenn sie es einmal ist
    [across] in etwa { $tries } kommt sie quer zu ihrer Bahn zur Ruhe
   *[tail-first] in etwa { $tries } dreht sie sich mit dem Heck voran
}

swing-settles = { $motion ->
    [at-once] Bei { $start }° losgelassen, fliegt sie sofort mit der Nase voran.
    [nose-first]
        Bei { $start }° losgelassen, dreht sie sich in etwa { $seconds } s ({ $turns ->
            [one] { $turns } Umdrehung
           *[other] { $turns } Umdrehungen
        }) mit der Nase voran.
    [tail-first]
        Bei { $start }° losgelassen, kommt sie in etwa { $seconds } s ({ $turns ->
            [one] { $turns } Umdrehung
           *[other] { $turns } Umdrehungen
        }) mit dem Heck voran zur Ruhe.
    [across]
        Bei { $start }° losgelassen, kommt sie in etwa { $seconds } s ({ $turns ->
            [one] { $turns } Umdrehung
           *[other] { $turns } Umdrehungen
        }) quer zu ihrer Bahn zur Ruhe, um { $angle }° gedreht.
    [still-swinging]
        Bei { $start }° losgelassen, pendelt sie nach etwa { $seconds } s immer noch um die Lage bei { $angle }°.
   *[turning-over]
        Bei { $start }° losgelassen, überschlägt sie sich nach etwa { $seconds } s noch immer.
}
swing-spin = { $spin ->
    [holds-alone]
        <b>Dieser Schwung beweist wenig.</b> Das Kreisen selbst zieht diese Rakete in ihre Bahn. Die
        Luft allein würde sie nicht mit der Nase voran halten, und im Flug lässt sie niemand kreisen.
    [flatters]
        <b>An der Schnur hält sie sich besser, als sie es im Flug täte.</b> Das Kreisen hält sie
        besser, als die Luft allein es würde.
    [too-weak]
        Fast mit der Nase voran dreht die Luft diese Rakete weg, und das Kreisen ist zu schwach, um
        sie zu halten.
    [does-most]
        <b>Dieser Schwung beweist wenig.</b> Ist die Nase fast vorn, so besorgt die Schnur { $part } %
        des Drehens und die Luft den Rest. Im Flug lässt sie niemand kreisen.
   *[does-part]
        Ist die Nase fast vorn, so besorgt die Schnur { $part } % des Drehens und die Luft den Rest.
}
swing-remains = Am Ende pendelt sie noch um { $angle }° hin und her.
swing-trap =
    <b>Eine Falle: mit dem Heck voran.</b> Zwischen { $from }° und { $to }° losgelassen, fliegt
    sie mit dem Heck voran.

swing-time = { $seconds } s: Nase { $angle }° neben ihrer Bahn
swing-still = { $seconds } s: { $angle }°
swing-pause = Anhalten
swing-play = Abspielen
swing-step = Ein Bild weiter
swing-rewind = Zurück zum Anfang
swing-speed = Tempo
swing-quarter = ¼ Tempo
swing-full = volles
swing-this-rocket = diese Rakete
swing-before-change = vor der Änderung
swing-dashed = Gestrichelt: <b>{ $name }</b> vor der Änderung, Abstand { $apart }.
swing-dashed-nameless = Gestrichelt: <b>die Rakete</b> vor der Änderung, Abstand { $apart }.
swing-none-seen = 0 von { $wanted }
swing-seen = { $counted } von { $wanted }: { $seen }
swing-slipped = ({ $slipped }-mal verrutscht, zählt nicht)
swing-compare = Änderungen mit der Rakete vergleichen, wie sie jetzt ist
swing-print = Schleudertest drucken

swing-clear =
    Niemand steht näher als <b>{ $clear } m</b> bei der Person, die schleudert. Das sind
    { $across } m von Rand zu Rand. Zu wenig Platz? Dann nicht hier.
swing-holds-for =
    Das gilt für ein Loslassen bis 20° nach oben, von der Schulter aus, ohne Luftwiderstand.
    Steiler fliegt sie weiter. Mit dem Luftwiderstand dieser Rakete sind es etwa { $about } m.
    Ausgerechnet, keine Erlaubnis.
swing-sweep = Schnur und Rakete reichen
swing-sweep-value = { $reach } m weit von der Person, die schleudert
swing-how-fast = Geschwindigkeit
swing-pull = Zug in der Schnur
swing-pull-value = { $pull } N, als hingen { $hung } daran
swing-less-room = Weniger Platz: kürzere Schnur, langsameres Kreisen
swing-turns-column = Umdrehungen
swing-nobody-within = Niemand näher als

swing-hang-title = Den Aufhängepunkt finden
swing-hang =
    Legt die Schnur als Schlinge um die leere Rakete: kein Wasser, keine Luft hineingepumpt.
    Verschiebt sie, bis die Rakete waagerecht hängt: Nase und Heck gleich hoch über dem Tisch.
    Hängt sie niedrig; Füße und Gesichter weg.
swing-hang-measure = Messt von der Nasenspitze bis zur Schnur, dreimal.
swing-tape-title = Festkleben
swing-tape =
    Klebt die Schnur auf beiden Seiten fest, damit sie nicht rutschen kann. Wickelt sie nie um
    die Finger.
swing-eyes-title = Augen schützen
swing-eyes = Schutzbrille auf: wer schleudert und alle, die zusehen.
swing-tug-title = Daran ziehen
swing-tug =
    Zieht dreimal kräftig an der Schnur. Knoten, Schnur und Klebeband müssen halten.
swing-tug-pull =
    Zieht dreimal kräftig an der Schnur. Knoten, Schnur und Klebeband müssen halten: Beim
    Schleudern zieht es mit etwa { $pull } N.
swing-space-title = Den Platz prüfen, mit der erwachsenen Person
swing-space = Eine Halle oder draußen. Schaut auch nach oben: Lampen, Leitungen, Äste.
swing-space-line =
    Markiert eine Linie <b>{ $clear } m</b> von der Person, die schleudert, ganz herum: Darin
    steht niemand. Das sind { $across } m von Rand zu Rand. Zu wenig Platz? Dann nicht hier.
    Steiler fliegt sie weiter.
swing-one-title = Eine Person schleudert
swing-one =
    <b>Fragt die erwachsene Person, bevor ihr schleudert.</b> Eine Person schleudert, waagerecht,
    über dem Kopf. Alle anderen sind außerhalb der markierten Linie. Ruft irgendjemand Stopp,
    wird aufgehört.
swing-one-count =
    Jedes Mal dieselbe Schnur und dasselbe Tempo: Zählt die Umdrehungen in zehn Sekunden.
swing-slow-title = Ausschwingen lassen
swing-slow =
    Beobachtet die Nase fünf Umdrehungen lang. Dann Arm hoch, bis sie ruhig hängt; vorher geht
    niemand hinein. Greift nicht danach. Sagt, was ihr gesehen habt.
swing-card-of = { $card } von { $cards }
swing-type-measured = Eintragen, was ihr gemessen habt
swing-space-who =
    Die erwachsene Person, die leitet, sieht sich den Platz an und drückt hier, vor jeder Reihe
    von drei Schwüngen.
swing-space-checked = Platz geprüft
swing-space-unknown =
    Wie viel Platz gebraucht wird, lässt sich noch nicht ausrechnen: Berichtigt zuerst, was
    markiert ist.
swing-back = Zurück
swing-next = Weiter

swing-test = Schleudertest
swing-sheet =
    <b>{ $name }</b>, { $length } lang, { $mass } g, Abstand { $apart }. Schnur { $string }, { $turns }.
    Gruppe: ______________
swing-sheet-nameless = Rakete: ______________
swing-initials =
    Platz geprüft, Kürzel der erwachsenen Person: __________ (vor je drei Schwüngen)
swing-no-permission =
    Dies ist keine Erlaubnis zum Starten. Es entscheiden die Regeln am Ort, die
    Gefährdungsbeurteilung eurer Schule und eine sachkundige Person. Diese Seite entscheidet
    nicht.
swing-what = Was hat sie getan?
swing-number = Schwung { $number }
swing-paper-title = { $title }.

swing-all-recorded = Drei Schwünge festgehalten.
swing-list-full = Die Liste ist voll: Nehmt einen zurück oder beginnt einen neuen Versuch.
swing-recorded = { $counted } von { $wanted } Schwüngen festgehalten.
swing-predict-first =
    Sagt zuerst vorher und schließt die Vorhersage ab: Erst dann ist ein Schwung ein Test.
swing-predict = Vorhersagen
swing-record-caution =
    Schutzbrille auf. Niemand innerhalb der markierten Linie. Ruft irgendjemand Stopp, wird
    aufgehört.
swing-check-first = Zuerst muss der Platz geprüft werden: <button>zu dieser Karte</button>
swing-quick-presses = Zweimal schnell auf dasselbe gedrückt zählt einmal.
swing-not-counted = { $seen } (zählt nicht)
swing-taken-back = Zurückgenommen und weiter vermerkt: { $seen }.
swing-none-more =
    In diesem Versuch kann nichts mehr zurückgenommen werden: Beginnt stattdessen einen neuen.
swing-was-slip = Das war ein Versehen: den letzten zurücknehmen
swing-once-more = Noch ein Versuch mit derselben Rakete

swing-expected = { $comes-to ->
    [nose-first] Hier ausgerechnet: mit der Nase voran.
    [tail-first] Hier ausgerechnet: mit dem Heck voran.
    [across] Hier ausgerechnet: quer zu ihrer Bahn.
   *[still-swinging] Hier ausgerechnet: pendelt noch.
}
swing-differs =
    Ihr habt gesehen: { $seen }. { swing-expected } Was ihr gesehen habt, zählt. Was könnte der
    Grund sein?
swing-open =
    Hier ausgerechnet: zu knapp, um es zu sagen. Was ihr gesehen habt, zählt.
