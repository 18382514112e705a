### The progress page: check rides and what they can show, marks of all rides, and what is kept without marks.

title = Progress
intro = Check rides tell whether something was learned. Practice rides tell where to practise.
road = On the road: what recorded rides show
empty = No ride is kept here yet. Ride first; your marks will be here afterwards.
# $rides (Number): from 1. The legs of the game: how it works out what a rider can do.
older =
    { $rides ->
        [1] One ride was ridden before the legs of the game changed. It keeps the marks it got; it cannot be ridden again or compared with newer ones.
        [one] { $rides } ride was ridden before the legs of the game changed. It keeps the marks it got; it cannot be ridden again or compared with newer ones.
       *[other] { $rides } rides were ridden before the legs of the game changed. They keep the marks they got; they cannot be ridden again or compared with newer ones.
    }

## Check rides

check-title = Check rides
check-what = A check ride is a road you have not seen, without any help. Ride one before you practise and one on another day. Up to three on each day are taken together: the more, the smaller the change that shows.
# $everyone, $children (Numbers): minutes of the check ride, and of the one for children, with the bike and rider that are chosen.
check-minutes = On your bike it takes about { $everyone } min, the children’s about { $children } min.
check-own-hub = A hub is checked at stop lines as well: your road has two.
check-own-crank-motor = A motor pulls on the chain as well: on two hills of your road you change while it pulls.
check-own-wheel-motor = With speed the motor helps no more: two hills of your road come just then.
check-ride-everyone = Ride a check ride
check-ride-children = Check ride for children
check-group = Bike and road
# $bike: the name of a bike.
check-groupOf =
    { $road ->
        [children] { $bike }, children’s check ride
        [hub] { $bike }, stop lines for hubs
        [hub-children] { $bike }, children’s stop lines for hubs
        [crank-motor] { $bike }, hills that steepen, for a motor at the crank
        [wheel-motor] { $bike }, fast hills for a motor in the wheel
       *[everyone] { $bike }
    }
# By how much it changed, within the sentences below. $points (Number): of 100, from 0.
change =
    { $way ->
        [up] { $points } up
        [down] { $points } down
       *[same] the same
    }
days =
    { $days ->
        [one] a day
       *[other] { $days } days
    }
# $first, $latest (Number): totals of 100.
finding-need-first = No check ride yet.
finding-need-second = Your first check ride came to { $first } of 100. Practise, then ride another one, best on another day.
# $certain: whether it is more than chance makes.
finding-same-day =
    { $certain ->
        [yes] From { $first } to { $latest } on one day: { change }, more than chance alone usually makes. Whether it stays shows on another day.
       *[no] From { $first } to { $latest } on one day: { change }. Chance alone makes such a difference. Ride another one on another day.
    }
# $chance (Number): so many points up or down can be chance.
finding-retest =
    { $certain ->
        [better] From { $first } to { $latest }, { days } later, without help: { change }, give or take { $chance }. That is learning, inside this game.
        [worse] From { $first } to { $latest }, { days } later, without help: { change }, give or take { $chance }. Tired, or out of practice? Ride another one.
       *[no] From { $first } to { $latest }, { days } later, without help: { change }, give or take { $chance }. That cannot be told from chance.
    }
role-first = first
role-same-day = same day
role-retest = another day
# Beside the area of the chart that it explains.
check-chance = Less than { $points } points from the first: chance alone can make that.
# $before, $after (Number): rides of the first and of the latest day, from 1. $most (Number): that many can be taken.
check-sides =
    { $which ->
        [all] Taken together: { $before } rides of the first day and { $after } of the latest.
       *[few] Taken together: { $before } of the first day and { $after } of the latest. { $most } each would show a smaller change.
    }
# Read aloud in place of the chart. $rides (Number): from 1.
check-desc =
    { $rides ->
        [1] One check ride: { $first } of 100.
       *[other] { $rides } check rides in the order they were ridden. The first came to { $first } of 100, the latest to { $latest }.
    }
check-table = Check rides in numbers

## What this can show

limits-title = What this can show, and what it cannot
limits =
    Practice rides have help, and roads you get to know. Their marks can rise without learning, and fall while you practise something hard. So they are not compared here.
    Check rides are equally hard and always new. One by itself says little: compare the first with one on another day, on the same bike.
    All of it is about this game. Nobody has shown that better marks here make better shifting on a road.

## Marks of all rides, as small charts

marks-title = Marks of all rides
marks-hint = Oldest on the left. For finding what to practise, not for proving progress.
# Before the choice of a level.
marks-which = Rides of
marks-all = all levels
mark-cadence = Cadence
mark-foresight = Foresight
mark-easing = Soft feet
mark-chainLine = Chain line
mark-economy = Economy
mark-total = All together
# Before the number of the latest ride.
marks-latest = latest
marks-none = nothing to judge yet
kind-ride = practice
kind-check = check ride
kind-clinic = in a clinic
# Read aloud in place of a chart. $name: of the mark. $rides (Number): from 1. $first, $latest (Number): of 100.
marks-desc =
    { $rides ->
        [1] { $name }: one ride, { $first } of 100.
       *[other] { $name }: { $rides } rides, from { $first } to { $latest } of 100.
    }
marks-shown = The latest { $shown } of { $all } rides.
marks-table = The same in numbers
table-date = Date
table-level = Level
table-kind = Kind
table-role = Which
table-total = Total
table-passed = Passed
table-yes = yes
table-no = no

## Rides that are kept without marks

unmarked-title = Kept without marks
# Goes on after the title of the level and a comma. $date: when it was ridden.
standing-to-mark = { $date }: not marked yet; the game tries again when it is opened
standing-unfinished = { $date }: broke off before the finish, so it gets no marks
standing-older = { $date }: ridden before the legs of the game changed, so it can no longer be ridden again and marked
