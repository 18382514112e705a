### Several riders on one device.

title = Two or more
intro = On one road with one device. Each rides for themselves, and against nobody.
road = Road
ride = Ride
leave = Stop riding

## Choosing

needsKeys = This screen is too small for the pads of two. Take a tablet, a keyboard or two gamepads; or ride a relay.
noRelay = This road is too short for a relay, or has too few hills: everybody needs a hill and some road of their own. Choose another road.
way = How
way-beside = Side by side
way-facing = Face to face
way-relay = Relay
wayHint-beside = Two at once, each on a half of the screen: on a tablet, with one keyboard or two gamepads.
wayHint-facing = Two at once, the upper half of the tablet turned round. Lay it flat between them, where it can neither slide nor fall.
wayHint-relay = One road, a leg for each: whoever comes to the gate hands the device on, standing or seated.
count = Riders
# Who is meant; the heading over what they choose. $rider (Number): counted from 1. Side by side 1 sits left.
name-beside =
    { $rider ->
        [1] Left
       *[other] Right
    }
name-facing =
    { $rider ->
        [1] Upper half, turned round
       *[other] Lower half
    }
name-relay =
    { $rider ->
        [1] First
        [2] Second
        [3] Third
        [4] Fourth
        [5] Fifth
        [6] Sixth
       *[other] Number { $rider }
    }
bike = Bike
rider = Rider
ownRider = As set on this device
autoEase = The game has soft feet during a shift and brakes at lines, for all
headStart = Whoever’s best ride takes longer here starts first, so that both can finish together
keys-left = Keys on the left
keys-right = Arrow keys
pads-left = Pads in the left or upper half
pads-right = Pads in the right or lower half

## The road as a picture, and its parts

# What the picture shows. $gates (Number): places where the next rider takes over. $road: the road’s title.
roadWithGates =
    { $gates ->
        [0] { $road }
        [one] { $road }, with { $gates } gate
       *[other] { $road }, with { $gates } gates
    }
roadOfBoth = { $road }: how far both have come
# A part of a relay’s road, as its title. $leg (Number): counted from 1.
leg = { $road }, leg { $leg } of { $legs }
# The one who sits left, and the one who sits right: one letter each, on the road of both.
mark-left = L
mark-right = R

## At the gate of a relay

gate =
    { $rider ->
        [1] First rider
        [2] Second rider
        [3] Third rider
        [4] Fourth rider
        [5] Fifth rider
        [6] Sixth rider
       *[other] Number { $rider } rider
    }
gateIntro = Hand over at the gate, standing or seated and never on a bike that rolls. Look where your leg is, then ride.

## Riding

riding = Riding together: { $road }
# Stands under a big number that counts down, $seconds (Number).
headStartWait =
    { $seconds ->
        [one] second. The other one’s best ride takes so much longer.
       *[other] seconds. The other one’s best ride takes so much longer.
    }
longWait = On a shorter road the wait is shorter.
waiting = Over the line. The other one is still riding.
failed = The rides stopped, because their picture could not be loaded or drawn. Try again; if it happens once more, load the page anew.
toGate = Back to the gate

## After the rides

afterTitle = What you found out
# $ride (Number): which ride of a series this was. $of (Number): rides in a series.
series = Ride { $ride } of { $of }. Of each rider’s own { $of } rides the best one counts.
total = { $total } of 100
together = Together: { $total } of 100 on average
# The best of a rider’s own rides; riders are not set against each other. $all: totals of the rides, like “61 · 70”.
best =
    { $rides ->
        [one] Best of { $rides } ride: { $best } ({ $all })
       *[other] Best of { $rides } rides: { $best } ({ $all })
    }
judging = Working out how it went …
notJudged = How this ride went could not be worked out. Ride again.
look = Look at this ride
again = Once more
newSeries = Three new rides
moveOn-beside = Swap sides
moveOn-facing = Swap sides
moveOn-relay = Somebody else first
other = Another road or other riders
