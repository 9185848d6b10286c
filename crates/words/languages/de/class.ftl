places-class = Klasse
lead-class = sammelt, was die Gruppen herausgefunden haben, und zeigt das Muster.
class-lead =
    Sammelt, was die Gruppen herausgefunden haben: Fügt Links, Codes und Tabellen ein, öffnet
    Dateien, oder tippt Zahlen vom Papier ab. Es bleibt auf diesem Computer.
class-holds = Versuche: { $trials }, Gruppen: { $groups }
class-holds-so-far = Versuche: { $trials }
class-invented = Das alles ist erfunden, zum Üben.
class-invented-beside = Manches davon ist erfunden, zum Üben. Neben echten Ergebnissen zählt es nicht.
class-drop-example = Erfundene Ergebnisse wegnehmen
class-is-due = Der Tag ist vorbei, bis zu dem ihr diese Ergebnisse behalten wolltet. Speichert sie als Datei, wenn ihr sie noch braucht, und löscht sie hier.
class-views = Zeigen
class-gather = Sammeln
class-table = Tabelle

class-in = Was abgegeben wurde
class-paste = Links, Codes, Zeilen einer Tabelle: so viele ihr wollt, untereinander
class-take-in = Aufnehmen
class-files = Dateien öffnen …
class-example = Mit einer erfundenen Klasse ausprobieren
class-busy = Gelesene Texte: { $done } von { $of }. Versuche bisher: { $trials }.
class-stop = Anhalten
class-stopped = Angehalten. Was vorher kam, ist da.
class-new = Neue Versuche: { $trials }, ganze Hefte: { $notebooks }.
class-undo = Rückgängig machen
class-doubled = Schon da, einmal gezählt: { $count }
class-newer = Neuer, mit dem älteren daneben: { $count }
class-words = Zeilen, in denen nichts aufzunehmen ist: { $count }
class-at-line = Zeile { $line }
class-invented-one = Erfunden
class-in-file = { $file }, Zeile { $line }
class-and-more = und { $count } weitere
class-trial-of = { $group }, Versuch { $trial }

class-refused = Nicht aufgenommen, noch zu berichtigen: { $count }
class-take-all = Alle aufnehmen, die so aufgenommen werden können
class-mend = Der Text, zum Berichtigen
class-again = Noch einmal lesen
class-take = Trotzdem aufnehmen
class-leave-out = Weglassen
class-other-rules = { $whose } entstand nach den Regeln { $found }, und für diese Klasse gelten { $expected }: Etwas anderes war erlaubt.
class-no-rules = { $whose } nennt keine Regeln, und für diese Klasse gelten { $expected }.
class-unfinished = { $whose } ist nicht fertig: Es zählen { $swings } von { $expected } Schwüngen.
class-no-number = { $whose } hat eine Länge, die keine Rakete hat.
class-full = { $whose }: Für mehr als { $most } Ergebnisse ist kein Platz.
class-notebooks-full = Für mehr als { $most } ganze Hefte ist kein Platz. Die Versuche aus diesem wurden aufgenommen.
class-rocket = Das ist eine Rakete ohne Versuch: Mit ihr wurde nichts herausgefunden. Bittet die Gruppe um den Link zu ihrem Heft oder um den Code eines Versuchs.
class-set-up = Das ist der Link, mit dem eine Stunde beginnt, und nicht, was eine Gruppe herausgefunden hat. Bittet die Gruppe um den Link zu ihrem Heft.
class-part = Von diesem Heft sind { $here } von { $of } Teilen da. Fügt die anderen darunter ein und lest es noch einmal.
class-file = Diese Datei lässt sich nicht lesen: Sie ist größer als { $most } MB, oder kein Text.

class-keeping = Kürzel, Regeln, Aufbewahren
class-label = Kürzel der Klasse
class-label-wrong = Nur Buchstaben von A bis Z, Ziffern und Bindestriche, höchstens { $most }. Keine Namen.
class-delete-by = Löschen bis
class-kept-here = Nur in diesem Browser auf diesem Computer aufbewahrt. Niemand sonst sieht es.
class-save = Klasse als Datei speichern
class-delete = Alles löschen …
class-ask-delete = Alle Ergebnisse dieser Klasse von diesem Computer löschen? Eine gespeicherte Datei bleibt.
class-delete-now = Löschen
class-keep = Behalten
class-deleted = Die Klasse wurde von diesem Computer gelöscht.
class-saved = Als { $name } gespeichert. Mit „Dateien öffnen“ öffnet ihr sie hier wieder.
class-rules = Nur Ergebnisse nach den Regeln <b>{ $code }</b> werden aufgenommen.
class-rules-drop = Ergebnisse nach allen Regeln aufnehmen
class-rules-none = Ergebnisse nach allen Regeln werden aufgenommen.
class-rules-hold = An die Regeln aus „Vorbereiten“ halten

class-grid = Ergebnisse vom Papier abtippen
class-grid-how = Von der Nasenspitze, in { $unit }; bis zu drei Messwerte mit Leerzeichen dazwischen. Tab geht weiter, Enter nimmt die Zeile auf.
class-group = Gruppe
class-number = Nr.
class-trial = Versuch
class-predicted = Vorhergesagt
class-swing = Schwung { $number }
class-changed = Was geändert wurde
class-add-row = Zeile aufnehmen
class-row-new = { $whose } ist aufgenommen.
class-row-doubled = { $whose } war schon da, genauso.
class-row-newer = { $whose } war schon da, mit anderen Zahlen. Jetzt zählen diese; die älteren stehen daneben.
class-bad-number = Die Nummer einer Gruppe ist eine ganze Zahl von 1 bis { $most }.
class-bad-trial = Die Nummer eines Versuchs ist eine ganze Zahl von 1 bis { $most }.
class-bad-reading = „{ $found }“ ist keine Länge, oder eine zu viel: höchstens { $most } Messwerte, Leerzeichen dazwischen.
class-empty-row = Tippt mindestens einen Punkt ein, oder wählt einen Schwung.

class-sort = Ordnen
class-sort-came = wie sie kamen
class-sort-group = nach Gruppe
class-sort-separation = nach Abstand
class-sort-outcome = nach Ergebnis
class-filter = Zeigen
class-filter-all = alle
class-filter-marked = markierte
class-filter-hidden = weggelassene
class-filter-unfair = mehr als eine Änderung
class-filter-odd = mit seltsamen Messwerten
class-filter-twice = mit einem älteren daneben
class-rows = Versuche: { $shown } von { $all }
class-no-rows = Noch ist nichts gesammelt.
class-more = Mehr zeigen
class-separation = Abstand
class-seen = Gesehen
class-head-do = Tun
class-changes =
    { $count ->
        [one] { $count } Änderung
       *[other] { $count } Änderungen
    }
class-unfair = mehr als eine Änderung
class-worked-out = { $value } berechnet
class-swung-first = vor der Vorhersage geschleudert
class-altered = von Hand geändert
class-is-invented = erfunden
class-older =
    { $count ->
        [one] { $count } älterer aufbewahrt
       *[other] { $count } ältere aufbewahrt
    }
class-mark = Markieren
class-hide = Weglassen
class-remove = Löschen
