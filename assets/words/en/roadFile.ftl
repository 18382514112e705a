### What is said of a file with a recorded road (GPX): why none can be made of it, what a person may decide, how far
### its heights can be trusted. GPX, KML, TCX, FIT, JSON, XML, PDF, UTF-8 and DOCTYPE are names of formats.
### Lengths, heights and shares come in written, with their units.

## What the file is instead

is-web-page-at-once = This is a web page, not a GPX file. Perhaps the download asked to sign in. Sign in and download it again.
is-web-page = This is a web page, not a GPX file. Download the ride itself.
is-kml = This is a KML file. Export the ride as GPX, with its elevations.
is-tcx = This is a TCX file. Export the ride as GPX instead.
is-json = This is JSON, not a GPX file. Export the ride as GPX.
is-pdf = This is a PDF document, not a GPX file. Export the ride as GPX.
is-picture = This is a picture, not a GPX file. Export the ride as GPX.
is-fit = This is a FIT file. Export the ride as GPX instead.
is-binary = This is not a text file, so it is no GPX file. Export the ride as GPX.
is-other = This is not a GPX file; it does not begin with "<". Export the ride as GPX.
# $root (String): a name in the file.
is-xml = This is XML, but no GPX: it begins with <{ $root }>. Export the ride as GPX.

## Why no road can be made

too-big = This file is too big for one ride. Export a shorter one.
# $line: the how-manieth line of the file.
truncated = The file stops in the middle, at line { $line }. Export or copy it again.
empty = This file is empty. Export or copy it again.
packed = This file is packed in a way that cannot be opened here. Unpack it first; the file inside ends in .gpx.
packed-damaged = This packed file is damaged or locked with a password, so it cannot be opened. Unpack it first, or export it again.
packed-without = There is no GPX file in this archive. The file inside must end in .gpx.
packed-several = There are several GPX files in this archive. Unpack it and choose one of them.
# $label (String): its name.
encoding = The file is written in an encoding that cannot be read here ({ $label }). Save it as UTF-8.
not-well-formed = The file is damaged at line { $line }: it is no well-formed XML there. Export it again.
doctype = The file brings a document type of its own (DOCTYPE), which is never needed and not safe. Export it again as plain GPX.
too-deep = The file has more than { $most } elements inside one another. Export it again as plain GPX.
too-many-points = The file has more than { $most } points. Export a shorter ride.
# $track: the one that was asked for.
no-such-track =
    { $trackCount ->
        [one] There is no track { $track }; the file has one.
       *[other] There is no track { $track }; the file has { $trackCount }.
    }
no-readable-points =
    { $pointCount ->
        [one] The file has one point, and it has no place on the globe that can be read. Export it again, with places in degrees.
       *[other] None of the { $pointCount } points has a place on the globe that can be read. Export it again, with places in degrees.
    }
only-waypoints =
    { $waypointCount ->
        [one] The file holds a single place (waypoint) but no track and no route. Export the ride itself.
       *[other] The file holds { $waypointCount } single places (waypoints) but no track and no route. Export the ride itself.
    }
no-points = The file holds no track and no route with points in it. Export the ride itself.
no-length = The track never leaves its first place, as that of a ride indoors, so it has no length. Choose a ride on a road.
too-short = The road is { $length } long; a level needs at least { $least }. Choose a longer ride.
too-long = The track is { $length } long, which no ride is. Export a single ride.
no-elevation = The file has no elevations, so nothing is known about its hills. Export it from a program that adds them.
no-readable-elevation =
    { $pointCount ->
        [one] The only elevation in the file is no height that can be read. Export it again, in metres like 1420.5.
       *[other] None of the { $pointCount } elevations in the file is a height that can be read. Export it again, in metres like 1420.5.
    }
backwards = The stretch ends before it begins. Choose where it starts and where it ends.
unreadable = The file could not be read. Was it moved or changed meanwhile? Choose it again.
no-reader = The part that reads files does not answer. Load the page anew, then choose the file again.
no-road = The road is no longer here. Choose the file again.

