sheets-foot = A good swing does not mean that you may launch. The rules here and an adult say if you may.
