### Carrying a plan to tablets and rides back: codes, links, files, the camera, what is missing; and a club's own store.

size-bytes =
    { $bytes ->
        [one] { $bytes } byte
       *[other] { $bytes } bytes
    }
# $size (String): thousands of bytes, like "3.2".
size-kilobytes = { $size } kB
rides =
    { $rides ->
        [one] { $rides } ride
       *[other] { $rides } rides
    }

## Codes on the screen, one after another

code-number = { $number } of { $all }
# For those who cannot see them. $what: what they carry, like "the plan “Monday”" or "3 rides".
code-picture =
    { $all ->
        [1] Code: { $what }
       *[other] Code { $number } of { $all }: { $what }
    }
code-pause = Pause
code-play = Go on
code-back = Code before
code-next = Next code
code-speed = Speed
code-speed-slow = slow
code-speed-usual = usual
code-speed-fast = fast
code-big = Big
code-jump = Show code { $number }
code-hint = The codes follow one another. Where the camera begins does not matter; it says what is missing.

## Codes, link or file

carry-making = Packing …
carry-tooBig = This is too much for codes. Use the file.
carry-link = Link
carry-copy = Copy the link
carry-copied = Copied.
carry-notCopied = This browser does not copy over plain http. The link is marked: copy it by key or finger.
carry-onlyHere = This page was opened at localhost, which no tablet can open, so there is no link. Start the game with “npm start -- --host”, then hand out here again. Codes and file work as they are.
carry-file = Save as a file
carry-longLink = Some messengers cut links this long. The file is safer.
carry-site = The link leads to this address; the other device must be able to open it.

## Handing out a plan

handOut-intro = Every tablet scans this once. After that it needs no network and nothing from this screen.
handOut-what = the plan “{ $title }”
# $size (String): like "3.2 kB". $codes (Number).
handOut-size =
    { $codes ->
        [1] { $size } · one code
       *[other] { $size } · { $codes } codes
    }
handOut-own = Your own levels are in it.
# $page: name of the page "Join a session".
handOut-scanOne = Point the tablet’s own camera at the code and open the link, or scan it on the game’s page “{ $page }”.
handOut-scanMany = On the tablet open the game’s page “{ $page }” and hold the camera at the codes.

## The evening before

ready-title = At home, the evening before
ready-intro = On every tablet, while there is a network. This list checks the device you are looking at.
ready-done = done
ready-open = to do
ready-wrong = does not work here
ready-unknown = this browser does not say
ready-again = Check again
ready-allowCamera = Allow the camera
ready-keep = Ask the browser to keep rides
# Four things, each with what is said when it is done, still to do, or cannot work.
ready-secure = Opened over https or at localhost
ready-secure-done = This page was opened in a way that allows camera and offline use.
ready-secure-wrong = This page was opened over plain http: no camera here, no copy for offline, and the screen goes dark by itself. Open the game at an address that begins with https, once, at home; or on the computer that serves it, at localhost.
ready-offline = A copy for offline
ready-offline-done = The game is on this device and opens without a network.
ready-offline-open = Load this page once more and wait a moment. Best put it on the home screen with the browser’s menu.
ready-offline-wrong = Without https this browser keeps no copy. Open the game over https at home.
ready-camera = Camera allowed
ready-camera-done = The camera can be used.
ready-camera-open = Allow the camera now, so that nobody is asked in the field.
ready-camera-wrong = There is no camera this page may use. If there is one, allow it in the browser’s settings for this page; else use the link or the file.
ready-keeping = Kept for good
ready-keeping-done = The browser will not clear rides by itself.
ready-keeping-open = The browser may clear rides when it needs room. Ask it not to; putting the game on the home screen helps. Hand results back the same day.

## Reading codes, links and files

reader-ways = Read with
reader-camera = Camera
reader-picture = Picture or file
reader-text = Link or text
reader-start = Turn the camera on
reader-stop = Turn the camera off
reader-loading = The reader is being loaded …
reader-looking = Hold the code so that it fills most of the picture.
reader-noReader = The reader could not be loaded. Is the network gone? Use the link or the file.
reader-video = What the camera sees
camera-not-secure = The camera works only where this page was opened over https or at localhost. Take a picture with the tablet’s own camera and choose it here, or use the link or the file.
camera-refused = The camera was not allowed. Allow it in the browser’s settings for this page, or use a picture, the link or the file.
camera-none = There is no camera here. Use a picture, the link or the file.
camera-in-use = Another program holds the camera. Close it, then try again.
reader-choose = Choose pictures or files
reader-chooseHint = Pictures of codes, or a file saved by this game. Several at once are fine.
# $name: a file's name.
reader-noCode = No code could be read in { $name }. Take the picture from closer, straight on, without a reflection.
reader-paste = Paste the link, or the text of a code or file
reader-take = Read it
reader-reading = Reading the rides …
reader-stopReading = Stop reading
reader-stopped = Stopped. Nothing of it was taken.
reader-failed = That could not be read here. Close other programs, then choose it once more.
reader-read =
    { $count ->
        [one] { $read } of { $count } code read.
       *[other] { $read } of { $count } codes read.
    }
