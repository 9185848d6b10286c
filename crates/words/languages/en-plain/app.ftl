app-facts =
    What is locked stays locked, and swings that you wrote down stay too. Was the last swing a
    slip? Take it back under Swing. Undo once more takes back what you did before.
app-waits =
    Wait: a part of the page did not load. Is the internet on? Then ask again.
