### Session plans: what a coach says and does, drill cards, a sheet for home and a certificate, also on paper: a page each.

intro = What to say, what to ride, what to do outside on the real bike, and what to hand out.
back = All plans

audiences-adults = New adults
audiences-mixed = Mixed groups
audiences-children = Children
# A length, as short as can be.
min = { $minutes } min
sheets = To hand out
cards = Drill cards
cardsHint = Four to a page, to cut
home = Sheet for home
homeHint = For a child and the parents
certificate = Certificate
certificateHint = What was learnt, no points
own = Your copies
# Name of a file, where the title of a plan has no letters: small, without spaces.
fileName = session-plan
# Read out for a button: a length as it stands there, and for whom.
lengthFor = { $length }, { $audience }
# The title of a plan, and of the file of a copy: for whom, and how long.
planTitle = { $audience }, { $minutes } minutes
open = Open a copy
openHint = A file that was saved here before
ownGone = A copy lives in its file. Open the file again.
print = Print
change = Change a copy
save = Save as a file
done = Show the sheet
changing = Your copy
changeHint = One sentence a line. Save it as a file before you close this page.

fields-title = Title
fields-minutes = Minutes
fields-level = Road
rideRoad = Ride this road
toClinic = Begin with a group
road = Road: { $road }
noRoad = The road of this plan is not on this device.

parts-warmUp = Warm up
parts-say = Say
parts-road = Ride in the game
parts-question = Ask at the group picture
parts-drill = Outside on the real bike
parts-watch = Watch for
parts-end = At the end

# Labels before what a drill needs and so on, on a card and in a plan.
row-needs = Needs:
row-safe = Kept safe:
row-watch = Watch for:
row-easier = Easier:
row-harder = Harder:
# $drill: the title of a drill in a plan, before what is done.
drillInPlan = { $drill }.

problems-too-big = This file is too big for a session plan. Open one that was saved on this page.
problems-not-json = This file cannot be read. Open one that was saved on this page.
problems-not-a-session-plan = This file is no session plan. Open one that was saved on this page.
problems-newer-schema = A newer version of the game has saved this plan. Update this one, then open it again.
problems-dirty-text = This plan has signs in it that cannot be shown. Take them out in an editor, then open it again.

# After the cautions of cautions.ftl, on every page. Exact: somebody could be hurt.
moreCautions =
    Keep fingers away from a moving chain.
    Gears in the hub are shifted the other way round: pressure off, or standing still; then push on. With a back-pedal brake, pedals do not turn back.
    Bikes with a motor start strongly, take longer to stop and are heavy; a driven front wheel slips on wet ground: gently, and only as local law allows. At the crank: soft feet (hub: pressure off), a breath, then shift.
defers = Follow what your federation, school or licensed instructor says; they and the law of your place come before this sheet.
practice = Everything else on this page is common practice, without a source.

sources-adults =
    At most 12 riders to an instructor, two or three sessions of one to two hours; beginners one or two to an instructor (AustCycle, Australia, 2012).
    A course for adults has 9 hours, 5 of them riding (US adult course, docslib.org 11303719).
    With derailleurs, shift before it is needed and keep pedalling (Special Olympics, coaching guide, Shifting gears).
sources-mixed =
    At most 12 riders to an instructor, two or three sessions of one to two hours (AustCycle, Australia, 2012).
    England, level 1, off road: 9 to 12 riders two hours, 5 to 8 an hour and a half, 2 to 4 one hour, to an instructor (delivery guide 8.3.1).
    With derailleurs, shift before it is needed and keep pedalling (Special Olympics, coaching guide, Shifting gears).
sources-children =
    “Use their gears correctly (where the bike has gears)” is part of level 1, off road (UK cycle training standard, 2005).
    England, level 1: 9 to 12 riders two hours, 5 to 8 an hour and a half, 2 to 4 one hour, to an instructor (delivery guide 8.3.1).
    From 8 years, 15 to an instructor in practice, three hours (grade 1, New Zealand). About 9 years, with brakes and gears (level 1, Scotland, parents’ guide 2014).

homeSheet-title = For home
homeSheet-child = For you
homeSheet-childLines =
    Today I practised clicking before the hill.
    Show your family which lever makes it easier.
    Find three hills near you. Where would you click?
    Listen: is your click quiet or loud?
homeSheet-draw = Draw a hill, and a cross where you click.
homeSheet-parents = For parents
homeSheet-parentLines =
    Before each ride look at brakes, tyres, saddle, helmet. A gear that jumps or grinds is for a mechanic.
    Ride together on a quiet, flat, closed place first. An adult in charge is always there.
    Ask “What is coming?” rather than “Shift now!”. The child finds the place.
    Ten minutes are enough. Stop while it is fun, and when something hurts.
    A chain that came off is put back by an adult, with the bike standing still.
# Before a line to write on, as are the two of the certificate.
homeSheet-name = Name, if you like:

certificateSheet-title = Certificate
# Follows a line with a name.
certificateSheet-says = has practised on a bicycle, and showed:
certificateSheet-learnt =
    I look at the hill before it comes.
    I click before the hill, not on it.
    My feet are soft while the chain moves.
    I stop in the gear in which I start.
    I can say what is coming while I ride.
certificateSheet-tick = The coach ticks what was seen. The rest comes next time.
certificateSheet-date = Day and place:
certificateSheet-coach = Coach:

## Drills on the real bike, called across a yard: a title, what is done (each line a sentence), and what stands behind the labels

card-cone-title = Click at the cone
card-cone-doing =
    A cone stands ten metres before the slope, or before a chalk line.
    Ride up to it at an easy pace, eyes on the slope.
    At the cone: soft feet, one click easier, ride on.
