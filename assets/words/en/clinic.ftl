### Group sessions: plans, handing the device round, the group picture, the report. $name is an animal like “Red fox”, or a
### name somebody chose.

# Small numbers in words, where the language writes them so: in a sentence, and at its beginning.
number =
    { $count ->
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
       *[other] { $count }
    }
numberFirst =
    { $count ->
        [1] One
        [2] Two
        [3] Three
        [4] Four
        [5] Five
        [6] Six
        [7] Seven
        [8] Eight
        [9] Nine
        [10] Ten
       *[other] { $count }
    }

title = Clinic
intro = A group, one road, and something to talk about. No names, no accounts: animals will do.
back = Clinic
opening = The sessions on this device are being opened …
elsewhere = The clinic went on in another tab of this browser. One tab at a time keeps the rides.
goOnHere = Go on here
openFailed = The clinic could not be fetched. Load the page anew, then try again.

## The first page: go on with a session, or choose a plan

# $plan: title of the plan of a session that is not over.
home-goOn = Go on: { $plan }
# $ridden and $all (Number): rides of the session.
home-next = Next: { $name } · { $ridden } of { $all } ridden
home-waiting = { $ridden } of { $all } ridden
home-ready = Ready plans
home-saved = Your plans
home-own = Make a plan
home-teach = Session plans
home-teachHint = What to say, drills for outside, sheets to print
home-join = Join a session
home-joinHint = Take a plan from another device
home-store = A club’s own store
home-storeHint = Off unless you give an address
home-ownHint = levels, attempts, help, order
home-sessions = Sessions on this device
# $date: like “27 November”.
home-session =
    { $date } · { $riders ->
        [one] { $riders } rider
       *[other] { $riders } riders
    } · { $rides ->
        [one] { $rides } ride
       *[other] { $rides } rides
    }
# What the buttons of a session are called when they are read out.
home-open-round = Hand round: { $plan }
home-open-picture = Group picture: { $plan }
home-open-report = Report: { $plan }
home-change = Change a copy
home-forget = Delete plan
home-forgetKeep = Keep it
home-forgetSure = Delete it for good
home-children = For children
home-everyone = For everyone
home-missing = A level of this plan is not on this device.

## A plan in a line

# $bike: the name of a bike, or facts-ownBike.
facts =
    { $count ->
        [1] one attempt each · { $bike }
       *[other] { number } attempts each · { $bike }
    }
facts-ownBike = bike set on this device

## Who rides

go-title = Who rides?
go-intro = Say how many; everybody gets an animal. Tap one to swap it. Late-comers can join at any time.
go-count = Riders
go-fewer = One rider fewer
go-more = One rider more
go-swap = { $name }: swap for another
go-onlyHandOut = Nobody rides here: only hand it out to tablets
go-start = Go
# Under the button that begins. $plan: title of the plan.
go-startHint =
    { $riders ->
        [one] { $plan } · { $riders } rider, one after the other
       *[other] { $plan } · { $riders } riders, one after the other
    }

## How long a plan takes

# $count (Number): rides of each rider.
minutes-who =
    { $riders ->
        [one] { $riders } rider
       *[other] { $riders } riders
    }, { $count ->
        [1] one ride
       *[other] { number } rides
    } each
minutes-about =
    { $minutes ->
        [1] about a minute
       *[other] about { $minutes } minutes
    }
minutes-whoAbout = { minutes-who }: { minutes-about }
# Stands before buttons, each with a way that is shorter.
minutes-tooLong = Longer than { $most } minutes on one device. Shorter:
minutes-attempts =
    { $count ->
        [1] One attempt each
       *[other] { numberFirst } attempts each
    }: { minutes-about }
minutes-road = Only “{ $road }”: { minutes-about }
minutes-devices = { numberFirst } tablets: { minutes-about }
minutes-two = Two or more at a tablet
minutes-left =
    { $minutes ->
        [1] about a minute left
       *[other] about { $minutes } minutes left
    }
minutes-noneLeft = all ridden
# $behind (Number): how many minutes later than planned.
minutes-leftBehind =
    { $behind ->
        [one] { minutes-left }, { $behind } minute behind
       *[other] { minutes-left }, { $behind } minutes behind
    }

## A plan of one’s own

form-title = Your plan
form-name = Title
form-nameHint = for example: Tuesday, first hills
form-rides = What is ridden
form-ridesHint = In the order you choose them.
form-ownLevels = Your own levels
form-attempts = Attempts each
form-attemptsFewer = One attempt fewer
form-attemptsMore = One attempt more
form-seed = The road

form-seeds-same = the same each time
form-seeds-fresh = another one of its kind each attempt
form-bike = Bike
form-ownBike = The one set on this device
form-rider = Rider
form-byBike = The one that suits the bike
form-byFeel = Everybody chooses by feel
form-aids = Help while riding