# $count (Number): how many are missing. $numbers (String): which, like "2, 5".
reader-missing =
    { $count ->
        [one] Code { $numbers } is missing.
       *[other] Codes { $numbers } are missing.
    }
reader-cut = The link was cut on its way. Copy all of it, or use the code or the file.
# $number is 0 where the number of the code could not be read.
damaged-checksum =
    { $number ->
        [0] A code arrived damaged. Read it once more.
       *[other] Code { $number } arrived damaged. Read it once more.
    }
damaged-newer-version =
    { $number ->
        [0] A code was made by a newer version of the game. Load this page anew to update.
       *[other] Code { $number } was made by a newer version of the game. Load this page anew to update.
    }
damaged-contradicts =
    { $number ->
        [0] A code says something else than before. Show the codes from the beginning.
       *[other] Code { $number } says something else than before. Show the codes from the beginning.
    }
damaged-too-many-messages = Too many different things were read at once. Open this page anew.
damaged-not-a-frame = Something was read that is no code of this game.
unreadable-not-a-packet = This is nothing of this game.
unreadable-newer-version = This was made by a newer version of the game. Load this page anew to update.
unreadable-damaged = All codes are here, but together they are not what was sent. Show them once more.
unreadable-nothing = There is nothing in it.
unreadable-too-big = This is too big to be rides or a plan. Save it again on the tablet it comes from, then choose it here.
# Sentences about what is wrong follow.
reader-wrongPlan = This plan cannot be used:
# $page: name of the page "Join a session".
reader-isPlan = This is a plan, not results. Open it on “{ $page }”.
# $page: name of the page "Collect rides".
reader-isRides = These are results, not a plan. Open them on the coach’s device, on “{ $page }”.

## A tablet joins

join-intro = Scan the coach’s code, or open the link. No typing, no names.
join-found = This is what the coach has planned
join-rides = What is ridden
join-unknownLevel = { $level }: not on this device
join-ownLevel = level of the coach’s own
join-missing = A level of this plan does not come with the game on this device. Update the game first: load this page anew while there is a network.
join-join = Join
join-no = Not this one
join-here = This device has joined already. Its rides stay as they are.
join-other = This device has joined with an older copy of this plan. Rides made so far stay with that copy.
join-go = Go to the group

## A tablet hands back

handBack-intro = Show the codes to the coach’s camera. Twice is the same as once; nothing is deleted here.
# $tablet: the short name of a tablet, like "K7QX".
handBack-tablet = This tablet: { $tablet }
handBack-none = No ride has been ridden here in this group yet.
handBack-marksOnly = Codes and link carry the marks. The file carries the whole rides, so that the coach can watch them and mark them again.

## The coach collects

collect-intro = Hold the camera at each tablet’s codes, or take its link or file. Order and repeats do not matter.
collect-tablets = What has come from whom
collect-nobody = Nothing has come yet.
collect-noSession = There is no session on this device that these rides belong to. Open them on the coach’s device.
# Heads of a table; on small screens each stands before its value.
column-tablet = Tablet
column-here = Here
column-missing = Missing
column-since = Missing since
column-heard = Last heard of
# In the column "Missing".
missing-nothing = nothing
# $count (Number): how many rides are missing. $numbers (String): which, like "2, 5–7".
missing-rides =
    { $count ->
        [one] ride { $numbers } ({ $count } missing)
       *[other] rides { $numbers } ({ $count } missing)
    }
# How long ago, in the columns "Missing since" and "Last heard of".
ago-now = just now
ago-minutes = { $minutes } min
ago-hours = { $hours } h
ago-neverSaid = a gap in its count
ago-never = never
# $fresh (Number): rides that are new here. $known (Number): rides that were here before.
took =
    { $fresh ->
        [0] { $known ->
            [one] Nothing new: { $known } ride was here already.
           *[other] Nothing new: { $known } rides were here already.
        }
        [one] { $known ->
            [0] { $fresh } ride taken.
            [one] { $fresh } ride taken, { $known } was here already.
           *[other] { $fresh } ride taken, { $known } were here already.
        }
       *[other] { $known ->
            [0] { $fresh } rides taken.
            [one] { $fresh } rides taken, { $known } was here already.
           *[other] { $fresh } rides taken, { $known } were here already.
        }
    }