card-cone-needs = Two cones, chalk, 40 m of quiet flat ground with a gentle slope or a line.
card-cone-safe = One rider at a time, all in one direction, six bike lengths apart. Nobody waits in the run-out.
card-cone-watch = Is the click at the cone, and done before the slope? Do the heads stay up?
card-cone-easier = No click at first: say “now” at the cone.
card-cone-harder = Take the cone away. Each chooses the place and says “now”.
card-soft-feet-title = Soft feet past the coach
card-soft-feet-doing =
    Ride past the coach at an easy pace.
    One click with soft feet, just before the coach.
    Listen: a quiet click is a good one.
card-soft-feet-needs = 40 m of quiet flat ground, and a bike whose gears were checked before.
card-soft-feet-safe = The coach stands to the side and never in the line. No fingers near a chain.
card-soft-feet-watch = Do the legs stop? They should push softly and go on turning. With a hub gear they rest; with a motor at the crank they wait a breath.
card-soft-feet-easier = Only soft feet, no click.
card-soft-feet-harder = Two clicks, one after the other, with a turn of the cranks between.
card-starting-gear-title = Stop in the starting gear
card-starting-gear-doing =
    Ride towards the stop line.
    Click easier before you brake, while the legs still turn (hub gear: stop, then click).
    Stop, one foot down, brakes on. Set off again in that gear.
card-starting-gear-needs = Chalk for a line, 30 m of quiet flat ground. Brakes tried first by each rider.
card-starting-gear-safe = One rider at a time. The next one sets off when the one before has gone. Motor: least help, gently.
card-starting-gear-watch = Is the gear in before the wheel stops? Is the first push easy, without a wobble?
card-starting-gear-easier = Stop anywhere; the coach calls the click.
card-starting-gear-harder = Without a line: stop when the coach lifts a hand.
card-talk-title = Talk and ride
card-talk-doing =
    Ride a round and say aloud what is coming: “flat”, “hill”, “stop”.
    Say “click” when you shift for it.
    The one behind only listens, and tells it afterwards.
card-talk-needs = A quiet closed round with one rise or a line that stands for one.
card-talk-safe = Three bike lengths between riders. Nobody overtakes. Nobody turns round to talk.
card-talk-watch = Is the hill said before the click, and the click before the hill?
card-talk-easier = The coach says what is coming.
card-talk-harder = Say it without a click; click where it is right, in silence.

## The plans: what a coach says and does, each line a sentence. What is said to children has at most twelve words.
## Those who lead are spoken to shortly; under “Say” stands what they call to the group.

road-20 = Two ride it on the big screen, one after the other. The rest call “now” where they would click.
road-45 = Everybody rides it once, on two devices with up to eight riders. Those who wait call “now”.
road-60 = Everybody rides it once or twice, on two devices with up to eight riders. Those who wait call “now”.

longer-adults = Each shows the lever that makes it easier, standing, with a lifted wheel and nobody’s fingers near the chain.
lines-adults-warmUp =
    Check the bikes: brakes bite, tyres are hard, saddle and bars hold, helmets sit.
    Two easy rounds; on the second one click harder and one click easier again.
lines-adults-say =
    Shift before the hill, while the pedals still turn easily.
    Push softly for one turn while the chain moves.
    One click, feel it, then the next.
lines-adults-question =
    At which pitch were most of us too late, and what could we have seen before it?
    Where would you click now? Point at the road.
lines-adults-drill = On a quiet, flat, closed place, one way round. The cards say how it is laid out and kept safe.
lines-adults-watch =
    Legs that stop before the click, clicks that come on the slope, eyes on the chain.
    Somebody who grinds: two gears easier, and the same round again. Pain means stop.
lines-adults-end =
    Each says one thing they will do before the next hill.
    Next time: the same round, with the click a little sooner or a little later.

longer-mixed = Pairs of one newer and one experienced rider; the experienced one asks and does not explain.
lines-mixed-warmUp =
    Check the bikes in pairs: brakes, tyres, saddle, bars, helmets.
    Two easy rounds in pairs, three bike lengths apart; swap who rides in front.
lines-mixed-say =
    Look up: the next hill tells you the gear.
    Finish your clicks before the hill; the last one with soft feet.
    Fast or slow does not matter today, early and quiet does.
lines-mixed-question =
    What did the best ride do before the pitch that most of us did not?
    Did the experienced riders shift sooner, or only less?
lines-mixed-drill = In pairs on a quiet closed place. The one behind says afterwards where the click came.
lines-mixed-watch =
    Experienced riders who race: give them one gear for the whole round.
    New riders who copy the one in front: their own legs say when.
lines-mixed-end =
    Each pair tells one thing they heard or saw in the other.
    Next time: pairs in the other order.

longer-children = Everybody rings, brakes and clicks once, standing still beside the coach.
lines-children-warmUp =
    An adult in charge checks every bike: brakes, tyres, saddle, helmet. Who has no gears does the drills without the click.
    Follow the leader for two rounds, slowly, one bike length behind the other.
lines-children-say =
    Click before the hill, not on it.
    Soft feet while the chain moves.
    Look at the hill, not at the chain.
lines-children-question =
    Which hill caught most of us?
    Where shall we click next time?
lines-children-drill = One child at a time, on a quiet closed place, with an adult in charge. The cards say how.
lines-children-watch =
    Feet that stop, heads that look down, children who wait in the way.
    Praise the click, not the speed. Nobody is compared with anybody.
lines-children-end =
    What will you do before the next hill?
    Show somebody at home how your bike clicks.
    Hand out the sheet for home.
