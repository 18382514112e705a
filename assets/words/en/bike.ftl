### The page of bike and rider: the bikes to choose from, a bike of one's own, the rider, the tap test, colours.

intro = Take the bike that is most like yours. It rides as its gears, wheels and weight say.
bikes = Bike
ownHint = Your own tooth counts and tyres
done = Ride this bike
motorTitle = Before you ride with a motor

## Facts on the card of a bike, side by side, after how many gears it has

fact-motor-crank = motor at the crank
fact-motor-wheel = motor in a wheel
fact-backPedal = back-pedal brake
# What the shifters work by.
fact-mechanical = cable
fact-electronic = electronic
# $tyre (String): the mark on its side, like "28-622".
fact-tyre = tyre { $tyre }

# What a drawing of all the gears shows, read aloud. $rings (String): teeth of the chainrings, like "26 / 36 / 48".
# $ringCount: how many chainrings. $sprockets (String): teeth of the sprockets; $rear: gears on sprockets, or in a hub.
drawing =
    { $rear ->
        [hub] { $ringCount ->
            [one] Chainring { $rings }, gears in the hub behind a sprocket of { $sprockets }.
           *[other] Chainrings { $rings }, gears in the hub behind a sprocket of { $sprockets }.
        }
       *[sprockets] { $ringCount ->
            [one] Chainring { $rings }. Sprockets { $sprockets }.
           *[other] Chainrings { $rings }. Sprockets { $sprockets }.
        }
    }

## A bike of one's own. Numbers after "for example" are typed like that, so they stay as they are

own-title = Own bike
own-intro = Count the teeth, or read the numbers stamped on them.
rings = Chainrings
rings-hint = For example 50/34, or 32.
gearing = Gears at the rear
gearing-sprockets = Sprockets and a derailleur
gearing-three = Hub with 3 gears
gearing-three-wide = Hub with 3 gears, wider steps
gearing-five = Hub with 5 gears
gearing-five-wide = Hub with 5 gears, wider steps
gearing-seven = Hub with 7 gears
gearing-eight = Hub with 8 gears, close steps
gearing-eight-wide = Hub with 8 gears, wide steps
gearing-fourteen = Hub with 14 gears
hubSprocket = Sprocket before the hub
hubSprocket-hint = Its teeth, like 19.
hubSprocket-wrong = A hub has one sprocket. Write its teeth, for example 19.
backPedalBrake = Brakes when I pedal backwards
hubRule = A hub changes while you do not push: let the pressure off, or stand still.
motor = Motor
motor-none = No motor
motor-crank = Motor at the crank
motor-wheel = Motor in a wheel
help = Its help
# The motor's power for one part of the rider's: 0, 0.5, 1 or 2.
help-much =
    { $ratio ->
        [0] Off
        [0.5] Half as much as you
        [1] As much as you
       *[other] Twice as much as you
    }
battery = In the battery
battery-hint = In watt hours, when a ride begins, like 500.
battery-wrong = Write the watt hours in the battery, from 0 to 999, for example 500.
brakeSwitches = The brake levers switch it off
way = Sprockets
way-range = From smallest to biggest
way-each = One by one
range = Range of the cassette
range-hint = For example 11-32.
count = How many sprockets
# $teeth (String): a list like "11 13 15".
completed = Taken as { $teeth }. Not yours? Write them one by one.
sprocketTeeth = Teeth of each sprocket
# $place: the how-manieth in the list of sprockets.
sprocket = Sprocket { $place }
add = Add a sprocket
remove = Take sprocket { $place } away
emptySprocket = Sprocket { $place } is empty. Write its teeth, or take it away.
tyre = Tyre
tyre-hint = The mark on its side, like 28-622.
crank = Crank length
crank-hint = In mm, stamped on the inside, like 170.
crank-wrong = Write the crank length in mm, from 90 to 200, for example 170.
mass = Weight of the bike
mass-hint = In kg. A guess is good enough.
mass-wrong = Write the weight in kg, from 5 to 40, for example 14 or 9.5.
shifters = Shifters
shifters-mechanical = Cable
shifters-electronic = Electronic
refuses = Refuses gears that cross the chain
lastGood = Drawn is the last bike that was possible.
warning-capacity = This asks the rear derailleur to take up { $capacityTeeth } teeth of chain; usual ones take up at most { $usualTeeth }. Ask a mechanic, and read the maker’s documents.
warning-big-step = From { $fromTeeth } to { $toTeeth } teeth is a big step for a front derailleur. Ask a mechanic, and read the maker’s documents.

## Why what was typed is no part of a bike

