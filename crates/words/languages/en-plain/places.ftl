places-conclude = Sum up
places-lead = For the adult
