### The strip after a ride: four tracks along the road, what is read out below it, and its tables.

# Read aloud in place of the picture. $length: the road with its unit, like "1,200 m". $shifts (Number): from 0.
title = The ride along the road
desc = Four tracks over { $length } of road: height and gradient, gear, cadence with its band, pedal pressure; { shifts }.
descClosed = Four tracks over { $length } of road: height and gradient, gear, cadence with its band, pedal pressure.
# Small numbers are written as words.
shifts =
    { $shifts ->
        [0] no shifts
        [1] one shift
        [2] two shifts
        [3] three shifts
        [4] four shifts
        [5] five shifts
        [6] six shifts
        [7] seven shifts
        [8] eight shifts
        [9] nine shifts
        [10] ten shifts
       *[other] { $shifts } shifts
    }

## The tracks: a name in bold, as short as can be, and a hint under it

road = Road
gear = Gear
cadence = Cadence
pressure = Pressure
shifts-title = Shifts
hint-gear = ↑ harder  ↓ easier
# $low, $high (Number): turns of the pedals a minute.
hint-cadence = your band { $low }–{ $high }
# The line is drawn in the picture.
hint-pressure = — steady

## What lines and shapes mean

legend-you = you
legend-best = best ride
legend-clean = clean shift
legend-fair = a bit heavy
legend-heavy = heavy shift
legend-foot-down = foot down
legend-chain-dropped = chain off

## Choosing a stretch and a place

zoom = Show
zoom-whole = Whole road
# $pitch (Number): from 1.
zoom-to =
    { $audience ->
        [children] Hill { $pitch }
       *[everyone] Pitch { $pitch }
    }
place = Place on the road
nextShift = Next shift
lastShift = Shift before
watchHere = Watch from here
drag = Drag or tap.
# $step: a distance, like "50 m".
keys = Or use ← → (Page keys: { $step }).
jumps = N and P jump from shift to shift.

## What is read out at a place, each a label and a value

read-at = At
read-best = Best ride
read-shift = Shift
# $percent: like "8 %".
read-slope =
    { $way ->
        [up] { $percent } up
        [down] { $percent } down
       *[flat] flat
    }
# $pitches (Number): how many steep pieces the road has. $pitch (Number): which of them, from 1.
pitch =
    { $audience ->
        [children] { $pitches ->
            [1] the hill
           *[other] hill { $pitch }
        }
       *[everyone] { $pitches ->
            [1] the pitch
           *[other] { $pitch ->
                [1] the first pitch
                [2] the second pitch
                [3] the third pitch
                [4] the fourth pitch
                [5] the fifth pitch
                [6] the sixth pitch
                [7] the seventh pitch
                [8] the eighth pitch
                [9] the ninth pitch
                [10] the tenth pitch
               *[other] pitch { $pitch }
            }
        }
    }
# $metres: a distance, like "12 m".
read-slopeNear =
    { $side ->
        [at] { read-slope }, right at the foot of { pitch }
        [after] { read-slope }, { $metres } after the foot of { pitch }
       *[before] { read-slope }, { $metres } before the foot of { pitch }
    }
read-rpm = { $rpm } rpm
read-coasting = coasting
read-standing = standing
read-band = band { $low }–{ $high }
# How hard the pedals are pushed. $percent: like "80 %".
read-pressure =
    { $how ->
        [coast] coast ({ $percent })
        [ease] soft ({ $percent })
        [steady] steady ({ $percent })
       *[press] push ({ $percent })
    }
# $gear: like "50 × 17". $cadence: like "82 rpm", or "coasting".
read-bestHere = { $gear }, { $cadence }
# $from, $to (Number): places of the shifter.
read-shiftSays =
    { $kind ->
        [clean] clean
        [fair] a bit heavy
       *[heavy] heavy
    }, { $direction ->
        [easier] easier
       *[harder] harder
    }: { $from } to { $to }

## Tables

table-summary = The same in numbers
# $step: a distance, like "20 m".
table-places = The ride every { $step }
table-shifts = All shifts
table-place = Place
table-slope = Gradient
table-gear = Gear
table-cadence = Cadence (rpm)
table-band = Band (rpm)
table-pressure = Pressure (%)
table-bestGear = Best ride: gear
table-bestCadence = Best ride: cadence (rpm)
table-begins = Begins at
table-change = Change
table-took = Took (s)
table-load = Load (%)
table-feel = Feel
feel-clean = clean
feel-fair = a bit heavy
feel-heavy = heavy