problem-rings-unreadable = Write the teeth of the chainrings, for example 50/34 or 32.
problem-too-many-rings = { $count } chainrings are more than a bike has. Write one to three numbers, like 48/36/26.
problem-ring-size = A chainring of { $teeth } teeth is not made. Usual ones have { $leastTeeth } to { $mostTeeth }; count again or look for the number stamped on it.
problem-rings-order = The chainrings are out of order. Write them from big to small or from small to big, each only once.
problem-sprockets-unreadable = Write the teeth of the sprockets, for example 11-32, or each one: 11 13 15 18 21 24 28 32.
problem-sprocket-size = A sprocket of { $teeth } teeth is not made. Usual ones have { $leastTeeth } to { $mostTeeth }; count again or look for the number stamped on it.
problem-too-many-sprockets = { $count } sprockets are more than a cassette has. Write at most { $most }.
problem-sprocket-twice = One number stands twice. Every sprocket of a cassette is different.
problem-sprockets-order = The sprockets are out of order. Write them from small to big.
problem-sprocket-count = Say how many sprockets there are, from { $least } to { $most }.
problem-too-narrow = { $count } sprockets do not fit between { $leastTeeth } and { $mostTeeth } teeth. Write each one, or fewer.
problem-tyre-unreadable = Write the ISO mark from the side of the tyre, for example 28-622 or 47-406.
problem-tyre-size = { $tyreWidthMm }-{ $beadSeatMm } is no bicycle tyre. The first number is the width (18 to 125 mm), the second the rim (200 to 700 mm).

## The rider

rider = Rider
rider-way = How well do you know yourself?
rider-way-feel = By feel
rider-way-numbers = By numbers
rider-about-child-9 = Light, and quick legs for small hills.
rider-about-adult-new = Gets out of breath on a bridge.
rider-about-adult-weekly = Likes hills that end.
rider-about-adult-strong = Looks for the hill.
rider-mass = Weight of the rider
rider-mass-hint = In kg, with clothes.
rider-mass-wrong = Write the weight in kg, from 15 to 200, for example 68.
rider-power = Steady power
rider-power-hint = In watts, what you hold for an hour of talking.
rider-power-wrong = Write the power in watts, from 20 to 450, for example 130.
rider-low = Slowest cadence you like
rider-low-hint = Turns of the pedals in a minute.
rider-low-wrong = Write turns a minute, from 40 to 120, for example 70.
rider-high = Fastest cadence you like
rider-high-hint = Turns of the pedals in a minute.
rider-high-wrong = Write turns a minute, from 45 to 130, for example 90.
rider-narrow = The fastest must be at least 5 above the slowest.

## The tap test: one tap for each turn of the pedals finds the cadence

tap = Tap test
tap-intro = Turn your pedals as you like it, or think of it. Tap once each time the same foot is down, for 20 seconds. Space works too.
# On the pad.
tap-first = Tap
tap-firstHint = The time begins with your first tap.
# What is left of the time.
tap-left = { $seconds } s
tap-count =
    { $count ->
        [one] { $count } tap
       *[other] { $count } taps
    }
tap-stop = Stop
tap-again = Tap again
# $rpm: the cadence found. $low and $high: edges of the band round it.
tap-found = You turn about { $rpm } times a minute. Your band is now { $low } to { $high }.
# Slips that were noticed and left out of the count. $missed: turns nobody tapped. $doubled: taps that were no turn. Never both 0.
tap-slips =
    { $missed ->
        [0] { $doubled ->
            [one] One tap too many: put right.
           *[other] { $doubled } taps too many: put right.
        }
        [one] { $doubled ->
            [0] One turn without a tap: put right.
            [one] One turn without a tap and one tap too many: put right.
           *[other] One turn without a tap and { $doubled } taps too many: put right.
        }
       *[other] { $doubled ->
            [0] { $missed } turns without a tap: put right.
            [one] { $missed } turns without a tap and one tap too many: put right.
           *[other] { $missed } turns without a tap and { $doubled } taps too many: put right.
        }
    }
tap-undo = Band as it was
tap-undone = Your band is as it was.
tap-too-few = Too few taps to tell. Tap once for every turn until the time is over.
tap-too-short = Too short to tell. Keep on until the time is over.
tap-too-slow = That is slower than pedalling. Tap at every turn, not at every second one.
tap-too-fast = That is faster than pedalling. Tap for one foot only, once for a whole turn.
tap-unsteady = The taps came unevenly. Find a beat first, then begin.
# Stands after the sentence that says why.
tap-unchanged = Your band has not changed.

## The rider's colours and shapes

kit = Your colours
kit-intro = How the rider looks in the picture. It makes nobody faster.
jersey = Jersey
jersey-orange = orange
jersey-berry = berry
jersey-blue = blue
jersey-green = green
jersey-violet = violet
jersey-sun = sun yellow
pattern = Pattern
pattern-plain = plain
pattern-band = one band
pattern-dots = dots
helmet = Helmet
helmet-holes = with holes
helmet-star = with a star
helmet-crest = with a crest
frame = Frame
frame-usual = as it comes
frame-red = red
frame-blue = blue
frame-green = green
frame-plum = plum
