## The teacher pack: the names of its sheets, in a list and as their titles.

teacher-lesson = The lesson, minute by minute
teacher-idea = The idea: two points
teacher-wrong = Ten likely wrong ideas
teacher-answers = Answers
teacher-demonstration = To show at the front
teacher-hazards = Hazards, for your own risk assessment
teacher-evidence = Evidence for the curriculum

## The sheet with the lesson: its rules.

# $things (text): what may be changed, with commas
teacher-may-change = May be changed: { $things }.
# $string (text): its length, with its unit
# $turns (text): how fast, such as “0.8 turns a second”
teacher-limits = String: { $string } at most. Speed: { $turns } at most.
# $mass (text): with its unit
teacher-added = Added weight: { $mass } at most.
# $at-once (one | two): how many changes are allowed
teacher-changes =
    { $at-once ->
        [one] One change at a time.
       *[two] Two changes at once are allowed.
    }

## The sheet with the answers.

teacher-answers-for = For whoever teaches, not for the class: it tells what pupils are to find out.
# The caption of a table of questions.
teacher-questions = What each question comes to, that of this lesson first
# In that table: where a point goes.
# $mass-goes (nose | tail | stays): which way
teacher-goes =
    { $mass-goes ->
        [nose] towards the nose
        [tail] towards the tail
       *[stays] stays
    }
# In that table: what becomes of the separation.
# $separation-is (more | less | stays): what
teacher-becomes =
    { $separation-is ->
        [more] larger
        [less] smaller
       *[stays] the same
    }
# In place of that, for a question of one’s own.
teacher-own = the class finds out
# A heading, before what is worked out of a rocket.
teacher-rocket = The rocket that every group begins with
# In that table, before what the rocket does in the wind.
teacher-air = What the air does
teacher-worked-out = Worked out from its description. What a group measures may differ by some millimetres, and counts.
# In place of that table.
teacher-no-rocket = This set-up has no rocket to begin with: each group’s own two points are the answer.
# A heading, and what stands in its list.
teacher-read = How to read results
teacher-read-sign = Separation is centre of pressure less centre of mass, both from the nose tip. Below zero, the centre of pressure is nearer the nose.
# $apart (text): a length with its unit
teacher-read-rule = A rule of thumb, without a source: one to two body widths of separation are the usual aim. On a hand-sized bottle rocket, less than { $apart } often goes with tumbling or flying sideways.
teacher-read-turning = The turning point is the separation at which half of the class’s rockets fly nose-first. Near it they do either: swing those again. It counts for more than the rule.
teacher-read-overlap = Where the readings of both points overlap, it is too close to call.
teacher-read-string = Going round pulls a long rocket along its path: a rocket without separation can look steered.
teacher-read-predicted = A prediction needs a reason, and need not come true. Nobody corrects one afterwards.
teacher-read-full = A full conclusion names both points, the numbers of two trials, and which way the air turned the rocket.
# $apart (text): a length with its unit
teacher-read-cover = The cover lesson: in its invented table, half of the rockets fly nose-first at about { $apart }.

## The sheet with what to show at the front.

teacher-show-lead = Before anybody predicts: two rockets that differ in one thing, swung by you. Five minutes.
teacher-show-before = Beforehand
teacher-show-alike = Build two rockets alike. Press clay into the nose of one only.
teacher-show-try = Try both without the class, with the care that is named below. One should fly nose-first, the other not. If both do, cut half of the length off each fin of the one without clay.
teacher-show-class = With the class
teacher-show-look = Hold both up. “What is different?” Only the clay.
teacher-show-guess = Everybody shows by hand what each will do. Say nothing to it.
teacher-show-swing = Swing each three times.
teacher-show-ask = “What did you see? Why?” Write up every reason, and judge none.
# What the distance in the caution holds for. 1.5 m and 200 g are our judgement.
# $string (text): its length, with its unit
# $turns (text): how fast, such as “0.8 turns a second”
# $length (text): the length of the rocket, with its unit
teacher-show-holds = Worked out for { $string } of string, { $turns } and a rocket of { $length }: our own sum, and nobody’s rule. With more than 1.5 m of string or 200 g, first ask whoever answers for it at your school.
teacher-show-two = Two changes at once (two minutes, nothing swings)
teacher-show-which = “More clay, and larger fins: now it flies nose-first. Which of the two did it?” Nobody can know. So each group changes one thing.
teacher-show-still = Without a hall (nothing swings)
teacher-show-hang = Hang one rocket level, low over a table, and balance its card cut-out on a ruler. Hold both side by side: which of the two points is nearer the nose? Press clay into the nose and hang it again: which point has moved?

## The sheet for a cover lesson, above what pupils do.

teacher-cover-for = For whoever covers: it takes no screen, no rocket and no physics. Copy this page, one for two pupils. Needed: pencils, rulers, squared paper; for the spare task card, scissors and tape.
teacher-cover-never = Nothing is swung today, and nothing is launched.
teacher-cover-start = To start, read the next lines out; everybody covers the last column with paper and begins with task 1.
