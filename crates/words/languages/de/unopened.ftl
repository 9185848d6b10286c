unopened-too-long = Dieser Link ist länger als jeder, den diese Seite macht. Kopiert ihn noch einmal von dort, wo er herkommt.
unopened-newer = Dieser Link kommt von einer neueren Fassung dieser Seite. Ladet die Seite neu und öffnet ihn dann noch einmal.
unopened-unknown =
    In diesem Link steht etwas, das diese Fassung der Seite nicht kennt: „{ $key }“. Ladet die
    Seite neu und öffnet ihn dann noch einmal.
unopened-cut-short = Dieser Link wurde unterwegs abgeschnitten. Kopiert den ganzen Link und öffnet ihn noch einmal.
unopened-changed =
    Dieser Link wurde unterwegs verändert, deshalb kann man seinen Zahlen nicht trauen. Kopiert
    ihn noch einmal von dort, wo er herkommt.

unopened-file-too-large =
    Diese Datei ist zu groß für eine Rakete ({ $kilobytes } KB). Wählt eine Datei, die diese
    Seite gespeichert hat.