## What a person decides

several-tracks =
    { $how ->
        [joined] The file holds { $trackCount } tracks. They were joined end to end. Is that the road?
       *[one] The file holds { $trackCount } tracks. Track { $track } was taken. Is that the road?
    }
# $longest: how long the longest hole is. $at: where it is.
holes =
    { $holeCount ->
        [one] The track has a hole; it is { $longest } long, { $at } from the start. It was crossed in a straight line. Keep that, or take only the longest part without a hole?
       *[other] The track has { $holeCount } holes; the longest is { $longest }, { $at } from the start. They were crossed in straight lines. Keep that, or take only the longest part without a hole?
    }
# $share: of the road, with its percent sign. $steep: a gradient.
perhaps-feet-steep = { $share } of this road would be steeper than { $steep }. Perhaps the heights of the file are in feet. Which are they?
perhaps-feet-fast = The rider would have climbed { $climb } an hour, which no legs do. Perhaps the heights of the file are in feet. Which are they?

## What was done

salvaged =
    { $pointCount ->
        [one] The file is damaged at line { $line }. What could be read was kept: { $pointCount } point. Look whether the road is all there.
       *[other] The file is damaged at line { $line }. What could be read was kept: { $pointCount } points. Look whether the road is all there.
    }
# $count: how many rests. $long: how long they were in all, where that is known, as { $time } seconds or minutes.
stops =
    { $long ->
        [seconds] Rests were taken out, so that the scatter of the places is no road: { $count } ({ $time } s in all).
        [minutes] Rests were taken out, so that the scatter of the places is no road: { $count } ({ $time } min in all).
       *[unknown] Rests were taken out, so that the scatter of the places is no road: { $count }.
    }
zero-elevations = Elevations of exactly 0 where the road is nowhere near were left out: { $pointCount }.
impossible-points =
    { $pointCount ->
        [one] { $pointCount } point was left out: nobody can have been there.
       *[other] { $pointCount } points were left out: nobody can have been there.
    }
unreadable-points = Points without a readable place were left out: { $pointCount }.
unreadable-elevations = Elevations that are no height were left out: { $pointCount }.
unwritten-elevations = Points without an elevation lie on a straight line between their neighbours: { $pointCount }.
elevation-spikes = Lone spikes of elevation were left out: { $pointCount }.
time-backwards = The times run backwards in places, so nothing is compared with them. The road itself does not need them.
# $rpm (Number): turns of the pedals a minute.
cadence-halved = The legs would have turned at { $rpm } rpm for half of the ride: the sensor counted every foot. Cadences were halved.
cadence-stuck = The cadence is { $rpm } rpm all along, so it was not measured; it was left out.
capped = { $length } of the road are steeper than { $limit } (up to { $steepest }); a level limits them to { $limit }.

## How far the heights can be trusted

sparse = The points are { $step } apart: too few for hills in between.
rounded-places = Places are written in steps of { $step }, so the road comes out longer and less steep than it is.
elevation-missing = Elevations are missing on { $share } of the road; straight lines stand in for them.
holes-share = { $share } of the road are holes crossed in a straight line.
bridged = On { $share } of the road the elevations jump as no road does; that was bridged.
jumps =
    { $jumpCount ->
        [one] The elevations jump once as no road does, as if the device had been set anew; the road goes on at the height it came with.
       *[other] The elevations jump { $jumpCount } times as no road does, as if the device had been set anew; the road goes on at the height it came with.
    }
# $points (String): of percent.
noisy = The elevations stray by { $noise } from point to point; slopes may be off by { $points } points although they were averaged over { $width }.
spikes = { $share } of the elevations are lone spikes; they were left out.
whole-metres = The elevations are whole metres, so small rises are blurred.
all-equal = All elevations are equal. Either the road is level like water, or they were never measured.
