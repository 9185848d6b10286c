hand-in-nothing = You wrote nothing yet. Only the rocket goes out.
hand-in-what-is-in-it =
    Open the file or the link again under “a link, code or file”. In it are your group’s colour
    and number, and what you wrote.
hand-in-tables = As a table of numbers, or as plain words
hand-in-plain-text = Plain words
hand-in-show-symbols = QR pictures, and the whole notebook in codes
hand-in-hide-symbols = Hide the QR pictures
hand-in-result =
    How trial { $trial } came out, as a short code. It holds numbers and your group’s colour, no words
hand-in-too-large = This notebook is too large for QR pictures. Save it as a file.
hand-in-read-all =
    Read all of them with a phone, in any order. Put what it reads under “a link, code or file”, or
    write it there by hand. The page says which are missing.
result-measured =
    This is how trial { $trial } of { $group } came out. Centre of mass { $mass }, centre of
    pressure { $pressure }, { $separation } apart (measured).
result-worked-out =
    This is how trial { $trial } of { $group } came out: { $separation } apart (worked out).
result-of = This is how trial { $trial } of { $group } came out:
result-not-swung = No swings yet.
result-altered = Somebody changed something in it by hand, and not on this page.
hand-in-saved = Saved as { $name }, if this computer lets us. Look in Downloads.
hand-in-no-link =
    This notebook is too long for a link. The link holds only the rocket. Save the notebook as a
    file.
share-code-title = A code to write down. You can write it where a link is opened
share-code-hint =
    Use large or small letters, with spaces or without. Leave out the numbers of the rows. The last
    letter or number of each row finds slips.
share-point-at-link = Or point a phone at this
share-open-again =
    <b>To open this rocket again:</b> point a phone at the QR picture. Or open Noseward and write
    this code under “a link, code or file”.
share-open-again-typed =
    <b>To open this rocket again:</b> open Noseward. Write this code under “a link, code or file”.
share-no-permission =
    Even when the points are well apart, that does not mean that you may swing or launch.
