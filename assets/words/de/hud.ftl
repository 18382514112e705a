### Was über einer laufenden Fahrt steht und gesagt wird: Anzeigen, Daumentasten, Hinweise, Bemerkungen, und die Straße für alle, die nach Gehör fahren.

## Instruments. There is little room: one or two short words.

cadence = Tritte
perMinute = pro Minute
gear = Gang
pressure = Beine
legs-coast = ruhen
legs-ease = locker
legs-steady = stetig
legs-press = fest
legs-too-slow = zu langsam
legs-too-fast = zu schnell
reserve = Puste
roadAhead = Die nächsten { $length } der Straße
distance = gefahren
chainFromAbove = Die Kette von oben
# How many times the sideways measure is widened in the picture.
widened = Breite × { $times }
crossed = Kette schräg
chainOff = Kette ab
# What a motor does, in two or three words, under the chain from above.
motor-pulls = Motor zieht
motor-rests = Motor ruht
# $speed with its unit.
motor-too-fast = Motor aus über { $speed }
motor-empty = Akku leer
# How much steeper than life heights are drawn.
steeper = Höhen × { $times }
stopLine = Halt in
outOfSight = außer Sicht
# Who rides along as a silhouette.
beside-best = beste Fahrt
beside-last = deine letzte Fahrt
marksSoFar = bisher, von 100
marks-cadence = Trittfrequenz
marks-easing = lockerer Tritt
marks-chainLine = Kettenlinie

## What the hands do next

# The front derailleur never needs more than one step at a time.
move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] Leichter
               *[other] { $steps } Gänge leichter
            }
        [rear-harder]
            { $steps ->
                [one] Schwerer
               *[other] { $steps } Gänge schwerer
            }
        [front-easier] Kleineres Kettenblatt
       *[front-harder] Größeres Kettenblatt
    }
# The same behind "then".
move-after =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] leichter
               *[other] { $steps } Gänge leichter
            }
        [rear-harder]
            { $steps ->
                [one] schwerer
               *[other] { $steps } Gänge schwerer
            }
        [front-easier] kleineres Kettenblatt
       *[front-harder] größeres Kettenblatt
    }
move-then = { $first }, dann { $second }
step-now = jetzt
step-soon = gleich
step-in = in { $distance }

## Pads for thumbs: what is written on them, in one short word, and what a screen reader says

pads = Bedienung des Rads
pad-rear-easier = leichter
pad-rear-harder = schwerer
pad-front-smaller = kleiner
pad-front-bigger = größer
pad-ease = locker
pad-press = fest
pad-brake = Bremse
pad-pause = Pause
spoken-rear-easier =
    { $gears ->
        [hub] Nabenschaltung: leichter
       *[sprockets] Schaltwerk: leichter
    }
spoken-rear-harder =
    { $gears ->
        [hub] Nabenschaltung: schwerer
       *[sprockets] Schaltwerk: schwerer
    }
spoken-front-smaller = Umwerfer: kleineres Kettenblatt
spoken-front-bigger = Umwerfer: größeres Kettenblatt
spoken-ease =
    { $gears ->
        [hub] Druck weg; obere Hälfte oder nach oben wischen: fest treten
       *[sprockets] Locker treten; obere Hälfte oder nach oben wischen: fest treten
    }
spoken-press = Fest treten
spoken-brake = Bremsen
spoken-pause = Pause

## Remarks, one at a time

remark-heavy-shift = Ruppig geschaltet. Erst locker treten.
remark-shift-hung = Die Kette hängt. Tritt locker, dann wandert sie.
remark-shift-waiting = Eine Kette wandert nur, solange du trittst.
remark-hub-knocked = Ein Schlag. Nimm den Druck weg, dann greift der Gang.
remark-motor-pulled = Der Motor zog noch. Locker treten, warten, dann schalten.
remark-hub-waits = Die Nabe wartet. Nimm den Druck weg.
remark-no-easier = Das ist der leichteste Gang.
remark-no-harder = Das ist der schwerste Gang.
remark-ring-easier = Kein leichteres Ritzel mehr. Ein kleineres Kettenblatt ist leichter.
remark-ring-harder = Kein schwereres Ritzel mehr. Ein größeres Kettenblatt ist schwerer.
remark-no-ring = Dort ist kein Kettenblatt mehr.
remark-refused-crossed = Dieses Rad lässt keine schräge Kette zu.
remark-crossed = Die Kette läuft schräg.
remark-chain-dropped = Kette ab! Locker treten, dann den vorderen Hebel drücken.
remark-foot-down = Fuß am Boden. Der Gang war zu schwer.
remark-line-missed = Über die Linie gefahren. Brems früher.
remark-battery-empty = Der Akku ist leer. Jetzt treten deine Beine allein.
remark-reserve-empty = Außer Puste. Erst einmal nicht fest treten.

## By ear: said aloud, so short. Distances come in with their units.

ear-pitch-ahead = Rampe in { $distance }: { $slope }, { $length } lang.
ear-pitch-soon = Rampe in { $distance }.
ear-pitch-now = Fuß der Rampe.
ear-pitch-over = Oben drüber.
ear-stop-ahead = Haltlinie in { $distance }.
ear-stop-soon = Haltlinie in { $distance }. Bremsen.
ear-downhill = Bergab.
# The number first: it is what the hand needs.
ear-move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] einen leichter
               *[other] { $steps } leichter
            }
        [rear-harder]
            { $steps ->
                [one] einen schwerer
               *[other] { $steps } schwerer
            }
        [front-easier] kleineres Kettenblatt
       *[front-harder] größeres Kettenblatt
    }
ear-hint = { $move }.
ear-hint-then = { $first }, dann { $second }.
ear-begin = Es geht los.
ear-nothing = Keine Rampe in Sicht.
