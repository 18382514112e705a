### The debrief for children of about ten. What is not here is said as to grown-ups (debrief.ftl, the same names).
### No sentence has more than twelve words; short and easy words, warm and never a reproach.

## Parts that several sentences have. A language that bends them in another way writes out the choice in the sentence
## itself and leaves these alone.

# Which hill of the road. $pitch (Number): from 1. $pitches (Number): how many there are.
pitch =
    { $pitches ->
        [1] the hill
       *[other] hill { $pitch }
    }
pitch-begins =
    { $pitches ->
        [1] The hill
       *[other] Hill { $pitch }
    }
pitch-title =
    { $pitches ->
        [1] The hill
       *[other] Hill { $pitch }
    }
# A place seen from where the hill begins. $metres: a distance with its unit, like "12 m".
near =
    { $side ->
        [at] right where the hill starts
        [after] { $metres } after the hill starts
       *[before] { $metres } before the hill starts
    }
# The same as a place to aim for.
aim =
    { $side ->
        [at] right where it starts
        [after] right where it starts
       *[before] about { $metres } before the hill starts
    }
# Small numbers are written as words. $gears (Number): from 1.
gears =
    { $gears ->
        [1] one gear
        [2] two gears
        [3] three gears
        [4] four gears
        [5] five gears
        [6] six gears
        [7] seven gears
        [8] eight gears
        [9] nine gears
        [10] ten gears
       *[other] { $gears } gears
    }
# $made (Number): from 0.
made-gears =
    { $made ->
        [0] no gears
        [1] one gear
        [2] two gears
        [3] three gears
        [4] four gears
        [5] five gears
        [6] six gears
        [7] seven gears
        [8] eight gears
        [9] nine gears
        [10] ten gears
       *[other] { $made } gears
    }
# $seconds (Number): from 1.
seconds =
    { $seconds ->
        [1] one second
        [2] two seconds
        [3] three seconds
        [4] four seconds
        [5] five seconds
        [6] six seconds
        [7] seven seconds
        [8] eight seconds
        [9] nine seconds
        [10] ten seconds
       *[other] { $seconds } seconds
    }
# $heavy (Number): from 1.
heavy-shifts =
    { $heavy ->
        [1] one shift
        [2] two shifts
        [3] three shifts
        [4] four shifts
        [5] five shifts
        [6] six shifts
        [7] seven shifts
        [8] eight shifts
        [9] nine shifts
        [10] ten shifts
       *[other] { $heavy } shifts
    }
# When somebody shifted. Also on the buttons of the question.
timing =
    { $timing ->
        [too-early] too soon
        [too-late] too late
       *[about-right] just right
    }
# One of the five marks, as a name.
mark =
    { $mark ->
        [cadence] Leg speed
        [foresight] Ready in time
        [easing] Soft shifts
        [chainLine] Straight chain
       *[economy] Calm hands
    }

## The question before anything is explained, and its answer

guess-title = Have a guess
# The buttons under it say the rest: see "timing".
guess-question = On { pitch }, did you shift …
guess-openQuestion = On your hardest hill, did you shift …
guess-why = No shift where you needed one is too late. Then we look at your ride.
guess-skip = Just show me
guess-working = We are looking for the best ride …
guess-notMarked = We could not work out your marks now. A kept ride gets them next time.
guess-matched = Yes! It was { timing }.
# $guess: what the child said.
guess-differed =
    { $guess ->
        [too-early] You said “too soon”. It was { timing }.
        [too-late] You said “too late”. It was { timing }.
       *[about-right] You said “just right”. It was { timing }.
    }
guess-matchedKind = Good eyes!
guess-differedKind = It is hard to tell while you ride.
guess-noPitch = This road had no steep hill.
# $own and $best: where the child and the best ride shifted first. $ownMetres, $bestMetres: like "12 m".
guess-where =
    { $own ->
        [never] You did not shift.
        [at] You shifted right where the hill starts.
        [after] You shifted { $ownMetres } after the hill starts.
       *[before] You shifted { $ownMetres } before the hill starts.
    } { $best ->
        [never] The best ride did not shift.
        [at] The best ride did it right where the hill starts.
        [after] The best ride did it { $bestMetres } after the hill starts.
       *[before] The best ride did it { $bestMetres } before the hill starts.
    }
# $made (Number): easier gears before the hill, from 0. $needed (Number): those of the best ride.
guess-stepsBefore =
    { $made ->
        [0] You did not shift in time. The best ride shifted { needed-gears }.
       *[other] You went { made-gears } easier in time. The best ride shifted { needed-gears }.
    }
