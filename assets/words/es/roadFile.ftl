### What is said of a file with a recorded road (GPX). A «track» is what was recorded, «camino» what is ridden on; GPX,
### KML, TCX, FIT, JSON, XML, PDF, UTF-8 and DOCTYPE are names of formats.

## What the file is instead

is-web-page-at-once = Esto es una página web, no un archivo GPX. Quizá la descarga pedía iniciar sesión. Inicia sesión y descárgalo de nuevo.
is-web-page = Esto es una página web, no un archivo GPX. Descarga la salida misma.
is-kml = Esto es un archivo KML. Exporta la salida como GPX, con sus altitudes.
is-tcx = Esto es un archivo TCX. Exporta la salida como GPX.
is-json = Esto es JSON, no un archivo GPX. Exporta la salida como GPX.
is-pdf = Esto es un documento PDF, no un archivo GPX. Exporta la salida como GPX.
is-picture = Esto es una imagen, no un archivo GPX. Exporta la salida como GPX.
is-fit = Esto es un archivo FIT. Exporta la salida como GPX.
is-binary = Esto no es un archivo de texto, así que no es un archivo GPX. Exporta la salida como GPX.
is-other = Esto no es un archivo GPX: no empieza por «<». Exporta la salida como GPX.
is-xml = Esto es XML, pero no GPX: empieza por <{ $root }>. Exporta la salida como GPX.

## Why no road can be made

too-big = Este archivo es demasiado grande para una sola salida. Exporta una más corta.
truncated = El archivo se corta a la mitad, en la línea { $line }. Expórtalo o cópialo otra vez.
empty = Este archivo está vacío. Expórtalo o cópialo de nuevo.
packed = Este archivo está comprimido de una forma que aquí no se puede abrir. Descomprímelo antes; el archivo de dentro termina en .gpx.
packed-damaged = Este archivo comprimido está dañado o tiene contraseña, así que no se puede abrir. Descomprímelo antes, o expórtalo otra vez.
packed-without = En este archivo comprimido no hay ningún archivo GPX. El de dentro debe terminar en .gpx.
packed-several = En este archivo comprimido hay varios archivos GPX. Descomprímelo y elige uno.
encoding = El archivo está escrito en una codificación que aquí no se puede leer ({ $label }). Guárdalo como UTF-8.
not-well-formed = El archivo está dañado en la línea { $line }: ahí no es XML bien formado. Expórtalo otra vez.
doctype = El archivo trae su propio tipo de documento (DOCTYPE), que nunca hace falta y no es seguro. Expórtalo otra vez como simple GPX.
too-deep = El archivo tiene más de { $most } elementos unos dentro de otros. Expórtalo de nuevo como GPX sencillo.
too-many-points = El archivo tiene más de { $most } puntos. Exporta una salida más corta.
no-such-track =
    { $trackCount ->
        [one] No hay ningún track { $track }; el archivo solo tiene uno.
       *[other] No hay ningún track { $track }; el archivo tiene { $trackCount }.
    }
no-readable-points =
    { $pointCount ->
        [one] El archivo tiene un solo punto, y no se puede leer su lugar en el globo. Expórtalo de nuevo, con lugares en grados.
       *[other] El archivo tiene { $pointCount } puntos, y de ninguno se puede leer su lugar en el globo. Expórtalo de nuevo, con lugares en grados.
    }
only-waypoints =
    { $waypointCount ->
        [one] El archivo contiene un solo punto suelto (waypoint), pero ningún track ni ruta. Exporta la salida misma.
       *[other] El archivo contiene { $waypointCount } puntos sueltos (waypoints), pero ningún track ni ruta. Exporta la salida misma.
    }
no-points = El archivo no contiene ningún track ni ruta con puntos. Exporta la salida misma.
no-length = El track nunca deja su primer lugar, como el de una salida bajo techo, así que no tiene longitud. Elige una salida por carretera.
too-short = El camino mide { $length }; un nivel necesita al menos { $least }. Elige una salida más larga.
too-long = El track mide { $length }; ninguna salida es tan larga. Exporta una sola salida.
no-elevation = El archivo no tiene altitudes, así que no se sabe nada de sus cuestas. Expórtalo desde un programa que las añada.
no-readable-elevation =
    { $pointCount ->
        [one] La única altitud del archivo no se puede leer. Expórtalo de nuevo, en metros como 1420.5.
       *[other] No se puede leer ninguna de las { $pointCount } altitudes del archivo. Expórtalo de nuevo, en metros como 1420.5.
    }
backwards = El tramo termina antes de empezar. Elige dónde empieza y dónde termina.
unreadable = No se ha podido leer el archivo. ¿Se ha movido o cambiado mientras tanto? Elígelo otra vez.
no-reader = La parte que lee archivos no responde. Recarga la página y luego elige el archivo otra vez.
no-road = El camino ya no está aquí. Elige el archivo otra vez.

