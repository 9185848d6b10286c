idea-string = The string finds the center of mass
idea-mass = The center of mass is where the rocket hangs level. Heavy parts pull it their way; weight in the nose moves it forward. Whatever turns a rocket in flight turns it round this point.
idea-cut-out = The cut-out finds the center of pressure
idea-pressure = The center of pressure (side-on) is where air from the side pushes, on average. Large parts pull it their way; fins at the tail move it back. Weight does not count. In a cut-out of even card each bit weighs as much as its area, so it balances there. That is a model: fair for air from the side, less exact for a rocket that flies nearly straight.
idea-nose = Why the center of mass must be nearer the nose
idea-turns = Say the nose points a little off its way. Now air pushes on the side. With the center of pressure behind the center of mass, it pushes the tail back, and the nose comes round into the wind: like a weathercock. With the center of pressure in front, it pushes the nose away, and the rocket tumbles or flies tail first. With both in one place, nothing turns it back.
wrong-middle = The center of mass is in the middle.
wrong-heavy-ask = Move the same clay to the tail. Where does the center of mass go, and what will it do?
