### The progress page: check rides and what they can show, marks of all rides, and what is kept without marks.

title = Progreso
intro = Los recorridos de control dicen si se ha aprendido algo. Los de práctica, dónde practicar.
road = En carretera: qué enseñan las salidas grabadas
empty = Aquí aún no hay ningún recorrido guardado. Pedalea primero; después estarán aquí tus notas.
# $rides (Number): from 1. The legs of the game: how it works out what a rider can do.
older =
    { $rides ->
        [1] Un recorrido se hizo antes de que cambiaran las piernas del juego. Conserva las notas que tuvo; no se puede recalcular ni comparar con los más nuevos.
       *[other] { $rides } recorridos se hicieron antes de que cambiaran las piernas del juego. Conservan las notas que tuvieron; no se pueden recalcular ni comparar con los más nuevos.
    }

## Check rides

check-title = Recorridos de control
check-what = Un recorrido de control es un camino que no has visto, sin ninguna ayuda. Haz uno antes de practicar y otro en otro día. Hasta tres de cada día se toman juntos: cuantos más, más pequeño es el cambio que se ve.
check-minutes = Con tu bici dura unos { $everyone } min, y el de los niños, unos { $children } min.
check-own-hub = Un cambio en el buje se ve también en las líneas de parada: tu camino tiene dos.
check-own-crank-motor = Un motor central también tira de la cadena: en dos cuestas de tu camino cambias mientras tira.
check-own-wheel-motor = Con velocidad el motor ya no ayuda: dos cuestas de tu camino llegan justo entonces.
check-ride-everyone = Hacer un recorrido de control
check-ride-children = Recorrido de control infantil
check-group = Bici y camino
# $bike: the name of a bike.
check-groupOf =
    { $road ->
        [children] { $bike }, recorrido de control infantil
        [hub] { $bike }, líneas de parada para bujes
        [hub-children] { $bike }, líneas de parada para bujes, infantil
        [crank-motor] { $bike }, cuestas que se empinan, para motor central
        [wheel-motor] { $bike }, cuestas rápidas para motor en la rueda
       *[everyone] { $bike }
    }
# By how much it changed, within the sentences below. $points (Number): of 100, from 0.
change =
    { $way ->
        [up] sube { $points }
        [down] baja { $points }
       *[same] no cambia
    }
days =
    { $days ->
        [one] un día
       *[other] { $days } días
    }
# $first, $latest (Number): totals of 100.
finding-need-first = Aún no hay ningún recorrido de control.
finding-need-second = Tu primer recorrido de control sacó { $first } de 100. Practica y luego haz otro, mejor en otro día.
# $certain: whether it is more than chance makes.
finding-same-day =
    { $certain ->
        [yes] De { $first } a { $latest } en un día: { change }, más de lo que suele dar el azar por sí solo. Si se mantiene se verá en otro día.
       *[no] De { $first } a { $latest } en un día: { change }. El azar por sí solo ya da una diferencia así. Haz otro en otro día.
    }
# $chance (Number): so many points up or down can be chance.
finding-retest =
    { $certain ->
        [better] De { $first } a { $latest }, { days } después, sin ayuda: { change }, con un margen de { $chance }. Eso es aprender, dentro de este juego.
        [worse] De { $first } a { $latest }, { days } después, sin ayuda: { change }, con un margen de { $chance }. ¿Cansancio, o falta de práctica? Haz otro.
       *[no] De { $first } a { $latest }, { days } después, sin ayuda: { change }, con un margen de { $chance }. Eso no se distingue del azar.
    }
role-first = primero
role-same-day = mismo día
role-retest = otro día
# Beside the area of the chart that it explains.
check-chance = A menos de { $points } puntos del primero: eso puede darlo el azar por sí solo.
# $before, $after (Number): rides of the first and of the latest day, from 1. $most (Number): that many can be taken.
check-sides =
    { $which ->
        [all] Tomados juntos: { $before } del primer día y { $after } del último.
       *[few] Tomados juntos: { $before } del primer día y { $after } del último. Con { $most } de cada día se vería un cambio más pequeño.
    }
# Read aloud in place of the chart. $rides (Number): from 1.
check-desc =
    { $rides ->
        [1] Un recorrido de control: { $first } de 100.
       *[other] { $rides } recorridos de control en el orden en que se hicieron. El primero sacó { $first } de 100, el último { $latest }.
    }
check-table = Recorridos de control en números

## What this can show

limits-title = Qué puede enseñar esto, y qué no
limits =
    Los recorridos de práctica tienen ayudas y caminos que se van conociendo. Sus notas pueden subir sin que se aprenda y bajar mientras practicas algo difícil. Por eso aquí no se comparan.
    Los recorridos de control son igual de difíciles y siempre nuevos. Uno solo dice poco: compara el primero con uno de otro día, en la misma bici.
    Todo esto habla de este juego. Nadie ha demostrado que unas notas mejores aquí hagan cambiar mejor en carretera.

## Marks of all rides, as small charts

marks-title = Notas de todos los recorridos
marks-hint = El más antiguo, a la izquierda. Para encontrar qué practicar, no para demostrar progreso.
# Before the choice of a level.
marks-which = Recorridos de
marks-all = todos los niveles
mark-cadence = Cadencia
mark-foresight = Anticipación
mark-easing = Aflojar
mark-chainLine = Línea de cadena
mark-economy = Economía
mark-total = En total
# Before the number of the latest ride.
marks-latest = último
marks-none = aún nada que valorar
kind-ride = práctica
kind-check = recorrido de control
kind-clinic = en una sesión
# Read aloud in place of a chart. $name: of the mark. $rides (Number): from 1. $first, $latest (Number): of 100.
marks-desc =
    { $rides ->
        [1] { $name }: un recorrido, { $first } de 100.
       *[other] { $name }: { $rides } recorridos, de { $first } a { $latest } de 100.
    }
marks-shown = Los últimos { $shown } de { $all } recorridos.
marks-table = Lo mismo en números
table-date = Fecha
table-level = Nivel
table-kind = Tipo
table-role = Cuál
table-total = Total
table-passed = Superado
table-yes = sí
table-no = no

## Rides that are kept without marks

unmarked-title = Guardados sin notas
# Goes on after the title of the level and a comma. $date: when it was ridden.
standing-to-mark = { $date }: aún sin notas; el juego lo intenta de nuevo al abrirse
standing-unfinished = { $date }: se interrumpió antes de la meta, así que no recibe notas
standing-older = { $date }: se hizo antes de que cambiaran las piernas del juego, así que ya no se puede recalcular ni puntuar
