### The gear check: whether the gears of a bike are enough for a road, and what other parts would change.
### A gear comes in written: "34 × 28", in a hub "1 of 3". So do lengths, slopes and speeds, with their units.
### "a minute" are turns of the pedals; the band is the range of cadences in which the rider feels well.

intro = Would other sprockets or chainrings let you hold this hill? The same ride, on every bike that is tried.
road = Road
roads-ladder = Levels
roads-own = Own roads
# $parts (String): teeth of rings and sprockets, like "50 / 34 · 11–28". $low and $high: the band.
you = Your bike: { $parts }. Your band: { $low } to { $high } turns a minute, less on climbs.
perMinute = { $rpm }/min
# Limits of what derailleurs can take, the chain and the freewheel: exact, because parts may break.
caution =
    { $rear ->
        [hub] What fits is limited by what the hub and the chain can take: a hub does not take every step from ring to sprocket. Before you buy or change anything, ask a qualified mechanic and read the maker’s documents.
       *[sprockets] What fits is limited by what the derailleurs, the chain and the freewheel can take. Before you buy or change anything, ask a qualified mechanic and read the maker’s documents.
    }

## The answer, in sentences one after the other

working = Your bike is riding this road …
failed = This road could not be ridden with this bike. Choose another road, or look at the tooth counts of the bike.
again = Try again
# $rpm: where the legs settle. $low: where the band begins. $length and $slope: the steepest part.
lowest-short = In your easiest gear { $gear } your legs settle at { $rpm } a minute on the steepest { $length } ({ $slope }). Your band begins at { $low } there.
lowest-walks =
    { $rpm ->
        [0] This bike makes you walk here. Your easiest gear { $gear } stands still on the steepest { $length } ({ $slope }).
       *[other] This bike makes you walk here: riding, you would be no quicker. In your easiest gear { $gear } your legs would settle at { $rpm } a minute on the steepest { $length } ({ $slope }).
    }
lowest-enough = Your easiest gear { $gear } is easy enough here: on the steepest { $length } ({ $slope }) your legs settle at { $rpm } a minute.
looking = Other parts are being tried …
# They: your legs, of the sentence before (lowest-short, lowest-walks). Parts that help, and are not enough.
help-mild = With { $gear } they would settle at { $rpm }.
# $after: after the sentence help-mild, or alone.
help-reaches =
    { $after ->
        [mild] To stay in your band here it takes { $gear }.
       *[alone] With { $gear } you would stay in your band.
    }
help-askFirst = The derailleurs of this bike may not take that; see below.
# $needed and $own (String): how far one turn of the pedals carries, like "2.06 m". $ring and $sprocket: teeth.
# $rear: several sprockets, or one before a hub.
help-none =
    { $rear ->
        [hub] None of the parts tried here keeps you in your band. It would take a gear of { $needed } a turn, and your easiest is { $own }: a ring of { $ring } teeth with your sprocket, or a sprocket of { $sprocket } with your ring.
       *[sprockets] None of the parts tried here keeps you in your band. It would take a gear of { $needed } a turn, and your easiest is { $own }: a ring of { $ring } teeth with your biggest sprocket, or a sprocket of { $sprocket } with your smallest ring.
    }
help-tooSteep = No gear helps here: with your power and your cadence { $slope } is ridden at { $speed }, and walking is as quick.
# The hardest minute of the ride.
minute-inBand = Your hardest minute on this ride stays in your band, at { $rpm } a minute.
# $from and $to (String): places on the road, like "320 m". $missing: turns a minute below the band.
minute-below = Your hardest minute on this ride is from { $from } to { $to }: { $rpm } a minute, { $missing } below your band.
highest-enough = Your hardest gear { $gear } never runs out here.
# $places: in how many. $seconds: for how long in all.
highest-short =
    { $places ->
        [one] { $seconds ->
            [one] Your hardest gear { $gear } runs out in one place, for one second in all: your legs spin at { $rpm } a minute.
           *[other] Your hardest gear { $gear } runs out in one place, for { $seconds } seconds in all: your legs spin at { $rpm } a minute.
        }
       *[other] { $seconds ->
            [one] Your hardest gear { $gear } runs out in { $places } places, for one second in all: your legs spin at { $rpm } a minute.
           *[other] Your hardest gear { $gear } runs out in { $places } places, for { $seconds } seconds in all: your legs spin at { $rpm } a minute.
        }
    }

## Asking about a part in words of one's own

