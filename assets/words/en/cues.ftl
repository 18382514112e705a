### What is said on the way: the cues of levels. On a bike with its gears in the hub some things are the other way round.

hill-ahead = Hill ahead.
ease-then-shift =
    { $gears ->
        [hub] { $motor ->
            [pulls] Take the pressure off, wait a breath, then shift.
           *[none] Take the pressure off, then shift.
        }
       *[sprockets] { $motor ->
            [pulls] Soft feet, wait a breath, then shift.
           *[none] Soft feet, then shift.
        }
    }
two-easier-now = Two easier now.
one-at-a-time = One gear at a time.
rest-on-the-way-up =
    { $gears ->
        [hub] { $motor ->
            [pulls] The rest on the way up: pressure off each time, and wait a breath.
           *[none] The rest on the way up: pressure off each time.
        }
       *[sprockets] { $motor ->
            [pulls] The rest on the way up: let the motor go each time.
           *[none] The rest on the way up, with soft feet each time.
        }
    }
harder-again = Over the top: harder again.
hold-rhythm = Keep your legs turning at one pace.
ride-over = Short rise: stay in your gear and ride over it.
small-ring =
    { $gears ->
        [hub] An easier gear now, on the flat.
       *[sprockets] Smaller chainring now, on the flat.
    }
big-ring =
    { $gears ->
        [hub] A harder gear, there is room for it.
       *[sprockets] Bigger chainring, there is room for it.
    }
straight-chain = Keep the chain straight.
stop-ahead = Stop line ahead.
easy-before-stop =
    { $gears ->
        [hub] Stop, then shift easier: a hub changes while you wait.
       *[sprockets] Shift easier before you stop: you start in that gear.
    }
wind-ahead = Head wind ahead. It is a hill you cannot see.
gravel-ahead = Gravel ahead. It pulls like a hill.
look-far = Look far ahead.
last-pitch = The last pitch.
easier-lever = The right lever: easier.
harder-lever = The right lever: harder.
