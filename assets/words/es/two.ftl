### Several riders on one device.

title = Dos o más
intro = En un mismo camino y con un mismo dispositivo. Cada cual pedalea para sí, contra nadie.
road = Camino
ride = Pedalear
leave = Dejar el recorrido

## Choosing

needsKeys = Esta pantalla es demasiado pequeña para los botones de dos. Toma una tableta, un teclado o dos mandos de juego; o elige relevos.
noRelay = Este camino es demasiado corto para relevos o tiene muy pocas cuestas: cada cual necesita una cuesta y algo de camino propio. Elige otro camino.
way = Cómo
way-beside = Lado a lado
way-facing = Cara a cara
way-relay = Relevos
wayHint-beside = Dos a la vez, cada cual en media pantalla: con una tableta, un teclado o dos mandos de juego.
wayHint-facing = Dos a la vez, con la mitad de arriba de la tableta girada. Ponla plana entre ambos, donde no pueda resbalar ni caerse.
wayHint-relay = Un camino, un tramo para cada cual: quien llega a la puerta entrega el dispositivo, de pie o en un asiento.
count = Ciclistas
# Who is meant; the heading over what they choose. $rider (Number): counted from 1. Side by side 1 sits left.
name-beside =
    { $rider ->
        [1] Izquierda
       *[other] Derecha
    }
name-facing =
    { $rider ->
        [1] Mitad de arriba, girada
       *[other] Mitad de abajo
    }
name-relay =
    { $rider ->
        [1] Primer turno
        [2] Segundo turno
        [3] Tercer turno
        [4] Cuarto turno
        [5] Quinto turno
        [6] Sexto turno
       *[other] Turno { $rider }
    }
bike = Bici
rider = Ciclista
ownRider = Como está en este dispositivo
autoEase = El juego afloja durante el cambio y frena en las líneas, para todo el grupo
headStart = Sale antes quien aquí tarda más en su mejor recorrido, para poder llegar a la vez
keys-left = Teclas de la izquierda
keys-right = Flechas del teclado
pads-left = Botones de la mitad izquierda o de arriba
pads-right = Botones de la mitad derecha o de abajo

## The road as a picture, and its parts

# What the picture shows. $gates (Number): places where the next rider takes over. $road: the road’s title.
roadWithGates =
    { $gates ->
        [0] { $road }
        [one] { $road }, con { $gates } puerta
       *[other] { $road }, con { $gates } puertas
    }
roadOfBoth = { $road }: hasta dónde han llegado ambos
# A part of a relay’s road, as its title. $leg (Number): counted from 1.
leg = { $road }, tramo { $leg } de { $legs }
# The one who sits left, and the one who sits right: one letter each, on the road of both.
mark-left = I
mark-right = D

## At the gate of a relay

gate =
    { $rider ->
        [1] Primer turno
        [2] Segundo turno
        [3] Tercer turno
        [4] Cuarto turno
        [5] Quinto turno
        [6] Sexto turno
       *[other] Turno { $rider }
    }
gateIntro = El relevo se pasa en la puerta, de pie o en un asiento y nunca sobre una bici en marcha. Mira dónde está tu tramo y pedalea.

## Riding

riding = Recorrido en común: { $road }
# Stands under a big number that counts down, $seconds (Number).
headStartWait =
    { $seconds ->
        [one] segundo. El mejor recorrido de la otra persona dura ese tiempo más.
       *[other] segundos. El mejor recorrido de la otra persona dura ese tiempo más.
    }
longWait = En un camino más corto se espera menos.
waiting = En la meta. La otra persona aún pedalea.
failed = Los recorridos se han parado porque su imagen no se ha podido cargar o dibujar. Prueba otra vez; si vuelve a pasar, recarga la página.
toGate = Volver a la puerta

## After the rides

afterTitle = Lo aprendido
# $ride (Number): which ride of a series this was. $of (Number): rides in a series.
series = Recorrido { $ride } de { $of }. De los { $of } recorridos de cada cual, cuenta el mejor.
total = { $total } de 100
together = Entre ambos: { $total } de 100 de media
# The best of a rider’s own rides; riders are not set against each other. $all: totals of the rides, like “61 · 70”.
best =
    { $rides ->
        [one] Lo mejor de { $rides } recorrido: { $best } ({ $all })
       *[other] Lo mejor de { $rides } recorridos: { $best } ({ $all })
    }
judging = Viendo cómo ha ido…
notJudged = No se ha podido calcular cómo ha ido este recorrido. Prueba otra vez.
look = Ver este recorrido
again = Otra vez
newSeries = Tres recorridos nuevos
moveOn-beside = Cambiar de lado
moveOn-facing = Cambiar de lado
moveOn-relay = Que empiece otra persona
other = Otro camino u otras personas
