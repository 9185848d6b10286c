strip-apart = <value>{ $separation }</value> auseinander
strip-wrong-way = <value>{ $separation }</value> in der falschen Reihenfolge
strip-in-view = <aside>wenn sie sich dreht; </aside>in dieser Ansicht { $separation }
strip-body-widths = { $widths } Rumpfbreiten
strip-likely = wohl { $low } bis { $high }
strip-likely-open = wohl …

strip-measure-first = <b>Erst messen.</b> Was berechnet wurde, steht hier, sobald ihr es gemessen habt.
strip-predict-first = <b>Erst vorhersagen.</b> Was wird sie an ihrer Schnur tun?
strip-stale-readings = Eure Messwerte gehören zur Rakete, wie sie vor der Änderung war.
strip-last-drawn = <b>Das ist die letzte Rakete, die gezeichnet werden konnte.</b> Berichtigt, was markiert ist.

strip-mass-nearer = Der Schwerpunkt liegt näher an der Nase.
strip-pressure-nearer = In der falschen Reihenfolge: Der Druckpunkt liegt näher an der Nase.
strip-same-place = Beide Punkte liegen an derselben Stelle.

strip-spoken = Abstand der Punkte: { $separation }.

strip-point = { $of-points ->
    [mass] Schwerpunkt { $place }
   *[pressure] Druckpunkt (von der Seite) { $place }
}
strip-point-measured = { $of-points ->
    [mass] Schwerpunkt <b>{ $measured }</b> gemessen; { $worked-out } berechnet
   *[pressure] Druckpunkt (von der Seite) <b>{ $measured }</b> gemessen; { $worked-out } berechnet
}{ $differs ->
    [differs] <b>: nicht gleich</b>
   *[agrees] {""}
}
strip-point-range = { $of-points ->
    [mass] Schwerpunkt <b>{ $measured }</b> gemessen, { $least } bis { $most }; { $worked-out } berechnet
   *[pressure] Druckpunkt (von der Seite) <b>{ $measured }</b> gemessen, { $least } bis { $most }; { $worked-out } berechnet
}{ $differs ->
    [differs] <b>: nicht gleich</b>
   *[agrees] {""}
}

strip-nothing-drawn = Diese Rakete kann noch nicht gezeichnet werden: Berichtigt zuerst, was unten steht.
