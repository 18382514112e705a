### Names that several pages say: the game, its places, bikes and riders.

# How the language is written: ltr from left to right, rtl from right to left.
direction = ltr

name = Before the Hill
promise = Be in the right gear before you need it.

## The pages

nav-home = Start
nav-levels = Levels
nav-children = For children
nav-bike = Bike and rider
nav-about = How to play
nav-progress = Progress
nav-gearcheck = Gear check
nav-settings = Settings
nav-close = Close
nav-debrief = Your ride
nav-bench = Level bench
nav-road = On the road
nav-two = Two or more
nav-clinic = Clinic
nav-join = Join a session
nav-collect = Collect rides
nav-teach = Session plans
nav-skip = Skip to the page

## A page that is fetched when it is opened

coming-loading = One moment: this page is on its way.
coming-failed = This page could not be loaded. Check the connection, then try again.
coming-tryAgain = Try again

## What a person should know about the keeping

health-not-fetched =
    A part of the game could not be fetched, so nothing is kept yet and your own levels are not shown. Check the connection; the game tries again by itself.

## Levels and rides

ladder-everyone = The ladder
ladder-children = For children
# $steepest (String): a gradient, like "8 %".
profile = Profile of the road, at most { $steepest } steep
riding-loading = The road is being unrolled …
riding-paused = Paused
riding-on = Ride on

## Bikes and riders

bike-kids-20-1x7 = Children’s 20 inch
bike-kids-24-1x8 = Children’s 24 inch
bike-town-1x9 = Town
bike-kids-20-hub-3 = Children’s 20 inch, hub 3
bike-town-hub-3 = Town with hub 3
bike-town-hub-7 = Town with hub 7
bike-trekking-hub-8-crank = Trekking with hub 8 and crank motor
bike-trekking-1x10-crank = Trekking with crank motor
bike-town-hub-7-wheel = Town with hub 7 and wheel motor
bike-trekking-3x8 = Trekking
bike-road-2x11 = Road
bike-gravel-1x12 = Gravel
bike-own = Own bike
# $rings (Number): chainrings. $rear (Number): sprockets, or gears in the hub.
# $where: gears on sprockets, all gears in the hub, or some of them.
bike-gears =
    { $where ->
        [single] { $rear } gear
        [hub] { $rear } gears inside
        [both] { $rings } × { $rear } gears, { $rear } of them inside
       *[sprockets] { $rings } × { $rear } gears
    }

## Numbers with their units, and a gear that has no teeth to count

unit-kmh = { $value } km/h
unit-mph = { $value } mph
unit-m = { $value } m
unit-ft = { $value } ft
unit-km = { $value } km
unit-mi = { $value } mi
unit-percent = { $value } %
gear-in-hub = { $number } of { $of }
