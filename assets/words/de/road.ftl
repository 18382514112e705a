### On the road: what recorded rides show of somebody's shifting, pitch by pitch. Lengths, gradients, shares and months
### come in written. "Best ride" is the one the game works out. GPX is the name of a format.

intro = Was aufgezeichnete Touren von deinem Schalten zeigen, Rampe für Rampe.
opening = Einen Moment: Deine Touren werden geholt.
openFailed = Was aufbewahrt ist, ließ sich nicht öffnen. Lade die Seite neu.
limits = Ein Messwert pro Sekunde verrät weder lockeres Treten noch die genaue Sekunde eines Schaltvorgangs noch die Kettenlinie. Wo geschaltet wurde, gilt nur so genau, wie hinter ± steht; Wind, Verkehr und Begleitung sind nicht enthalten.
late-heights = Viele Geräte schreiben die Höhe einige Sekunden zu spät auf. Mit Leistungswerten in der Datei wird das gefunden und berichtigt. Ohne sie kann der Fuß eines Anstiegs um { $way } und mehr zu weit hinten liegen, und du scheinst früher zu schalten, als du es getan hast.
# Stands in a table where nothing is known.
unknown = –

## Bringing a file

bring-title = Eine Tour mitbringen
bring-what = GPX-Dateien mit Trittfrequenz, ein Punkt pro Sekunde. Auch mehrere auf einmal.
# $parts: chainrings and sprockets, like "50 / 34 · 11–34". $tyre: a size, like "28-622".
bring-bike = Gefahren mit { $parts } und Reifen { $tyre }.
bring-otherBike = Es war ein anderes Rad
# Beside a box that is ticked.
bring-teeth = Mit diesen Zähnezahlen wurde nicht gefahren. Dann werden Gänge ohne Namen unterschieden, und weniger davon.
bring-files = GPX-Dateien wählen
# Answers to the question what the heights of a file are in.
bring-metres = Sie sind in Metern
bring-feet = Sie sind in Fuß
bring-privacy = Die Datei verlässt dieses Gerät nicht und wird nicht aufbewahrt. Aufbewahrt werden nur Zahlen zu jeder Rampe und der Monat: kein Ort, keine Uhrzeit, keine Strecke.
bring-reading = Wird gelesen … { $share }
# $done and $all (Number): pitches.
bring-judging = Die beste Fahrt mit deiner Leistung fährt dieselben Rampen: { $done } von { $all } …
# $name: of a file.
refused = { $name } wurde nicht angenommen
useless-no-times = In dieser Datei steht nicht, wann gefahren wurde, oder die Zeiten laufen rückwärts. Zeichne mit Zeiten auf.
useless-too-sparse = Die meisten Punkte dieser Datei liegen mehr als drei Sekunden auseinander, das ist zu weit, um Gänge zu erkennen. Stelle das Gerät so ein, dass es jede Sekunde aufzeichnet.
useless-no-cadence = In dieser Datei steht keine Trittfrequenz, darum lassen sich keine Gänge erkennen. Ein Sensor an der Kurbel liefert sie; exportiere mit allen Daten.
useless-cadence-stuck = Die Trittfrequenz in dieser Datei ist durchweg dieselbe Zahl, wurde also nicht gemessen, und Gänge lassen sich nicht erkennen. Wähle eine Fahrt mit einem Sensor an der Kurbel.
useless-no-road = Diese Datei ließ sich nicht ansehen. Wähle sie noch einmal.

## A ride

ride-title = { $month }: eine Tour von { $length }
ride-titleNoMonth = Eine Tour von { $length }
# $title: one of the two above. $file: the name of a file.
ride-named = { $title } ({ $file })
# $title: of a ride.
ride-pitchesOf = Rampen: { $title }
# $found (Number): pitches.
ride-summary =
    { $found ->
        [0] Der Gang war in { $readable } der Zeit zu erkennen. Keine Rampe gefunden.
        [one] Der Gang war in { $readable } der Zeit zu erkennen. Eine Rampe gefunden.
       *[other] Der Gang war in { $readable } der Zeit zu erkennen. { $found } Rampen gefunden.
    }
# $changes (String): a number, like "2.4".
ride-changes =
    { $per ->
        [mile] { $changes } Gangwechsel pro Meile.
       *[km] { $changes } Gangwechsel pro km.
    }
ride-inBand = { $share } der Zeit, in der du getreten hast, in deinem Bereich.
# $watts (String): a number.
ride-power = Die Anstiege zeigen: Du fährst mit etwa { $watts } W. Die beste Fahrt neben deiner hat dieselbe Leistung.
ride-powerUnknown = Es ging in deinem Bereich zu wenig bergauf, um deine Leistung zu erkennen; die beste Fahrt hat die der Person, die hier eingestellt ist.
ride-powerHelped = Mit einem Motor zeigen die Anstiege nicht, was deine Beine gaben und was er tat. Die beste Fahrt hat die Leistung der Person, die hier eingestellt ist, und die Unterstützung, die am Rad eingestellt ist.
ride-heights =
    { $late ->
        [0] Die Leistung zeigt, dass die Höhen rechtzeitig kamen.
        [one] Die Höhen kamen etwa eine Sekunde zu spät; das ist berichtigt.
       *[other] Die Höhen kamen etwa { $late } Sekunden zu spät; das ist berichtigt.
    }
