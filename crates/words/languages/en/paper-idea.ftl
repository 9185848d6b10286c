## The teacher pack: the sheet that explains the idea.

idea-string = The string finds the centre of mass
idea-mass = The centre of mass is where the rocket hangs level. Heavy parts pull it their way; weight in the nose moves it forward. Whatever turns a rocket in flight turns it round this point.
idea-cut-out = The cut-out finds the centre of pressure
idea-pressure = The centre of pressure (side-on) is where air from the side pushes, on average. Large parts pull it their way; fins at the tail move it back. Weight does not count. In a cut-out of even card each bit weighs as much as its area, so it balances there. That is a model: fair for air from the side, less exact for a rocket that flies nearly straight.
idea-nose = Why the centre of mass must be nearer the nose
idea-turns = Say the nose points a little off its way. Now air pushes on the side. With the centre of pressure behind the centre of mass, it pushes the tail back, and the nose comes round into the wind: like a weathercock. With the centre of pressure in front, it pushes the nose away, and the rocket tumbles or flies tail first. With both in one place, nothing turns it back.
idea-separation = How far apart the two are is the separation. Weight in the nose makes it larger, and so do larger fins at the tail, as long as they weigh little.

## The teacher pack: the sheet of likely wrong ideas, each with what lets a pupil find out.

wrong-lead = All of them are sensible. Ask the question, let pupils try, and come back to it at the end.
# The heads of the table.
wrong-idea = A pupil may think
wrong-ask = Ask, and let them try
wrong-find = What they find
wrong-middle = The centre of mass is in the middle.
wrong-middle-ask = Where does a hammer balance on your finger?
wrong-middle-find = Near its heavy head.
wrong-halves = It has equal weight on both sides.
wrong-halves-ask = Cut a roll of clay with one thick end where it balances. What do both pieces weigh?
wrong-halves-find = The thick piece is heavier: weight further out turns more.
wrong-same = Both points are the same point.
wrong-same-ask = Press clay into the nose. Which of the two points moves?
wrong-same-find = The centre of mass. The other one stays.
wrong-heavy = Heavier is always better.
wrong-heavy-ask = Move the same clay to the tail. Where does the centre of mass go, and what will it do?
wrong-heavy-find = Towards the tail: it does worse.
wrong-fins = Larger fins always help.
wrong-fins-ask = Make fins of thick card, twice as large. How far did each of the two points move?
wrong-fins-find = Both moved back: fins weigh something, too.
wrong-push = A rocket pushes against the ground or the air behind it.
wrong-push-ask = Let a balloon go, near a wall and far from it. Does it need the wall? What comes out of it?
wrong-push-find = No. It pushes air out, and that pushes it.
wrong-still = Stable means that it stays still.
wrong-still-ask = Turn a weathercock by hand and let go in the wind. Does it stay, or come back?
wrong-still-find = It comes back: that is what stable means.
wrong-pressure = Pressure is the same as force.
wrong-pressure-ask = Press one hand on clay with a flat book, then with one finger. Same push: which goes deeper?
wrong-pressure-find = The finger: the same force on less area.
wrong-fair = Fair means that everybody has a go.
wrong-fair-ask = If you change clay and fins, and it flies better: which of them did it?
wrong-fair-find = Nobody knows. Fair means one change.
wrong-once = One reading is the true one.
wrong-once-ask = Three of you read the same point and show it at once. Who is right?
wrong-once-find = Nobody: readings differ, and the middle one tells most.
