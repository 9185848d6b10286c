crash-notebook =
    Das Heft von <b>{ $group }</b> war offen: <link>als Datei speichern</link>.
    Öffnet diese Datei später hier, falls das Heft nicht mehr da ist.
