trial-with-nothing = nothing: this is the first one to compare with
trial-is-baseline = The other trials are compared with this one.
trial-change-one = Change <b>one thing</b> about the rocket above. This trial changes with it.
trial-several-allowed = The adult lets you do this. The table says so.
trial-undo-all-but-one = For a fair test, take back all but one.
trial-point-moved-too = That moved one of the two points too: see the drawing above.
