### The debrief for grown-ups. Children get what stands in debriefChildren.ftl instead, under the same names.

## Parts that several sentences have. A language that bends them in another way writes out the choice in the sentence
## itself and leaves these alone.

# Which pitch (a steep piece of road) of the road. $pitch (Number): from 1. $pitches (Number): how many there are.
pitch =
    { $pitches ->
        [1] the pitch
       *[other] { $pitch ->
            [1] the first pitch
            [2] the second pitch
            [3] the third pitch
            [4] the fourth pitch
            [5] the fifth pitch
            [6] the sixth pitch
            [7] the seventh pitch
            [8] the eighth pitch
            [9] the ninth pitch
            [10] the tenth pitch
           *[other] pitch { $pitch }
        }
    }
# The same at the beginning of a sentence.
pitch-begins =
    { $pitches ->
        [1] The pitch
       *[other] { $pitch ->
            [1] The first pitch
            [2] The second pitch
            [3] The third pitch
            [4] The fourth pitch
            [5] The fifth pitch
            [6] The sixth pitch
            [7] The seventh pitch
            [8] The eighth pitch
            [9] The ninth pitch
            [10] The tenth pitch
           *[other] Pitch { $pitch }
        }
    }
# The same as a title.
pitch-title =
    { $pitches ->
        [1] The pitch
       *[other] { $pitch ->
            [1] First pitch
            [2] Second pitch
            [3] Third pitch
            [4] Fourth pitch
            [5] Fifth pitch
            [6] Sixth pitch
            [7] Seventh pitch
            [8] Eighth pitch
            [9] Ninth pitch
            [10] Tenth pitch
           *[other] Pitch { $pitch }
        }
    }
# A place seen from the foot, where the pitch begins. $metres: a distance with its unit, like "12 m".
near =
    { $side ->
        [at] right at the foot
        [after] { $metres } after the foot
       *[before] { $metres } before the foot
    }
