trial-with-nothing = nothing: this is the first one to compare with
trial-is-baseline = The other trials are compared with this one.
