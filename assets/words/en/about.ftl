### How to play, why it feels like riding, privacy, care, and where the numbers come from.

title = How to play
keys = What your hands do
tryLevers = Try the levers
playTitle = In short
# Each line is a sentence of its own. $speed: above which no motor helps; 25 km/h, or 15.5 mph.
play =
    You pedal by yourself. Your hands shift, your eyes look ahead.
    The right hand works the rear derailleur: easier or harder. The left hand works the chainrings.
    Shift before the hill, step by step, with soft feet while the chain moves.
    Gears in the hub are the other way round: take the pressure off or stand still, shift, then push on.
    A motor at the crank pulls on the chain, too: soft feet, wait a breath until it lets go, then shift. Above { $speed } it gives nothing.
    The gear in figures is the one the lever stands for; a dotted line under it says that the chain is still on its way.
    Keep your legs turning at a pace you like. A short rise can simply be ridden over.
modelTitle = Why it feels like riding
model =
    Weight, slope, wind, rolling and the chain’s friction are worked out 120 times a second with published formulas. Nothing is left to luck: the same pushes give the same ride.
privacyTitle = Privacy
privacy =
    This game does not ask who you are. It has no account and no counter, and it talks to no other computer. What you do stays on this device.
careTitle = Care
# Each line is a sentence of its own.
care =
    A game teaches timing, not traffic.
    Practise on a quiet, flat, closed place first. Eyes on the road and not on the chain.
    Brakes, helmet and the law of your place come first.
    Children ride with an adult in charge.
    A bike with a motor starts more strongly than one thinks, takes longer to stop and is heavy to push. Age, helmet and speed are a matter of the law of your place.
    Pain in knees or chest means stop and ask a doctor.
    What sprockets, rings and chains can be changed is limited by what the derailleurs can take: ask a qualified mechanic and read the maker’s documents.
    Keep fingers away from a moving chain.
    Follow what your federation, school or licensed instructor says.
creditsTitle = Where the numbers come from
# Each line is a sentence of its own.
credits =
    Riding on the flat, uphill and against the wind: J. C. Martin and others, Validation of a mathematical model for road cycling power, Journal of Applied Biomechanics 14, 1998.
    Gears in the hub: Willis’ equation of planetary sets, and ratios as published; what they waste is disputed, and chosen.
    Motors: EN 15194:2017, electrically power assisted cycles; how late they come in and let go is chosen.
    Losses in the chain: J. B. Spicer and others, Effects of frictional loss on bicycle chain drive efficiency, Journal of Mechanical Design 123, 2001.
    Tyre sizes: ISO 5775. Contrast, size and keyboard use: WCAG 2.2.
    Pictures, sounds, words and roads were made for this game. It stands on open libraries: Phaser, Preact, fflate, howler.js, idb, saxes, Zod.
honest =
    Nobody has shown yet that a game makes better shifters on the road. This one measures what you learn inside it, and says no more.