ride-heightsUnknown = Ohne genug Leistungswerte in der Datei lässt sich nicht sagen, ob die Höhen zu spät kamen; das ± ist darum größer.
ride-cadenceHalved = Der Sensor hatte jeden Fuß gezählt; die Trittfrequenz ist halbiert.
ride-noPitch = Keine Rampe gefunden: Die Straße wird nirgends auf einmal um drei Prozentpunkte steiler.
ride-keep = Zahlen behalten
ride-kept = Aufbewahrt: die Zahlen, die du hier siehst, und sonst nichts.
ride-already = Diese Tour ist schon aufbewahrt.
ride-notKept = Sie konnte auf diesem Gerät nicht aufbewahrt werden.

## The small picture of a pitch, and what explains its two marks

# Read aloud. $own and $best: one of the places below.
picture-desc = Erster leichterer Gang: { $own }.
picture-descBest = Erster leichterer Gang: { $own }; die beste Fahrt: { $best }.
# The mark stands for a place that is known only roughly.
picture-own = du, ungefähr
picture-best = beste Fahrt mit deiner Leistung

## The table of pitches

table-pitch = Rampe
table-first = Erster leichterer Gang
# How much of the shifting was done there, in per cent.
table-atFoot = Am Fuß geschafft
# Three cadences.
table-cadence = Beine: vorher, am Fuß, am langsamsten
table-best = Beste Fahrt
table-again = Noch einmal
# A pitch, like "8 %, 120 m".
table-name = { $slope }, { $length }
table-unread = Gänge nicht erkennbar
# What the best ride did. $place: one of the places below. $share: of the shifting that was done at the foot.
table-bestDone = { $place }, { $share } geschafft
table-ride = Noch mal fahren
table-rideThis = Noch mal fahren: { $pitch }
# $foresight and $total (String): marks of 100, or the sign for what is not known.
table-inGame = Im Spiel: Vorausschau { $foresight }, gesamt { $total }.
table-notMade = { $pitch }: Aus dieser Stelle lässt sich kein Level machen.

## Where the first easier gear came

# $pm: how far from there it may have been.
place-before = { $metres } vor dem Fuß
place-beforePm = { $metres } vor dem Fuß ± { $pm }
place-after = { $metres } hinter dem Fuß
place-afterPm = { $metres } hinter dem Fuß ± { $pm }
place-none = kein leichterer Gang

## A level made of a pitch

level-title = Deine Rampe: { $slope }, { $length }
level-sentence = Eine Rampe aus einer eigenen Tour, mit dem Weg dorthin.

## All kept rides

all-title = Alle aufbewahrten Touren
all-empty = Noch ist keine Tour aufbewahrt.
# $rides (Number), $pitches (Number).
all-mean =
    { $rides ->
        [one] { $pitches ->
            [0] Eine Tour, keine Rampe.
            [one] Eine Tour, eine Rampe.
           *[other] Eine Tour, { $pitches } Rampen.
        }
       *[other] { $pitches ->
            [0] { $rides } Touren, keine Rampe.
            [one] { $rides } Touren, eine Rampe.
           *[other] { $rides } Touren, { $pitches } Rampen.
        }
    }
all-few = Unter zehn Rampen sagt ein Mittelwert wenig.
all-byMonth = Monat für Monat
all-month = Monat
all-noMonth = Monat unbekannt
all-rides = Touren
# Rides and pitches of a month. $rides (Number), $pitches (Number).
all-counted =
    { $pitches ->
        [one] { $rides } · { $pitches } Rampe
       *[other] { $rides } · { $pitches } Rampen
    }
all-fall = Beine langsamer um
all-inBand = Im Bereich
all-check = Vergleichsfahrten im Spiel
# $rpm (String): turns of the pedals a minute.
all-perMinute = { $rpm }/min
# $value: with its unit.
all-giveOrTake = { $value } ± { $pm }
# $totals: marks of 100.
all-checks = gesamt { $totals }
# $title: of a ride.
all-numbered = { $number }. { $title }
# What a kept ride was ridden on. $parts: chainrings and sprockets.
all-parts = { $parts }.
all-what = Was aufbewahrt ist
all-whatHint = Das ist alles, genau so aufbewahrt. Es sagt nichts darüber, wo oder zu welcher Uhrzeit du gefahren bist.
all-forget = Löschen
all-forgetThis = Von diesem Gerät löschen: { $ride }
