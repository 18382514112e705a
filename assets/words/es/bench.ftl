### El taller de niveles, donde se hacen caminos propios: desde cero o a partir de una salida grabada. Longitudes,
### alturas, velocidades, pendientes y partes llegan ya escritas, con su unidad.

intro = Haz un camino para practicar: de cabeza, o a partir de uno que se recorrió de verdad.
opening = Se prepara el taller…
openFailed = No se ha podido cargar el taller. Recarga la página y prueba otra vez.
named = { $doing }: { $what }
range = { $low } a { $high }

## La primera página

home-make = Hacer un nivel
home-fresh = Un camino nuevo
home-freshSentence = Hecho en el taller de niveles.
home-freshHint = Llano, repecho, llano: cámbialo a partir de ahí.
home-roadHint = La salida del domingo, o sus { $length } más duros.
home-file = Abrir un archivo
home-fileHint = Un archivo .json que alguien guardó aquí.
home-copy = Empezar con un nivel del juego
home-copyHint = Una copia; el nivel mismo se queda.
home-choose = Nivel
home-copyButton = Copiarlo
home-own = Tus niveles
home-none = Aún ninguno. Lo que guardes aquí está también en la página «Niveles».
home-ride = Pedalear
home-edit = Editar
home-duplicate = Duplicar
home-remove = Borrar
home-removed = Se ha borrado «{ $title }».
home-restored = «{ $title }» está aquí otra vez.
home-duplicated = Se ha añadido «{ $title }».
home-unsaved = «{ $title }» está en el taller sin guardar.
home-goOn = Seguir con él
home-drop = Descartarlo
home-facts = { $length }, hasta { $steepest }

## Se va a abrir un nivel mientras otro está sin guardar

leave-title = Aún sin guardar
leave-text = «{ $title }» tiene cambios sin guardar. ¿Qué hacemos con ellos?
leave-keep = Volver a él
leave-drop = Descartar cambios

## Guardar

keep-save = Guardar
keep-saved = Guardado en este dispositivo.
keep-unsaved = Aún sin guardar.
keep-changed = Cambiado desde que se guardó.
keep-faulty = Se podrá guardar cuando esté arreglado lo que pone en «{ check-title }».
keep-private-window = No se ha guardado: el navegador no guarda nada en esta ventana. Descárgalo como archivo.
keep-disk-full = No se ha guardado: en el dispositivo no queda sitio. Descárgalo como archivo.
keep-newer-version = No se ha guardado: aquí ha estado una versión más nueva del juego. Recarga la página.
keep-blocked = No se ha guardado: lo impide otra pestaña del juego. Ciérrala y prueba otra vez.
keep-failed = No se ha guardado: el navegador no responde. Descárgalo como archivo para no perderlo.

## El camino en el taller

edit-undo = Deshacer
edit-redo = Rehacer
edit-list = Todos los niveles del taller
edit-titleField = Título
edit-sentenceField = Una frase sobre él
edit-profile = El camino visto de lado. Cada tirador se puede arrastrar o mover con las flechas.
edit-facts =
    { $pitches ->
        [0] { $length }, { $climbed } de subida, ningún repecho
        [one] { $length }, { $climbed } de subida, { $pitches } repecho
       *[other] { $length }, { $climbed } de subida, { $pitches } repechos
    }
edit-road = Camino
edit-placed = Sobre el camino
edit-addPiece = Añadir un trozo de camino
edit-addPlaced = Añadir algo sobre el camino
edit-earlier = Antes
edit-later = Después
edit-duplicate = Duplicar
edit-remove = Quitar
edit-nothing = Nada todavía.
edit-wholeMetres = Un nivel se guarda en metros enteros, así que las longitudes en pies pueden variar un poco.
edit-more = Más sobre este nivel
edit-lesson = Qué enseña
edit-audience = Para
edit-everyone = todo el mundo
edit-children = niños y niñas
edit-seed = Número del azar
edit-seedHint = Otro número, otro camino del mismo tipo.
edit-passMark = Nota para superarlo
edit-aids = Ayudas en pantalla
edit-no = { $number }. { $name }

zoom-title = Qué parte del camino se ve
zoom-closer = Más cerca
zoom-wider = Más lejos
zoom-back = ◀ Atrás
zoom-on = Adelante ▶
zoom-whole = Todo el camino

## Trozos de camino

