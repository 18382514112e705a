### Die Seite mit Rad und Person: Räder zur Auswahl, ein eigenes Rad, die Person, der Tipptest, Farben.

intro = Nimm das Rad, das deinem am ähnlichsten ist. Es fährt so, wie Gänge, Laufräder und Gewicht es wollen.
bikes = Rad
ownHint = Eigene Zähnezahlen und Reifen
done = Dieses Rad fahren
motorTitle = Bevor du mit Motor fährst

## Facts on the card of a bike, side by side, after how many gears it has

fact-motor-crank = Mittelmotor
fact-motor-wheel = Nabenmotor
fact-backPedal = Rücktrittbremse
# What the shifters work by.
fact-mechanical = Seilzug
fact-electronic = elektronisch
# $tyre (String): the mark on its side, like "28-622".
fact-tyre = Reifen { $tyre }

# What a drawing of all the gears shows, read aloud. $rings (String): teeth of the chainrings, like "26 / 36 / 48".
# $ringCount: how many chainrings. $sprockets (String): teeth of the sprockets; $rear: gears on sprockets, or in a hub.
drawing =
    { $rear ->
        [hub] { $ringCount ->
            [one] Kettenblatt { $rings }, Gänge in der Nabe hinter einem Ritzel mit { $sprockets } Zähnen.
           *[other] Kettenblätter { $rings }, Gänge in der Nabe hinter einem Ritzel mit { $sprockets } Zähnen.
        }
       *[sprockets] { $ringCount ->
            [one] Kettenblatt { $rings }. Ritzel { $sprockets }.
           *[other] Kettenblätter { $rings }. Ritzel { $sprockets }.
        }
    }

## A bike of one's own. Numbers after "for example" are typed like that, so they stay as they are

own-title = Eigenes Rad
own-intro = Zähl die Zähne, oder lies die eingeprägten Zahlen ab.
rings = Kettenblätter
rings-hint = Zum Beispiel 50/34, oder 32.
gearing = Gänge hinten
gearing-sprockets = Ritzel und Schaltwerk
gearing-three = Nabe mit 3 Gängen
gearing-three-wide = Nabe mit 3 Gängen, weiter gestuft
gearing-five = Nabe mit 5 Gängen
gearing-five-wide = Nabe mit 5 Gängen, weiter gestuft
gearing-seven = Nabe mit 7 Gängen
gearing-eight = Nabe mit 8 Gängen, eng gestuft
gearing-eight-wide = Nabe mit 8 Gängen, weit gestuft
gearing-fourteen = Nabe mit 14 Gängen
hubSprocket = Ritzel an der Nabe
hubSprocket-hint = Seine Zähne, etwa 19.
hubSprocket-wrong = Eine Nabe hat ein Ritzel. Schreib, wie viele Zähne es hat, zum Beispiel 19.
backPedalBrake = Bremst, wenn ich rückwärts trete
hubRule = Eine Nabe schaltet, solange du nicht drückst: Nimm den Druck weg, oder bleib stehen.
motor = Motor
motor-none = Kein Motor
motor-crank = Mittelmotor (an der Kurbel)
motor-wheel = Nabenmotor (im Laufrad)
help = Unterstützung
# The motor's power for one part of the rider's: 0, 0.5, 1 or 2.
help-much =
    { $ratio ->
        [0] Aus
        [0.5] Halb so viel wie du
        [1] So viel wie du
       *[other] Doppelt so viel wie du
    }
