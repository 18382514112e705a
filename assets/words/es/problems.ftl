### Qué falla en un nivel, un plan o un enlace compartido, y qué hacer. Las palabras entre comillas como "atM" y las inglesas como
### flat están así en los archivos y se quedan como están.

## Shapes: what stands in a file against what should stand there

# What stands there now. $found: as it is in the file, where $is is value.
found =
    { $is ->
        [nothing] nada
        [list] una lista
        [object] un objeto
       *[value] { $found }
    }
# What should stand there.
needed =
    { $needed ->
        [number] un número
        [int] un número entero
        [string] un texto entre comillas
        [boolean] true o false
        [array] una lista entre [ ]
        [object] un objeto entre { "{ }" }
       *[other] otra cosa
    }
schema-missing = Falta esto. Añade { needed }.
# $allowed: what may stand there, as one word or a list.
schema-missing-allowed =
    { $count ->
        [1] Falta esto. Escribe { $allowed }.
       *[other] Falta esto. Usa uno de estos: { $allowed }.
    }
schema-wrong-type = Aquí pone: { found }. Hace falta { needed }.
schema-endless = Este número es demasiado grande para leerlo. Escribe { needed }.
schema-not-allowed =
    { $count ->
        [1] Aquí pone: { found }. Hace falta { $allowed }.
       *[other] Aquí pone: { found }. No se conoce; usa uno de estos: { $allowed }.
    }
schema-characters-most =
    { $most ->
        [one] Este texto puede tener como máximo { $most } carácter; tiene { $has }.
       *[other] Este texto puede tener como máximo { $most } caracteres; tiene { $has }.
    }
schema-characters-least =
    { $least ->
        [one] Este texto necesita al menos { $least } carácter; tiene { $has }.
       *[other] Este texto necesita al menos { $least } caracteres; tiene { $has }.
    }
schema-entries-most =
    { $most ->
        [one] Esta lista puede tener como máximo { $most } elemento; tiene { $has }.
       *[other] Esta lista puede tener como máximo { $most } elementos; tiene { $has }.
    }
schema-entries-least =
    { $least ->
        [one] Esta lista necesita al menos { $least } elemento; tiene { $has }.
       *[other] Esta lista necesita al menos { $least } elementos; tiene { $has }.
    }
# $found, $most, $least, $ratio and $percent: as numbers are written in the file.
schema-range-most = Aquí pone: { $found }. Está fuera de rango; debe ser como máximo { $most }.
schema-range-least = Aquí pone: { $found }. Está fuera de rango; debe ser al menos { $least }.
# Behind the two before: people write gradients in percent.
slopes = Aquí una pendiente es altura entre distancia: { $percent } % se escribe { $ratio }.
schema-bad-format = Aquí pone: { found }. No encaja; usa solo minúsculas, cifras y guiones, por ejemplo "two-pitches".
schema-invalid = Aquí pone: { found }. No encaja; compara con un nivel incluido.
schema-more =
    { $count ->
        [one] Hay { $count } problema más. Arregla primero estos.
       *[other] Hay { $count } problemas más. Arregla primero estos.
    }
# $where: near a line, at the end, or unknown.
not-json =
    { $where ->
        [line] Esto no se puede leer como JSON; el fallo está cerca de la línea { $line }. Revisa comas, comillas y corchetes.
        [end] Esto no se puede leer como JSON; acaba demasiado pronto. Revisa comas, comillas y corchetes.
       *[unknown] Esto no se puede leer como JSON. Revisa comas, comillas y corchetes.
    }

## Levels. A stretch has wind, gravel or is hidden; a piece is a part of the road

level-too-big = Esto es demasiado largo para un nivel. Elige un archivo que se haya guardado en el taller.
level-empty = Este archivo está vacío. Un archivo de nivel contiene un objeto entre llaves { "{ … }" }.
level-not-a-level = Un archivo de nivel contiene un objeto entre llaves { "{ … }" }.
level-too-deep = Aquí hay mucho más de lo que tiene un nivel. Pídelo otra vez, como enlace o archivo.
level-newer-schema = Este nivel lo hizo una versión más nueva (formato { $schema }); esta lee hasta { $readsUpTo }. Actualiza el juego; el archivo quedó como estaba.
level-unknown-key = "{ $key }" no es parte de un nivel aquí. Quítalo o revisa cómo está escrito.
level-unknown-cue = Este aviso necesita "atM" y, además, un "cue" conocido o un "text" de hasta 76 caracteres.
level-missing-kind = Falta el tipo de este trozo. Usa flat, climb, pitch, descent, rollers, random-pitches o recorded.
level-unknown-kind = Aquí pone: { found }. No es un tipo de trozo; usa flat, climb, pitch, descent, rollers, random-pitches o recorded.
level-no-weight = Al menos una nota necesita un peso mayor que 0.
level-too-short = El camino mide { $length }; necesita al menos { $least }. Alarga un trozo o añade uno.
level-too-long = El camino mide { $length }; se pueden recorrer como máximo { $most }. Acorta o quita trozos.
level-gentler-than-steepest = El repecho más suave es más empinado que el más empinado. Intercambia los dos números.
level-pitches-too-dense =
    { $pitchCount ->
        [one] { $pitchCount } repecho necesita al menos { $least } de camino; este trozo tiene { $length }.
       *[other] { $pitchCount } repechos necesitan al menos { $least } de camino; este trozo tiene { $length }.
    }
