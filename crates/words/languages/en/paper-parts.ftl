## Sheets with parts at true size, to be cut out.

# On a bar that shows whether a sheet was printed true to size.
paper-parts-bar = 100 mm
