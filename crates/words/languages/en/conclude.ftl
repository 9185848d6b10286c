## In the place Conclude.

# Below the heading.
conclude-no-names = Write about the rocket, not about people: no names.
# Behind that, where a group gets no help.
conclude-data = Your data are under Compare.
# The labels of the four boxes, where a group gets help.
conclude-claim = Claim: what did you find out?
conclude-evidence = Evidence: which numbers and swings show it?
conclude-reason = Reason: why is it so?
conclude-trust = Trust: how sure are you, and why?
# A line that opens sentences to use.
conclude-offered = Sentences with your own numbers
# The button behind such a sentence. The aside is only spoken.
# $sentence (text): the sentence
conclude-use = Use it<aside>: { $sentence }</aside>
# What is said when that cannot be.
conclude-there-already = That sentence is there already.
conclude-no-room = There is no room for that sentence: shorten the text first.
