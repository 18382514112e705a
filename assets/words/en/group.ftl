### Names that a coach's device and the tablets of a group say alike: riders, plans and what is ridden.

## Riders are called by a colour and an animal: “Red fox”. A language may write a message for each gender of the colour
## and use that; messages that only others use need not be in English.

colour =
    { $colour ->
        [amber] Amber
        [blue] Blue
        [brown] Brown
        [green] Green
        [grey] Grey
        [red] Red
        [violet] Violet
       *[white] White
    }
animal-badger = { colour } badger
animal-beaver = { colour } beaver
animal-bee = { colour } bee
animal-crane = { colour } crane
animal-crow = { colour } crow
animal-deer = { colour } deer
animal-duck = { colour } duck
animal-fox = { colour } fox
animal-frog = { colour } frog
animal-goat = { colour } goat
animal-hare = { colour } hare
animal-hedgehog = { colour } hedgehog
animal-heron = { colour } heron
animal-horse = { colour } horse
animal-lizard = { colour } lizard
animal-lynx = { colour } lynx
animal-marten = { colour } marten
animal-mole = { colour } mole
animal-mouse = { colour } mouse
animal-otter = { colour } otter
animal-owl = { colour } owl
animal-seal = { colour } seal
animal-snail = { colour } snail
animal-squirrel = { colour } squirrel
animal-stork = { colour } stork
animal-swan = { colour } swan
animal-swift = { colour } swift
animal-toad = { colour } toad
animal-trout = { colour } trout
animal-weasel = { colour } weasel
animal-wolf = { colour } wolf
animal-wren = { colour } wren

## Plans that come with the game, and check rides in a plan

plan-children-first-hour = Click before the hill
plan-adults-first-evening = Look ahead
plan-children-check = Check ride for children
plan-adults-check = Check ride
check-everyone = Check ride
check-children = Check ride for children
check-everyone-hub = Check ride for gears in the hub
check-children-hub = Check ride for children with gears in the hub
check-everyone-crank-motor = Check ride for a motor at the crank
check-everyone-wheel-motor = Check ride for a motor in the wheel
