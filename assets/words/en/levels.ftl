### The ladder of levels, and free rides.

intro = From top to bottom, or wherever you like. Each one teaches one thing.
own = Your own
ridden = Ridden
best = Best: { $total } of 100
best-not-passed = Best: { $total } of 100, not passed yet
next = Next
length = { $length } long
needs-derailleur = for gears on sprockets
needs-hub = for gears in the hub, no motor
needs-motor = for a motor
needs-crank-motor = for a motor at the crank
needs-wheel-motor = for a motor in the wheel
pitches =
    { $count ->
        [one] { $count } pitch
       *[other] { $count } pitches
    }
none = No levels were found in this copy of the game.
patches = Patches

## Free rides

free-title = Free ride
free-intro = Any road you like. The same name, hills and length give the same road on every device.
free-seed = Name of the road
free-seedHint = A word or a number.
free-seedEmpty = Give the road a name, or take another road.
free-another = Another road
free-hilliness = Hills
free-hilly-0 = nearly flat
free-hilly-1 = gentle
free-hilly-2 = hilly
free-hilly-3 = steep
free-hilly-4 = very steep
free-length = Length
free-facts =
    { $pitches ->
        [0] { $length }, no pitch, at most { $steepest }, { $climbed } up in all.
        [one] { $length }, { $pitches } pitch, at most { $steepest }, { $climbed } up in all.
       *[other] { $length }, { $pitches } pitches, at most { $steepest }, { $climbed } up in all.
    }
free-profile = Profile of the road: { $facts }
free-ride = Ride this road
free-link = Link to this road
free-copy = Copy the link
free-copied = Copied. Whoever opens it rides the same road.
free-notCopied = The browser did not let it be copied. The link is marked: copy it by hand.
free-bad-unreadable = This link to a free ride cannot be read. It should end in free-, a number, the hills from 0 to 100 and the length in metres, like free-42-50-2000. Choose a road here instead.
free-bad-seed = The number of the road in this link is too big. Choose a road here instead.
free-bad-hilliness = The hills in this link are beyond 100. Choose a road here instead.
free-bad-length = The road in this link is not from { $shortest } to { $longest } long. Choose a road here instead.
