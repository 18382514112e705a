### The level bench, where people make roads of their own: from nothing, or from a recorded ride. Lengths, heights,
### speeds, gradients and shares come in written, with their units.

intro = Make a road to practise on: from your head, or from one that was really ridden.
opening = The bench is being set up …
openFailed = The bench could not be fetched. Load the page anew, then try again.
# Read aloud for a button among several of its kind. $doing: its label. $what: a level, a piece of road, or a sentence.
named = { $doing }: { $what }
# From one number to another, as they stand beside a field or a drawing.
range = { $low } to { $high }

## The first page: ways to begin, and what was made

home-make = Make a level
home-fresh = A new road
# The line under the title of such a level.
home-freshSentence = Made at the level bench.
home-freshHint = Flat, pitch, flat: change it from there.
home-roadHint = Sunday’s ride, or its hardest { $length }.
home-file = Open a level file
home-fileHint = A .json file that somebody saved here.
home-copy = Begin with a level of the game
home-copyHint = A copy; the level itself stays.
home-choose = Level
home-copyButton = Copy it
home-own = Your levels
home-none = None yet. What you save here is also on the Levels page.
home-ride = Ride
home-edit = Change
home-duplicate = Duplicate
home-remove = Delete
home-removed = “{ $title }” is deleted.
home-restored = “{ $title }” is back.
home-duplicated = “{ $title }” was added.
home-unsaved = “{ $title }” is on the bench and not saved.
home-goOn = Go on with it
home-drop = Drop it
home-facts = { $length }, up to { $steepest }

## A level is to be opened while another is not saved

leave-title = Not saved yet
leave-text = “{ $title }” has changes that are not saved. What should become of them?
leave-keep = Go back to it
leave-drop = Drop the changes

## Saving

keep-save = Save
keep-saved = Saved on this device.
keep-unsaved = Not saved yet.
keep-changed = Changed since it was saved.
keep-faulty = It can be saved once the points under “{ check-title }” are put right.
keep-private-window = Not saved: the browser keeps nothing in this window. Download it as a file.
keep-disk-full = Not saved: the device has no room left. Download it as a file.
keep-newer-version = Not saved: a newer version of the game has been here. Load the page anew.
keep-blocked = Not saved: another tab of the game is in the way. Close it and try again.
keep-failed = Not saved: the browser does not answer. Download it as a file to be safe.

## The road on the bench

edit-undo = Undo
edit-redo = Redo
edit-list = All levels of the bench
edit-titleField = Title
edit-sentenceField = One sentence about it
edit-profile = The road from the side. Every handle can be dragged or moved with the arrow keys.
# $pitches (Number): how many.
edit-facts =
    { $pitches ->
        [0] { $length }, { $climbed } climbed, no pitch
        [one] { $length }, { $climbed } climbed, { $pitches } pitch
       *[other] { $length }, { $climbed } climbed, { $pitches } pitches
    }
edit-road = Road
# What lies on the road: stop lines, wind, surfaces.
edit-placed = On the road
edit-addPiece = Add a piece of road
edit-addPlaced = Add something on the road
edit-earlier = Earlier
edit-later = Later
edit-duplicate = Double
edit-remove = Take out
edit-nothing = Nothing yet.
# Shown where lengths are in feet.
edit-wholeMetres = A level is kept in whole metres, so lengths in feet may come out a little different.
edit-more = More about this level
edit-lesson = What it teaches
edit-audience = For
edit-everyone = everyone
edit-children = children
edit-seed = Seed of chance
edit-seedHint = Another seed, another road of the same kind.
edit-passMark = Mark to pass
edit-aids = Help on the screen
# A piece in the list of the road. $number (Number): which one, from 1. $name: what it is.
edit-no = { $number }. { $name }

zoom-title = Which part of the road is shown
zoom-closer = Closer
zoom-wider = Wider
zoom-back = ◀ Back
zoom-on = On ▶
zoom-whole = Whole road

## Pieces of road, and what is said of each in the list

piece-flat = Flat
piece-climb = Climb
piece-pitch = Pitch
piece-descent = Descent
piece-rollers = Rollers
piece-random-pitches = Random pitches
piece-recorded = Recorded road
facts-sloped = { $length }, { $slope }
facts-rollers = { $length }, ≤ { $slope }
# $count (Number): how many pitches.
facts-random-pitches = { $length }, { $count } × ≤ { $slope }