form-aidsNames-as-level = as in the level
form-aidsNames-none = none
form-aidsNames-all = all of it
form-shows = The group sees

form-showsNames-own-marks = own marks only
form-showsNames-group-picture = the group picture
form-showsNames-table = a table as well
form-order = Order

form-orders-rotate = in turn
form-orders-free = whoever wants
form-save = Save plan
form-saveAndGo = Save and choose riders
form-problems = Not yet:
form-noRide = Choose at least one thing to ride.
form-noTitle = Give the plan a title.

## One session

tabs-round = Hand round
tabs-picture = Group picture
tabs-report = Report
tabs-tablets = Tablets
tabs-label = Session

## Several devices in one session

tablets-intro = With several devices each one rides for itself. Nothing needs a network.

tablets-out-title = Hand out the plan
tablets-out-hint = Other devices take it by code, link or file.

tablets-back-title = Hand back the rides
tablets-back-hint = What was ridden on this device, for the coach.

tablets-collect-title = Collect the rides
tablets-collect-hint = What came back, from where, and what is missing.

## Handing one device round

round-next = Next
round-turn = attempt { $attempt } of { $all }
round-start = Start
round-startFor = Start the ride of { $name }
round-skip = Skip for now
round-later = Comes back later
round-remove = Remove
round-removeWho = Remove { $name }
round-laterWho = { $name } comes back later
round-back = Is back
round-backWho = { $name } is back
round-chooseWho = { $name } rides next
round-give = Somebody else rode
round-giveTitle = Who rode?
round-giveSays = The ride then counts for them. Whoever stood here keeps their turn.
round-giveKeep = It was right
round-add = Add a rider
round-addPlus = + Add a rider
round-undo = Take the last ride back
round-undoWho = The last ride of { $name } will not count. It can be ridden again.
round-keep = Keep it
round-line = In line
round-nobodyInLine = Nobody.
round-away = Back later
# $riders (Number): how many.
round-gone = Gone home ({ $riders })
round-left =
    { $rides ->
        [one] { $rides } ride left
       *[other] { $rides } rides left
    }
round-riding = { $name } was riding
round-ridingSays = The ride came to no end, so it does not count.
round-rideAgain = Ride again
round-notNow = Not now
round-marking = The ride is being marked …
round-notMarked = The ride could not be marked now. It is kept: load the page anew, and it is tried again. Riding again takes its place.
round-debrief = Whole debrief
round-ridden = { $name } has ridden
round-total = Total
round-nextRider = Next rider
round-goOn = Go on
round-nobody = Nobody is here yet
round-nobodySays = Add a rider to begin.
round-waiting = Waiting for those who come back
round-done = Everybody has ridden
round-doneSays = Time to look at it together.
round-toPicture = To the group picture
round-feel = How do you ride?
round-noLevel = The level of this ride is not on this device.
round-notKept = This could not be kept on the device. Going on works, but a reload would lose it.
round-fullRound = More riders do not fit in one round.
round-taken = This name is taken.
round-addTitle = Who is here?
round-addOwn = Or a name of your own choice
round-addOwnHint = Not a real one. At most 20 characters.
round-addThis = Add
round-others = Other animals

## One line about a ride that is over

remark-none = No pitch asked for a shift.
remark-fine =
    { $count ->
        [1] The pitch was ridden in time.
       *[other] All { number } pitches were ridden in time.
    }
# $pitch (Number): which pitch of the road, from 1. $distance: like “12 m”.
remark-early = Pitch { $pitch }: too early, { $distance } before the foot. Wait a little.
remark-lateAfter = Pitch { $pitch }: too late, { $distance } after the foot. Shift before it.
remark-lateBefore = Pitch { $pitch }: late, only { $distance } before the foot. Shift sooner.
remark-notFinished = Pitch { $pitch }: the shifts were not finished at its foot. Go on clicking before it.
remark-never = Pitch { $pitch }: no easier shift was made for it.
remark-earlyNoPlace = Pitch { $pitch }: too early. Wait a little.
remark-gear = Pitch { $pitch }: shifted in time, but not into the right gear.

## The group picture

picture-working = The group picture is being counted …
picture-failed = The picture could not be counted. Load the page anew, then open it again.
picture-none = No ride yet. The picture grows with every ride.
picture-closed = In this plan everybody sees their own marks only.
picture-apart =
    { $rides ->
        [one] { $rides } ride did not come out as the marks say, and is not counted here.
       *[other] { $rides } rides did not come out as the marks say, and are not counted here.
    }
picture-otherVersion =
    { $rides ->
        [one] { $rides } ride came from another version of the game: the marks count as they came, but they cannot be ridden again here.
       *[other] { $rides } rides came from another version of the game: the marks count as they came, but they cannot be ridden again here.
    }
