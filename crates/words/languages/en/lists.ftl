# Two things of a list, or a list so far and its next thing, without an “and”.
# $before (text): the list so far
# $next-one (text): the next thing
lists-next = { $before }, { $next-one }
