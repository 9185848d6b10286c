class-pattern = Muster
class-measured = gemessen
class-computed = ausgerechnet
class-in-lengths = als Länge
class-in-widths = in Rumpfbreiten
class-names = Gruppen zeigen
class-board = Große Leinwand
class-board-leave = Große Leinwand verlassen
class-along = Der Abstand ist
class-widths =
    { $value ->
        [one] { $value } Rumpfbreite
       *[other] { $value } Rumpfbreiten
    }
class-without = Versuche ohne einen solchen Abstand: { $count }
class-nothing-yet = Noch ist nichts zu sehen: Sammelt zuerst, was die Gruppen herausgefunden haben.

class-turns = Die Hälfte dieser Raketen fliegt bei einem Abstand von { $at } mit der Nase voran.
class-turns-below = Die Hälfte dieser Raketen fliegt bei einem Abstand von { $at } mit der Nase voran, und darunter sind es mehr: andersherum als erwartet. Sind die beiden Punkte vertauscht?
class-band = Er kann irgendwo zwischen { $least } und { $most } liegen (95 %).
class-band-open = Diese Versuche verraten kaum, wo er liegt: Es könnte überall sein.
class-too-few = Es gibt { $trials } Versuche mit einem Abstand und einem klaren Ergebnis. Ein Wendepunkt braucht mindestens { $least }.
class-all-nose-first = Alle flogen mit der Nase voran, von { $least } bis { $most }. Wo das beginnt, sagt nichts.
class-none-nose-first = Keine flog mit der Nase voran, von { $least } bis { $most }. Wo das beginnt, sagt nichts.
class-same = Alle haben denselben Abstand, { $at }: Er kann nicht sagen, woran es liegt.
class-parted = Alle Raketen ab { $to } flogen mit der Nase voran, und keine bis { $from }. Der Wendepunkt liegt in dieser Lücke. Wie scharf er ist, sagen diese Versuche nicht.
class-parted-below = Alle Raketen bis { $from } flogen mit der Nase voran, und keine ab { $to }: andersherum als erwartet. Sind die beiden Punkte vertauscht?
class-level = Mit wenig Abstand fliegt so oft die Nase voran wie mit viel: Diese Versuche zeigen keinen Wendepunkt.

class-settle = Was es entscheiden würde
class-next-narrows = Noch ein Versuch mit einem Abstand von { $at }: Er sollte den Wendepunkt um etwa { $share } % genauer machen.
class-next-gap = Ein Versuch mit einem Abstand von { $at }, in der Lücke.
class-next-untried = Ein Versuch mit einem Abstand von { $at }: Zwischen { $from } und { $to } wurde noch nichts versucht.

class-also = Was die Klasse noch herausgefunden hat
class-before = Vorhersagen vor dem Schleudern, die eintrafen: { $right } von { $of }
class-after = Vorhersagen, die eintrafen, aber erst nach den ersten Schwüngen gemacht wurden: { $right } von { $of }
class-unjudged = Vorhersagen, zu denen die Schwünge nichts sagen: { $count }
class-fair = Versuche, die eines oder nichts änderten: { $fair } von { $of }
class-agreement = Gemessen minus ausgerechnet: im Mittel { $mean }, aus { $count } Versuchen.
class-limits = Bei 95 von 100 Raketen sollte es { $least } bis { $most } sein.
class-other-sign = Versuche, in denen sich beide uneins sind, welcher Punkt näher an der Nase liegt: { $count }

class-odd = Messwerte, die seltsam aussehen, zum Nachfragen: { $count }
class-odd-outside =
    { $balance-point ->
        [mass] Der Schwerpunkt wurde bei { $at } abgelesen, außerhalb der Rakete, die { $length } lang ist.
       *[pressure] Der Druckpunkt wurde bei { $at } abgelesen, außerhalb der Rakete, die { $length } lang ist.
    }
class-odd-range =
    { $balance-point ->
        [mass] Die Messwerte des Schwerpunkts liegen { $range } auseinander.
       *[pressure] Die Messwerte des Druckpunkts liegen { $range } auseinander.
    }
class-odd-longer = Die beiden Punkte liegen { $separation } auseinander, und die Rakete ist { $length } lang.
class-odd-equal = Alle drei Messwerte beider Punkte sind gleich: einmal abgelesen und dreimal aufgeschrieben?
class-odd-slip = Beide Punkte weichen etwa gleich weit vom Ausgerechneten ab, { $mass } und { $pressure }: Lag die Null des Lineals an der Nasenspitze?
class-odd-nose = Sie flog mit einem Abstand von { $separation } mit der Nase voran. Eine Entdeckung, oder zwei vertauschte Messwerte?
class-odd-not-nose = Sie flog mit einem Abstand von { $separation } nicht mit der Nase voran. Eine Entdeckung, oder zwei vertauschte Messwerte?

class-timer = Uhr
class-minutes = { $minutes } min
class-timer-stop = Uhr anhalten
class-timer-over = Die Zeit ist um.
class-timer-left = noch { $minutes } min
