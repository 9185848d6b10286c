menus-litres = { $litres } liter