ask = Ask about a part
ask-label = What if …
# Must be understood by means of the lists below.
ask-example =
    { $rear ->
        [hub] 22 at the back
       *[sprockets] 34 at the back
    }
ask-button = Try it
ask-working = These parts are riding this road …
ask-nothing = Write a tooth count, for example “34 at the back”, “32 in front” or “11-34”.
ask-which-end = Say which end: “at the back” for sprockets, “in front” for chainrings.
ask-impossible = No rings or sprockets can be made of these numbers. Write them like “46/30” or “11-34”.
ask-same = That is what your bike has already.
ask-answer = { $parts }: on the steepest { $length } your legs would settle at { $rpm } a minute instead of { $own }.
# Words that are listened for, in small letters, with commas between them, as many as people would use, with all
# their forms. What means sprockets or the rear end:
hear-back = back, rear, behind, cassette, cassettes, sprocket, sprockets, cog, cogs
# What means chainrings or the front end:
hear-front = front, ring, rings, chainring, chainrings, crank, crankset
# What stands between two parts ("30 in front and 32 at the back"):
hear-and = and, with
# What stands between two ends of a range ("11 to 34"):
hear-to = to

## The road with the places where the gears run out

profile = Where the gears run out
# Read aloud. $below and $above: in how many places.
profile-desc =
    Profile of { $length } of road. { $below ->
        [0] Nowhere is the easiest gear too hard.
        [one] In one place the easiest gear is too hard.
       *[other] In { $below } places the easiest gear is too hard.
    } { $above ->
        [0] Nowhere is the hardest too easy.
        [one] In one place the hardest is too easy.
       *[other] In { $above } places the hardest is too easy.
    }
profile-below = easiest gear too hard
profile-above = hardest gear too easy
profile-nowhere = The gears of this bike do not run out on this road.

## All gears as steps of paper

stairs = All your gears
stairs-box = The staircase of your gears
stairs-hint = One paper step for each gear, easiest first, in the order one would really shift. Between the steps stands what the hands do.
stairs-desc =
    { $gears ->
        [one] A staircase with a single step. The table below says the same.
       *[other] A staircase of { $steps } steps with all { $gears } gears. The table below says the same.
    }
# $different: gears that are not nearly the same as another.
stairs-really =
    { $gears ->
        [one] { $gears } gear.
       *[other] { $gears } gears, of which { $different } are really different.
    }
stairs-eachOwn =
    { $gears ->
        [one] One gear.
       *[other] { $gears } gears, each of its own.
    }
# Under the steps: signs and what they mean.
sign-rear =
    { $rear ->
        [hub] right hand, gears in the hub
       *[sprockets] right hand, sprockets
    }
sign-front = left hand, chainrings
sign-same = lies on the step: as good
sign-near = lies near it
sign-crossed = crosses the chain
table = The same in numbers
table-gear = Gear
table-development = Development
table-step = Step
table-hands = Hands
table-speed = Speed at { $rpm }/min
table-also = On the same step
# What the hands do from one step to the next. $ring: to a bigger chainring, or none. $rear: what the right hand does, $count times.
hands =
    { $ring ->
        [bigger] { $rear ->
            [harder] left hand: bigger ring, right hand: { $count } harder
            [easier] left hand: bigger ring, right hand: { $count } easier
           *[same] left hand: bigger ring
        }
       *[same] { $rear ->
            [harder] right hand: { $count } harder
           *[easier] right hand: { $count } easier
        }
    }
gear-crossed = { $gear }, crosses the chain
# Another gear on a step: as good as that of the step, or near it. $chain: whether the chain is crossed there.
also-same =
    { $chain ->
        [crossed] { $gear }, crosses the chain (as good)
       *[straight] { $gear } (as good)
    }
also-near =
    { $chain ->
        [crossed] { $gear }, crosses the chain (near)
       *[straight] { $gear } (near)
    }

## Other parts in a table

others = What other parts would change
others-hint = The same rider, the same road, every bike ridden. First who gets up riding, then the hardest minute, then the steepest part, then time in the band. Then, in a group of their own, parts to ask about first.
# Above parts that pass a limit of the derailleurs.
askFirst = Ask a mechanic first: these pass what derailleurs like yours usually take
others-trying =
    { $count ->
        [0] None tried so far …
       *[other] { $count } tried so far …
    }
others-tried =
    { $count ->
        [one] One other set of parts tried.
       *[other] { $count } other sets of parts tried.
    }
