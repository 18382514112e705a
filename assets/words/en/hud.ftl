### What is written and said over a running ride: instruments, pads, hints, remarks, and the road for those who ride by ear.

## Instruments. There is little room: one or two short words.

cadence = cadence
perMinute = per minute
gear = gear
pressure = legs
legs-coast = resting
legs-ease = soft
legs-steady = steady
legs-press = pushing
legs-too-slow = too slow
legs-too-fast = too fast
reserve = breath
# $length: a length with its unit, like "250 m".
roadAhead = The next { $length } of road
distance = ridden
chainFromAbove = The chain from above
# How many times the sideways measure is widened in the picture.
widened = width × { $times }
crossed = chain crossed
chainOff = chain off
# What a motor does, in two or three words, under the chain from above.
motor-pulls = motor pulls
motor-rests = motor rests
# $speed with its unit.
motor-too-fast = no help above { $speed }
motor-empty = battery empty
# How much steeper than life heights are drawn.
steeper = heights × { $times }
stopLine = stop in
outOfSight = out of sight
# Who rides along as a silhouette.
beside-best = best ride
beside-last = your last ride
marksSoFar = so far, of 100
marks-cadence = cadence
marks-easing = soft feet
marks-chainLine = chain line

## What the hands do next

# The front derailleur never needs more than one step at a time.
move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] Easier
               *[other] Easier, { $steps } steps
            }
        [rear-harder]
            { $steps ->
                [one] Harder
               *[other] Harder, { $steps } steps
            }
        [front-easier]
            { $steps ->
                [one] Smaller chainring
               *[other] Smaller chainring, { $steps } steps
            }
       *[front-harder]
            { $steps ->
                [one] Bigger chainring
               *[other] Bigger chainring, { $steps } steps
            }
    }
# The same behind "then".
move-after =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] easier
               *[other] easier, { $steps } steps
            }
        [rear-harder]
            { $steps ->
                [one] harder
               *[other] harder, { $steps } steps
            }
        [front-easier]
            { $steps ->
                [one] smaller chainring
               *[other] smaller chainring, { $steps } steps
            }
       *[front-harder]
            { $steps ->
                [one] bigger chainring
               *[other] bigger chainring, { $steps } steps
            }
    }
move-then = { $first }, then { $second }
step-now = now
step-soon = soon
step-in = in { $distance }

## Pads for thumbs: what is written on them, in one short word, and what a screen reader says

pads = Controls of the bike
pad-rear-easier = easier
pad-rear-harder = harder
pad-front-smaller = smaller
pad-front-bigger = bigger
pad-ease = soft
pad-press = push
pad-brake = brake
pad-pause = pause
spoken-rear-easier =
    { $gears ->
        [hub] Hub gears: easier
       *[sprockets] Rear derailleur: easier
    }
spoken-rear-harder =
    { $gears ->
        [hub] Hub gears: harder
       *[sprockets] Rear derailleur: harder
    }
spoken-front-smaller = Front derailleur: smaller ring
spoken-front-bigger = Front derailleur: bigger ring
spoken-ease =
    { $gears ->
        [hub] Pressure off; upper half or slide up: push
       *[sprockets] Soft feet; upper half or slide up: push
    }
spoken-press = Push hard
spoken-brake = Brake
spoken-pause = Pause

## Remarks, one at a time

remark-heavy-shift = Heavy shift. Soft feet first.
remark-shift-hung = The chain is stuck. Soft feet, and it moves.
remark-shift-waiting = A chain moves only while you pedal.
remark-hub-knocked = A knock. Let the pressure off, then it takes.
remark-motor-pulled = The motor still pulled. Soft feet, wait, then shift.
remark-hub-waits = The hub waits. Let the pressure off.
remark-no-easier = That is the easiest gear.
remark-no-harder = That is the hardest gear.
remark-ring-easier = No easier sprocket. A smaller chainring is easier.
remark-ring-harder = No harder sprocket. A bigger chainring is harder.
remark-no-ring = No more chainrings there.
remark-refused-crossed = This bike does not cross its chain.
remark-crossed = The chain is crossed.
remark-chain-dropped = Chain off! Soft feet, then push the front lever.
remark-foot-down = Foot down. The gear was too hard.
remark-line-missed = Over the line. Brake sooner.
remark-battery-empty = The battery is empty. Now it is your legs alone.
remark-reserve-empty = Out of breath. No hard pushing for a while.

## By ear: said aloud, so short. Distances come in with their units.

ear-pitch-ahead = Pitch in { $distance }: { $slope }, { $length } long.
ear-pitch-soon = Pitch in { $distance }.
ear-pitch-now = Foot of the pitch.
ear-pitch-over = Over the top.
ear-stop-ahead = Stop line in { $distance }.
ear-stop-soon = Stop line in { $distance }. Brake.
ear-downhill = Downhill.
# The number first: it is what the hand needs.
ear-move =
    { $move ->
        [rear-easier] { $steps } easier
        [rear-harder] { $steps } harder
        [front-easier] smaller chainring
       *[front-harder] bigger chainring
    }
ear-hint = { $move }.
ear-hint-then = { $first }, then { $second }.
ear-begin = Riding.
ear-nothing = No pitch is in sight.
