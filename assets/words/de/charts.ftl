### Der Streifen nach einer Fahrt: vier Spuren entlang der Straße, was darunter vorgelesen wird, und seine Tabellen.

title = Die Fahrt entlang der Straße
desc = Vier Spuren über { $length } Straße: Höhe und Steigung, Gang, Trittfrequenz mit ihrem Bereich, Druck auf die Pedale; { shifts }.
descClosed = Vier Spuren über { $length } Straße: Höhe und Steigung, Gang, Trittfrequenz mit ihrem Bereich, Druck auf die Pedale.
shifts =
    { $shifts ->
        [0] nicht geschaltet
        [1] einmal geschaltet
        [2] zweimal geschaltet
        [3] dreimal geschaltet
        [4] viermal geschaltet
        [5] fünfmal geschaltet
        [6] sechsmal geschaltet
        [7] siebenmal geschaltet
        [8] achtmal geschaltet
        [9] neunmal geschaltet
        [10] zehnmal geschaltet
       *[other] { $shifts }-mal geschaltet
    }

## The tracks: a name in bold, as short as can be, and a hint under it

road = Straße
gear = Gang
cadence = Tritte
pressure = Druck
shifts-title = Schalten
hint-gear = ↑ schwerer  ↓ leichter
hint-cadence = dein Bereich { $low }–{ $high }
hint-pressure = — stetig

## What lines and shapes mean

legend-you = du
legend-best = beste Fahrt
legend-clean = sauber geschaltet
legend-fair = etwas ruppig
legend-heavy = ruppig
legend-foot-down = Fuß am Boden
legend-chain-dropped = Kette ab

## Choosing a stretch and a place

zoom = Zeige
zoom-whole = Ganze Straße
zoom-to =
    { $audience ->
        [children] Berg { $pitch }
       *[everyone] Rampe { $pitch }
    }
place = Stelle auf der Straße
nextShift = Nächstes Schalten
lastShift = Schalten davor
watchHere = Ab hier ansehen
drag = Ziehen oder tippen.
keys = Oder mit ← → (Bildtasten: { $step }).
jumps = N und P springen zum nächsten und vorigen Schalten.

## What is read out at a place, each a label and a value

read-at = Bei
read-best = Beste Fahrt
read-shift = Schalten
read-slope =
    { $way ->
        [up] { $percent } bergauf
        [down] { $percent } bergab
       *[flat] flach
    }
# Im Genitiv: Es steht nach „Fuß“.
pitch =
    { $audience ->
        [children] { $pitches ->
            [1] des Bergs
           *[other] von Berg { $pitch }
        }
       *[everyone] { $pitches ->
            [1] der Rampe
           *[other] { $pitch ->
                [1] der ersten Rampe
                [2] der zweiten Rampe
                [3] der dritten Rampe
                [4] der vierten Rampe
                [5] der fünften Rampe
                [6] der sechsten Rampe
                [7] der siebten Rampe
                [8] der achten Rampe
                [9] der neunten Rampe
                [10] der zehnten Rampe
               *[other] von Rampe { $pitch }
            }
        }
    }
read-slopeNear =
    { $side ->
        [at] { read-slope }, genau am Fuß { pitch }
        [after] { read-slope }, { $metres } hinter dem Fuß { pitch }
       *[before] { read-slope }, { $metres } vor dem Fuß { pitch }
    }
read-rpm = { $rpm } U/min
read-coasting = rollt
read-standing = steht
read-band = Bereich { $low }–{ $high }
read-pressure =
    { $how ->
        [coast] ruht ({ $percent })
        [ease] locker ({ $percent })
        [steady] stetig ({ $percent })
       *[press] fest ({ $percent })
    }
read-bestHere = { $gear }, { $cadence }
read-shiftSays =
    { $kind ->
        [clean] sauber
        [fair] etwas ruppig
       *[heavy] ruppig
    }, { $direction ->
        [easier] leichter
       *[harder] schwerer
    }: { $from } auf { $to }

## Tables

table-summary = Dasselbe in Zahlen
table-places = Die Fahrt alle { $step }
table-shifts = Alles Schalten
table-place = Stelle
table-slope = Steigung
table-gear = Gang
table-cadence = Trittfrequenz (U/min)
table-band = Bereich (U/min)
table-pressure = Druck (%)
table-bestGear = Beste Fahrt: Gang
table-bestCadence = Beste Fahrt: Trittfrequenz (U/min)
table-begins = Beginnt bei
table-change = Wechsel
table-took = Dauer (s)
table-load = Druck (%)
table-feel = Gefühl
feel-clean = sauber
feel-fair = etwas ruppig
feel-heavy = ruppig