others-none = No common parts with as many rings and sprockets as yours are known here.
others-all = Show all { $count }
others-fewer = Show fewer
# Heads of the table.
parts = Parts
# Whether one comes to the top riding or on foot.
getsUp = Gets up
getsUp-riding = riding
# $time (String): like "3:05".
getsUp-walking = on foot for { $time }
minute = Hardest minute
minute-missing = { $rpm } below band
minute-kept = in band
inBand = Time in band
steepest = Steepest { $length }
yours = Your bike now
changed-cassette = other cassette
changed-rings = other chainrings
changed-both = both changed
take = Try this bike
take-this = Try this bike: { $parts }
# What the parts gain and cost: some of these sentences, one after the other.
trade-none = Much like your bike.
trade-easier-lowest = The easiest gear gets easier still.
trade-harder-highest = The hardest gear gets harder.
trade-smaller-steps = The steps between gears get smaller.
trade-fewer-twins = Fewer gears exist twice.
trade-fewer-shifts = It takes fewer shifts on this road.
trade-less-capacity = The rear derailleur has less chain to take up.
trade-harder-lowest = The easiest gear gets harder.
trade-loses-highest = The hardest gear is lost.
trade-bigger-steps = The steps between gears get bigger.
trade-more-twins = More gears exist twice.
trade-more-shifts = It takes more shifts on this road.
trade-more-capacity = The rear derailleur must take up more chain.
capacity = { $teeth } teeth of chain to take up.
# What usual derailleurs do not take. $have and $most: teeth.
limit-sprocket =
    Ask first: a sprocket of { $have } is more than the { $most } that { $derailleur ->
        [road] rear derailleurs of road bikes
       *[long] rear derailleurs with a long arm
    } usually take ({ $source ->
        [published] makers’ figures of nine and ten speeds
       *[practice] common practice, no source
    }).
limit-capacity =
    Ask first: { $have } teeth of chain are more than the { $most } that { $derailleur ->
        [road] rear derailleurs of road bikes
       *[long] rear derailleurs with a long arm
    } usually take up ({ $source ->
        [published] makers’ figures of nine and ten speeds
       *[practice] common practice, no source
    }).
limit-rings =
    Ask first: rings { $have } teeth apart are more than the { $most } that front derailleurs usually span ({ $source ->
        [published] makers’ figures of nine and ten speeds
       *[practice] common practice, no source
    }).

## Two rides side by side

compare = Both rides
compare-close = Close both rides
compare-this = Both rides side by side: { $parts }
compare-closeThis = Close both rides: { $parts }
# Read aloud.
compare-desc = Cadence over the road: your bike as a broken line, { $parts } as a full one, the band below as a strip.
compare-yours = your bike
compare-band = lower edge of your band
compare-figure = Figure
compare-time = Time
compare-shifts = Shifts
compare-lowest = Easiest gear
# $metres (String): how far one turn of the pedals carries.
compare-gear = { $gear }, { $metres } a turn

## Roll-out: how far one turn of the cranks carries in the hardest gear, which has a limit in races of young riders

rollOut = Roll-out, for races of young riders
rollOut-is = One turn of the cranks in the hardest gear { $gear } carries this bike { $metres }.
rollOut-limit = Limit
rollOut-none = No limit
rollOut-own = Our club’s limit
rollOut-metres = Limit in metres
rollOut-unreadable = Write the limit in metres, from 2 to 12, for example 6.45.
# Who, how far, whose rule, and when it held. $date (String): a year, or the last day.
rollOut-option =
    { $group ->
        [juniors] Juniors
        [under-16] Under 16
        [under-14] Under 14
       *[under-12] Under 12
    }: { $metres } ({ $body ->
        [world-federation] world federation
       *[national-federation] one national federation
    }, { $held ->
        [until] until { $date }
       *[year] { $date }
    })
rollOut-source =
    { $body ->
        [world-federation] { $held ->
            [until] The world federation had this limit until { $date }; none is known here since.
           *[year] From the rule book of the world federation of { $date }.
        }
       *[national-federation] { $held ->
            [until] One national federation had this limit until { $date }; none is known here since.
           *[year] From the rule book of one national federation of { $date }.
        }
    }
# $year (String).
rollOut-relaxed = It was relaxed in { $year }.
rollOut-ask = Rules differ and change: ask your federation for the figure of this season.
rollOut-within = That keeps the limit of { $limit }.
rollOut-beyond = That is more than the limit of { $limit }. The hardest gear that keeps it is { $gear }.
rollOut-allBeyond = That is more than the limit of { $limit }, and so is every other gear of this bike.
rollOut-measured = At a race the bike is rolled on the ground and measured; tyre and air pressure change it by a few centimetres.
