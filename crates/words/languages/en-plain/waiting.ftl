waiting-failed =
    This part did not load. Nothing you kept is lost.
    Is the internet on? <button>Try again</button>