# The same as a place to aim for.
aim =
    { $side ->
        [at] right at the foot
        [after] just as it gets steep
       *[before] about { $metres } before the foot
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
# One sprocket or ring further is one gear change, however the lever was pushed. $changes (Number): from 0.
changes =
    { $changes ->
        [0] no gear changes
        [1] one gear change
        [2] two gear changes
        [3] three gear changes
        [4] four gear changes
        [5] five gear changes
        [6] six gear changes
        [7] seven gear changes
        [8] eight gear changes
        [9] nine gear changes
        [10] ten gear changes
       *[other] { $changes } gear changes
    }
# Begins a sentence: how many of all gear changes. $heavy (Number): from 1. $changes (Number): all of them.
some-of =
    { $which ->
        [all] { $changes ->
            [1] The one gear change was
            [2] Both gear changes were
           *[other] All { changes } were
        }
       *[some] { $heavy ->
            [1] One of { changes } was
            [2] Two of { changes } were
            [3] Three of { changes } were
            [4] Four of { changes } were
            [5] Five of { changes } were
            [6] Six of { changes } were
            [7] Seven of { changes } were
            [8] Eight of { changes } were
            [9] Nine of { changes } were
            [10] Ten of { changes } were
           *[other] { $heavy } of { changes } were
        }
    }
# Something to try: what the best ride did. $rest: whether more easier gears follow after these.
advice =
    { $rest ->
        [some] Shift { gears } easier { aim }, the rest on the way up.
       *[none] Shift { gears } easier { aim }.
    }
# When somebody shifted. Also on the buttons of the question.
timing =
    { $timing ->
        [too-early] too early
        [too-late] too late
       *[about-right] about right
    }
# One of the five marks, as a name.
mark =
    { $mark ->
        [cadence] Cadence
        [foresight] Foresight
        [easing] Soft feet
        [chainLine] Chain line
       *[economy] Economy
    }
# The same within a sentence.
mark-within =
    { $mark ->
        [cadence] cadence
        [foresight] foresight
        [easing] soft feet
        [chainLine] chain line
       *[economy] economy
    }

## The question before anything is explained, and its answer

guess-title = Guess first
# The buttons under it say the rest: see "timing".
guess-question = On { pitch }, your shifting was …
guess-openQuestion = On the pitch that cost your legs most, your shifting was …
guess-why = No shift where one was needed counts as too late. Then the ride is explained.
guess-skip = Just tell me
guess-working = The best ride on your bike is being worked out …
guess-notMarked = The marks could not be worked out now. A ride that is kept gets them later, when the game is opened again.
# How far that is. $percent: like "40 %".
guess-share = { $percent } done
guess-matched = You felt it: { timing }.
# $guess: what the rider said.
guess-differed =
    { $guess ->
        [too-early] You felt “too early”; it was { timing }.
        [too-late] You felt “too late”; it was { timing }.
       *[about-right] You felt “about right”; it was { timing }.
    }
guess-told = It was { timing }.
guess-matchedKind = Noticing it yourself is how it gets better.
guess-differedKind = Hard to feel while riding. The strip shows where.
guess-noPitch = No pitch on this road was steep enough to need a shift.
# $own and $best: where the rider and the best ride shifted first, seen from the foot. $ownMetres, $bestMetres: like "12 m".
guess-where =
    { $own ->
        [never] You stayed in your gear
        [at] Your first easier gear came right at the foot
        [after] Your first easier gear came { $ownMetres } after the foot
       *[before] Your first easier gear came { $ownMetres } before the foot
    }; { $best ->
        [never] the best ride did not shift at all.
        [at] the best ride shifted right at the foot.
        [after] the best ride shifted { $bestMetres } after the foot.
       *[before] the best ride shifted { $bestMetres } before the foot.
    }
# $made (Number): easier gears before the foot, from 0. $needed (Number): those of the best ride.
guess-stepsBefore =
    { $made ->
        [0] Before the foot you had made no easier shift; the best ride { needed }.
       *[other] Before the foot you had made { made-gears } easier; the best ride { needed }.
    }
# A number alone. $needed (Number): from 0.
needed =
    { $needed ->
        [0] none
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
       *[other] { $needed }
    }
# $own, $best (Number): turns of the pedals a minute.
guess-slowest = Your legs slowed to { $own } rpm; the best ride kept { $best }.

## What became of the ride

end-passed = You made it.
end-not-yet = The hill waits for you.
end-ridden = The road is done.
end-explain = What happened, why and where
# Stamps under it, each one word.
stamp-early = early
stamp-soft = soft
stamp-smooth = smooth
# Read aloud after the word of a stamp.
stampState-earned = done
stampState-not-yet = not yet
stampState-not-asked = not asked here

## Three sentences: what went well, one thing to change, what to ride next

well-title = Went well
well-finished = You rode it to the end.
well-cadence = Your legs kept a good rhythm nearly all the way.
well-foresight = You were in the right gear before the road asked for it.
well-easing = You let the pedals go light for every shift.
well-chainLine = You kept the chain running straight.
well-economy = You made no needless shifts.

change-title = Change one thing
# $how: whether it was only slightly late.
change-late-pitch =
    { $how ->
        [slightly] On { pitch } your easier gears came a little late for your legs. { advice }
       *[clearly] On { pitch } your easier gears came too late for your legs. { advice }
    }
change-stayed = On { pitch } you stayed in a gear that was too hard. { advice }
change-early-pitch =
    { $how ->
        [slightly] On { pitch } you got ready a little soon. Hold your gear, and shift easier { aim }.
       *[clearly] On { pitch } you got ready too soon. Hold your gear, and shift easier { aim }.
    }
change-few-steps =
    { $which ->
        [few] On { pitch } you went only { made-gears } easier. Go { gears } easier there.
       *[hard] On { pitch } your gear was still too hard. Go one gear easier there.
    }
change-wrong-way = On { pitch } you shifted harder where it needed easier. { advice }
change-pushed = On { pitch } you pushed hard instead of shifting. { advice }
change-foot-down = On { pitch } the gear was too hard and a foot went down. { advice }
# Shifts under pressure: on sprockets, in a hub, with a motor that pulls on the chain, and with both.
change-ease =
    { $heavy ->
        [0] Push the pedals more lightly while the chain moves, just for a moment.
       *[other] { some-of } made while pushing hard. Go light on the pedals for a moment, then shift.
    }
change-ease-hub =
    { $heavy ->
        [0] Take the pressure off while the hub changes, just for a moment.
       *[other] { some-of } made while you pedalled on: the hub knocked. Take the pressure off, shift, then push again.
    }
change-ease-motor =
    { $heavy ->
        [0] Give the motor a moment to let go: soft feet, wait a breath, then shift.
       *[other] { some-of } made while the motor still pulled on the chain. Soft feet, wait a breath until it lets go, then shift.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Give the motor a moment to let go: take the pressure off, wait a breath, then shift.
       *[other] { some-of } made while the motor still pulled. Take the pressure right off, wait a breath until it lets go, then shift.
    }
change-stood-still = { some-of } asked for while your legs rested. A hub likes that, a chain must run: keep turning the pedals, softly.
# $place: a distance along the road, like "230 m".
change-coasted = Your legs rested where the road wants them, longest from { $place }: { seconds }. Keep the pedals going round.
change-coasted-hub = Your legs rested where the road wants them, longest from { $place }: { seconds }. A hub needs only a moment; then push on.
change-slow-legs = Your legs turned slowly, longest from { $place }: { seconds }. One gear easier keeps them going round.
change-fast-legs = Your legs spun fast, longest from { $place }: { seconds }. One gear harder calms them.
change-crossed = The chain ran at a slant for { seconds } from { $place }. Change the chainring, and a gear at the back to match.
change-fidget = You made { changes }; the best ride needed { needed }. Wait a breath before the next one.
# $times: a written number, like "1.4".
change-dawdle = You took { $times } times as long as the best ride. Ride in the gear you can push at a good rhythm, and keep going.
change-nothing = Nothing. Do it again just like that.

next-title = Ride next
next-again = This road again: one more try, with only the one thing to change in mind.
# $level: the title of a level.
next-onwards = On to “{ $level }”.
next-onwardsNone = Any level you like: this one is yours.
next-easier-level = A gentler road first, then come back to this one.

## A card for each pitch

cards-title = Pitch by pitch
# $percent: how steep, like "8 %". $length: how long, like "120 m".
card-steep = { $percent } for { $length }
# Four labels with their values.
card-needed = Best ride, gears easier
card-before = Yours before the foot
card-ofMade =
    { $made ->
        [0] none made
       *[other] { $before } of { $made } made
    }
card-worst = Slowest legs on the pitch
card-worstPair = { $own } rpm (best { $best })
# $before (Number): how many of the gears come before the foot; $which: whether that is all of them, some, or none.
card-bestDoes =
    { $which ->
        [all] Here the best ride goes { gears } easier, all before the foot, the first { near }.
        [none] Here the best ride goes { gears } easier, none before the foot, the first { near }.
       *[some] Here the best ride goes { gears } easier, { $before ->
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
           *[other] { $before }
        } before the foot, the first { near }.
    }
card-bestStays = The best ride does not shift here.
card-asksNothing = It goes without a shift, too.
card-footDown = A foot went down here.
card-timing =
    { $timing ->
        [too-early] Too early
        [too-late] Too late
       *[about-right] About right
    }
# The same where it was right, or nearly.
card-tendency =
    { $timing ->
        [too-early] A little early
        [too-late] A little late
       *[about-right] About right
    }
card-watch = Watch this pitch
# Read aloud in place of a picture.
card-picture = Where both rides shifted on { pitch }
card-pictureDesc = The road from the side. Above it your shifts, below it those of the best ride.
card-table = Shifts on this pitch
card-who = Who
# Within the picture and the table: whose shift it is.
card-you = you
card-best = best
card-where = Where

## The marks

marks-title = Marks
# Before the total of 100.
marks-total = All together
# $pass (Number): the total from which a level is passed.
marks-passed = Passed (from { $pass })
marks-notYet = Not yet (passed from { $pass })
asks-cadence = Legs inside your band
asks-foresight = The gear ready before the hill
asks-easing = Light pedals while shifting
asks-chainLine = A straight chain
asks-economy = No needless shifts
noMark = no mark
noMark-cadence = You did not pedal long enough to judge.
noMark-foresight = No pitch of this ride asked for a shift.
noMark-easing = You did not shift, so there was nothing to be soft for.
noMark-chainLine = Nothing to judge: one chainring, or no shift at all.
noMark-economy = There was nothing to count.
# $most, $atLeast (Number): marks of 100. $share: like "60 %".
hold-weakest = { mark } keeps the total down: with this mark it is at most { $most }.
hold-pace = You took { $times } times as long as the best ride. That leaves { $share } of the total.
hold-tooSlow = You took { $times } times as long as the best ride. At that pace there is no total.
hold-lessonMissing = This road is about { mark-within }: to pass it, get at least { $atLeast } there.
hold-markMissing = To pass, get at least { $atLeast } in { mark-within }, too.
level-strong = strong
level-good = good
level-onTheWay = on the way
level-start = start here
perfect = Nothing was lost here.
small = Only little things were lost here.
leftAlone = No lever was pushed where the road asked for it.
# Unfolds more reasons. $more (Number): 1 to 5.
more =
    { $more ->
        [1] One more
        [2] Two more
        [3] Three more
        [4] Four more
        [5] Five more
       *[other] { $more } more
    }
# Stands before the advice of a reason (better-…).
better = Better:

## Why a mark is what it is (why-…), and what would have changed it (better-…: goes on after "Better:")

# $from: where, like "230 m". $rpm (Number): turns of the pedals a minute.
why-below-band = Slow legs for { seconds } from { $from }, down to { $rpm } rpm.
better-below-band = shift easier as soon as the legs begin to slow.
why-above-band = Fast legs for { seconds } from { $from }, up to { $rpm } rpm.
better-above-band = shift harder when the road lets you go.
why-coasted = Your legs rested for { seconds } from { $from }, where the best ride pedals.
better-coasted = keep the pedals going round on the flat and uphill.
better-coasted-hub = push on as soon as the hub has its gear.
# $percent: like "40 %".
why-overloaded-pitch = { pitch-begins } leaned on your legs: { $percent } of what good timing saves was lost.
better-overloaded-pitch = begin to shift before the foot.
why-early-pitch = You got ready for { pitch } too soon: { $percent } of what good timing saves was lost.
better-early-pitch = hold your gear a little longer.
why-foot-down-pitch = A foot went down on { pitch }.
better-foot-down-pitch = have an easy gear before it gets steep.
# $derailleur: the one at the front moves the chain from ring to ring.
why-heavy-shift =
    { $derailleur ->
        [front] Ring change under pressure at { $from }, at { $percent } of steady pressure.
       *[rear] Shift under pressure at { $from }, at { $percent } of steady pressure.
    }
better-heavy-shift = soft feet for half a turn, then shift.
better-heavy-shift-hub = take the pressure off, then the hub takes its gear.
better-heavy-shift-motor = let go a breath sooner, until the motor has let go, too.
why-waited-shift = At { $from } the chain waited: your legs rested.
better-waited-shift = keep turning the pedals, softly, while it moves.
why-crossed = The chain ran at a slant for { seconds } from { $from }.
better-crossed = change the chainring sooner.
why-many-shifts = You made { changes }; the best ride { needed }.
better-many-shifts = let short rises roll by.
why-undone = A shift at { $from } was taken back at once.
better-undone = give a new gear three turns of the pedals.

## What can be done now

doing-title = And now
doing-again = Ride again
# $level: the title of a level.
doing-next = Next: { $level }
doing-watch = Watch from the start
doing-print = Print
doing-saveRide = Save the ride
doing-savePicture = Save a picture
doing-pictureFailed = This browser could not draw the picture. Printing works too.
doing-backToGroup = Back to the group
doing-backToBench = Back to the level bench
# A link to the page of recorded rides, after a pitch of one was ridden again.
doing-besideRoad = Beside your ride on the road
# A child's first ride of a lesson. $lesson: like "Cadence".
freshPatch = A new patch is yours: { $lesson }.
differs = Ridden again, this recording came out a little differently. The picture may be off.
closed = The rest opens when you have guessed.

## Whether the ride is kept, and why not

saved-saving = Keeping the ride …
saved-saved = This ride is kept on this device.
saved-not-saved = This ride was not kept.
notSaved-private-window = This ride is not kept: the browser keeps nothing in this window. Save it as a file, or open a normal window.
notSaved-disk-full = This ride is not kept: the device has no room left. Save it as a file, or make room; the game will try again.
notSaved-connection-lost = This ride is not kept yet: the browser lost its store. Save it as a file; the game will try again.
notSaved-newer-version = This ride is not kept: a newer version of the game has been here. Load the page anew to update.
notSaved-blocked = This ride is not kept: another tab of the game is in the way. Close it; the game will try again.
notSaved-hangs = This ride is not kept yet: the browser does not answer. Save it as a file to be safe.
notSaved-corrupt = This ride is not kept: something stored here cannot be read. Save it as a file.
notSaved-somebody-else = This ride was ridden together with others and is not kept here. Save it as a file.
notSaved-trial = A test ride is not kept.
notSaved-not-judged = This ride could not be worked out, so it is not kept. Save it as a file.
notSaved-not-fetched = This ride is not kept yet: a part of the game could not be fetched. Check the connection; the game will try again. Save it as a file to be safe.
notSaved-localBackup = Its marks are kept, the ride itself is not.

## The printed sheet

print-title = Before the Hill: a ride
print-subtitle = { $level } · { $bike } · { $rider }
print-legend = Black: you. Grey: the best ride found for this bike and rider. Dot: clean shift; half: a bit heavy; triangle: heavy. Cross: a foot went down.
# $total (Number): of 100.
print-marks = { marks-title }. { marks-total }: { $total }.
print-pitchTitle = { pitch-title }.
# $needed (Number): easier gears.
print-pitch = { card-needed }: { $needed }. { card-before }: { card-ofMade }. { card-worst }: { card-worstPair }.
