drawing-rocket = A drawing of { $name } with its two points
drawing-rocket-nameless = A drawing of the rocket with its two points
drawing-pair = A drawing of { $left } and { $right } beside one ruler
drawing-qr-link = QR picture: a link to this rocket
drawing-qr-code = QR picture: the code beside it