battery = Im Akku
battery-hint = In Wattstunden, wenn die Fahrt beginnt, etwa 500.
battery-wrong = Schreib die Wattstunden im Akku, von 0 bis 999, zum Beispiel 500.
brakeSwitches = Die Bremshebel schalten ihn ab
way = Ritzel
way-range = Vom kleinsten zum größten
way-each = Eines nach dem anderen
range = Umfang der Kassette
range-hint = Zum Beispiel 11-32.
count = Wie viele Ritzel
# $teeth (String): a list like "11 13 15".
completed = Angenommen sind { $teeth }. Nicht deine? Schreib sie einzeln.
sprocketTeeth = Zähne jedes Ritzels
# $place: the how-manieth in the list of sprockets.
sprocket = Ritzel { $place }
add = Ritzel dazu
remove = Ritzel { $place } wegnehmen
emptySprocket = Ritzel { $place } ist leer. Schreib seine Zähne, oder nimm es weg.
tyre = Reifen
tyre-hint = Die Zahl auf der Seite, etwa 28-622.
crank = Kurbellänge
crank-hint = In mm, innen eingeprägt, etwa 170.
crank-wrong = Schreib die Kurbellänge in mm, von 90 bis 200, zum Beispiel 170.
mass = Gewicht des Rads
mass-hint = In kg. Geschätzt ist gut genug.
mass-wrong = Schreib das Gewicht in kg, von 5 bis 40, zum Beispiel 14 oder 9,5.
shifters = Schaltung
shifters-mechanical = Seilzug
shifters-electronic = Elektronisch
refuses = Verweigert Gänge mit schräger Kette
lastGood = Gezeichnet ist das letzte Rad, das möglich war.
warning-capacity = Damit muss das Schaltwerk { $capacityTeeth } Zähne Kette aufnehmen; übliche nehmen höchstens { $usualTeeth } auf. Frag eine Fachwerkstatt, und lies die Unterlagen des Herstellers.
warning-big-step = Von { $fromTeeth } auf { $toTeeth } Zähne ist ein großer Sprung für einen Umwerfer. Frag eine Fachwerkstatt, und lies die Unterlagen des Herstellers.

## Why what was typed is no part of a bike

problem-rings-unreadable = Schreib die Zähne der Kettenblätter, zum Beispiel 50/34 oder 32.
problem-too-many-rings = { $count } Kettenblätter sind mehr, als ein Rad hat. Schreib eine bis drei Zahlen, etwa 48/36/26.
problem-ring-size = Ein Kettenblatt mit { $teeth } Zähnen gibt es nicht. Übliche haben { $leastTeeth } bis { $mostTeeth }; zähl noch einmal, oder such die eingeprägte Zahl.
problem-rings-order = Die Kettenblätter stehen durcheinander. Schreib sie von groß nach klein oder von klein nach groß, jedes nur einmal.
problem-sprockets-unreadable = Schreib die Zähne der Ritzel, zum Beispiel 11-32, oder jedes einzeln: 11 13 15 18 21 24 28 32.
problem-sprocket-size = Ein Ritzel mit { $teeth } Zähnen gibt es nicht. Übliche haben { $leastTeeth } bis { $mostTeeth }; zähl noch einmal, oder such die eingeprägte Zahl.
problem-too-many-sprockets = { $count } Ritzel sind mehr, als eine Kassette hat. Schreib höchstens { $most }.
problem-sprocket-twice = Eine Zahl steht zweimal da. Jedes Ritzel einer Kassette ist anders.
problem-sprockets-order = Die Ritzel stehen durcheinander. Schreib sie von klein nach groß.
problem-sprocket-count = Sag, wie viele Ritzel es sind, von { $least } bis { $most }.
problem-too-narrow = { $count } Ritzel passen nicht zwischen { $leastTeeth } und { $mostTeeth } Zähne. Schreib jedes einzeln, oder weniger.
problem-tyre-unreadable = Schreib die ISO-Zahl von der Seite des Reifens, zum Beispiel 28-622 oder 47-406.
problem-tyre-size = { $tyreWidthMm }-{ $beadSeatMm } ist kein Fahrradreifen. Die erste Zahl ist die Breite (18 bis 125 mm), die zweite die Felge (200 bis 700 mm).

## The rider