took-damaged =
    { $pieces ->
        [one] { $pieces } piece was damaged.
       *[other] { $pieces } pieces were damaged.
    }
took-otherPlan =
    { $rides ->
        [one] { $rides } ride of another plan was left out.
       *[other] { $rides } rides of another plan were left out.
    }
collect-notKept = What came could not be kept on this device. Save it as a file before you close this page.
checked =
    { $rides ->
        [one] { $rides } ride ridden again on this device; the marks are right.
       *[other] { $rides } rides ridden again on this device; the marks are right.
    }
otherVersion =
    { $rides ->
        [one] { $rides } ride came from another version of the game: the marks are shown as they came, but it cannot be ridden again or compared with the others.
       *[other] { $rides } rides came from another version of the game: the marks are shown as they came, but they cannot be ridden again or compared with the others.
    }
unknownLevel =
    { $rides ->
        [one] { $rides } ride is on a level that is not here: its marks are shown as they came, but it cannot be ridden again here.
       *[other] { $rides } rides are on levels that are not here: their marks are shown as they came, but they cannot be ridden again here.
    }
marksOnly =
    { $rides ->
        [one] { $rides } ride came as marks only; a tablet’s file has the whole ride.
       *[other] { $rides } rides came as marks only; a tablet’s file has the whole rides.
    }
withdrawn =
    { $rides ->
        [one] { $rides } ride was taken back by its own tablet.
       *[other] { $rides } rides were taken back by their own tablet.
    }
checking = Riding again: { $rides } to go.

## What came and is not counted

# $count (Number): how long the list below is; so in the next titles.
damaged-title = Damaged pieces ({ $count })
damaged-hint = They are not counted. Ask the tablet to show its results once more; a good copy takes their place.
# $from: whether the tablet is known. $seq: number of the ride, 0 where it is not known.
damaged-piece =
    { $from ->
        [nobody] { $seq ->
            [0] From an unknown tablet
           *[other] From an unknown tablet, ride { $seq }
        }
       *[tablet] { $seq ->
            [0] Tablet { $tablet }
           *[other] Tablet { $tablet }, ride { $seq }
        }
    }
# Behind the name of the piece and a colon.
piece-not-json = cut off or changed on the way
piece-not-a-record = not a whole ride
piece-newer-version = made by a newer version; update the game here
piece-dirty-text = a name with hidden characters
piece-checksum = changed on the way
piece-recording = the marks are good, the recording is damaged
piece-file-head = the first line of its file is damaged
piece-too-long = far longer than any ride
apart-title = Set apart ({ $count })
apart-hint = These rides are kept, but not counted: ridden again, they do not come out as they say.
# $name: who rode.
apart-ride = Tablet { $tablet }, ride { $seq }, { $name }
# In brackets. Both are marks, like "71.5".
apart-totals = says { $said }, found { $found }
# Behind the name of the ride and a colon.
apart-no-recording = marks only
apart-unknown-level = its level is not here
apart-other-level = its level has been changed
apart-other-setup = its recording is of another ride
apart-changed-bike = a bundled bike with other numbers
apart-changed-rider = a bundled rider with other numbers
apart-impossible-setup = a bike or rider that cannot be
apart-too-long = longer than a ride can be
apart-not-finished = it never came to its end
apart-other-version = ridden on another version of the game
apart-not-same-ride = ridden again, it is another ride
apart-other-marks = ridden again, it has other marks
conflict-title = Contradictions ({ $count })
conflict-same-id = Two different rides under one id; both are kept, neither is counted.
conflict-same-seq = Two rides under one number of a tablet; both are kept, neither is counted.

## A store of the club's own: a database or a computer to which tablets send what was ridden

