### The strip after a ride: four tracks along the road, what is read out below it, and its tables.

# Read aloud in place of the picture. $length: the road with its unit, like "1,200 m". $shifts (Number): from 0.
title = El recorrido a lo largo del camino
desc = Cuatro pistas a lo largo de { $length } de camino: altura y pendiente, marcha, cadencia con su franja, presión en los pedales; { shifts }.
descClosed = Cuatro pistas a lo largo de { $length } de camino: altura y pendiente, marcha, cadencia con su franja, presión en los pedales.
# Small numbers are written as words.
shifts =
    { $shifts ->
        [0] ningún cambio
        [1] un cambio
        [2] dos cambios
        [3] tres cambios
        [4] cuatro cambios
        [5] cinco cambios
        [6] seis cambios
        [7] siete cambios
        [8] ocho cambios
        [9] nueve cambios
        [10] diez cambios
       *[other] { $shifts } cambios
    }

## The tracks: a name in bold, as short as can be, and a hint under it

road = Camino
gear = Marcha
cadence = Cadencia
pressure = Presión
shifts-title = Cambios
hint-gear = ↑ más dura  ↓ más suave
# $low, $high (Number): turns of the pedals a minute.
hint-cadence = tu franja { $low }–{ $high }
# The line is drawn in the picture.
hint-pressure = — normal

## What lines and shapes mean

legend-you = tú
legend-best = mejor recorrido
legend-clean = cambio limpio
legend-fair = algo forzado
legend-heavy = cambio forzado
legend-foot-down = pie a tierra
legend-chain-dropped = cadena salida

## Choosing a stretch and a place

zoom = Ver
zoom-whole = Todo el camino
# $pitch (Number): from 1.
zoom-to =
    { $audience ->
        [children] Cuesta { $pitch }
       *[everyone] Repecho { $pitch }
    }
place = Punto del camino
nextShift = Cambio siguiente
lastShift = Cambio anterior
watchHere = Ver desde aquí
drag = Arrastra o toca.
# $step: a distance, like "50 m".
keys = O usa ← → (Re Pág y Av Pág: { $step }).
jumps = N y P saltan de cambio en cambio.

## What is read out at a place, each a label and a value

read-at = En
read-best = Mejor recorrido
read-shift = Cambio
# $percent: like "8 %".
read-slope =
    { $way ->
        [up] { $percent } de subida
        [down] { $percent } de bajada
       *[flat] llano
    }
# $pitches (Number): how many steep pieces the road has. $pitch (Number): which of them, from 1.
# Behind "the foot": with "of" and the article in one.
pitch =
    { $audience ->
        [children] { $pitches ->
            [1] de la cuesta
           *[other] de la cuesta { $pitch }
        }
       *[everyone] { $pitches ->
            [1] del repecho
           *[other] { $pitch ->
                [1] del primer repecho
                [2] del segundo repecho
                [3] del tercer repecho
                [4] del cuarto repecho
                [5] del quinto repecho
                [6] del sexto repecho
                [7] del séptimo repecho
                [8] del octavo repecho
                [9] del noveno repecho
                [10] del décimo repecho
               *[other] del repecho { $pitch }
            }
        }
    }
# $metres: a distance, like "12 m".
read-slopeNear =
    { $side ->
        [at] { read-slope }, justo al pie { pitch }
        [after] { read-slope }, { $metres } después del pie { pitch }
       *[before] { read-slope }, { $metres } antes del pie { pitch }
    }
read-rpm = { $rpm } rpm
read-coasting = dejándose llevar
read-standing = en parado
read-band = franja { $low }–{ $high }
# How hard the pedals are pushed. $percent: like "80 %".
read-pressure =
    { $how ->
        [coast] descanso ({ $percent })
        [ease] flojo ({ $percent })
        [steady] normal ({ $percent })
       *[press] apretando ({ $percent })
    }
# $gear: like "50 × 17". $cadence: like "82 rpm", or "coasting".
read-bestHere = { $gear }, { $cadence }
# $from, $to (Number): places of the shifter.
read-shiftSays =
    { $kind ->
        [clean] limpio
        [fair] algo forzado
       *[heavy] forzado
    }, { $direction ->
        [easier] a más suave
       *[harder] a más dura
    }: de { $from } a { $to }

## Tables

table-summary = Lo mismo en números
# $step: a distance, like "20 m".
table-places = El recorrido cada { $step }
table-shifts = Todos los cambios
table-place = Punto
table-slope = Pendiente
table-gear = Marcha
table-cadence = Cadencia (rpm)
table-band = Franja (rpm)
table-pressure = Presión (%)
table-bestGear = Mejor recorrido: marcha
table-bestCadence = Mejor recorrido: cadencia (rpm)
table-begins = Empieza en
table-change = Cambio
table-took = Duró (s)
table-load = Carga (%)
table-feel = Tacto
feel-clean = limpio
feel-fair = algo forzado
feel-heavy = forzado
