strip-in-view = <aside>as it rolls; </aside>as drawn { $separation }
strip-stale-readings = You measured before you changed the rocket.
strip-measure-first = <b>Measure first.</b> Then the page tells you what it worked out.
