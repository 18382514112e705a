### Namen, die mehrere Seiten sagen: das Spiel, seine Orte, Räder und Personen.

direction = ltr

name = Before the Hill
promise = Sei im richtigen Gang, bevor du ihn brauchst.

## The pages

nav-home = Start
nav-levels = Level
nav-children = Für Kinder
nav-bike = Rad und Person
nav-about = So geht’s
nav-progress = Fortschritt
nav-gearcheck = Gänge-Check
nav-settings = Einstellungen
nav-close = Schließen
nav-debrief = Deine Fahrt
nav-bench = Level-Werkstatt
nav-road = Auf der Straße
nav-two = Zu zweit und mehr
nav-clinic = Gruppe
nav-join = Bei einer Gruppe mitmachen
nav-collect = Fahrten einsammeln
nav-teach = Stundenbilder
nav-skip = Gleich zur Seite

## A page that is fetched when it is opened

coming-loading = Einen Moment: Diese Seite ist unterwegs.
coming-failed = Diese Seite ließ sich nicht laden. Prüfe die Verbindung und versuche es noch einmal.
coming-tryAgain = Noch einmal

## What a person should know about the keeping

health-not-fetched =
    Ein Teil des Spiels ließ sich nicht laden. Darum wird noch nichts aufbewahrt, und deine eigenen Level fehlen. Prüfe die Verbindung; das Spiel versucht es von selbst noch einmal.

## Levels and rides

ladder-everyone = Die Leiter
ladder-children = Für Kinder
# $steepest (String): a gradient, like "8 %".
profile = Verlauf der Straße, höchstens { $steepest } steil
riding-loading = Die Straße wird ausgerollt …
riding-paused = Pause
riding-on = Weiter

## Bikes and riders

bike-kids-20-1x7 = Kinderrad 20 Zoll
bike-kids-24-1x8 = Kinderrad 24 Zoll
bike-town-1x9 = Stadtrad
bike-kids-20-hub-3 = Kinderrad 20 Zoll, 3-Gang-Nabe
bike-town-hub-3 = Stadtrad, 3-Gang-Nabe
bike-town-hub-7 = Stadtrad, 7-Gang-Nabe
bike-trekking-hub-8-crank = Trekkingrad, 8-Gang-Nabe, Mittelmotor
bike-trekking-1x10-crank = Trekkingrad mit Mittelmotor
bike-town-hub-7-wheel = Stadtrad, 7-Gang-Nabe, Nabenmotor
bike-trekking-3x8 = Trekkingrad
bike-road-2x11 = Rennrad
bike-gravel-1x12 = Gravelrad
bike-own = Eigenes Rad
# $rings (Number): chainrings. $rear (Number): sprockets, or gears in the hub.
# $where: gears on sprockets, all gears in the hub, or some of them.
bike-gears =
    { $where ->
        [single] { $rear } Gang
        [hub] { $rear } Gänge in der Nabe
        [both] { $rings } × { $rear } Gänge, { $rear } davon in der Nabe
       *[sprockets] { $rings } × { $rear } Gänge
    }

## Numbers with their units, and a gear that has no teeth to count

unit-kmh = { $value } km/h
unit-mph = { $value } mph
unit-m = { $value } m
unit-ft = { $value } ft
unit-km = { $value } km
unit-mi = { $value } mi
unit-percent = { $value } %
gear-in-hub = { $number } von { $of }
