trial-because = { $outcome }, weil <value>{ $because }</value>
trial-compared-with = Verglichen mit
trial-with-nothing = nichts: Es ist ein Ausgangsversuch
trial-with = Versuch { $trial }
trial-with-deleted = Versuch { $trial } (gelöscht)
trial-is-baseline = Dies ist ein Ausgangsversuch: Die anderen werden mit ihm verglichen.
trial-unchanged = Seit Versuch { $trial } hat sich nichts geändert.
trial-change-one = Ändert oben <b>eine Sache</b> an der Rakete; dieser Versuch übernimmt sie.
trial-since = Seit Versuch { $trial }:
trial-undo-change = Diese Änderung zurücknehmen<aside>: { $change }</aside>
trial-things-changed = { $count ->
    [2] Zwei Sachen haben sich geändert. Welche davon war es?
    [3] Drei Sachen haben sich geändert. Welche davon war es?
    [4] Vier Sachen haben sich geändert. Welche davon war es?
    [one] Eine Sache hat sich geändert. War sie es?
   *[other] { $count } Sachen haben sich geändert. Welche davon war es?
}
trial-several-allowed = Wer leitet, erlaubt es; in der Tabelle steht es.
trial-undo-all-but-one = Nehmt alle bis auf eine zurück, damit der Versuch fair ist.
trial-table-says-so = In der Tabelle steht es.
trial-point-moved-too =
    Das hat auch einen der beiden Punkte verschoben: Seht in die Zeichnung oben.
trial-moved-too = Was sich sonst verschoben hat (berechnet): { $sentences }
