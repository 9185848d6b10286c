lists-next = { $before }، { $next-one }
