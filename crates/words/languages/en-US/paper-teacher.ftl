teacher-read-sign = Separation is center of pressure less center of mass, both from the nose tip. Below zero, the center of pressure is nearer the nose.
