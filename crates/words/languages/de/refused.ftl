refused-too-long =
    Dieser Code ist länger als jeder, den diese Seite macht. Kopiert ihn noch einmal von dort, wo
    er herkommt.
refused-notebook-too-large =
    Diese Datei ist zu groß für ein Heft ({ $kilobytes } KB). Wählt eine Datei, die diese Seite
    gespeichert hat.
refused-newer = { $text-kind ->
    [code]
        Dieser Code kommt von einer neueren Fassung dieser Seite. Ladet die Seite neu und öffnet
        ihn dann noch einmal.
    [file]
        Diese Datei kommt von einer neueren Fassung dieser Seite. Ladet die Seite neu und öffnet
        sie dann noch einmal.
   *[table]
        Diese Tabelle kommt von einer neueren Fassung dieser Seite. Ladet die Seite neu und öffnet
        sie dann noch einmal.
}
refused-unknown = { $text-kind ->
    [code]
        In diesem Code steht etwas, das diese Fassung der Seite nicht kennt: „{ $key }“. Ladet die
        Seite neu und öffnet ihn dann noch einmal.
    [file]
        In dieser Datei steht etwas, das diese Fassung der Seite nicht kennt: „{ $key }“. Ladet die
        Seite neu und öffnet sie dann noch einmal.
   *[table]
        In dieser Tabelle steht etwas, das diese Fassung der Seite nicht kennt: „{ $key }“. Ladet
        die Seite neu und öffnet sie dann noch einmal.
}

refused-no-code = Darin ist kein Code. Ein Code beginnt mit R1.
refused-no-part = Darin ist kein Teil eines Heftes. Ein Teil beginnt mit N1.
refused-no-result = Darin ist kein Ergebnis. Der Code eines Ergebnisses beginnt mit T1.
refused-no-notebook =
    Darin ist kein Heft. Wählt die Datei eines Heftes, die diese Seite gespeichert hat.
refused-nothing =
    Darin ist weder eine Rakete noch ein Heft. Wählt eine Datei, die diese Seite gespeichert hat,
    oder fügt einen ganzen Link, Code oder Text ein.

refused-ends-early = Der Code endet zu früh: Zeile { $row } fehlt oder ist zu kurz.
refused-character =
    In Zeile { $row } steht „{ $character }“, das kommt in keinem Code vor: Vergleicht sie mit dem
    Papier.
refused-row = In Zeile { $row } ist ein Zeichen falsch: Vergleicht sie mit dem Papier.
refused-rows = Die Zeilen { $rows } und { $last } sind falsch: Vergleicht sie mit dem Papier.
refused-too-few = In Zeile { $row } fehlt ein Zeichen: Vergleicht sie mit dem Papier.
refused-too-many = In Zeile { $row } ist ein Zeichen zu viel: Vergleicht sie mit dem Papier.
refused-missing-row = Zeile { $row } fehlt.
refused-row-twice = Zeile { $row } steht zweimal da. Nehmt eine der beiden heraus.
refused-swapped = Die Zeilen { $one } und { $other } sind vertauscht.
refused-code-wrong =
    In diesem Code ist etwas falsch, und seine Zeilen verraten nicht, wo. Vergleicht jede Zeile mit
    dem Papier.

refused-in-part = Teil { $part }: { $fault }
refused-other-notebook =
    Dieser Teil gehört zu einem anderen Heft, oder zum selben zu einer anderen Zeit. Macht dieses
    erst fertig, oder fangt neu an.
refused-parts-disagree =
    Alle Teile sind da, und zusammen ergeben sie kein Heft. Lest sie noch einmal ein.

refused-ends-in-line =
    Diese Datei endet zu früh, in Zeile { $line }. Ein Teil fehlt: Kopiert oder speichert sie noch
    einmal.
refused-syntax =
    In Zeile { $line }, Spalte { $column } ist die Datei nicht mehr zu lesen. Sucht dort nach einem
    Komma, einem Anführungszeichen oder einer Klammer, die fehlt oder zu viel ist (auf Englisch:
    { $detail }).
refused-content = { $saved ->
    [rocket]
        In Zeile { $line }, Spalte { $column } oder kurz davor steht etwas, das nicht in die Datei
        einer Rakete gehört (auf Englisch: { $detail }). Berichtigt es dort, oder speichert die
        Rakete noch einmal.
   *[notebook]
        In Zeile { $line }, Spalte { $column } oder kurz davor steht etwas, das nicht in die Datei
        eines Heftes gehört (auf Englisch: { $detail }). Berichtigt es dort, oder speichert das Heft
        noch einmal.
}
refused-crowded = { $crowd ->
    [sections]
        Eine Rakete darin hat { $count } Rumpfteile, mehr als es geben kann. Nehmt einige heraus und
        öffnet sie dann noch einmal.
    [fin-sets]
        Eine Rakete darin hat { $count } Flossensätze, mehr als es geben kann. Nehmt einige heraus
        und öffnet sie dann noch einmal.
    [corners]
        Eine Flosse darin hat { $count } Ecken, mehr als es geben kann. Nehmt einige heraus und
        öffnet sie dann noch einmal.
   *[weights]
        Eine Rakete darin hat { $count } Gewichte, mehr als es geben kann. Nehmt einige heraus und
        öffnet sie dann noch einmal.
}
refused-no-notebook-of = { $none-because ->
    [trials]
        Diese Versuche ergeben kein Heft: In ein Heft passen { $most } Versuche, gelöschte
        mitgezählt. Speichert das Heft noch einmal.
    [plans]
        Diese Versuche ergeben kein Heft: In ein Heft passen { $most } Pläne. Speichert das Heft
        noch einmal.
   *[numbers]
        Diese Versuche ergeben kein Heft: Zwei haben dieselbe Nummer, oder einer hat keine oder eine
        zu große. Speichert das Heft noch einmal.
}
