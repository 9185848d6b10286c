app-copied = Kopiert.
app-facts =
    Was festgelegt ist und aufgeschriebene Schleuderversuche lassen sich nicht rückgängig
    machen. War der letzte ein Versehen, nehmt ihn unter Schleudern zurück. Noch einmal
    Rückgängig nimmt zurück, was ihr davor getan habt.
app-waits =
    Was ihr wolltet, wartet noch: Ein Teil der Seite konnte nicht geladen werden. Seht nach,
    ob das Netz da ist, und versucht es dann noch einmal.
app-undone = Rückgängig gemacht: { $what }
app-undone-in = Rückgängig gemacht in Versuch { $trial }: { $what }
app-done-again = Wiederholt: { $what }
app-done-again-in = Wiederholt in Versuch { $trial }: { $what }