## What a person decides

several-tracks =
    { $how ->
        [joined] El archivo contiene { $trackCount } tracks. Se han unido uno tras otro. ¿Es ese el camino?
       *[one] El archivo contiene { $trackCount } tracks. Se ha tomado el track { $track }. ¿Es ese el camino?
    }
holes =
    { $holeCount ->
        [one] El track tiene un hueco; mide { $longest } y está a { $at } del inicio. Se ha cruzado en línea recta. ¿Dejarlo así, o tomar solo la parte más larga sin huecos?
       *[other] El track tiene { $holeCount } huecos; el más largo mide { $longest } y está a { $at } del inicio. Se han cruzado en línea recta. ¿Dejarlo así, o tomar solo la parte más larga sin huecos?
    }
perhaps-feet-steep = Un { $share } de este camino tendría una pendiente de más de { $steep }. Quizá las altitudes del archivo están en pies. ¿En qué están?
perhaps-feet-fast = Serían { $climb } de subida por hora, y no hay piernas que puedan con eso. Quizá las altitudes del archivo están en pies. ¿En qué están?

## What was done

salvaged =
    { $pointCount ->
        [one] El archivo está dañado en la línea { $line }. Se ha conservado lo que se podía leer: { $pointCount } punto. Mira si el camino está entero.
       *[other] El archivo está dañado en la línea { $line }. Se ha conservado lo que se podía leer: { $pointCount } puntos. Mira si el camino está entero.
    }
stops =
    { $long ->
        [seconds] Se han quitado las paradas, para que los lugares dispersos no pasen por camino: { $count } ({ $time } s en total).
        [minutes] Se han quitado las paradas, para que los lugares dispersos no pasen por camino: { $count } ({ $time } min en total).
       *[unknown] Se han quitado las paradas, para que los lugares dispersos no pasen por camino: { $count }.
    }
zero-elevations = Altitudes de exactamente 0 donde el camino está lejos de eso, dejadas fuera: { $pointCount }.
impossible-points =
    { $pointCount ->
        [one] Se ha dejado fuera { $pointCount } punto: nadie puede haber estado ahí.
       *[other] Se han dejado fuera { $pointCount } puntos: nadie puede haber estado ahí.
    }
unreadable-points = Puntos sin un lugar que se pueda leer, dejados fuera: { $pointCount }.
unreadable-elevations = Altitudes que no lo son, dejadas fuera: { $pointCount }.
unwritten-elevations = Puntos sin altitud, puestos en línea recta entre sus vecinos: { $pointCount }.
elevation-spikes = Picos sueltos de altitud, dejados fuera: { $pointCount }.
time-backwards = En algunos sitios las horas van hacia atrás, así que no se compara nada con ellas. El camino en sí no las necesita.
cadence-halved = Las piernas habrían girado a { $rpm } rpm durante media salida: el sensor contó los dos pies. La cadencia se ha dividido por dos.
cadence-stuck = La cadencia es siempre de { $rpm } rpm, así que no se midió; se ha dejado fuera.
capped = En { $length } la pendiente del camino pasa de { $limit } (hasta { $steepest }); un nivel la limita a { $limit }.

## How far the heights can be trusted

sparse = Los puntos están a { $step } unos de otros: son muy pocos para las cuestas que haya en medio.
rounded-places = Los lugares están escritos en pasos de { $step }, así que el camino sale más largo y menos empinado de lo que es.
elevation-missing = Faltan altitudes en un { $share } del camino; en su lugar hay líneas rectas.
holes-share = Un { $share } del camino son huecos cruzados en línea recta.
bridged = En un { $share } del camino las altitudes saltan como no salta ningún camino; esos saltos se han rellenado.
jumps =
    { $jumpCount ->
        [one] Las altitudes saltan una vez como no salta ningún camino, como si el aparato se hubiera ajustado de nuevo; el camino sigue a la altura a la que venía.
       *[other] Las altitudes saltan { $jumpCount } veces como no salta ningún camino, como si el aparato se hubiera ajustado de nuevo; el camino sigue a la altura a la que venía.
    }
noisy = Las altitudes varían al azar { $noise } de un punto a otro; las pendientes pueden fallar en { $points } (puntos porcentuales), aunque son la media de { $width }.
spikes = Un { $share } de las altitudes son picos sueltos; se han dejado fuera.
whole-metres = Las altitudes son metros enteros, así que las subidas cortas se ven borrosas.
all-equal = Todas las altitudes son iguales. O el camino es tan llano como el agua, o nunca se midieron.
