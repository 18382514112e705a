### The party at the end of a road for play. No sentence has more than twelve words.

title = Party!
# $apples (Number): 1 to 7.
carried =
    { $apples ->
        [1] You brought one apple.
        [2] You brought two apples.
        [3] You brought three apples.
        [4] You brought four apples.
        [5] You brought five apples.
        [6] You brought six apples.
        [7] You brought seven apples.
       *[other] You brought { $apples } apples.
    }
all = You brought every single apple!
# They hopped out of the basket on the way. $apples (Number): 1 to 7.
found =
    { $apples ->
        [1] One apple hopped out. The hedgehog brings it along.
        [2] Two apples hopped out. The hedgehog brings them along.
        [3] Three apples hopped out. The hedgehog brings them along.
        [4] Four apples hopped out. The hedgehog brings them along.
        [5] Five apples hopped out. The hedgehog brings them along.
        [6] Six apples hopped out. The hedgehog brings them along.
        [7] Seven apples hopped out. The hedgehog brings them along.
       *[other] { $apples } apples hopped out. The hedgehog brings them along.
    }
shared = Now everybody eats.
# $lesson: what a level teaches, like "Cadence".
learnt = You have learnt: { $lesson }.
# Without a single change of gear.
noClick = You did not click this time. Click, and a patch is yours.

## What to do another time: what made most apples hop

tip-jolts = Next time: click before it gets steep, with soft feet.
tip-grinding = Next time: face puffing? Click easier, and sooner.
tip-whirring = Next time: face whirring? Click harder.
tip-none = So smooth! The hedgehog sneaks a big bite all the same.

## Buttons

again = Once more
# $level: the title of a level.
next = Next: { $level }
takeOver = Change over: your friend rides
roads = All roads
grownUps = For grown-ups: the ride in detail

# Read aloud in place of the picture.
picture = A table with apples. Friend, dog and hedgehog are at the party.