needed-gears =
    { $needed ->
        [0] no gears
        [1] one gear
        [2] two gears
        [3] three gears
        [4] four gears
        [5] five gears
        [6] six gears
        [7] seven gears
        [8] eight gears
        [9] nine gears
        [10] ten gears
       *[other] { $needed } gears
    }
guess-slowest = Your legs got too slow on the hill.

## What became of the ride

end-passed = You did it!
end-not-yet = Good try. The hill waits for you.
end-ridden = You rode all of it.
end-explain = Look at your ride

## Three sentences: what went well, one thing to try, what to ride next

well-title = You did well
well-finished = You rode all the way.
well-cadence = Your legs went round at a good speed.
well-foresight = You had the right gear before the hill.
well-easing = You pushed softly while you shifted.
well-chainLine = Your chain ran nice and straight.
well-economy = You did not play with the gears.

change-title = Try this
# What to do next time. $ready (Number): easier gears, from 1.
advice = Go { ready-gears } easier, { aim }.
ready-gears =
    { $ready ->
        [1] one gear
        [2] two gears
        [3] three gears
        [4] four gears
        [5] five gears
        [6] six gears
        [7] seven gears
        [8] eight gears
        [9] nine gears
        [10] ten gears
       *[other] { $ready } gears
    }
# $how: whether it was only slightly late.
change-late-pitch =
    { $how ->
        [slightly] You waited a bit long on { pitch }. { advice }
       *[clearly] You waited too long on { pitch }. { advice }
    }
change-stayed = You stayed in a hard gear on { pitch }. { advice }
change-early-pitch =
    { $how ->
        [slightly] You shifted a bit soon on { pitch }. Wait, and shift { aim }.
       *[clearly] You shifted too soon on { pitch }. Wait, and shift { aim }.
    }
change-few-steps =
    { $which ->
        [few] You went { made-gears } easier on { pitch }. You need { $gears ->
            [1] one
            [2] two
            [3] three
            [4] four
            [5] five
            [6] six
            [7] seven
            [8] eight
            [9] nine
            [10] ten
           *[other] { $gears }
        }.
       *[hard] Your gear was too hard on { pitch }. Go one gear easier.
    }
change-wrong-way = You shifted harder at { pitch }, not easier. { advice }
change-pushed = You pushed very hard on { pitch }. { advice }
change-foot-down = The gear was too hard on { pitch }. { advice }
# Shifts under pressure: on sprockets, in a hub, with a motor that pulls on the chain, and with both.
change-ease =
    { $heavy ->
        [0] Push a bit softer while you shift.
       *[other] You pushed hard in { heavy-shifts }. Push softly, then shift.
    }
change-ease-hub =
    { $heavy ->
        [0] Stop pushing for a moment when you shift.
       *[other] You pushed in { heavy-shifts }. Stop pushing, shift, push again.
    }
change-ease-motor =
    { $heavy ->
        [0] Wait a bit until the motor stops, then shift.
       *[other] The motor pulled in { heavy-shifts }. Soft feet, wait, shift.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Wait a bit until the motor stops, then shift.
       *[other] The motor pulled in { heavy-shifts }. Stop pushing, wait, shift.
    }
change-stood-still = Your legs stood still when you shifted. Turn them softly.
# $place: a distance along the road, like "230 m".
change-coasted = Your legs did nothing for { seconds } from { $place }. Keep them going round.
change-coasted-hub = Your legs did nothing for { seconds } from { $place }. Push on after your shift.
change-slow-legs = Your legs were slow, most of all from { $place } ({ seconds }). Pick an easier gear.
change-fast-legs = Your legs were fast, most of all from { $place } ({ seconds }). Pick a harder gear.
change-crossed = The chain was not straight for { seconds } from { $place }. Use the other front ring.
# $changes, $needed (Number): gears.
change-fidget =
    { $changes ->
        [one] You shifted { $changes } time. You need { $needed ->
            [0] none
           *[other] only { $needed }
        }. Wait a bit more.
       *[other] You shifted { $changes } times. You need { $needed ->
            [0] none
           *[other] only { $needed }
        }. Wait a bit more.
    }
change-dawdle = You rode very slowly. Keep your legs going and ride on.
change-nothing = Nothing at all. Do it just like that again!

