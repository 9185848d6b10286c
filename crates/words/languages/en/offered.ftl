## In the place Conclude: sentences to use, for the claim. They stand behind the one thing that
## was changed.

offered-too-close = The two points were too close to call.
# The separation of the two points, as it is worked out.
# $from (text): what it was, with its unit
# $to (text): what it is, with its unit
# $became (grew | shrank | went): which word fits; “went” where one of them is below zero
offered-worked-out = The worked-out separation { $became ->
    [grew] grew
    [shrank] shrank
   *[went] went
} from { $from } to { $to }.
# $to (text): what it is, with its unit
offered-worked-out-stayed = The worked-out separation stayed at { $to }.
# $outcome (text): what was seen both times
offered-swing-stayed = The swing stayed “{ $outcome }”.
# $before (text): what was seen before
# $after (text): what was seen after
offered-swing-went = The swing went from “{ $before }” to “{ $after }”.

## In the place Conclude: sentences to use, for the evidence.

# $trial (number): the number of the trial
# $found (text): what was found, with commas
offered-trial = Trial { $trial }: { $found }.
# $trial (number): the number of the trial
# $other (number): the number of the trial it is compared with
# $found (text): what was found, with commas
offered-trial-same = Trial { $trial } (the same as trial { $other }): { $found }.
# $trial (number): the number of the trial
# $change (text): what was changed, such as “fin shape”
# $found (text): what was found, with commas
offered-trial-change = Trial { $trial } ({ $change }): { $found }.
# $trial (number): the number of the trial
# $count (number): how many things were changed: two at least
# $found (text): what was found, with commas
offered-trial-changes = Trial { $trial } ({ $count } changes): { $found }.
# Among what was found.
# $how-known (measured | worked-out): where it is from
# $separation (text): how far the two points are apart, with its unit
offered-separation = { $how-known ->
    [measured] measured separation { $separation }
   *[worked-out] worked-out separation { $separation }
}
# Among what was found, for the youngest.
# $how-known (measured | worked-out): where it is from
# $balance-point (mass | pressure): which of the two points
offered-nearer = { $how-known ->
    [measured] { $balance-point ->
        [mass] centre of mass nearer the nose
       *[pressure] centre of pressure (side-on) nearer the nose
    }
   *[worked-out] { $balance-point ->
        [mass] worked out: centre of mass nearer the nose
       *[pressure] worked out: centre of pressure (side-on) nearer the nose
    }
}
# Among what was found, for the youngest.
# $how-known (measured | worked-out): where it is from
offered-neither-nearer = { $how-known ->
    [measured] points too close to call
   *[worked-out] worked out: points too close to call
}
# Among what was found.
# $outcome (text): what was seen
# $seen (number): in how many swings
# $swings (number): of how many that count
offered-seen = { $outcome } in { $seen } of { $swings } swings
# Among what was found.
# $swings (number): how many swings count
offered-mixed = different outcomes in { $swings } swings
# Behind the point that is nearer the nose.
# $seen (text): what was seen
offered-swings = Swings: { $seen }.
# Behind what was found.
# $outcome (text): what was predicted
# $came-true (yes | no | open): whether it came true
offered-predicted = { $came-true ->
    [yes] We had predicted “{ $outcome }”, and it came true.
    [no] We had predicted “{ $outcome }”, and it did not come true.
   *[open] We had predicted “{ $outcome }”.
}

## In the place Conclude: sentences to use, for the reason. The group finishes them.

# $trial (number): the number of the trial
offered-behind = In trial { $trial } the air pushed behind the centre of mass, so the nose …
# $trial (number): the number of the trial
offered-ahead = In trial { $trial } the air pushed ahead of the centre of mass, so the nose …
# $trial (number): the number of the trial
offered-close = In trial { $trial } the two points were close together, so the air …
# $trial (number): the number of the trial
# $outcome (text): what was seen
# $balance-point (mass | pressure): which of the two points was nearer
offered-although = In trial { $trial } the swing was “{ $outcome }”. { $balance-point ->
    [mass] The centre of mass was nearer the nose, and …
   *[pressure] The centre of pressure (side-on) was nearer the nose, and …
}
offered-sideways = When the rocket turns sideways, the air pushes it at …
offered-longer = A longer way between the two points means that the air …

