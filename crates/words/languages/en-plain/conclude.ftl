conclude-data = You find your numbers under Compare.
conclude-claim = What did you find out?
conclude-evidence = Which numbers and swings show it?
conclude-reason = Why is it so?
conclude-trust = How sure are you, and why?
conclude-there-already = You used that sentence before.
conclude-no-room = There is no room for that sentence. First make what you wrote shorter.
