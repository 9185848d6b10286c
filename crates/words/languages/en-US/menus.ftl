menus-litres = { $litres } liter
menus-empty-bottle = an empty { $litres } liter bottle
