waiting-loading = Wird geholt …
waiting-failed =
    Dieser Teil der Seite konnte nicht geladen werden. Was gespeichert ist, hat sich nicht
    geändert. Seht nach, ob das Netz da ist. <button>Noch einmal versuchen</button>