## What lies on the road

place-stopLinesM = Stop line
place-winds = Wind
place-surfaces = Surface
place-hidden = Hidden stretch
place-cues = Cue
surface-gravel = gravel
surface-grass = grass
surface-cobbles = cobbles
wind =
    { $way ->
        [head] head wind { $speed }
       *[tail] tail wind { $speed }
    }
# Metres a second.
wind-mps = { $value } m/s
# $stretch: from where to where. $what: gravel, or a wind.
placed-stretch = { $stretch }, { $what }
# $sight: how far one sees there. The first stands for itself on the drawing, the second in the list behind from where to where.
hidden-sight = { place-hidden }, sight { $sight }
placed-sight = sight { $sight }
# $cue: what it says.
placed-cue = { $at }: { $cue }
ownCue = Own words
cueText = What it says

## Fields

field-lengthM = Length
field-slope = Gradient
field-waveM = From crest to crest, about
field-steepest = Steepest
field-gentlest = Gentlest pitch
field-pitchCount = Pitches
field-beforeEach = Road before each (0: by chance)
field-fromM = From
field-toM = To
field-atM = At
field-windMps = Wind from the front (minus: from behind)
field-sightM = Sight

## What is wrong, and what may surprise

check-title = Look here
check-good = Nothing to worry about for this rider on this bike.
check-working = Looking …
check-goThere = Go there
# Cuts the stretch that cannot be ridden off the road.
check-trim = Trim it off
check-cannotRide = Before it can be ridden:
check-surprising = Allowed, but it may surprise:

## The best ride there

reference-title = What it would feel like
reference-intro = The best ride that can be ridden here.
reference-bike = Bike
reference-rider = Rider
reference-asRidden = With the power of the recorded ride ({ $watts } W)
reference-working = Planning the best ride: { $share }
reference-ask = Plan the best ride
reference-long = This is a long road; planning takes a while.
reference-failed = The best ride could not be planned.
# Also said where the level is to be shared.
reference-waits = The road has to be put right first.
reference-time = Time
reference-lowest = Lowest cadence
# $rpm (String): turns of the pedals.
reference-lowestAt = { $rpm } a minute, at { $at }
reference-shifts = Shifts
reference-worst = Hardest pitch
reference-worstIs = { $steepest } at { $at }: the legs go down to { $rpm } a minute
reference-noPitch = no short pitch; steepest at { $at }, { $steepest }
reference-asksNothing = No pitch here asks for an easier gear: the legs hold the gear they come with, or it is the easiest already. With this bike and this rider foresight gets no mark.
reference-level = none, the road is level
reference-feet = Foot down
reference-cadenceLane = Cadence (rpm)
reference-speedLane = Speed
# In a corner of a small drawing: the lowest and the highest it shows.
reference-scale = { $low } – { $high }
# The same drawing, read aloud. $what: cadence or speed. $range: what stands in its corner.
reference-lane = { $what }: { $range }
reference-best = the best ride
reference-ridden = what was ridden
reference-legend = Marks on the road: ▲ shift easier, ▼ shift harder.
# A shift in a list. $gear: the gear it leads to, like "50 × 17".
reference-shift =
    { $direction ->
        [easier] easier at { $at }: { $gear }
       *[harder] harder at { $at }: { $gear }
    }
reference-list = All shifts as a list

## Beside what was ridden

compare-title = Beside what was ridden
# $rode and $best (String): minutes and seconds. $from and $to: places on the road.
compare-times = You took { $rode } from { $from } to { $to }, stops included; the best ride takes { $best }.
# $watts: told from the recorded ride. $theirs: of the rider of the best ride.
compare-power =
    { $how ->
        [same] The climbs say that you rode with about { $watts } W, as if there had been no wind. The best ride has the same power.
        [other] The climbs say that you rode with about { $watts } W, as if there had been no wind. The best ride has { $theirs } W: some of the difference is power, not gears.
        [helped] With a motor the climbs cannot tell what your legs gave and what it did. The best ride has { $theirs } W and the help that is set for the bike.
       *[unknown] There was too little climbing to tell your power. The best ride has { $theirs } W: some of the difference may be power, not gears.
    }
