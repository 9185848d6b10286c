part-taper = Narrowing part