rider = Person
rider-way = Wie gut kennst du dich?
rider-way-feel = Nach Gefühl
rider-way-numbers = Nach Zahlen
rider-about-child-9 = Leicht, mit flinken Beinen für kleine Berge.
rider-about-adult-new = Kommt auf einer Brücke außer Puste.
rider-about-adult-weekly = Mag Berge, die enden.
rider-about-adult-strong = Sucht den Berg.
rider-mass = Gewicht der Person
rider-mass-hint = In kg, mit Kleidung.
rider-mass-wrong = Schreib das Gewicht in kg, von 15 bis 200, zum Beispiel 68.
rider-power = Dauerleistung
rider-power-hint = In Watt: was du eine Stunde hältst und dabei noch reden kannst.
rider-power-wrong = Schreib die Leistung in Watt, von 20 bis 450, zum Beispiel 130.
rider-low = Langsamste Trittfrequenz, die du magst
rider-low-hint = Kurbelumdrehungen in einer Minute.
rider-low-wrong = Schreib Umdrehungen pro Minute, von 40 bis 120, zum Beispiel 70.
rider-high = Schnellste Trittfrequenz, die du magst
rider-high-hint = Kurbelumdrehungen in einer Minute.
rider-high-wrong = Schreib Umdrehungen pro Minute, von 45 bis 130, zum Beispiel 90.
rider-narrow = Die schnellste muss mindestens 5 über der langsamsten liegen.

## The tap test: one tap for each turn of the pedals finds the cadence

tap = Tipptest
tap-intro = Dreh die Pedale, wie du es magst, oder stell es dir vor. Tipp jedes Mal, wenn derselbe Fuß unten ist, 20 Sekunden lang. Die Leertaste geht auch.
# On the pad.
tap-first = Tippen
tap-firstHint = Die Zeit beginnt mit dem ersten Tippen.
# What is left of the time.
tap-left = { $seconds } s
tap-count = { $count }-mal getippt
tap-stop = Anhalten
tap-again = Noch einmal tippen
# $rpm: the cadence found. $low and $high: edges of the band round it.
tap-found = Du drehst etwa { $rpm }-mal in der Minute. Dein Bereich ist jetzt { $low } bis { $high }.
# Slips that were noticed and left out of the count. $missed: turns nobody tapped. $doubled: taps that were no turn. Never both 0.
tap-slips =
    { $missed ->
        [0] { $doubled ->
            [one] Einmal zu viel getippt: ausgeglichen.
           *[other] { $doubled }-mal zu viel getippt: ausgeglichen.
        }
        [one] { $doubled ->
            [0] Eine Umdrehung ohne Tippen: ausgeglichen.
            [one] Eine Umdrehung ohne Tippen und einmal zu viel getippt: ausgeglichen.
           *[other] Eine Umdrehung ohne Tippen und { $doubled }-mal zu viel getippt: ausgeglichen.
        }
       *[other] { $doubled ->
            [0] { $missed } Umdrehungen ohne Tippen: ausgeglichen.
            [one] { $missed } Umdrehungen ohne Tippen und einmal zu viel getippt: ausgeglichen.
           *[other] { $missed } Umdrehungen ohne Tippen und { $doubled }-mal zu viel getippt: ausgeglichen.
        }
    }
tap-undo = Bereich wie vorher
tap-undone = Dein Bereich ist wie vorher.
tap-too-few = Zu selten getippt, um etwas zu sagen. Tipp einmal je Umdrehung, bis die Zeit um ist.
tap-too-short = Zu kurz, um etwas zu sagen. Mach weiter, bis die Zeit um ist.
tap-too-slow = Das ist langsamer, als man tritt. Tipp bei jeder Umdrehung, nicht bei jeder zweiten.
tap-too-fast = Das ist schneller, als man tritt. Tipp nur für einen Fuß, einmal je ganzer Umdrehung.
tap-unsteady = Das Tippen war ungleichmäßig. Find erst einen Takt, dann fang an.
# Stands after the sentence that says why.
tap-unchanged = Dein Bereich ist unverändert.

## The rider's colours and shapes

kit = Deine Farben
kit-intro = Wie die Person im Bild aussieht. Schneller macht es niemanden.
jersey = Trikot
jersey-orange = orange
jersey-berry = beere
jersey-blue = blau
jersey-green = grün
jersey-violet = violett
jersey-sun = sonnengelb
pattern = Muster
pattern-plain = einfarbig
pattern-band = ein Streifen
pattern-dots = Punkte
helmet = Helm
helmet-holes = mit Löchern
helmet-star = mit einem Stern
helmet-crest = mit einem Kamm
frame = Rahmen
frame-usual = wie geliefert
frame-red = rot
frame-blue = blau
frame-green = grün
frame-plum = pflaume