piece-flat = Llano
piece-climb = Subida
piece-pitch = Repecho
piece-descent = Bajada
piece-rollers = Toboganes
piece-random-pitches = Repechos al azar
piece-recorded = Camino grabado
facts-sloped = { $length }, { $slope }
facts-rollers = { $length }, ≤ { $slope }
facts-random-pitches = { $length }, { $count } × ≤ { $slope }

## Lo que hay sobre el camino

place-stopLinesM = Línea de detención
place-winds = Viento
place-surfaces = Firme
place-hidden = Tramo oculto
place-cues = Aviso
surface-gravel = grava
surface-grass = hierba
surface-cobbles = adoquines
wind =
    { $way ->
        [head] viento en contra { $speed }
       *[tail] viento a favor { $speed }
    }
wind-mps = { $value } m/s
placed-stretch = { $stretch }, { $what }
hidden-sight = { place-hidden }, visibilidad { $sight }
placed-sight = visibilidad { $sight }
placed-cue = { $at }: { $cue }
ownCue = Palabras propias
cueText = Qué dice

## Campos

field-lengthM = Largo
field-slope = Pendiente
field-waveM = De alto a alto, más o menos
field-steepest = Lo más empinado
field-gentlest = Repecho más suave
field-pitchCount = Repechos
field-beforeEach = Camino antes de cada uno (0: al azar)
field-fromM = De
field-toM = A
field-atM = En
field-windMps = Viento en contra (menos: a favor)
field-sightM = Visibilidad

## Lo que está mal y lo que puede sorprender

check-title = Mira aquí
check-good = Nada preocupante para quien pedalea aquí con esta bici.
check-working = Mirando…
check-goThere = Ir allí
check-trim = Recortarlo
check-cannotRide = Antes de poder recorrerlo:
check-surprising = Permitido, pero puede sorprender:

## El mejor recorrido

reference-title = Qué se sentiría
reference-intro = El mejor recorrido posible aquí.
reference-bike = Bici
reference-rider = Ciclista
reference-asRidden = Con la potencia de la grabación ({ $watts } W)
reference-working = Se calcula el mejor recorrido: { $share }
reference-ask = Calcular el mejor recorrido
reference-long = El camino es largo; calcularlo lleva un rato.
reference-failed = No se ha podido calcular el mejor recorrido.
reference-waits = Primero hay que arreglar el camino.
reference-time = Tiempo
reference-lowest = Cadencia más baja
reference-lowestAt = { $rpm } por minuto, en { $at }
reference-shifts = Cambios
reference-worst = Repecho más duro
reference-worstIs = { $steepest } en { $at }: las piernas caen a { $rpm } por minuto
reference-noPitch = ningún repecho corto; lo más empinado en { $at }, { $steepest }
reference-asksNothing = Ningún repecho pide aquí una marcha más fácil: las piernas aguantan la que traen, o ya es la más fácil. Con esta bicicleta y esta persona la anticipación no lleva nota.
reference-level = ninguno, el camino es llano
reference-feet = Pie a tierra
reference-cadenceLane = Cadencia (rpm)
reference-speedLane = Velocidad
reference-scale = { $low } – { $high }
reference-lane = { $what }: { $range }
reference-best = el mejor recorrido
reference-ridden = lo que se pedaleó
reference-legend = Marcas en el camino: ▲ poner una más suave, ▼ poner una más dura.
reference-shift =
    { $direction ->
        [easier] más suave en { $at }: { $gear }
       *[harder] más dura en { $at }: { $gear }
    }
reference-list = Todos los cambios en una lista

## Junto a lo que se pedaleó

compare-title = Junto a tu salida
compare-times = Tardaste { $rode } de { $from } a { $to }, paradas incluidas; el mejor recorrido tarda { $best }.
# $watts: told from the recorded ride. $theirs: of the rider of the best ride.
compare-power =
    { $how ->
        [same] Según las cuestas, pedaleaste con unos { $watts } W, como si no hubiera habido viento. El mejor recorrido tiene la misma potencia.
        [other] Según las cuestas, pedaleaste con unos { $watts } W, como si no hubiera habido viento. El mejor recorrido tiene { $theirs } W: parte de la diferencia es potencia, no marchas.
        [helped] Con motor, las cuestas no dicen cuánto dieron tus piernas y cuánto el motor. El mejor recorrido tiene { $theirs } W y la ayuda elegida para la bicicleta.
       *[unknown] Hubo muy poca subida para conocer tu potencia. El mejor recorrido tiene { $theirs } W: parte de la diferencia puede ser potencia, no marchas.
    }
