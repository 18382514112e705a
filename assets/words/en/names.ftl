### Names that come after the first page: what a level teaches, and riders.

## What a level teaches

lesson-levers = The two levers
lesson-cadence = Cadence
lesson-easing = Soft feet for a shift
lesson-look-ahead = Looking ahead
lesson-rolling = Shifting with the road
lesson-chain-line = A straight chain
lesson-ring-change = Changing the chainring
lesson-ride-over = When not to shift
lesson-hidden = What you cannot see
lesson-stop-gear = The gear for starting
lesson-wind-and-gravel = Wind and gravel
lesson-everything = All of it together
lesson-check = Check ride
lesson-free = Free ride
# What stands under the name of such a ride.
sentence-check = A road you have not seen, without help.
sentence-free = Any road you like, as long and as hilly as you like.

## What a child's patch says where the lesson's own name is no child's word

patch-levers = Easier and harder
patch-cadence = Legs at a good speed

## Riders

rider-child-9 = A child of about nine
rider-adult-new = New to it
rider-adult-weekly = Rides every week
rider-adult-strong = Strong
rider-own = Own numbers