store-title = A store of your club
store-intro = Everything works without it. With one, tablets meet by themselves: on a computer in the hall (“npm run club”), or in a CouchDB database the club hosts or rents. Nothing is sent anywhere before somebody agrees to it here, on this device.
store-take-title = Scan or paste the settings
store-take-hint = The computer with the store shows them as a code, and so does every device that uses it. The tablet’s own camera opens the code as well.
store-take-paste = Or the link of the settings
store-take-none = These are no whole settings of a store. Scan the code once more, or copy all of the link.
store-give = Show the settings to another device
store-give-title = Settings of the store
store-give-hint = One code for all tablets and coaches. Whoever has it can read all rides and add some: show it to those who may, and take no photo.
store-give-onlyHere = This page was opened at localhost, which no tablet can open. Start it with “npm run club”, or open it under the address tablets use.
store-give-hide = Hide the settings
store-details = Address, database, name and password
# $host: an address like "club.example"; so in all messages below.
store-instead = It would take the place of { $host }.
store-fetch = Fetch now
store-url = Address
store-urlHint = for example https://rides.our-club.example
store-database = Database
store-name = Name
store-password = Password
store-passwordHint = Stays on this device, readable by whoever uses it. Take a name that may do nothing else.
store-plainHttp = This page may talk to https addresses, to the computer it came from and to this computer itself only: over plain http others could read the name, the password and the rides on the way. Use https.
store-plainHere = Over plain http everybody in this network can read along. Use it in a network of your own, or start the store with https.
store-mixed = This page was opened over https, so the browser will not talk to a store over http. Use https.
store-badAddress = An address begins with https:// and holds no name or password; a database has small letters and digits.
store-consent = If you agree
# $typed: whether an address has been typed; so in the agreement below.
store-consent-sends =
    { $typed ->
        [no] After every ride of a group session this device sends to that address: the nicknames, the number of this tablet, and the rides with their marks. It fetches what other tablets have put there.
       *[yes] After every ride of a group session this device sends to { $host }: the nicknames, the number of this tablet, and the rides with their marks. It fetches what other tablets have put there.
    }
# Each line is a sentence of its own, or two.
store-consent-more =
    Whoever looks after that store can read all of it. Nothing else is sent, and nobody else is asked.
    Ask your club first; with children, also those who decide for them. Use nicknames nobody can be known by.
    You can stop at any time. What has been sent stays there until the club deletes it.
store-agree =
    { $typed ->
        [no] I agree: send to this address
       *[yes] I agree: send to { $host }
    }
store-forget = Forget this address
store-offered-file = A file that was taken back names { $host }. Nothing has been sent there. Agree only if you know that it is your club’s.
store-offered-code = These are the settings of a store on { $host }. Nothing has been sent there.
store-offered-before = An address is kept here from before: { $host }. Nothing is sent there until somebody here agrees once more.
store-goesTo = Rides go to { $host }
# Four lines of a list: a name, and what it is.
store-what = What is sent
store-whatIs = Nicknames, the number of this tablet, and rides of group sessions with their marks
store-where = Where to
store-soFar = So far
store-agreed = Agreed here
# $moment (String): day and time, like "26 November at 18:04".
store-sent =
    { $rides ->
        [0] Nothing has gone there yet.
        [one] { $rides } ride went there, last on { $moment }.
       *[other] { $rides } rides went there, last on { $moment }.
    }
store-line = Rides of this group go to { $host }, with nicknames, marks and the number of this tablet.
store-look = Look at it
store-stop = Stop sending
store-stopHint = What has been sent stays there until the club deletes it. Rides on this device stay as they are.
store-test = Ask whether it answers
store-testing = Asking …
store-works = The store answers and lets you in.
store-off = Nothing is sent.
store-notAsked = No session has met the store since this page was opened.
store-nothing = Nothing is waiting for the store.
store-done =
    { $rides ->
        [one] The only ride and all reports are in the store.
       *[other] All { $rides } rides and reports are in the store.
    }
store-sending = Sending to the store: { $left } to go.
store-again = Next try in { $seconds } s.
store-safe =
    { $left ->
        [0] All rides of this device are there, and safe on this device too.
        [one] { $left } to go; it is safe on this device.
       *[other] { $left } to go; they are safe on this device.
    }
store-unreachable = The store does not answer: no network, switched off, or this page is not among its allowed origins.
store-busy = The store has no time now.
store-disk-full = The store’s disk is full. Tell whoever looks after it.
store-wrong-password = The store does not accept this name and password.
store-not-allowed = This name may not write into this database.
store-no-database = There is no such database. It has to be made first.
store-bad-address = The address or the name of the database cannot be right.
store-not-a-store = Something answers there, but it is no such store.
store-endless = The store gives more than can be taken in at once. What came is kept; the rest is asked for in a moment.
store-some-refused = The store would not take some of the rides. They are safe on this device; hand them over as a file.
