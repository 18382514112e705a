### The start page: the big button, the ways to everything else, and a ride that broke off.

ride = Ride
rideAgain = Ride on
byEar = Ride by ear
byEye = Ride by eye
picture = A rider on a bicycle comes to the foot of a hill.
newer = A newer version is here.
loadNewer = Use it

## The ways from here, each with a line under it

hint-children = Short hills and a basket of apples
levels = All levels
hint-levels = { $done } of { $all } ridden
bike = My bike
# Under "My bike": its name and its gears.
hint-bike = { $name }, { $gears }
hint-about = and care, and privacy
hint-progress = Check rides, rides on the road, and what is kept
hint-gearcheck = Would other sprockets get me up this hill?
hint-two = Side by side, face to face, or in a relay
hint-clinic = A group on one device or many, no names
hint-teach = An hour with a group, with drills for outside
hint-bench = Build a road, or bring one you rode

## A ride that broke off

unfinished-title = Your ride broke off: { $level }
unfinished-turn = A turn of the group broke off: { $level }
unfinished-length =
    { $minutes ->
        [0]
            { $seconds ->
                [one] { $seconds } second of it is kept.
               *[other] { $seconds } seconds of it are kept.
            }
       *[other] { $minutes } min { $seconds } s of it are kept.
    }
unfinished-goOn = Go on from here
unfinished-keep = Keep what was ridden
unfinished-letGo = Let it go
