### Wat boven een lopende rit staat en wordt gezegd: instrumenten, knoppen, tips, opmerkingen, en de weg voor wie op gehoor rijdt.

## Instrumenten. Er is weinig plaats: één of twee korte woorden.

cadence = cadans
perMinute = per minuut
gear = versnelling
pressure = benen
legs-coast = rusten
legs-ease = zacht
legs-steady = gewoon
legs-press = hard
legs-too-slow = te traag
legs-too-fast = te snel
reserve = adem
roadAhead = De volgende { $length } weg
distance = gereden
chainFromAbove = De ketting van boven
# Hoeveel keer de breedte in het plaatje is opgerekt.
widened = breedte × { $times }
crossed = schuine ketting
chainOff = ketting eraf
# Wat een motor doet, in twee of drie woorden, onder de ketting van boven.
motor-pulls = motor trekt
motor-rests = motor rust
# $speed met haar eenheid.
motor-too-fast = motor uit boven { $speed }
motor-empty = accu leeg
# Hoeveel steiler dan in het echt de hoogte is getekend.
steeper = hoogte × { $times }
stopLine = stop over
outOfSight = uit zicht
# Who rides along as a silhouette.
beside-best = beste rit
beside-last = jouw laatste rit
marksSoFar = tot nu toe, van 100
marks-cadence = cadans
marks-easing = zacht trappen
marks-chainLine = kettinglijn

## Wat de handen nu doen

# De voorderailleur heeft nooit meer dan één stap tegelijk nodig.
move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] Lichter
               *[other] { $steps } stappen lichter
            }
        [rear-harder]
            { $steps ->
                [one] Zwaarder
               *[other] { $steps } stappen zwaarder
            }
        [front-easier]
            { $steps ->
                [one] Kleiner kettingblad
               *[other] Kleiner kettingblad, { $steps } stappen
            }
       *[front-harder]
            { $steps ->
                [one] Groter kettingblad
               *[other] Groter kettingblad, { $steps } stappen
            }
    }
# Hetzelfde na “dan”.
move-after =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] lichter
               *[other] { $steps } stappen lichter
            }
        [rear-harder]
            { $steps ->
                [one] zwaarder
               *[other] { $steps } stappen zwaarder
            }
        [front-easier]
            { $steps ->
                [one] kleiner kettingblad
               *[other] kleiner kettingblad, { $steps } stappen
            }
       *[front-harder]
            { $steps ->
                [one] groter kettingblad
               *[other] groter kettingblad, { $steps } stappen
            }
    }
move-then = { $first }, dan { $second }
step-now = nu
step-soon = zo meteen
step-in = over { $distance }

## Knoppen voor duimen: wat erop staat, in één kort woord, en wat een schermlezer zegt

pads = Bediening van de fiets
pad-rear-easier = lichter
pad-rear-harder = zwaarder
pad-front-smaller = kleiner
pad-front-bigger = groter
pad-ease = zacht
pad-press = hard
pad-brake = rem
pad-pause = pauze
spoken-rear-easier =
    { $gears ->
        [hub] Naafversnelling: lichter
       *[sprockets] Achterderailleur: lichter
    }
spoken-rear-harder =
    { $gears ->
        [hub] Naafversnelling: zwaarder
       *[sprockets] Achterderailleur: zwaarder
    }
spoken-front-smaller = Voorderailleur: kleiner blad
spoken-front-bigger = Voorderailleur: groter blad
spoken-ease =
    { $gears ->
        [hub] Druk eraf; bovenste helft of omhoog vegen: hard trappen
       *[sprockets] Zacht trappen; bovenste helft of omhoog vegen: hard trappen
    }
spoken-press = Hard trappen
spoken-brake = Remmen
spoken-pause = Pauze

## Opmerkingen, één tegelijk

remark-heavy-shift = Geschakeld onder druk. Trap eerst zacht.
remark-shift-hung = De ketting blijft hangen. Trap zacht, dan verspringt hij.
remark-shift-waiting = Een ketting verspringt alleen als je trapt.
remark-hub-knocked = Een bonk. Haal de druk eraf, dan schakelt hij.
remark-motor-pulled = De motor trok nog. Trap zacht, wacht, schakel dan.
remark-hub-waits = De naaf wacht. Haal de druk eraf.
remark-no-easier = Dit is de lichtste versnelling.
remark-no-harder = Dit is de zwaarste versnelling.
remark-ring-easier = Geen lichter tandwiel. Een kleiner kettingblad is lichter.
remark-ring-harder = Geen zwaarder tandwiel. Een groter kettingblad is zwaarder.
remark-no-ring = Die kant op zijn er geen kettingbladen meer.
remark-refused-crossed = Deze fiets weigert een schuine ketting.
remark-crossed = De ketting loopt schuin.
remark-chain-dropped = Ketting eraf! Trap zacht, druk dan op de hendel voor.
remark-foot-down = Voet aan de grond. De versnelling was te zwaar.
remark-line-missed = Over de streep. Rem eerder.
remark-battery-empty = De accu is leeg. Nu doen alleen je benen het werk.
remark-reserve-empty = Buiten adem. Even niet hard trappen.

## Op gehoor: hardop gezegd, dus kort. Afstanden komen met hun eenheid.

ear-pitch-ahead = Klimmetje over { $distance }: { $slope }, { $length } lang.
ear-pitch-soon = Klimmetje over { $distance }.
ear-pitch-now = Voet van het klimmetje.
ear-pitch-over = Over de top.
ear-stop-ahead = Stopstreep over { $distance }.
ear-stop-soon = Stopstreep over { $distance }. Rem.
ear-downhill = Bergaf.
# Het getal eerst: dat heeft de hand nodig.
ear-move =
    { $move ->
        [rear-easier] { $steps } lichter
        [rear-harder] { $steps } zwaarder
        [front-easier] kleiner kettingblad
       *[front-harder] groter kettingblad
    }
ear-hint = { $move }.
ear-hint-then = { $first }, dan { $second }.
ear-begin = We rijden.
ear-nothing = Er is geen klimmetje in zicht.
