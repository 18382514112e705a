### The page of a ride: before it, in a pause, the first steps with the levers, and when something breaks.

title = Riding: { $level }
failed-not-fetched = The picture of the ride could not be loaded. Check the connection, then try again.
failed-no-canvas = This browser does not let the game draw a picture, so there is nothing to ride by. Allow it in its settings (often under privacy), or open the game in another browser.
failed-broken = This ride cannot be started: something about it does not work. Try another level, or choose the bike anew.
again = Try again
pausedHint = The road waits. So does your gear.
restart = From the start
leave = Stop riding
stage = The ride
hands = Escape pauses.
controls = What your hands do
# Under it, where there are pads.
controlsPads = Tap the pad with the same sign.
watching = Your ride, once more.
watchOn = Watch on
backToDebrief = Back to your ride
steeper = A little steeper than before: you have it.
gentler = A little gentler than before.

## The first steps with the levers

step-rear-easier = easier
step-rear-harder = harder
step-ease = soft feet
# What is said once it was done; in the hub gears shift another way.
done-rear-easier =
    { $gears ->
        [hub] The hub takes it when you push less. Your legs spin.
       *[sprockets] The chain climbs. Your legs spin.
    }
done-rear-harder = Slower legs, more push.
done-ease =
    { $gears ->
        [hub] { $motor ->
            [pulls] With the pressure off a hub shifts as soon as the motor lets go. Now push on again.
           *[none] With the pressure off a hub shifts at once. Now push on again.
        }
       *[sprockets] Soft feet let the chain move. Now push on again.
    }
wrong-rear-easier = That was easier.
wrong-rear-harder = That was harder.
wrong-front-smaller = That was a smaller ring.
wrong-front-bigger = That was a bigger ring.
wrong-ease = That was soft feet.
wrong-press = That was pushing.
wrong-coast = That was coasting.
wrong-brake = That was the brake.
wrong-pause = That was pause.
instead = Try this one:
# Before a key that is held down.
hold = hold
# The pad is lit and has the same sign and word.
pad = tap
holdPad = hold
skip = Skip
# All of it in a sentence, said aloud. $key: how the key is called.
say-rear-easier = For easier press { $key }.
say-rear-harder = For harder press { $key }.
say-ease =
    { $how ->
        [hold] For soft feet hold { $key }.
       *[press] For soft feet press { $key }.
    }

## Something in the game broke down

trouble-ride-title = The ride stopped
trouble-ride = Something in the game broke down, so your ride was stopped where you were. Go on: three seconds, then the pedals turn.
trouble-again = It broke down again, so this ride cannot go on here. Keep what was ridden, then load the page anew.
trouble-watching = Something in the game broke down. Go back, and watch it once more.
trouble-kept = What you rode is kept on this device.
trouble-notKept = What you rode could not be kept here. Save the report: the ride is in it.
trouble-goOn = Go on
trouble-keep = Keep what was ridden
trouble-back = Back
trouble-page = Something in the game broke down. Rides that were kept are still kept. If anything looks wrong, load the page anew.
trouble-report = Save a report
trouble-reportHint = A file with versions, what happened and the ride. No name is in it, and it goes nowhere by itself.
trouble-reload = Load anew
trouble-close = Close
