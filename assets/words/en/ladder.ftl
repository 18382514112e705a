### The bundled levels: titles, the line under each, and what is said on the way. Levels of a person's own have their own words.

## Apples for the party (for children)

title-apples-for-the-party = Apples for the party
sentence-apples-for-the-party = Bring the apples over three little hills. Your friend waits.
cue-apples-for-the-party-1 = A hill! Click easier before it starts.
cue-apples-for-the-party-2 = Another hill. Easier first, then up.
cue-apples-for-the-party-3 = Last hill. Your friend is waving!

## Down to the sea (for children)

title-down-to-the-sea = Down to the sea
sentence-down-to-the-sea = Two hills up, a long roll down, and one by the water.
cue-down-to-the-sea-1 = Easier before the hill.
cue-down-to-the-sea-2 = One more hill, then down to the sea.
cue-down-to-the-sea-3 = A last little hill by the water.

## Home by lamplight (for children)

title-home-by-lamplight = Home by lamplight
sentence-home-by-lamplight = Five little hills through the town. Home is at the top.
cue-home-by-lamplight-1 = Five hills to go home. Easier first!
cue-home-by-lamplight-2 = And up again.
cue-home-by-lamplight-3 = Look up: the next hill is near.
cue-home-by-lamplight-4 = Nearly home. Easier once more.
cue-home-by-lamplight-5 = Last hill. The door is open!

## Over the roots (for children)

title-over-the-roots = Over the roots
sentence-over-the-roots = Four bumps in the forest. Keep your legs smiling.
cue-over-the-roots-1 = Watch the face. Keep it smiling.
cue-over-the-roots-2 = Face puffing? Click easier.
cue-over-the-roots-3 = Face whirring? Click harder.
cue-over-the-roots-4 = Last bump. Easier before it starts!

## Snow on top (for children)

title-snow-on-top = Snow on top
sentence-snow-on-top = The pass is steep at the end. Look up and click early.
cue-snow-on-top-1 = Up into the snow. Click easier early.
cue-snow-on-top-2 = One click at a time, and soon.
cue-snow-on-top-3 = The steep one. Be easy before it!

## Click before the hill (for children)

title-click-before-the-hill = Click before the hill
sentence-click-before-the-hill = A small hill is coming. Click easier before it starts!

## Three little hills (for children)

title-three-little-hills = Three little hills
sentence-three-little-hills = Look up, see the next hill, and be ready before it is.

## Feather feet (for children)

title-feather-feet = Feather feet
sentence-feather-feet = Pedal like a feather for a moment while the chain moves.

## Stop, go, and over the hill (for children)

title-stop-go-and-over-the-hill = Stop, go, and over the hill
sentence-stop-go-and-over-the-hill = Stop at the line in an easy gear. Then find the hidden hill.

## Change while you wait

title-change-while-you-wait = Change while you wait
sentence-change-while-you-wait = A hub changes at a standstill. Stop in any gear, go easier while you wait, then push off.
cue-change-while-you-wait-1 = Stop first. Then go easier, while you wait.
cue-change-while-you-wait-2 = The last hill comes without a stop.

## Look who is there

title-look-who-is-there = Look who is there
sentence-look-who-is-there = Sheep, a tractor, more sheep: company draws the eye. The hill comes all the same.
cue-look-who-is-there-1 = Greet whom you like. Glance at the road first.

## Two levers

title-two-levers = Two levers
sentence-two-levers = Find out what easier and harder do, on a road that forgives.

## Hold your rhythm

title-hold-your-rhythm = Hold your rhythm
sentence-hold-your-rhythm = Uphill and downhill your legs keep turning at the same pace.

## One pitch, announced

title-one-pitch-announced = One pitch, announced
sentence-one-pitch-announced = You can see it coming: be in an easy gear before the road stands up.

## Rolling road

title-rolling-road = Rolling road
sentence-rolling-road = Waves of road, one after the other. Shift with them, not after them.

## Soft feet

title-soft-feet = Soft feet
sentence-soft-feet = Take the weight off the pedals for a moment, then shift.

## Ready to go again

title-ready-to-go = Ready to go again
sentence-ready-to-go = The gear you stop in is the gear you start in. Both lines lie before a hill.

## Straight chain

title-straight-chain = Straight chain
sentence-straight-chain = Choose the ring that lets the chain run straight, long before the chain complains.

## Wind and gravel

title-wind-and-gravel = Wind and gravel
sentence-wind-and-gravel = Wind and loose ground slow you like a hill does, only nobody draws them.

## Round the bend

title-round-the-bend = Round the bend
sentence-round-the-bend = Hedges hide what comes. Slow curves and a narrowing road are hints.

## Leave the lever alone

title-ride-over = Leave the lever alone
sentence-ride-over = Some rises are so short that speed carries you over. Two are not.

## A ring, and back a little

title-ring-and-back = A ring, and back a little
sentence-ring-and-back = Change the ring in front and take back a little behind: one smooth step.

## Stops, wind and a secret

title-stops-wind-and-a-secret = Stops, wind and a secret
sentence-stops-wind-and-a-secret = Two stop lines, a head wind and a pitch that hides behind a hedge.

## Only you and the road

title-only-you-and-the-road = Only you and the road
sentence-only-you-and-the-road = Everything at once and no help at all. Look, think ahead, ride.

## Let the motor breathe

title-let-the-motor-breathe = Let the motor breathe
sentence-let-the-motor-breathe = Your motor pulls on the chain as well. Soft feet, wait a breath until it lets go, then shift.
cue-let-the-motor-breathe-1 = Hill ahead. Soft feet, wait a breath, then shift.
cue-let-the-motor-breathe-2 = The last one. Let the motor go first.

## Without help above 25

# $speed: above which no motor helps; 25 km/h, or 15.5 mph.
title-without-help-above-25 = Without help above { $speed }
sentence-without-help-above-25 = Above { $speed } your motor is silent and the bike is heavy. Go easier before the hill, then the help is back.
cue-without-help-above-25-1 = Downhill past { $speed }: now the motor gives nothing.
cue-without-help-above-25-2 = Your legs alone, until the hill slows you.
