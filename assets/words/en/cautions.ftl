### What is said before the first ride, and on everything that is taken outside.

# Twelve words are read before the bike moves for the first time; the rest is one tap away, and asked after.
title = A game teaches timing, not traffic.
outside = Before you try it outside
# Each line is a sentence of its own.
short =
    On a real bike practise on a quiet, flat, closed place first.
    Eyes on the road, not on the chain. Brakes, helmet and the law of your place come first.
    Children ride with an adult in charge.
    Pain in knees or chest: stop, and ask a doctor.
accept = Ride
more = Care
all = All of it
# Before riding a bike with a motor outside. Each line is a sentence of its own.
motor =
    It starts more strongly than one thinks: first push gently, with a finger on the brake.
    It is heavy: it takes longer to stop, and is hard to push and to lift.
    Hands off the motor and the battery; what is wrong with them is for a mechanic.
    From which age, with which helmet and how fast one may ride differs from place to place: the law of your place comes first.
# A wheel that a motor drives.
motorWheel = A wheel that a motor drives slips sooner on wet ground, on gravel and in bends, above all the front one: push gently there.
motorPlaces = What some places say
motorPlacesHint = Seen once, and laws change. Ask what is so today where you ride. The bikes here are ridden as the European standard says.
# Instead of a source.
motorReported = reported, not checked against the law’s text
# One place: $place is a name of its own, $watts and $kmh are 0 where none was found, $speed is the speed with its unit, $year is 0 where it is not known.
motorRule =
    { $place ->
        [eu] European Union
        [uk] United Kingdom
        [us] United States, federal
        [california] California
        [canada] Canada, most provinces
        [australia] Australia
        [new-zealand] New Zealand
       *[japan] Japan
    }: { $watts ->
        [0] { $kmh ->
            [0] nothing found
           *[other] help up to { $speed }
        }
       *[other] { $kmh ->
            [0] { $watts } W
           *[other] { $watts } W, help up to { $speed }
        }
    } ({ $year ->
        [0] { $source }
       *[other] { $source }, { $yearText }
    }).
