## Where a class is gathered: QR symbols are read, in pictures and before a camera.

# Below the buttons for files and for the camera.
symbols-stay =
    Files may also be pictures of QR symbols, several in one. Pictures, and what the camera sees,
    stay on this computer.
# Where a result comes from, in the place of the name of a file.
symbols-camera = Camera
# A button, and what it says while the camera runs.
symbols-camera-start = Use the camera
symbols-camera-stop = Stop the camera
# While the browser asks.
symbols-camera-asked = The browser asks whether this page may use the camera. Allow it there.
# While it runs.
symbols-camera-runs = Hold one symbol after the other before the camera.
# $count (number): how many different symbols the camera has seen
symbols-camera-read =
    { $count ->
        [one] The camera has read { $count } symbol.
       *[other] The camera has read { $count } symbols.
    }
# Of a notebook that is spread over several symbols.
# $here (number): how many of them were read
# $of (number): how many there are
symbols-spread = Of a notebook { $here } of { $of } symbols were read. Show the others too.
# $number (number): which picture is looked at
# $of (number): how many there are
symbols-looking = Looking at picture { $number } of { $of } …

## What came of a picture, behind the name of its file.

# $count (number): how many symbols
symbols-read =
    { $count ->
        [one] { $count } symbol was read.
       *[other] { $count } symbols were read.
    }
# $count (number): how many symbols
symbols-incomplete =
    { $count ->
        [one] Of { $count } symbol only a part is in it: take the picture again, with the white edge all round.
       *[other] Of { $count } symbols only parts are in it: take the picture again, with the white edge all round.
    }
# $count (number): how many symbols
symbols-unclear =
    { $count ->
        [one] { $count } symbol is there, but cannot be read: go nearer, hold still and keep the paper flat.
       *[other] { $count } symbols are there, but cannot be read: go nearer, hold still and keep the paper flat.
    }
# $count (number): how many symbols
symbols-not-text =
    { $count ->
        [one] { $count } symbol holds no text.
       *[other] { $count } symbols hold no text.
    }
symbols-none = No QR symbol was found: go nearer, and look for even light.
symbols-not-picture =
    The browser cannot open this file as a picture. Save it as JPEG or PNG, or take a picture of
    the screen that shows it.

## Why there is no camera, and the way out.

symbols-no-camera = No camera was found. Connect one and try again.
symbols-not-allowed =
    The browser or the system does not let this page use the camera. Allow it there: most
    browsers show a sign for it beside the address. Then try again.
symbols-insecure =
    Browsers give the camera only to pages that come over a secure line. Open this page by an
    address that begins with https.
symbols-file =
    This browser gives no camera to a page that is a file. Open the page from a web server.
symbols-blocked =
    The server of this page, or the page round it, keeps the camera from it. Open this page in a
    tab of its own, or ask whoever looks after the server.
symbols-in-use = Another program uses the camera. Close that and try again.
# Behind each of them.
symbols-without =
    It works without a camera here, too: take pictures with any telephone or tablet, and open
    them as files.
