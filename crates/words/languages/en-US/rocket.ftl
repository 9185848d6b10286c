rocket-square-metre = One square meter weighs
