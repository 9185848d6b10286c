## In the place for whoever leads: how the lesson is set up.

# The heading.
# $group (text): the label of the group
lead-lesson-of = The lesson of { $group }
# The labels of three lists.
lead-detail = Detail
lead-help = Help with the conclusion
lead-telling = What is told when
# A button that stays pressed.
lead-allow-two = Allow two changes at once
lead-loses-nothing =
    Changing these loses nothing. Ages are a guide; the readings are the same at every level.
    For a whole class use Set up.
# Asked before it is done.
# $group (text): the label of the group
lead-delete-asks =
    Delete the notebook of { $group } from this computer? It cannot be brought back.
# The three buttons: before it is asked, and the two answers.
lead-delete = Delete this notebook
lead-delete-now = Delete it
lead-keep = Keep it

## In the place for whoever leads: what else there is.

# Beside a link to the word mat.
lead-words = Thirty words with pictures, in one or two languages, on screen and on paper.

## In the place for whoever leads: what this computer allows.

# A line that opens the table.
computer-check = Check this computer
# Above the table.
computer-caption = What this computer allows, and what to do where it does not
# The heads of its columns.
computer-what = What
computer-here = Here
computer-to-do = What to do
# The first column of a row, and what to do: where it works, and where it does not.
computer-copy = Copying the link
computer-copy-works = Works: Copy link, under More.
computer-copy-barred =
    Under Hand in, select the link and press Ctrl and C, write down the code, or point a phone
    at the QR symbol.
computer-save = Saving files
computer-save-works = Works: Save as a file, under More.
computer-save-barred = Use the link, or write down the code under Hand in.
computer-pick = Opening files
computer-pick-works = Works: “a link, code or file”, under Rocket.
computer-pick-barred =
    Open the file in a text editor, copy all of it and paste it under “a link, code or file”. Or
    type its code there.
computer-print = Printing
computer-print-works = Works: Print, under More and Hand in.
computer-print-barred =
    Draw from the table of numbers under Why?, or open the link on a computer with a printer.
computer-camera = Camera
computer-not-used = Not needed
computer-camera-to-do =
    Only the place Class asks for the camera. A phone reads the QR symbol with its own camera.
computer-keeping = Keeping your rocket
computer-keeping-barred =
    Copy the link, save a file or write down the code before you close the page.
computer-keeping-refused =
    The browser’s room for this page may be full. The page tries again at each change; until
    then save a file or copy the link. Deleting notebooks you no longer need makes room.
computer-keeping-allowed =
    It lasts until you sign out or the browser’s data are cleared: some schools do that every
    day. Copy the link to be sure.
computer-offline = Without a network
computer-offline-works = This page opens here without a network, in this browser.
computer-offline-file = This page is a file: it needs no network.
computer-offline-barred = Keep the page open, or get it as one file (at the foot of the page).
computer-offline-not-yet =
    The browser is still storing the page. If this does not change, get it as one file (at the
    foot of the page).
computer-frame = In another page
computer-framed =
    This page stands inside another one, which may keep it from storing, saving and printing.
# Behind that.
computer-own-tab = <link>Open it in its own tab</link>, or copy the link and open that.
computer-nothing-to-do = Nothing to do.
computer-window = Window
# $width (text): in pixels, as digits
# $height (text): in pixels, as digits
computer-window-size = { $width } by { $height }
computer-narrow =
    Narrower than this page is made for: make the window wider or the text smaller.
computer-wide-enough = Wide enough.
# The column “Here”.
computer-is-barred = Barred
computer-is-refused = Refused
computer-is-allowed = Allowed
computer-works = Works
computer-not-yet = Not yet
computer-not-tried = Not tried
computer-trying = Trying
# In the column “Here”, and an answer to a question below.
computer-yes = Yes
computer-no = No
# A button for what only a try can tell.
computer-try = Try it
# Behind a button’s label, only spoken: what it is about.
computer-about-copy = copying
computer-about-save = saving
computer-about-pick = opening
computer-about-print = printing
# The questions, once it was tried.
computer-asks-copy = Did the browser let the page copy?
computer-asks-save = Did a file named noseward-try.txt arrive?
computer-asks-pick = Did a window for choosing a file open? (Close it again.)
computer-asks-print = Did a window for printing open? (Close it again.)
# Below the table.
computer-one-way-left =
    If none of these works, one way is left: write the code under Hand in on paper, and type it
    under “a link, code or file” on another computer.
# What stands in the file that is saved to try that out.
computer-saved = This file was saved by Noseward.

## In the place for whoever leads: the language.

# A line that opens what is told of it, and its second heading.
lead-language = The language of the page
# $language (text): its own name for itself
lead-language-unread =
    <b>{ $language }:</b> no teacher has read every sentence of it yet. If one is wrong or sounds
    odd, write down where it stands and what it should say, and send both to whoever gave you this
    page. Cautions and rules: compare them with your own.
lead-language-kept = Whoever chooses another language at the top keeps that one on that computer.