## In the place Conclude: sentences to use, for how sure the group is.

# $trial (number): the number of the trial
# $balance-point (mass | pressure): which of the two points
offered-one-reading = { $balance-point ->
    [mass] In trial { $trial } one reading of the centre of mass counts.
   *[pressure] In trial { $trial } one reading of the centre of pressure (side-on) counts.
}
# $trial (number): the number of the trial
# $balance-point (mass | pressure): which of the two points
# $how-many (two | three): readings
# $range (text): how far they are apart, with its unit
offered-within = { $how-many ->
    [two] Our two readings
   *[three] Our three readings
} { $balance-point ->
    [mass] of the centre of mass
   *[pressure] of the centre of pressure (side-on)
} in trial { $trial } lie within { $range }.
# $trial (number): the number of the trial
# $reading (text): the reading, with its unit
offered-left-out = In trial { $trial } we left out the reading { $reading } without a reason.
# $trial (number): the number of the trial
# $reading (text): the reading, with its unit
# $reason (text): the group’s own words
offered-left-out-because = In trial { $trial } we left out the reading { $reading }: { $reason }.
# $trial (number): the number of the trial
offered-overlap = The two ranges overlap in trial { $trial }: too close to call.
# $trial (number): the number of the trial
offered-not-measured = The separation of trial { $trial } is worked out, not measured.
# $before (number): the number of a trial
# $after (number): the number of another
offered-alike = The separations of trials { $before } and { $after } are too close to tell apart.
# $trial (number): the number of the trial
# $count (number): how many
# $changes (text): what changed, with commas
offered-changes = { $count ->
    [2] In trial { $trial } two things changed: { $changes }.
    [3] In trial { $trial } three things changed: { $changes }.
    [4] In trial { $trial } four things changed: { $changes }.
    [5] In trial { $trial } five things changed: { $changes }.
    [one] In trial { $trial } one thing changed: { $changes }.
   *[other] In trial { $trial } { $count } things changed: { $changes }.
}
# $trial (number): the number of the trial
# $swings (number): how many swings count: none, one or two
offered-few-swings = { $swings ->
    [0] Trial { $trial } was not swung, or no swing counts.
    [one] In trial { $trial } only one swing counts.
   *[other] In trial { $trial } only two swings count.
}
# $trial (number): the number of the trial
offered-disagree = The swings of trial { $trial } did not agree.
# $trial (number): the number of the trial
offered-not-predicted = For trial { $trial } we predicted nothing.
# $trial (number): the number of the trial
offered-predicted-late = In trial { $trial } we predicted after the swing.
# $trial (number): the number of the trial
offered-altered = Trial { $trial } was changed outside the notebook.

## In the place Conclude: a question for each box.

# Behind the one thing that was changed.
asked-happened = What happened?
# $before (number): the number of a trial
# $after (number): the number of another
asked-numbers = Which numbers of trials { $before } and { $after } show it?
# $trial (number): the number of the trial
# $outcome (text): what was seen
asked-why = Why was the swing of trial { $trial } “{ $outcome }”? Where did the air push?
# $trial (number): the number of the trial
asked-overlap = In trial { $trial } the two ranges overlap. What can you still say, and what not?
# $trial (number): the number of the trial
# $balance-point (mass | pressure): which of the two points
# $range (text): how far the readings are apart, with its unit
asked-differ = { $balance-point ->
    [mass] Your readings of the centre of mass in trial { $trial } differ by { $range }. What does that change?
   *[pressure] Your readings of the centre of pressure (side-on) in trial { $trial } differ by { $range }. What does that change?
}
# Where no trial gives reason for another one.
# $statement (claim | evidence | reason | trust): the box
asked-always = { $statement ->
    [claim] What did you change, and what happened?
    [evidence] Which numbers and which swings show it?
    [reason] Why did it happen? Where did the air push?
   *[trust] How sure are you? Measure each point three times to find out.
}
