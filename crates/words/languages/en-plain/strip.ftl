strip-in-view = <aside>as it rolls; </aside>as drawn { $separation }
strip-measure-first = <b>Measure first.</b> Then the page tells you what it worked out.
strip-stale-readings = You measured before you changed the rocket.
strip-last-drawn = <b>This is the last rocket that the page could draw.</b> Put right what is marked.
strip-spoken = { $separation } apart.
strip-point-measured = { $of-points ->
    [mass] centre of mass <b>{ $measured }</b> measured; { $worked-out } worked out
   *[pressure] centre of pressure (side-on) <b>{ $measured }</b> measured; { $worked-out } worked out
}{ $differs ->
    [differs] <b>: not the same</b>
   *[agrees] {""}
}
strip-point-range = { $of-points ->
    [mass] centre of mass <b>{ $measured }</b> measured, { $least } to { $most }; { $worked-out } worked out
   *[pressure] centre of pressure (side-on) <b>{ $measured }</b> measured, { $least } to { $most }; { $worked-out } worked out
}{ $differs ->
    [differs] <b>: not the same</b>
   *[agrees] {""}
}
strip-nothing-drawn = The page cannot draw this rocket yet. First put right what stands below.
