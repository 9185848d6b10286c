problem-not-a-number = Hier muss eine Zahl stehen.
problem-out-of-bounds = Nehmt eine Zahl von { $least } bis { $most }.
problem-no-sections = Noch gibt es keinen Rumpf. Fügt eine Nase, ein Rohr oder eine Flasche hinzu.
problem-too-many-sections = Das sind mehr Teile des Rumpfs, als hineinpassen. Behaltet höchstens { $most }.
problem-too-many-fin-sets = Das sind mehr Sätze Flossen, als hineinpassen. Behaltet höchstens { $most }.
problem-too-many-weights = Das sind mehr Gewichte, als hineinpassen. Behaltet höchstens { $most }.
problem-name-too-long = Nehmt höchstens { $most } Buchstaben: Ein Link kürzt längere Namen.
problem-text-too-long = Alle Namen zusammen sind zu lang für einen Code zum Abtippen oder einen QR-Code. Kürzt ein paar davon.
problem-nose-not-first = Eine Nase kann nur ganz vorn sein. Schiebt sie nach vorn, oder wählt ein Rohr oder eine Verjüngung.
problem-taper-first = Eine Verjüngung beginnt so breit wie der Teil davor. Setzt eine Nase oder ein Rohr davor.
problem-width-missing = Wie breit ist das? Tippt die Breite ein.
problem-ogive-too-short = Eine so kurze Ogive würde sich ausbauchen. Macht sie mindestens { $least } lang, oder wählt das Ellipsoid.
problem-dome-too-long = Eine Kuppel ist höchstens eine halbe Kugel. Macht sie { $most } lang oder kürzer, oder wählt das Ellipsoid.
problem-neck-too-wide = Ein Hals ist schmaler als seine Flasche, und die ist hier { $width } breit.
problem-bottle-too-narrow = Eine Flasche ist breiter als ihr Hals, und der ist hier { $width } breit.
problem-joined-to-nothing =
    Davor ist nichts, womit es gewogen worden sein könnte. Wiegt es, oder wählt ein Material.
problem-fin-joined = Wiegt die Flossen, oder wählt ein Material.
problem-nothing-weighed = Noch wiegt nichts etwas. Tippt ein, was die Teile wiegen.
problem-fin-off-body = Die Flossen beginnen nicht am Rumpf. Er endet { $length } von der Nasenspitze.
problem-too-few-points = Eine Flosse braucht mindestens { $least } Ecken.
problem-too-many-points = Nehmt höchstens { $most } Ecken.
problem-fin-crosses-itself =
    Die Kanten dieser Flosse kreuzen sich, oder sie hat keine Fläche. Geht ihre Ecken der Reihe
    nach durch: vorn an der Wurzel, außen, hinten an der Wurzel.
problem-fin-touches-nothing =
    Diese Flosse berührt den Rumpf nicht. Messt ihre Ecken von der Stelle aus, an der sie vorn auf
    den Rumpf trifft.
problem-weight-outside = Dieses Gewicht liegt außerhalb der Rakete, die { $length } von der Nasenspitze endet.
problem-centimetres = Nur { $typed }? Wenn ihr in Zentimetern gemessen habt, tippt { $meant }.
problem-kilograms = Wiegt das wirklich { $typed }? Tippt Gramm, nicht Kilogramm.
problem-fin-overhangs = Die Flossen reichen { $by } hinter das Ende des Rumpfs. Stimmt das?
problem-two-fins = Zwei Flossen halten die Rakete nur in einer Ebene ruhig. Drei oder mehr tun es rundum.
problem-many-fins = Bei mehr als vier Flossen nimmt jede ihren Nachbarn Luft weg.
problem-slender-fins =
    Lange, schmale Flossen verlieren früh den Halt an der Luft. Bei großen Winkeln drücken sie
    weniger, als hier berechnet.
problem-same-fins-twice =
    Diese Flossen sind an derselben Stelle wie ein anderer Satz. Ist es ein Satz, zweimal getippt?
    Wenn nicht, dreht einen davon.
problem-fins-in-wake =
    Diese Flossen fliegen im Nachlauf der vorderen und drücken vielleicht viel weniger, als hier
    berechnet.
problem-mass-differs = Die Waage sagt { $scales }, die Teile ergeben zusammen { $parts }. Fehlt ein Teil, oder ist eins nass?