compare-withCadence = Entre { $from } y { $to } pedaleaste a { $rode } por minuto; el mejor recorrido lleva allí { $gear }, a { $cadence }.
compare-withSpeed = Entre { $from } y { $to } ibas a { $rode }; el mejor recorrido lleva allí { $gear }, a { $speed }.
compare-noCadence = El archivo no tiene cadencia, así que solo se pueden comparar velocidades.
compare-notKept = La velocidad y la cadencia de esa salida solo se muestran aquí. No forman parte del nivel.
compare-keep = Guardarlas en este dispositivo
compare-kept = Guardadas en este dispositivo, junto al nivel. Nunca van en un enlace ni en un archivo.
compare-forget = Borrarlas
compare-saveFirst = Guarda primero el nivel.
compare-waits = Llega en cuanto esté calculado el mejor recorrido.

## Un recorrido de prueba

try-title = Recorrido de prueba
try-from = Empezar en
try-start = Inicio del recorrido de prueba
try-ride = Pedalear desde ahí
try-hint = En tu propia bici. Los recorridos de prueba no se guardan.

## Compartir

share-title = Compartir
share-intro = El enlace, el código y el archivo llevan el nivel mismo: su camino, su título y su frase. Nada más.
share-link = Enlace
share-copy = Copiar el enlace
share-copied = Copiado.
share-copyFailed = El navegador no ha dejado copiarlo. Marca el enlace y cópialo a mano.
share-code = El enlace como código para una cámara
share-tooLong = Este camino es demasiado largo para un código. Usa el enlace o el archivo.
share-file = Descargar archivo

## El nivel como texto

json-title = Como texto
json-intro = El mismo nivel como JSON. Lo que cambies aquí cambia el camino, y al revés.
json-field = El nivel como JSON
json-good = Este es el nivel del taller.
json-bad = Aún sin aplicar:
json-line = Línea { $line }

## Un nivel que llegó por enlace o archivo

opened-title = Un nivel para ti
opened-intro = Aún no está guardado. Míralo primero.
opened-keep = Guardarlo
opened-ride = Pedalear sin guardarlo
opened-leave = Dejarlo
opened-badTitle = Esto no se puede abrir
opened-already = Ya tienes justo este camino: «{ $title }».
opened-keepCopy = Guardar otra copia
opened-climbed = Subida
opened-fingerprint = Huella del camino
opened-reading = Descomprimiendo…
opened-no = Este navegador no puede descomprimir el enlace. Pide el archivo en su lugar.

## Un camino de una salida grabada

road-title = Un camino de un archivo GPX
road-intro = El archivo se lee aquí, en tu navegador, y no va a ninguna parte. Un nivel solo contiene altitudes y distancias.
road-choose = Elegir un archivo GPX
road-drop = o suéltalo en cualquier parte de esta página. Puede estar comprimido (.gz o .zip).
road-reading = Leyendo: { $share }
road-cancel = Parar
road-cancelled = Parado. No se ha guardado nada.
road-refused = De este archivo no sale ningún camino
road-facts = { $length }, { $climbed } de subida, hasta { $steepest }, con { $points } puntos.
road-quality = Hasta qué punto fiarse de sus altitudes
road-grades-good = Bien: concuerdan entre sí.
road-grades-fair = Regular: úsalo con cuidado.
road-grades-poor = Mal: puede que las cuestas no estén donde parecen.
road-notes = Qué se ha corregido
road-questions = Por decidir
road-options-join = todos, uno tras otro
road-options-straight = cruzarlos en línea recta
road-options-longest-part = tomar solo la parte más larga sin huecos
road-options-metres = metros
road-options-feet = pies
road-track = solo el track { $track }
road-stretch = ¿Qué tramo?
road-profile = El camino grabado visto de lado, con el tramo elegido
road-hardest = Los { $length } más duros
road-whole = Todo el camino
road-longest = Los primeros { $length }
road-chosen = El nivel: { $length }, { $climbed } de subida, hasta { $steepest }.
road-flatter = El camino grabado era más empinado: { $climbed } de subida, hasta { $steepest }. Un nivel llega hasta { $limit }, así que sus partes empinadas suben menos.
road-titleField = Título del nivel
road-titleHint = El que tú quieras; del archivo no se toma nada.
road-sentence = Un camino que se recorrió de verdad.
road-make = Guardar como nivel
road-needsTitle = Ponle un título.
road-timed = El archivo dice a qué velocidad se recorrió. Puedes compararlo en el taller.
road-working = Un momento…