level-recorded-too-steep = Aquí el camino grabado pasa del { $limit } de pendiente. Suaviza primero las altitudes.
level-backwards = Este tramo acaba antes de empezar. "toM" debe ser mayor que "fromM".
level-beyond-end =
    { $part ->
        [cue] Este aviso está más allá del final del camino, que mide { $length }.
       *[stretch] Este tramo acaba más allá del final del camino, que mide { $length }.
    }
# $other: its place in the file, like winds[1].
level-overlap = Este tramo se solapa con { $other }. Que uno acabe donde empieza el otro.
level-stop-too-near =
    { $near ->
        [beyond-end] La línea de detención en { $at } está más allá del final del camino, que mide { $length }.
        [end] La línea de detención en { $at } necesita { $least } de camino detrás; el camino acaba en { $length }.
        [start] La línea de detención en { $at } necesita { $least } de camino entre ella y la salida.
       *[line] La línea de detención en { $at } necesita { $least } de camino entre ella y la que está en { $last }.
    }

## Levels that may be ridden, but will surprise. $gear is like 34 × 34

level-cannot-climb = Aquí hay que ir a pie de { $from } a { $to } (hasta { $slope }), incluso con la marcha más suave ({ $gear }): unos { $walkS } s.
# These two stand behind the one before. $metres: how far a turn of the pedals carries.
takes-gear = Para pedalear haría falta una marcha de { $metres } por vuelta.
takes-power = Ninguna marcha basta; para pedalear harían falta más de { $watts } W.
level-cannot-hold-cadence = En la pendiente del { $slope } en { $at } no se pueden mantener { $heldRpm } rpm con la marcha más suave ({ $gear }); quedan { $cadenceRpm } rpm.
level-stop-uphill = La línea de detención en { $at } está en una subida del { $slope }: arrancar ahí cuesta mucho.
level-stop-downhill = La línea de detención en { $at } está en una bajada del { $slope }: arrancando ahí no se aprende nada.
level-hidden-long = El camino sigue oculto durante { $length } con { $sight } de visibilidad: eso es ir a ciegas, no mirar lejos.
level-hidden-pitch = El repecho del { $steepest } en { $foot } se ve solo { $sight } antes; nadie puede cambiar a tiempo.
level-seed-unused = Todos los recorridos de este nivel tienen el mismo camino, así que no puede mostrar lo aprendido. Añade toboganes o repechos al azar.
# $seed: another seed of chance.
level-seed-moves-stop = Con otro número del azar ({ $seed }), esta línea de detención queda en una pendiente del { $slope }.

## Plans of group sessions

plan-too-big = Esto es demasiado largo para un plan. Pídelo otra vez a quien dirige.
plan-not-a-plan = Un archivo de plan contiene un objeto entre llaves { "{ … }" }.
plan-too-deep = Aquí hay mucho más de lo que tiene un plan. Pídelo otra vez a quien dirige.
plan-newer-schema = Este plan lo hizo una versión más nueva (formato { $schema }); esta lee hasta { $readsUpTo }. Actualiza el juego; el archivo quedó como estaba.
plan-unknown-key = "{ $key }" no es parte de un plan. Quítalo o revisa cómo está escrito.
plan-unknown-kind = Un recorrido de un plan es del tipo bundled, own o check.
plan-bad-format = Usa solo minúsculas, cifras y guiones, por ejemplo "first-evening".
plan-invalid = Esto no encaja aquí. Compara con un plan listo.
plan-dirty-text = El título tiene caracteres invisibles, o espacios al principio o al final. Escríbelo otra vez.
# $first: one or two words; $others: a list.
plan-unknown-bike = No existe esa bici. Usa { $first }, o una de estas: { $others }.
plan-unknown-rider = No existe ese ciclista. Usa { $first }, o uno de estos: { $others }.
plan-unknown-level = Aquí no hay ningún nivel "{ $levelId }". Elige otro, o pon el nivel mismo en el plan.

## Shared links

link-too-big = Lo compartido es demasiado grande para un nivel.
link-not-packed = Lo compartido no es un nivel. Compártelo otra vez desde el taller de niveles.
link-not-shared = Esto no es un nivel compartido. Copia el enlace entero, de la primera a la última letra.
link-newer-version = Este nivel lo compartió una versión más nueva (formato { $version }); esta lee hasta { $readsUpTo }. Actualiza el juego.
link-damaged = El nivel compartido está incompleto o cambió durante el envío. Copia otra vez el enlace entero.
link-unknown-packing = El nivel compartido está comprimido de un modo que aquí no se conoce. Actualiza el juego.
