paper-parts-bar = 100 mm
paper-parts-of = { $rocket }: { $sheet }
paper-parts-cut = { $part } zum Ausschneiden
paper-parts-strip = Wo die Flossen hinkommen
paper-parts-tools = Lineal und Ständer zum Ausbalancieren
paper-parts-solid = dicke Linie: schneiden
paper-parts-dashed = gestrichelt: nach hinten falten, Druck außen
paper-parts-thin = dünne Linie: nur eine Marke
paper-parts-care-cut = Schneide Karton von den Fingern weg.
paper-parts-care-bottle =
    Eine Flasche, die unter Druck stehen soll, nie schneiden, schleifen, erhitzen, heiß kleben oder bemalen.
paper-parts-care-nose = Lass die Nase stumpf: kein Metall, keine scharfe Spitze.
paper-parts-small = Das ist ein kleines Bild. In wahrer Größe ist das Teil auf der nächsten Seite.
paper-parts-card = Drucke das Blatt auf Karton, oder klebe es auf Karton.
paper-parts-fold-tab = Falte jede Lasche an der gestrichelten Linie nach hinten.
paper-parts-fix-fin = Klebe jede Lasche mit Klebeband an die Flasche. Der Pfeil zeigt zur Nase.
paper-parts-bend = Biege es rund, Druck außen. Die gerade Kante trifft auf die dünne Linie.
paper-parts-glue-tab = Klebe die Lasche unter diese Kante.
paper-parts-parts =
    { $count ->
        [one] Es ist ein Teil.
       *[other] Es besteht aus { $count } Teilen. Klebe jede Lasche unter das nächste Teil.
    }
paper-parts-ring = Biege das Band zum Ring, Druck außen. Klebe die Lasche am Ende unter das andere Ende.
paper-parts-leaves =
    Biege die Blätter nach innen, bis sich ihre Kanten treffen. Klebe die kleinen Laschen unter das nächste Blatt. Wo eine Naht keine Laschen hat, klebe sie mit Klebeband zu.
paper-parts-round-tip = Schließe die Spitze mit Klebeband, sodass sie rund ist.
paper-parts-put-on = Klebe es mit Klebeband an die Rakete.
paper-parts-large = Dieses Teil ist größer als ein Blatt: { $width } mm mal { $height } mm.
paper-parts-too-large =
    Es bräuchte mehr als { $sheets } Blätter. Zeichne es mit dem Lineal auf großen Karton.
paper-parts-join = Schneide jedes Blatt an der Linie mit Kreuzen, lege Kreuz auf Kreuz und klebe sie zusammen.
paper-parts-trace =
    { $count ->
        [one] Leg es auf Karton und zeichne außen herum. Übertrage seine Linien.
       *[other] Leg es auf Karton und zeichne { $count }-mal außen herum. Übertrage seine Linien.
    }
paper-parts-rows = Klebe jede Reihe auf die Lasche der Reihe davor.
paper-parts-wrap = Leg den Streifen um den Rumpf, wo die Flossen hinkommen. Beide Enden treffen sich.
paper-parts-mark = Mach an jeder Linie eine Marke, und nimm den Streifen ab.
paper-parts-ruler-end = Schneide das Ende mit der 0 mitten auf der Linie.
paper-parts-stand-fold = Falte den Ständer an den gestrichelten Linien nach hinten.
paper-parts-stand-tape = Klebe die Lasche innen fest, sodass er wie ein Zelt steht.
paper-parts-stand-use =
    Leg deine Silhouette flach auf die obere Kante, und schieb sie, bis sie waagerecht bleibt.
paper-parts-fin = Flosse { $number } von { $of }
paper-parts-piece = { $part }, Teil { $number } von { $of }
paper-parts-tab = Lasche: nach hinten
paper-parts-under = Lasche: kommt darunter
paper-parts-narrow-front = schmales Ende zur Nase
paper-parts-narrow-rear = schmales Ende zum Heck
paper-parts-meets = hier treffen sie sich
paper-parts-next-row = hier weiter: Reihe { $row }
paper-parts-edge = { $part }: diese Kante zur Nase
paper-parts-row = { $part }, Reihe { $row }: diese Kante zur Nase
paper-parts-degrees = { $degrees }°
paper-parts-mm = mm
paper-parts-top = obere Kante
