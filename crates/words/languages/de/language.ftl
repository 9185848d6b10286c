language-label = Sprache
language-failed =
    { $language } konnte nicht geladen werden, also bleibt die Seite, wie sie war. Seht nach dem
    Netz, dann wählt die Sprache noch einmal.
