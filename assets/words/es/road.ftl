### On the road: what recorded rides show of somebody's shifting, pitch by pitch. Lengths, gradients, shares and months
### come in written. "Best ride" is the one the game works out. GPX is the name of a format.

intro = Lo que tus salidas grabadas muestran de cómo cambias de marcha, repecho a repecho.
opening = Un momento: llegan tus salidas.
openFailed = No se ha podido abrir lo guardado. Recarga la página.
limits = Con una medida por segundo no se ve si aflojas, ni el segundo exacto de un cambio, ni la línea de cadena. El lugar de un cambio solo se conoce con el margen que sigue a ±; el viento, el tráfico y la compañía no se tienen en cuenta.
late-heights = Muchos aparatos anotan la altitud unos segundos tarde. Con la potencia en el archivo, el retraso se encuentra y se corrige. Sin ella, el pie de una cuesta puede quedar demasiado lejos, { $way } o más, y parece que cambias antes de lo que cambiaste.
# Stands in a table where nothing is known.
unknown = –

## Bringing a file

bring-title = Trae una salida
bring-what = Archivos GPX con cadencia, un punto por segundo. Pueden ser varios a la vez.
# $parts: chainrings and sprockets, like "50 / 34 · 11–34". $tyre: a size, like "28-622".
bring-bike = Hecha con { $parts } y neumáticos de { $tyre }.
bring-otherBike = Era otra bici
# Beside a box that is ticked.
bring-teeth = No son los dientes de la bici de esa salida. Entonces las marchas se distinguen sin nombre, y son menos.
bring-files = Elegir archivos GPX
# Answers to the question what the heights of a file are in.
bring-metres = Están en metros
bring-feet = Están en pies
bring-privacy = El archivo no sale de este dispositivo ni se guarda. Solo se guardan números de cada repecho y el mes: ni lugar, ni hora, ni track.
bring-reading = Leyendo… { $share }
# $done and $all (Number): pitches.
bring-judging = El mejor recorrido con tu potencia pasa por los mismos repechos: { $done } de { $all }…
# $name: of a file.
refused = { $name } no se ha aceptado
useless-no-times = Este archivo no dice cuándo fue la salida, o sus horas van hacia atrás. Graba con horas.
useless-too-sparse = Casi todos los puntos de este archivo están a más de tres segundos unos de otros, demasiado para reconocer las marchas. Ajusta el aparato para que grabe cada segundo.
useless-no-cadence = En este archivo no hay cadencia, así que no se pueden reconocer las marchas. La mide un sensor en las bielas; exporta con todos los datos.
useless-cadence-stuck = La cadencia de este archivo es siempre el mismo número, así que no se midió y no se pueden reconocer las marchas. Elige una salida con un sensor en las bielas.
useless-no-road = No se ha podido examinar este archivo. Elígelo de nuevo.

## A ride

ride-title = Salida de { $length }, { $month }
ride-titleNoMonth = Salida de { $length }
# $title: one of the two above. $file: the name of a file.
ride-named = { $title } ({ $file })
# $title: of a ride.
ride-pitchesOf = Repechos: { $title }
# $found (Number): pitches.
ride-summary =
    { $found ->
        [0] La marcha se pudo reconocer el { $readable } del tiempo. No se ha encontrado ningún repecho.
        [one] La marcha se pudo reconocer el { $readable } del tiempo. Se ha encontrado un repecho.
       *[other] La marcha se pudo reconocer el { $readable } del tiempo. Se han encontrado { $found } repechos.
    }
# $changes (String): a number, like "2.4".
ride-changes =
    { $per ->
        [mile] Cambios de marcha por milla: { $changes }.
       *[km] Cambios de marcha por km: { $changes }.
    }
ride-inBand = El { $share } del tiempo de pedaleo, dentro de tu franja.
# $watts (String): a number.
ride-power = Según las cuestas, pedaleas con unos { $watts } W; el mejor recorrido junto al tuyo tiene la misma potencia.
ride-powerUnknown = Hubo muy poca subida dentro de tu franja para conocer tu potencia; el mejor recorrido tiene la de tu ciclista en el juego.
ride-powerHelped = Con motor, las cuestas no dicen cuánto dieron tus piernas y cuánto el motor. El mejor recorrido tiene la potencia de tu ciclista en el juego y la ayuda elegida para la bicicleta.
ride-heights =
    { $late ->
        [0] La potencia muestra que las altitudes llegaron a tiempo.
        [one] Las altitudes llegaron con un segundo de retraso, más o menos; está corregido.
       *[other] Las altitudes llegaron con unos { $late } segundos de retraso; está corregido.
    }
