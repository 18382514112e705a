### On the road: what recorded rides show of somebody's shifting, pitch by pitch. Lengths, gradients, shares and months
### come in written. "Best ride" is the one the game works out. GPX is the name of a format.

intro = What recorded rides show of your shifting, pitch by pitch.
opening = One moment: your rides are being fetched.
openFailed = What is kept could not be opened. Load the page anew.
limits = A reading a second cannot tell soft feet, the second of a shift, or the chain line. Places of shifts lie within what stands behind ±; wind, traffic and company are not in it.
# $way: a length, written with its unit.
late-heights = Many devices write heights down a few seconds late. With power in the file that is found and corrected. Without, the foot of a hill may lie { $way } and more too far on, and you seem to shift earlier than you did.
# Stands in a table where nothing is known.
unknown = –

## Bringing a file

bring-title = Bring a ride
bring-what = GPX files with cadence, one point a second. Several at once are fine.
# $parts: chainrings and sprockets, like "50 / 34 · 11–34". $tyre: a size, like "28-622".
bring-bike = Ridden on { $parts } with a tyre of { $tyre }.
bring-otherBike = It was another bike
# Beside a box that is ticked.
bring-teeth = These are not the teeth it was ridden with. Then gears are told apart without a name, and fewer of them.
bring-files = Choose GPX files
# Answers to the question what the heights of a file are in.
bring-metres = They are in metres
bring-feet = They are in feet
bring-privacy = The file never leaves this device and is not kept. Only numbers for each pitch and the month are kept: no place, no time of day, no trace.
bring-reading = Reading … { $share }
# $done and $all (Number): pitches.
bring-judging = The best ride of your power rides the same pitches: { $done } of { $all } …
# $name: of a file.
refused = { $name } was not taken
useless-no-times = This file does not say when it was ridden, or its times run backwards. Record with times.
useless-too-sparse = Most points of this file lie more than three seconds apart, too far for telling gears. Set the device to record every second.
useless-no-cadence = There is no cadence in this file, so gears cannot be told. A sensor at the cranks writes it; export with all data.
useless-cadence-stuck = The cadence in this file is the same number all along, so it was not measured and gears cannot be told. Choose a ride with a sensor at the cranks.
useless-no-road = This file could not be looked at. Choose it again.

## A ride

ride-title = { $month }: a ride of { $length }
ride-titleNoMonth = A ride of { $length }
# $title: one of the two above. $file: the name of a file.
ride-named = { $title } ({ $file })
# $title: of a ride.
ride-pitchesOf = Pitches: { $title }
# $found (Number): pitches.
ride-summary =
    { $found ->
        [0] The gear could be read on { $readable } of the time. No pitches found.
        [one] The gear could be read on { $readable } of the time. One pitch found.
       *[other] The gear could be read on { $readable } of the time. { $found } pitches found.
    }
# $changes (String): a number, like "2.4".
ride-changes =
    { $per ->
        [mile] { $changes } changes of gear a mile.
       *[km] { $changes } changes of gear a km.
    }
ride-inBand = { $share } of the pedalled time in your band.
# $watts (String): a number.
ride-power = The hills say that you ride with about { $watts } W; the best ride beside yours has the same power.
ride-powerUnknown = There was too little climbing in your band to tell your power; the best ride has that of your rider here.
ride-powerHelped = With a motor the hills cannot tell what your legs gave and what it did. The best ride has the power of your rider here, and the help that is set for the bike.
# $late (Number): seconds.
ride-heights =
    { $late ->
        [0] Power shows that the heights came in time.
        [one] The heights came about a second late; corrected.
       *[other] The heights came about { $late } seconds late; corrected.
    }
ride-heightsUnknown = There is too little power in this file to tell whether its heights came late; ± allows for it.
ride-cadenceHalved = The sensor had counted every foot; cadences are halved.
ride-noPitch = No pitch was found: the road never gets three points steeper at once.
ride-keep = Keep the numbers
ride-kept = Kept: the numbers you see here and nothing else.
ride-already = This ride is kept already.
ride-notKept = It could not be kept on this device.

## The small picture of a pitch, and what explains its two marks

# Read aloud. $own and $best: one of the places below.
picture-desc = First easier gear { $own }.
picture-descBest = First easier gear { $own }; the best ride { $best }.
# The mark stands for a place that is known only roughly.
picture-own = you, give or take
picture-best = best ride of your power

## The table of pitches

table-pitch = Pitch
table-first = First easier gear
# How much of the shifting was done there, in per cent.
table-atFoot = Done at the foot
# Three cadences.
table-cadence = Legs: before, foot, slowest
table-best = Best ride
table-again = Again
# A pitch, like "8 %, 120 m".
table-name = { $slope }, { $length }
table-unread = gears not readable
# What the best ride did. $place: one of the places below. $share: of the shifting that was done at the foot.
table-bestDone = { $place }, { $share } done
table-ride = Ride it again
table-rideThis = Ride it again: { $pitch }
# $foresight and $total (String): marks of 100, or the sign for what is not known.
table-inGame = In the game: foresight { $foresight }, total { $total }.
table-notMade = { $pitch }: no level can be made of this place.

## Where the first easier gear came

# $pm: how far from there it may have been.
place-before = { $metres } before the foot
place-beforePm = { $metres } before the foot ± { $pm }
place-after = { $metres } behind the foot
place-afterPm = { $metres } behind the foot ± { $pm }
place-none = no easier gear

## A level made of a pitch

level-title = Your pitch: { $slope }, { $length }
level-sentence = A pitch from a ride of your own, with the way to it.

## All kept rides

all-title = All kept rides
all-empty = No ride is kept yet.
# $rides (Number), $pitches (Number).
all-mean =
    { $rides ->
        [one] { $pitches ->
            [0] One ride, no pitches.
            [one] One ride, one pitch.
           *[other] One ride, { $pitches } pitches.
        }
       *[other] { $pitches ->
            [0] { $rides } rides, no pitches.
            [one] { $rides } rides, one pitch.
           *[other] { $rides } rides, { $pitches } pitches.
        }
    }
all-few = Below ten pitches a mean says little.
all-byMonth = Month by month
all-month = Month
all-noMonth = month not known
all-rides = Rides
# Rides and pitches of a month. $rides (Number), $pitches (Number).
all-counted =
    { $pitches ->
        [one] { $rides } · { $pitches } pitch
       *[other] { $rides } · { $pitches } pitches
    }
all-fall = Legs fall by
all-inBand = In band
all-check = Check rides in the game
# $rpm (String): turns of the pedals a minute.
all-perMinute = { $rpm }/min
# $value: with its unit.
all-giveOrTake = { $value } ± { $pm }
# $totals: marks of 100.
all-checks = total { $totals }
# $title: of a ride.
all-numbered = { $number }. { $title }
# What a kept ride was ridden on. $parts: chainrings and sprockets.
all-parts = { $parts }.
all-what = What is kept
all-whatHint = This is all, as it is kept. It says nothing of where or at what time you rode.
all-forget = Remove
all-forgetThis = Remove from this device: { $ride }
