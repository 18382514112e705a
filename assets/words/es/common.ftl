### Names that several pages say: the game, its places, bikes and riders.

# How the language is written: ltr from left to right, rtl from right to left.
direction = ltr

name = Antes de la cuesta
promise = La marcha adecuada, antes de que haga falta.

## The pages

nav-home = Inicio
nav-levels = Niveles
nav-children = Para niños y niñas
nav-bike = Bici y ciclista
nav-about = Cómo se juega
nav-progress = Progreso
nav-gearcheck = Revisión de marchas
nav-settings = Ajustes
nav-close = Cerrar
nav-debrief = Tu recorrido
nav-bench = Taller de niveles
nav-road = En carretera
nav-two = Dos o más
nav-clinic = Sesión en grupo
nav-join = Unirse a una sesión
nav-collect = Reunir recorridos
nav-teach = Planes de sesión
nav-skip = Ir al contenido

## A page that is fetched when it is opened

coming-loading = Un momento: esta página está en camino.
coming-failed = No se ha podido cargar esta página. Mira si hay conexión y prueba otra vez.
coming-tryAgain = Probar otra vez

## What a person should know about the keeping

health-not-fetched =
    Una parte del juego no ha llegado, así que aún no se guarda nada y no se ven tus propios niveles. Mira si hay conexión; el juego lo intenta de nuevo por sí solo.

## Levels and rides

ladder-everyone = La escalera
ladder-children = Para niños y niñas
# $steepest (String): a gradient, like "8 %".
profile = Perfil del camino, con { $steepest } de pendiente como máximo
riding-loading = El camino se está desenrollando…
riding-paused = En pausa
riding-on = Seguir

## Bikes and riders

bike-kids-20-1x7 = Infantil de 20 pulgadas
bike-kids-24-1x8 = Infantil de 24 pulgadas
bike-town-1x9 = Ciudad
bike-kids-20-hub-3 = Infantil de 20 pulgadas, buje de 3
bike-town-hub-3 = Ciudad con buje de 3
bike-town-hub-7 = Ciudad con buje de 7
bike-trekking-hub-8-crank = Trekking con buje de 8 y motor central
bike-trekking-1x10-crank = Trekking con motor central
bike-town-hub-7-wheel = Ciudad con buje de 7 y motor en la rueda
bike-trekking-3x8 = Trekking
bike-road-2x11 = Carretera
bike-gravel-1x12 = Gravel
bike-own = Bici propia
# $rings (Number): chainrings. $rear (Number): sprockets, or gears in the hub.
# $where: gears on sprockets, all gears in the hub, or some of them.
bike-gears =
    { $where ->
        [single] { $rear } marcha
        [hub] { $rear } marchas en el buje
        [both] { $rings } × { $rear } marchas, { $rear } de ellas en el buje
       *[sprockets] { $rings } × { $rear } marchas
    }

## Numbers with their units, and a gear that has no teeth to count

unit-kmh = { $value } km/h
unit-mph = { $value } mph
unit-m = { $value } m
unit-ft = { $value } ft
unit-km = { $value } km
unit-mi = { $value } mi
unit-percent = { $value } %
gear-in-hub = { $number } de { $of }
