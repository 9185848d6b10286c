symbols-stay =
    Dateien dürfen auch Bilder von QR-Codes sein, mehrere in einem. Bilder, und was die Kamera
    sieht, bleiben auf diesem Computer.
symbols-camera = Kamera
symbols-camera-start = Die Kamera benutzen
symbols-camera-stop = Die Kamera ausschalten
symbols-camera-asked = Der Browser fragt, ob diese Seite die Kamera benutzen darf. Erlaubt es dort.
symbols-camera-runs = Haltet einen QR-Code nach dem anderen vor die Kamera.
symbols-camera-read =
    { $count ->
        [one] Die Kamera hat { $count } QR-Code gelesen.
       *[other] Die Kamera hat { $count } QR-Codes gelesen.
    }
symbols-spread = Von einem Heft sind { $here } von { $of } QR-Codes gelesen. Zeigt auch die anderen.
symbols-looking = Bild { $number } von { $of } wird angesehen …
symbols-read =
    { $count ->
        [one] { $count } QR-Code wurde gelesen.
       *[other] { $count } QR-Codes wurden gelesen.
    }
symbols-incomplete =
    { $count ->
        [one] Von { $count } QR-Code ist nur ein Teil darauf: Macht das Bild noch einmal, mit dem weißen Rand ringsum.
       *[other] Von { $count } QR-Codes sind nur Teile darauf: Macht das Bild noch einmal, mit dem weißen Rand ringsum.
    }
symbols-unclear =
    { $count ->
        [one] { $count } QR-Code ist da, lässt sich aber nicht lesen: Geht näher heran, haltet still und das Papier flach.
       *[other] { $count } QR-Codes sind da, lassen sich aber nicht lesen: Geht näher heran, haltet still und das Papier flach.
    }
symbols-not-text =
    { $count ->
        [one] { $count } QR-Code enthält keinen Text.
       *[other] { $count } QR-Codes enthalten keinen Text.
    }
symbols-none = Kein QR-Code wurde gefunden: Geht näher heran und sorgt für gleichmäßiges Licht.
symbols-not-picture =
    Der Browser kann diese Datei nicht als Bild öffnen. Speichert sie als JPEG oder PNG, oder
    macht ein Bild von dem Bildschirm, der sie zeigt.
symbols-no-camera = Keine Kamera wurde gefunden. Schließt eine an und versucht es noch einmal.
symbols-not-allowed =
    Der Browser oder das System lässt diese Seite die Kamera nicht benutzen. Erlaubt es dort: Die
    meisten Browser zeigen dafür ein Zeichen neben der Adresse. Versucht es dann noch einmal.
symbols-insecure =
    Browser geben die Kamera nur Seiten, die über eine sichere Leitung kommen. Öffnet diese Seite
    unter einer Adresse, die mit https beginnt.
symbols-file =
    Dieser Browser gibt einer Seite, die eine Datei ist, keine Kamera. Öffnet die Seite von einem
    Webserver.
symbols-blocked =
    Der Server dieser Seite, oder die Seite um sie herum, gibt ihr die Kamera nicht. Öffnet diese
    Seite in einem eigenen Tab, oder fragt, wer sich um den Server kümmert.
symbols-in-use = Ein anderes Programm benutzt die Kamera. Schließt es und versucht es noch einmal.
symbols-without =
    Es geht hier auch ohne Kamera: Macht Bilder mit irgendeinem Telefon oder Tablet, und öffnet
    sie als Dateien.