ride-heightsUnknown = Sin suficiente potencia en el archivo no se sabe si las altitudes llegaron tarde; el ± lo tiene en cuenta.
ride-cadenceHalved = El sensor había contado los dos pies; la cadencia está dividida por dos.
ride-noPitch = No se ha encontrado ningún repecho: la pendiente nunca aumenta tres puntos de golpe.
ride-keep = Guardar los números
ride-kept = Guardado: los números que ves aquí y nada más.
ride-already = Esta salida ya está guardada.
ride-notKept = No se ha podido guardar en este dispositivo.

## The small picture of a pitch, and what explains its two marks

# Read aloud. $own and $best: one of the places below.
picture-desc = Primera marcha más suave: { $own }.
picture-descBest = Primera marcha más suave: { $own }; el mejor recorrido: { $best }.
# The mark stands for a place that is known only roughly.
picture-own = tú, más o menos
picture-best = mejor recorrido con tu potencia

## The table of pitches

table-pitch = Repecho
table-first = Primera marcha más suave
# How much of the shifting was done there, in per cent.
table-atFoot = Hecho al pie
# Three cadences.
table-cadence = Piernas: antes, al pie, lo más lento
table-best = Mejor recorrido
table-again = Otra vez
# A pitch, like "8 %, 120 m".
table-name = { $slope }, { $length }
table-unread = marchas no legibles
# What the best ride did. $place: one of the places below. $share: of the shifting that was done at the foot.
table-bestDone = { $place }, { $share } hecho
table-ride = Repetirlo
table-rideThis = Repetirlo: { $pitch }
# $foresight and $total (String): marks of 100, or the sign for what is not known.
table-inGame = En el juego: anticipación { $foresight }, total { $total }.
table-notMade = { $pitch }: de este lugar no se puede hacer un nivel.

## Where the first easier gear came

# $pm: how far from there it may have been.
place-before = { $metres } antes del pie
place-beforePm = { $metres } antes del pie ± { $pm }
place-after = { $metres } pasado el pie
place-afterPm = { $metres } pasado el pie ± { $pm }
place-none = ninguna marcha más suave

## A level made of a pitch

level-title = Tu repecho: { $slope }, { $length }
level-sentence = Un repecho de una salida tuya, con el camino hasta él.

## All kept rides

all-title = Todas las salidas guardadas
all-empty = Aún no hay ninguna salida guardada.
# $rides (Number), $pitches (Number).
all-mean =
    { $rides ->
        [one] { $pitches ->
            [0] Una salida, ningún repecho.
            [one] Una salida, un repecho.
           *[other] Una salida, { $pitches } repechos.
        }
       *[other] { $pitches ->
            [0] { $rides } salidas, ningún repecho.
            [one] { $rides } salidas, un repecho.
           *[other] { $rides } salidas, { $pitches } repechos.
        }
    }
all-few = Con menos de diez repechos, una media dice poco.
all-byMonth = Mes a mes
all-month = Mes
all-noMonth = mes desconocido
all-rides = Salidas
# Rides and pitches of a month. $rides (Number), $pitches (Number).
all-counted =
    { $pitches ->
        [one] { $rides } · { $pitches } repecho
       *[other] { $rides } · { $pitches } repechos
    }
all-fall = Las piernas pierden
all-inBand = En la franja
all-check = Recorridos de control en el juego
# $rpm (String): turns of the pedals a minute.
all-perMinute = { $rpm } rpm
# $value: with its unit.
all-giveOrTake = { $value } ± { $pm }
# $totals: marks of 100.
all-checks = total { $totals }
# $title: of a ride.
all-numbered = { $number }. { $title }
# What a kept ride was ridden on. $parts: chainrings and sprockets.
all-parts = { $parts }.
all-what = Lo que está guardado
all-whatHint = Esto es todo, tal como está guardado. No dice dónde ni a qué hora pedaleaste.
all-forget = Quitar
all-forgetThis = Quitar de este dispositivo: { $ride }