next-title = Next ride
next-again = Ride this road again. Think only of the one thing to try.
# $level: the title of a level.
next-onwards = Go on to “{ $level }”.
next-onwardsNone = Pick any road you like.
next-easier-level = Ride an easier road first. Then come back.

## A card for each hill

cards-title = Hill by hill
card-needed = Gears the best ride took
card-before = Yours before the hill
card-worst = Slowest legs on the hill
card-bestDoes = Here the best ride goes { gears } easier. It begins { near }.
card-bestStays = The best ride does not shift here.
card-asksNothing = It goes without a shift, too.
card-footDown = You had to put a foot down here.
card-timing =
    { $timing ->
        [too-early] Too soon
        [too-late] Too late
       *[about-right] Just right
    }
# The same where it was right, or nearly.
card-tendency =
    { $timing ->
        [too-early] A bit soon
        [too-late] A bit late
       *[about-right] Just right
    }
card-watch = Watch this hill
# Read aloud in place of a picture.
card-picture = Where both rides shifted on { pitch }
card-table = Shifts on this hill

## The marks

asks-cadence = Your legs go round at a good speed.
asks-foresight = The gear is right before the hill.
asks-easing = You push softly while you shift.
asks-chainLine = The chain runs straight.
asks-economy = You shift only when you have to.
noMark-cadence = You did not pedal long enough.
noMark-foresight = There was no steep hill for you.
noMark-easing = You did not shift at all.
noMark-chainLine = There was nothing to look at here.
noMark-economy = There was nothing to count.
# $most, $atLeast (Number): marks of 100. $share: like "60 %".
hold-weakest = You get at most { $most } while “{ mark }” is so low.
hold-pace = You rode slowly. So you keep only { $share }.
hold-tooSlow = You rode so slowly that it does not count.
hold-lessonMissing = You need { $atLeast } in “{ mark }” to pass.
hold-markMissing = You need { $atLeast } in “{ mark }”, too.
level-strong = great
level-good = good
level-onTheWay = getting there
level-start = start here
perfect = All good here.
small = Nearly all good here.
leftAlone = You pushed no lever. This road needs it.

## Why a mark is what it is (why-…), and what would have changed it (better-…: goes on after "Better:")

# $from: where, like "230 m".
why-below-band = Your legs were slow for { seconds } from { $from }.
better-below-band = shift easier when your legs get slow.
why-above-band = Your legs were fast for { seconds } from { $from }.
better-above-band = shift harder when it goes down.
why-coasted = Your legs did nothing for { seconds } from { $from }.
better-coasted = keep your legs going round.
better-coasted-hub = push on after your shift.
why-overloaded-pitch = { pitch-begins } was hard on your legs.
better-overloaded-pitch = shift before the hill starts.
why-early-pitch = You were ready for { pitch } too soon.
better-early-pitch = wait a bit with your shift.
why-foot-down-pitch = You put a foot down on { pitch }.
better-foot-down-pitch = shift easier before it gets steep.
why-heavy-shift = You pushed hard in the shift at { $from }.
better-heavy-shift = push softly, then shift.
better-heavy-shift-hub = stop pushing, shift, push again.
better-heavy-shift-motor = wait a bit longer until the motor stops, too.
why-waited-shift = The chain had to wait at { $from }. Your legs stood still.
better-waited-shift = turn your legs softly when you shift.
why-crossed = The chain was not straight for { seconds } from { $from }.
better-crossed = use the other front ring.
# $changes, $needed (Number): gears.
why-many-shifts =
    { $changes ->
        [one] You went through { $changes } gear. You need { $needed ->
            [0] none
           *[other] only { $needed }
        }.
       *[other] You went through { $changes } gears. You need { $needed ->
            [0] none
           *[other] only { $needed }
        }.
    }
better-many-shifts = just roll over small bumps.
why-undone = You shifted at { $from } and then back again.
better-undone = wait a bit with each new gear.

closed = Guess first. Then you see the rest.

## The printed sheet: labels with their values, as on the cards of the hills

print-pitchTitle = { pitch-title }.
# $needed (Number): easier gears. $before, $made (Number): gears. $own, $best (Number): turns of the pedals a minute.
print-pitch =
    { $made ->
        [0] Gears you need: { $needed }. Yours before the hill: none made. Slowest legs: { $own } rpm (best { $best }).
       *[other] Gears you need: { $needed }. Yours before the hill: { $before } of { $made } made. Slowest legs: { $own } rpm (best { $best }).
    }