# $rode and $cadence (String): turns of the pedals.
compare-withCadence = Between { $from } and { $to } you rode this at { $rode } a minute; the best ride is in { $gear } there, at { $cadence }.
compare-withSpeed = Between { $from } and { $to } you rode { $rode }; the best ride is in { $gear } there, at { $speed }.
compare-noCadence = The file holds no cadence, so only speeds can be compared.
compare-notKept = Speed and cadence of that ride are shown here only. They are not part of the level.
compare-keep = Keep them on this device
compare-kept = Kept on this device, beside the level. They never go into a link or a file.
compare-forget = Delete them
compare-saveFirst = Save the level first.
compare-waits = Comes as soon as the best ride is planned.

## A test ride

try-title = Test ride
try-from = Begin at
try-start = Start of the test ride
try-ride = Ride from there
try-hint = On your own bike. Test rides are not kept.

## Sharing

share-title = Share
share-intro = Link, code and file carry the level itself: its road, its title and its sentence. Nothing else.
share-link = Link
share-copy = Copy the link
share-copied = Copied.
share-copyFailed = The browser did not let it be copied. Select the link and copy it by hand.
share-code = The link as a code for a camera
share-tooLong = This road is too long for a code. Use the link or the file.
share-file = Download the file

## The level as text. JSON is the name of a format.

json-title = As text
json-intro = The same level as JSON. What you change here changes the road, and the other way round.
json-field = The level as JSON
json-good = This is the level on the bench.
json-bad = Not taken over yet:
# $line: the how-manieth line of the text.
json-line = Line { $line }

## A level that came by link or file

opened-title = A level for you
opened-intro = It is not kept yet. Look at it first.
opened-keep = Keep it
opened-ride = Ride it without keeping
opened-leave = Leave it
opened-badTitle = This cannot be opened
opened-already = You have this very road already, as “{ $title }”.
opened-keepCopy = Keep another copy
opened-climbed = Climbed
opened-fingerprint = Fingerprint of the road
opened-reading = Unpacking …
opened-no = The link cannot be unpacked in this browser. Ask for the file instead.

## A road from a recorded ride. GPX, .gz and .zip are names of formats.

road-title = A road from a GPX file
road-intro = The file is read here, in your browser, and goes nowhere. A level holds heights and distances only.
road-choose = Choose a GPX file
# Stands behind the button "Choose a GPX file".
road-drop = or drop it anywhere on this page. It may be packed (.gz or .zip).
road-reading = Reading: { $share }
road-cancel = Stop
road-cancelled = Stopped. Nothing was kept.
road-refused = No road can be made of this file
# $points (String): how many.
road-facts = { $length }, { $climbed } climbed, up to { $steepest }, from { $points } points.
road-quality = How far its heights can be trusted
road-grades-good = Good: they agree with one another.
road-grades-fair = Fair: use it with care.
road-grades-poor = Poor: the hills may not be where they seem.
road-notes = What was put right
road-questions = To be decided
# Answers: how several tracks become one road, how holes are crossed, what heights are in.
road-options-join = all of them, end to end
road-options-straight = cross them in a straight line
road-options-longest-part = take only the longest part without a hole
road-options-metres = metres
road-options-feet = feet
# $track: which of several tracks, from 1.
road-track = only number { $track }
road-stretch = Which stretch?
road-profile = The recorded road from the side, with the chosen stretch
road-hardest = The hardest { $length }
road-whole = The whole road
road-longest = The first { $length }
road-chosen = The level: { $length }, { $climbed } climbed, up to { $steepest }.
# Stands behind "The level: …". $limit: the steepest a level can be.
road-flatter = The road was recorded steeper: { $climbed } climbed, up to { $steepest }. A level goes up to { $limit }, so its steep parts climb less.
road-titleField = Title of the level
road-titleHint = Yours; nothing is taken from the file.
# The line under the title of such a level, where nothing else is written.
road-sentence = A road that was really ridden.
road-make = Save as a level
road-needsTitle = Give it a title.
road-timed = The file says how fast it was ridden. You can compare that on the bench.
road-working = One moment …
