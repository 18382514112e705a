### What is written and said over a running ride: instruments, pads, hints, remarks, and the road for those who ride by ear.

## Instruments. There is little room: one or two short words.

cadence = cadencia
perMinute = por minuto
gear = marcha
pressure = piernas
legs-coast = descanso
legs-ease = flojas
legs-steady = normal
legs-press = aprietan
legs-too-slow = muy lentas
legs-too-fast = muy rápidas
reserve = aliento
roadAhead = Los próximos { $length } de camino
distance = distancia
chainFromAbove = La cadena desde arriba
# How many times the sideways measure is widened in the picture.
widened = ancho × { $times }
crossed = cadena cruzada
chainOff = cadena salida
# What a motor does, in two or three words, under the chain from above.
motor-pulls = el motor tira
motor-rests = motor en reposo
# $speed with its unit.
motor-too-fast = sin ayuda a más de { $speed }
motor-empty = batería vacía
# How much steeper than life heights are drawn.
steeper = alturas × { $times }
stopLine = línea en
outOfSight = sin vista
# Who rides along as a silhouette.
beside-best = mejor recorrido
beside-last = tu último recorrido
marksSoFar = hasta aquí, de 100
marks-cadence = cadencia
marks-easing = aflojar
marks-chainLine = cadena

## What the hands do next

# The front derailleur never needs more than one step at a time.
move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] Más suave
               *[other] { $steps } más suaves
            }
        [rear-harder]
            { $steps ->
                [one] Más dura
               *[other] { $steps } más duras
            }
        [front-easier]
            { $steps ->
                [one] Plato más pequeño
               *[other] { $steps } platos más pequeños
            }
       *[front-harder]
            { $steps ->
                [one] Plato más grande
               *[other] { $steps } platos más grandes
            }
    }
# The same behind "then".
move-after =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] más suave
               *[other] { $steps } más suaves
            }
        [rear-harder]
            { $steps ->
                [one] más dura
               *[other] { $steps } más duras
            }
        [front-easier]
            { $steps ->
                [one] plato más pequeño
               *[other] { $steps } platos más pequeños
            }
       *[front-harder]
            { $steps ->
                [one] plato más grande
               *[other] { $steps } platos más grandes
            }
    }
move-then = { $first }, luego { $second }
step-now = ya
step-soon = pronto
step-in = en { $distance }

## Pads for thumbs: what is written on them, in one short word, and what a screen reader says

pads = Mandos de la bici
pad-rear-easier = más suave
pad-rear-harder = más dura
pad-front-smaller = pequeño
pad-front-bigger = grande
pad-ease = afloja
pad-press = aprieta
pad-brake = freno
pad-pause = pausa
spoken-rear-easier =
    { $gears ->
        [hub] Marchas del buje: más suave
       *[sprockets] Cambio trasero: más suave
    }
spoken-rear-harder =
    { $gears ->
        [hub] Marchas del buje: más dura
       *[sprockets] Cambio trasero: más dura
    }
spoken-front-smaller = Desviador: plato más pequeño
spoken-front-bigger = Desviador: plato más grande
spoken-ease =
    { $gears ->
        [hub] Quitar la presión; mitad de arriba o deslizar hacia arriba: apretar
       *[sprockets] Aflojar; mitad de arriba o deslizar hacia arriba: apretar
    }
spoken-press = Apretar
spoken-brake = Frenar
spoken-pause = Pausa

## Remarks, one at a time

remark-heavy-shift = Cambio forzado. Primero afloja.
remark-shift-hung = La cadena se ha trabado. Afloja y se moverá.
remark-shift-waiting = Una cadena solo se mueve si pedaleas.
remark-hub-knocked = Un golpe. Quita la presión y entrará.
remark-motor-pulled = El motor aún tiraba. Afloja, espera y cambia.
remark-hub-waits = El buje espera. Quita la presión.
remark-no-easier = No hay marcha más suave.
remark-no-harder = No hay marcha más dura.
remark-ring-easier = No hay piñón más suave. Un plato más pequeño lo es.
remark-ring-harder = No hay piñón más duro. Un plato más grande lo es.
remark-no-ring = Ahí no hay más platos.
remark-refused-crossed = Esta bici no cruza la cadena.
remark-crossed = La cadena va cruzada.
remark-chain-dropped = ¡Cadena fuera! Afloja y pulsa la maneta de los platos.
remark-foot-down = Pie a tierra. La marcha era demasiado dura.
remark-line-missed = Te has pasado de la línea. Frena antes.
remark-battery-empty = La batería está vacía. Ahora, solo tus piernas.
remark-reserve-empty = Sin aliento. Un rato sin apretar.

## By ear: said aloud, so short. Distances come in with their units.

ear-pitch-ahead = Repecho en { $distance }: { $slope }, { $length } de largo.
ear-pitch-soon = Repecho en { $distance }.
ear-pitch-now = Pie del repecho.
ear-pitch-over = Pasado el alto.
ear-stop-ahead = Línea de detención en { $distance }.
ear-stop-soon = Línea de detención en { $distance }. Frena.
ear-downhill = Cuesta abajo.
# The number first: it is what the hand needs.
ear-move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] una más suave
               *[other] { $steps } más suaves
            }
        [rear-harder]
            { $steps ->
                [one] una más dura
               *[other] { $steps } más duras
            }
        [front-easier] plato más pequeño
       *[front-harder] plato más grande
    }
ear-hint = { $move }.
ear-hint-then = { $first }, luego { $second }.
ear-begin = En marcha.
ear-nothing = No hay ningún repecho a la vista.
