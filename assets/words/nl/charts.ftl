### De strook na een rit: vier sporen langs de weg, wat eronder wordt uitgelezen, en de tabellen.

# Voorgelezen in plaats van het plaatje. $length: de weg met eenheid, zoals “1.200 m”. $shifts (Number): vanaf 0.
title = De rit langs de weg
desc = Vier sporen over { $length } weg: hoogte en helling, versnelling, cadans met het bereik, druk op de pedalen; { shifts }.
descClosed = Vier sporen over { $length } weg: hoogte en helling, versnelling, cadans met het bereik, druk op de pedalen.
# Kleine getallen als woord.
shifts =
    { $shifts ->
        [0] niet geschakeld
        [1] één keer geschakeld
        [2] twee keer geschakeld
        [3] drie keer geschakeld
        [4] vier keer geschakeld
        [5] vijf keer geschakeld
        [6] zes keer geschakeld
        [7] zeven keer geschakeld
        [8] acht keer geschakeld
        [9] negen keer geschakeld
        [10] tien keer geschakeld
       *[other] { $shifts } keer geschakeld
    }

## De sporen: een vette naam, zo kort als kan, en een hint eronder

road = Weg
gear = Versnelling
cadence = Cadans
pressure = Druk
shifts-title = Geschakeld
hint-gear = ↑ zwaarder  ↓ lichter
# $low, $high (Number): omwentelingen van de pedalen per minuut.
hint-cadence = je bereik { $low }–{ $high }
# De streep staat in het plaatje.
hint-pressure = — gewoon

## Wat lijnen en vormen betekenen

legend-you = jij
legend-best = beste rit
legend-clean = schoon geschakeld
legend-fair = iets onder druk
legend-heavy = onder druk
legend-foot-down = voet aan de grond
legend-chain-dropped = ketting eraf

## Een stuk en een plek kiezen

zoom = Toon
zoom-whole = Hele weg
# $pitch (Number): vanaf 1.
zoom-to =
    { $audience ->
        [children] Heuvel { $pitch }
       *[everyone] Klimmetje { $pitch }
    }
place = Plek op de weg
nextShift = Volgende keer schakelen
lastShift = Vorige keer schakelen
watchHere = Kijk vanaf hier
drag = Sleep of tik.
# $step: een afstand, zoals “50 m”.
keys = Of gebruik ← → (Page-toetsen: { $step }).
jumps = N en P springen naar de volgende en vorige keer schakelen.

## Wat er op een plek wordt uitgelezen, telkens een opschrift en een waarde

read-at = Op
read-best = Beste rit
read-shift = Geschakeld
# $percent: zoals “8%”.
read-slope =
    { $way ->
        [up] { $percent } bergop
        [down] { $percent } bergaf
       *[flat] vlak
    }
# $pitches (Number): hoeveel steile stukken de weg heeft. $pitch (Number): welk ervan, vanaf 1.
pitch =
    { $audience ->
        [children] { $pitches ->
            [1] de heuvel
           *[other] heuvel { $pitch }
        }
       *[everyone] { $pitches ->
            [1] het klimmetje
           *[other] { $pitch ->
                [1] het eerste klimmetje
                [2] het tweede klimmetje
                [3] het derde klimmetje
                [4] het vierde klimmetje
                [5] het vijfde klimmetje
                [6] het zesde klimmetje
                [7] het zevende klimmetje
                [8] het achtste klimmetje
                [9] het negende klimmetje
                [10] het tiende klimmetje
               *[other] klimmetje { $pitch }
            }
        }
    }
# $metres: een afstand, zoals “12 m”.
read-slopeNear =
    { $side ->
        [at] { read-slope }, precies aan de voet van { pitch }
        [after] { read-slope }, { $metres } na de voet van { pitch }
       *[before] { read-slope }, { $metres } vóór de voet van { pitch }
    }
read-rpm = { $rpm } per minuut
read-coasting = rolt
read-standing = staat stil
read-band = bereik { $low }–{ $high }
# Hoe hard er op de pedalen wordt gedrukt. $percent: zoals “80%”.
read-pressure =
    { $how ->
        [coast] rust ({ $percent })
        [ease] zacht ({ $percent })
        [steady] gewoon ({ $percent })
       *[press] hard ({ $percent })
    }
# $gear: zoals “50 × 17”. $cadence: zoals “82 per minuut”, of “laten rollen”.
read-bestHere = { $gear }, { $cadence }
# $from, $to (Number): standen van de hendel.
read-shiftSays =
    { $kind ->
        [clean] schoon
        [fair] iets onder druk
       *[heavy] onder druk
    }, { $direction ->
        [easier] lichter
       *[harder] zwaarder
    }: { $from } naar { $to }

## Tabellen

table-summary = Hetzelfde in getallen
# $step: een afstand, zoals “20 m”.
table-places = De rit om de { $step }
table-shifts = Alle keren dat je schakelde
table-place = Plek
table-slope = Helling
table-gear = Versnelling
table-cadence = Cadans (/min)
table-band = Bereik (/min)
table-pressure = Druk (%)
table-bestGear = Beste rit: versnelling
table-bestCadence = Beste rit: cadans (/min)
table-begins = Begint op
table-change = Verandering
table-took = Duur (s)
table-load = Druk (%)
table-feel = Gevoel
feel-clean = schoon
feel-fair = iets onder druk
feel-heavy = onder druk
