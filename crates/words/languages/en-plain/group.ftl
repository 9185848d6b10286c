group-menu = <b>{ $group }</b><aside>: this group’s colour and number</aside>
group-label = This group’s colour
group-hint = Your group’s colour and number, not your names. Change them here.
