drawing-circle =
    The swing seen from above: rocket and string reach { $reach } meters from the middle; nobody
    stands within { $clear } meters
