### Nombres que llegan después de la primera página: lo que enseña un nivel, y ciclistas.

## Lo que enseña un nivel

lesson-levers = Las dos manetas
lesson-cadence = Cadencia
lesson-easing = Aflojar para cambiar
lesson-look-ahead = Mirar lejos
lesson-rolling = Cambiar con el camino
lesson-chain-line = Cadena recta
lesson-ring-change = Cambiar de plato
lesson-ride-over = Cuándo no cambiar
lesson-hidden = Lo que no se ve
lesson-stop-gear = La marcha para arrancar
lesson-wind-and-gravel = Viento y grava
lesson-everything = Todo a la vez
lesson-check = Recorrido de control
lesson-free = Recorrido libre
# What stands under the name of such a ride.
sentence-check = Un camino que no has visto, sin ayuda.
sentence-free = El camino que quieras, tan largo y tan ondulado como quieras.

## Lo que dice el parche donde el nombre de la lección no es palabra de niños

patch-levers = Más suave y más dura
patch-cadence = Piernas a buen ritmo

## Ciclistas

rider-child-9 = Peque de unos nueve años
rider-adult-new = Principiante
rider-adult-weekly = Pedalea cada semana
rider-adult-strong = Fuerte
rider-own = Números propios
