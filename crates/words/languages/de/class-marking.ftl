marking-view = Durchsehen
marking-none =
    Noch kein Heft ist ganz da. Zu lesen gibt es etwas im Link, in der Datei oder in den Teilen
    eines Hefts; der Code eines Versuchs und eine Zeile vom Papier sind nur Zahlen.
marking-whose = Heft
marking-previous = Voriges
marking-next = Nächstes
marking-at = Heft { $number } von { $of }
marking-print = Bericht drucken
marking-text = Bericht als Text
marking-of-class = { $group } ({ $class })
marking-one-of = { $name }, Heft { $number } von { $of }
marking-wrote = Was { $name } geschrieben hat
marking-invented = Erfunden, zum Üben
marking-data = Die eigenen Daten der Gruppe
marking-found = Was ihr darin findet
marking-how = Drückt, was zutrifft. Die Seite drückt von selbst nichts: Unter manchem steht, was sie weiß.
marking-nothing = nichts
marking-of-readings =
    { $count ->
        [one] { $count } Messwert
       *[other] { $count } Messwerte, Spannweite { $range }
    }
marking-seen = { $outcome } <aside>({ $seen } von { $swings })</aside>
marking-only-numbers = Nur Zahlen kamen von: { $groups }. Da gibt es nichts durchzusehen.

marking-answers = Die Behauptung beantwortet die Frage.
marking-fits = Die Behauptung passt zu den eigenen Daten der Gruppe.
marking-numbers = Die Belege nennen Zahlen aus mindestens zwei Versuchen.
marking-points = Die Begründung nennt beide Punkte: Schwerpunkt und Druckpunkt.
marking-which-way = Die Begründung sagt, wie herum die Luft die Rakete dreht.
marking-one-change = Es wurde immer nur eine Sache auf einmal geändert.
marking-predicted = Vorhergesagt wurde vor dem Schleudern.
marking-repeated = Jeder Punkt wurde mehr als einmal gemessen.
marking-how-sure = Die Gruppe sagt, wie sicher sie ist, und warum.
marking-next-step = Die Gruppe sagt, was sie als Nächstes versuchen würde.

marking-question = Die Frage war: { $question }
marking-no-question = Eine Frage war nicht vorgegeben.
marking-measured = Versuche mit gemessenem Abstand: { $count } von { $of }
marking-changes = Verglichene Versuche mit höchstens einer Änderung: { $count } von { $of }
marking-before = Vor dem Schleudern vorhergesagte Versuche: { $count } von { $of }
marking-readings = Versuche, in denen beide Punkte mehr als einmal gemessen wurden: { $count } von { $of }
marking-plans = Pläne auf der Liste der Gruppe: { $count }
marking-followed = Von Versuch { $before } zu Versuch { $after } ging der Abstand von { $from } auf { $to }, und zu sehen war erst „{ $was }“, dann „{ $is }“.
marking-turned =
    { $balance-point ->
        [mass] In Versuch { $trial } lag der Schwerpunkt näher an der Nase; zu sehen war „{ $seen }“.
       *[pressure] In Versuch { $trial } lag der Druckpunkt näher an der Nase; zu sehen war „{ $seen }“.
    }

example-claim-more = Unsere Änderung hat die beiden Punkte weiter auseinandergebracht, von { $from } auf { $to }.
example-claim-less = Unsere Änderung hat die beiden Punkte nicht weiter auseinandergebracht: vorher { $from }, nachher { $to }.
example-claim-vague = Beim zweiten Mal flog unsere besser.
example-claim-wrong = Auf die Flossen kommt es nicht an, und auf das Gewicht auch nicht.
example-evidence = In Versuch 1 war der Abstand { $from }, und wir sahen „{ $was }“. In Versuch 2 war er { $to }, und wir sahen „{ $is }“.
example-evidence-one = In Versuch 2 sahen wir „{ $is }“.
example-evidence-vague = Wir haben es alle gesehen.
example-reason-behind = Die Luft drückt am Druckpunkt. Der liegt hinter dem Schwerpunkt, deshalb dreht die Luft das Heck nach hinten und die Nase in den Wind.
example-reason-ahead = Die Luft drückt am Druckpunkt. Der liegt nicht weit genug hinter dem Schwerpunkt, deshalb dreht die Luft die Nase nicht nach vorn.
example-reason-vague = Weil wir gut gebaut haben.
example-reason-one = Der Schwerpunkt ist jetzt an einer anderen Stelle.
example-reason-wrong = Die Luft drückt auf die Nase, deshalb ist die Nase vorn.
example-trust = Wir haben dreimal gemessen und dreimal geschleudert, also sind wir ziemlich sicher.
example-trust-sure = Wir sind ganz sicher.
example-trust-not = Das wissen wir nicht.
example-plan = eine Flosse mehr
