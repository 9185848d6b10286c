## In the place of a part of the page that loads later.

# While it loads.
waiting-loading = Getting it out…

# When it could not be loaded. The button tries once more.
waiting-failed =
    This part of the page could not be loaded. What is kept has not changed.
    See that the network is there. <button>Try again</button>
