beside-tail-lighter = Is the tail lighter than described, or is there more weight in the nose?
