paper-parts-bar = 100 mm