picture-open = Show it to the group all the same
picture-road = Road
picture-roadName =
    { $rides ->
        [one] { $road } ({ $rides } ride)
       *[other] { $road } ({ $rides } rides)
    }

picture-boards-where = Along the road
picture-boards-caught = Pitch by pitch
picture-boards-timing = When
picture-boards-change = First and last
picture-boards-table = Table
picture-label = What is shown
picture-talk = Talk with children
picture-show = Show the answer
picture-hide = Ask again
picture-guess = First guess, then look.
picture-rides =
    { $rides ->
        [one] { $rides } ride
       *[other] { $rides } rides
    } by { $riders ->
        [one] { $riders } rider
       *[other] { $riders } riders
    }, without names
# $count of $all (Number) riders had trouble with it.
picture-caught =
    { $all ->
        [one] Pitch { $pitch } caught { $count } of { $all } rider
       *[other] Pitch { $pitch } caught { $count } of { $all } riders
    }

picture-wrong-late =
    { $all ->
        [one] Pitch { $pitch }: { $count } of { $all } rider too late
       *[other] Pitch { $pitch }: { $count } of { $all } riders too late
    }
picture-wrong-early =
    { $all ->
        [one] Pitch { $pitch }: { $count } of { $all } rider too early
       *[other] Pitch { $pitch }: { $count } of { $all } riders too early
    }
# $both (Number): riders who were too early at one attempt and too late at another.
picture-wrong-mixed =
    { $both ->
        [0] { $all ->
            [one] Pitch { $pitch }: of { $all } rider, { $early } too early and { $late } too late
           *[other] Pitch { $pitch }: of { $all } riders, { $early } too early and { $late } too late
        }
       *[other] { $all ->
            [one] Pitch { $pitch }: sometimes too early, sometimes too late
           *[other] Pitch { $pitch }: of { $all } riders, { $early } too early and { $late } too late, { $both } of them both
        }
    }
picture-right = No pitch was taken too early or too late
# Where the gear for the pitch was in. $group and $best: distances like “12 m”.
picture-ready =
    Group ready { $groupSide ->
        [after] { $group } after the foot
       *[before] { $group } before the foot
    }, best ride { $bestSide ->
        [after] { $best } after the foot
       *[before] { $best } before the foot
    }.
picture-neverReady =
    { $bestSide ->
        [after] Most were never ready for it, the best ride { $best } after the foot.
       *[before] Most were never ready for it, the best ride { $best } before the foot.
    }
picture-noPitch = This road has no pitch that asks for a shift
picture-noLines = These rides came without their lines; only marks can be shown.
picture-ownRoads = Everybody rode a road of their own, so there is no common line.

picture-tracks-development = Gear
picture-tracks-cadenceRpm = Cadence

picture-legend-best = best ride ready
picture-legend-middle = group ready
# Of the lines for gear and cadence.
picture-legend-lines = group: the middle, and the half around it
picture-legend-bestLine = best ride
# What the drawing shows. $length: length of the road, like “1200 m”.
picture-stripDesc =
    { $rides ->
        [one] { $rides } ride over { $length } of road: for each pitch where the group and the best ride had their gear ready, and how many riders were too early, about right and too late.
       *[other] { $rides } rides over { $length } of road: for each pitch where the group and the best ride had their gear ready, and how many riders were too early, about right and too late.
    }
picture-barOf-tooEarly =
    { $all ->
        [one] too early: { $count } of { $all } rider
       *[other] too early: { $count } of { $all } riders
    }
picture-barOf-aboutRight =
    { $all ->
        [one] about right: { $count } of { $all } rider
       *[other] about right: { $count } of { $all } riders
    }
picture-barOf-tooLate =
    { $all ->
        [one] too late: { $count } of { $all } rider
       *[other] too late: { $count } of { $all } riders
    }
picture-pitch = Pitch { $pitch }
# Riders; stands beside a pitch.
picture-caughtShort = caught { $count } of { $all }
picture-dots = One dot is one rider; a filled one was caught at least once.
picture-never = never

picture-timing-tooEarly = too early
picture-timing-aboutRight = about right
picture-timing-tooLate = too late
# $one and $other: like “60 %”, of all times a pitch was ridden.
picture-shares-late = { $one } too late, { $other } about right
picture-shares-early = { $one } too early, { $other } about right
picture-shares-mixed = { $one } too early, { $other } too late
picture-timingCount =
    { $all ->
        [one] { $count } of { $all } time over a pitch
       *[other] { $count } of { $all } times over a pitch
    }
