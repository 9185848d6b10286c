## The menu that says whose notebook is open.

# The label of the menu. What stands in aside is for screen readers.
# $group (text): the label of the group, such as “Blue 3”
group-menu = <b>{ $group }</b><aside>: this group’s label</aside>
# The name of the two lists in the menu, for screen readers.
group-label = This group’s label
# Beside the list of colours.
group-colour = Group
# The name of the list of numbers, for screen readers.
group-number = Number of the group
# The button that begins a notebook for another group.
group-another = Another group on this computer
# Beside the list of all notebooks on this computer.
group-notebooks = Notebooks here
# In that list: the notebook that is open.
# $group (text): the label of the group
group-open = { $group } (open)
# In that list: another notebook.
# $group (text): the label of the group
# $holds (text): what is in it, such as “3 trials”
group-other = { $group }: { $holds }
# In that list: a notebook from a newer version of the page.
group-unreadable = one that this page cannot read
# Under the two lists.
group-hint = Your group’s label, in place of names. Change it here.