# $better, $worse and $all (Number): riders, or pairs of rides where somebody rode several roads twice.
picture-change =
    { $worse ->
        [0] { $who ->
            [riders] { $all ->
                [one] { $better } of { $all } rider clearly better
               *[other] { $better } of { $all } riders clearly better
            }
           *[pairs] { $all ->
                [one] { $better } of { $all } pair of rides clearly better
               *[other] { $better } of { $all } pairs of rides clearly better
            }
        }
       *[other] { $who ->
            [riders] { $all ->
                [one] { $better } of { $all } rider clearly better, { $worse } clearly worse
               *[other] { $better } of { $all } riders clearly better, { $worse } clearly worse
            }
           *[pairs] { $all ->
                [one] { $better } of { $all } pair of rides clearly better, { $worse } clearly worse
               *[other] { $better } of { $all } pairs of rides clearly better, { $worse } clearly worse
            }
        }
    }
picture-changeSame = Nobody changed by more than chance makes
picture-changeNone = Nobody has ridden anything twice yet
# $chance (Number): points that mean nothing.
picture-changeSays = { $better } clearly better, { $worse } clearly worse, { $same } within what chance makes (less than { $chance } points).
picture-first = First attempt
picture-last = Last attempt
# $count (Number): riders.
picture-bins = { $low } to { $high } points: { $count }

## What children are asked, and answers

picture-question-where = When did we shift for the hill?
picture-question-caught = Which hill caught most of us?
picture-question-timing = Were we early, right, or late?
picture-question-change = Did we get better with practice?
picture-question-table = How did it go?

picture-answer-caught =
    { $all ->
        [1] Hill { $hill } caught us
       *[other] Hill { $hill } caught { $count } of { $all } of us
    }
picture-answer-nobody = No hill caught us. Well shifted!
picture-answer-noHill = No hill here asked us to click

picture-answer-where-late =
    { $all ->
        [1] Hill { $hill }: clicked too late
       *[other] Hill { $hill }: { $count } of { $all } of us clicked too late
    }
picture-answer-where-early =
    { $all ->
        [1] Hill { $hill }: clicked too early
       *[other] Hill { $hill }: { $count } of { $all } of us clicked too early
    }
picture-answer-where-mixed =
    { $all ->
        [1] Hill { $hill }: clicked too early or too late
       *[other] Hill { $hill }: { $count } of { $all } of us were early or late
    }
picture-answer-always = Right every time. Well shifted!

picture-answer-often-late = More often too late than right
picture-answer-often-early = More often too early than right
picture-answer-often-mixed = Sometimes too early, sometimes too late

picture-answer-sometimes-late = Mostly right, sometimes too late
picture-answer-sometimes-early = Mostly right, sometimes too early
picture-answer-sometimes-mixed = Mostly right, sometimes early, sometimes late
picture-answer-better =
    { $who ->
        [riders] { $all ->
            [1] { $better ->
                [0] Not clearly better yet
               *[other] Clearly better
            }
           *[other] { $better } of { $all } of us got clearly better
        }
       *[pairs] { $all ->
            [one] We got clearly better { $better } of { $all } time
           *[other] We got clearly better { $better } of { $all } times
        }
    }
picture-answer-hill = Hill { $hill }

picture-table-rider = Rider
picture-table-ride = Ride
# A ride of a plan whose level is not here.
picture-table-rideNumber = Ride { $ride }
picture-table-attempt = Attempt
picture-table-total = Total
picture-table-pitches = Pitches (%)
picture-table-none = –

## The report

report-title = Report
report-intro = A page for each road in black and white, and files for a spreadsheet or another program.
report-names = With animals and nicknames
report-namesHint = Without it the page holds no names. Files always hold nicknames.
# Name of a file, where the title of the plan has no letters: small, without spaces.
report-fileName = session
report-print = Print
report-csv = Save as CSV
report-json = Save as JSON
report-remove = Delete the session
report-sureTitle = Delete the session?
report-sure =
    { $rides ->
        [one] { $rides } ride and the round go from this device. This cannot be undone.
       *[other] { $rides } rides and the round go from this device. This cannot be undone.
    }
report-keep = Keep it
report-saveFirst = Save it first
report-removeSure = Delete it
report-sheet = Preview
report-rides =
    { $rides ->
        [one] { $rides } ride
       *[other] { $rides } rides
    }, { $riders ->
        [one] { $riders } rider
       *[other] { $riders } riders
    }
report-table = Pitches
report-pitch = Pitch
report-caught = Caught (riders)
report-timing = Early / right / late (rides)
report-group = Group ready
report-best = Best ride ready
report-ready = Ready: the gear for the pitch is in and its last shift finished.
# A headline of the group picture, which has no full stop there.
report-sentence = { $sentence }.
report-before = { $distance } before the foot
report-after = { $distance } after the foot
# As picture-changeSays.
report-attempts = First and last attempt: { $better } clearly better, { $worse } clearly worse, { $same } within what chance makes (less than { $chance } points).
report-all = Totals, attempt by attempt
report-footer = Marks come from a model of riding. They tell the timing of shifts on these roads, not the worth of a rider.
