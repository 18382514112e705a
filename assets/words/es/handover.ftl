### Llevar un plan a las tabletas y traer los recorridos: códigos, enlaces, archivos, cámara; y un servidor propio del club.

size-bytes =
    { $bytes ->
        [one] { $bytes } byte
       *[other] { $bytes } bytes
    }
size-kilobytes = { $size } kB
rides =
    { $rides ->
        [one] { $rides } recorrido
       *[other] { $rides } recorridos
    }

## Códigos en la pantalla

code-number = { $number } de { $all }
code-picture =
    { $all ->
        [1] Código: { $what }
       *[other] Código { $number } de { $all }: { $what }
    }
code-pause = Pausa
code-play = Seguir
code-back = Código anterior
code-next = Código siguiente
code-speed = Ritmo
code-speed-slow = lento
code-speed-usual = normal
code-speed-fast = rápido
code-big = Grande
code-jump = Mostrar el código { $number }
code-hint = Los códigos van uno tras otro. Da igual dónde empiece la cámara; ella dice qué falta.

## Código, enlace o archivo

carry-making = Preparando…
carry-tooBig = Esto es demasiado para códigos. Usa el archivo.
carry-link = Enlace
carry-copy = Copiar el enlace
carry-copied = Copiado.
carry-notCopied = Este navegador no copia con http simple. El enlace está marcado: cópialo con el teclado o con el dedo.
carry-onlyHere = Esta página se abrió en localhost, que ninguna tableta puede abrir, así que no hay enlace. Abre el juego con «npm start -- --host» y reparte aquí otra vez. Los códigos y el archivo sirven tal cual.
carry-file = Guardar un archivo
carry-longLink = Algunos programas de mensajes cortan enlaces tan largos. El archivo es más seguro.
carry-site = El enlace lleva a esta dirección; el otro dispositivo tiene que poder abrirla.

## Repartir un plan

handOut-intro = Cada tableta lo lee una vez. Después no necesita red ni nada de esta pantalla.
handOut-what = el plan «{ $title }»
handOut-size =
    { $codes ->
        [1] { $size } · un código
       *[other] { $size } · { $codes } códigos
    }
handOut-own = Van incluidos tus propios niveles.
handOut-scanOne = Apunta al código con la cámara de la tableta y abre el enlace, o léelo en el juego, en la página «{ $page }».
handOut-scanMany = En la tableta abre en el juego la página «{ $page }» y apunta con la cámara a los códigos.

## La noche antes

ready-title = En casa, la noche antes
ready-intro = En cada tableta, mientras haya red. Esta lista revisa el dispositivo que estás mirando.
ready-done = hecho
ready-open = por hacer
ready-wrong = aquí no funciona
ready-unknown = este navegador no lo dice
ready-again = Revisar otra vez
ready-allowCamera = Permitir la cámara
ready-keep = Pedir al navegador que guarde los recorridos
ready-secure = Abierto con https o en localhost
ready-secure-done = Esta página se abrió de una forma que permite la cámara y el uso sin red.
ready-secure-wrong = Esta página se abrió con http simple: aquí no hay cámara ni copia para usar sin red, y la pantalla se apaga sola. Abre el juego una vez, en casa, en una dirección que empiece por https; o en el equipo que lo sirve, en localhost.
ready-offline = Una copia para usar sin red
ready-offline-done = El juego está en este dispositivo y se abre sin red.
ready-offline-open = Recarga esta página y espera un momento. Lo mejor es ponerla en la pantalla de inicio con el menú del navegador.
ready-offline-wrong = Sin https este navegador no guarda ninguna copia. Abre el juego con https en casa.
ready-camera = Cámara permitida
ready-camera-done = La cámara se puede usar.
ready-camera-open = Permite la cámara ahora, para que no salga la pregunta al aire libre.
ready-camera-wrong = No hay ninguna cámara que esta página pueda usar. Si la hay, permítela para esta página en los ajustes del navegador; si no, usa el enlace o el archivo.
ready-keeping = Guardado para siempre
ready-keeping-done = El navegador no borrará recorridos por su cuenta.
ready-keeping-open = El navegador puede borrar recorridos si le falta sitio. Pídele que no lo haga; poner el juego en la pantalla de inicio ayuda. Devuelve los recorridos el mismo día.

## Leer códigos, enlaces y archivos

reader-ways = Leer con
reader-camera = Cámara
reader-picture = Imagen o archivo
reader-text = Enlace o texto
reader-start = Encender la cámara
reader-stop = Apagar la cámara
reader-loading = Cargando el lector…
reader-looking = Pon el código de modo que llene casi toda la imagen.
reader-noReader = No se ha podido cargar el lector. ¿Se ha ido la red? Usa el enlace o el archivo.
reader-video = Lo que ve la cámara
camera-not-secure = La cámara solo funciona si esta página se abrió con https o en localhost. Haz una foto con la cámara de la tableta y elígela aquí, o usa el enlace o el archivo.
camera-refused = La cámara no se ha permitido. Permítela para esta página en los ajustes del navegador, o usa una foto, el enlace o el archivo.
camera-none = Aquí no hay cámara. Usa una foto, el enlace o el archivo.
camera-in-use = Otro programa está usando la cámara. Ciérralo y prueba otra vez.
reader-choose = Elegir imágenes o archivos
reader-chooseHint = Fotos de códigos, o un archivo guardado por este juego. Pueden ser varios a la vez.
reader-noCode = No se ha podido leer ningún código en { $name }. Haz la foto más de cerca, de frente y sin reflejos.
reader-paste = Pega el enlace, o el texto de un código o archivo
reader-take = Leer
reader-reading = Leyendo los recorridos…
reader-stopReading = Parar la lectura
reader-stopped = Parado. No se ha guardado nada.
reader-failed = Eso no se ha podido leer aquí. Cierra otros programas y elígelo otra vez.
reader-read =
    { $count ->
        [one] { $read } de { $count } código leído.
       *[other] { $read } de { $count } códigos leídos.
    }
reader-missing =
    { $count ->
        [one] Falta el código { $numbers }.
       *[other] Faltan los códigos { $numbers }.
    }
reader-cut = El enlace se cortó durante el envío. Cópialo entero, o usa el código o el archivo.
damaged-checksum =
    { $number ->
        [0] Un código ha llegado dañado. Léelo otra vez.
       *[other] El código { $number } ha llegado dañado. Léelo otra vez.
    }
damaged-newer-version =
    { $number ->
        [0] Un código lo hizo una versión más nueva del juego. Recarga esta página para actualizar.
       *[other] El código { $number } lo hizo una versión más nueva del juego. Recarga esta página para actualizar.
    }
damaged-contradicts =
    { $number ->
        [0] Un código dice otra cosa que antes. Muestra los códigos desde el principio.
       *[other] El código { $number } dice otra cosa que antes. Muestra los códigos desde el principio.
    }
damaged-too-many-messages = Se han leído demasiadas cosas distintas a la vez. Abre esta página de nuevo.
damaged-not-a-frame = Se ha leído algo que no es un código de este juego.
unreadable-not-a-packet = Esto no es de este juego.
unreadable-newer-version = Esto lo hizo una versión más nueva del juego. Recarga esta página para actualizar.
unreadable-damaged = Están todos los códigos, pero juntos no son lo que se envió. Muéstralos otra vez.
unreadable-nothing = No hay nada dentro.
unreadable-too-big = Esto es demasiado grande para ser recorridos o un plan. Guárdalo otra vez en la tableta de la que viene y elígelo aquí.
reader-wrongPlan = Este plan no se puede usar:
reader-isPlan = Esto es un plan, no recorridos. Ábrelo en «{ $page }».
reader-isRides = Esto son recorridos, no un plan. Ábrelos en el dispositivo de quien dirige, en «{ $page }».

## Una tableta se une

join-intro = Lee el código de quien dirige, o abre el enlace. Sin teclear, sin nombres.
join-found = Esto es lo que ha preparado quien dirige
join-rides = Qué se recorre
join-unknownLevel = { $level }: no está en este dispositivo
join-ownLevel = nivel propio de quien dirige
join-missing = Un nivel de este plan no viene con el juego de este dispositivo. Actualiza antes el juego: recarga esta página mientras haya red.
join-join = Unirse
join-no = Este no
join-here = Este dispositivo ya se ha unido. Sus recorridos se quedan como están.
join-other = Este dispositivo se unió con una copia anterior de este plan. Los recorridos ya hechos se quedan con esa copia.
join-go = Ir al grupo

## Una tableta devuelve

handBack-intro = Muestra los códigos a la cámara de quien dirige. Dos veces es lo mismo que una; aquí no se borra nada.
handBack-tablet = Esta tableta: { $tablet }
handBack-none = En este grupo aún no se ha hecho aquí ningún recorrido.
handBack-marksOnly = Los códigos y el enlace llevan las notas. El archivo lleva los recorridos enteros, para poder verlos y puntuarlos de nuevo.

## Reunir los recorridos

collect-intro = Apunta con la cámara a los códigos de cada tableta, o toma su enlace o su archivo. El orden y las repeticiones no importan.
collect-tablets = Qué ha llegado y de dónde
collect-nobody = Aún no ha llegado nada.
collect-noSession = En este dispositivo no hay ninguna sesión a la que pertenezcan estos recorridos. Ábrelos en el dispositivo de quien dirige.
column-tablet = Tableta
column-here = Aquí
column-missing = Falta
column-since = Falta desde hace
column-heard = Última señal
missing-nothing = nada
missing-rides =
    { $count ->
        [one] recorrido { $numbers } (falta { $count })
       *[other] recorridos { $numbers } (faltan { $count })
    }
ago-now = ahora mismo
ago-minutes = { $minutes } min
ago-hours = { $hours } h
ago-neverSaid = un hueco en su cuenta
ago-never = nunca
took =
    { $fresh ->
        [0] { $known ->
            [one] Nada nuevo: { $known } recorrido ya estaba aquí.
           *[other] Nada nuevo: { $known } recorridos ya estaban aquí.
        }
        [one] { $known ->
            [0] { $fresh } recorrido recibido.
            [one] { $fresh } recorrido recibido, { $known } ya estaba aquí.
           *[other] { $fresh } recorrido recibido, { $known } ya estaban aquí.
        }
       *[other] { $known ->
            [0] { $fresh } recorridos recibidos.
            [one] { $fresh } recorridos recibidos, { $known } ya estaba aquí.
           *[other] { $fresh } recorridos recibidos, { $known } ya estaban aquí.
        }
    }
took-damaged =
    { $pieces ->
        [one] { $pieces } parte estaba dañada.
       *[other] { $pieces } partes estaban dañadas.
    }
took-otherPlan =
    { $rides ->
        [one] { $rides } recorrido de otro plan se ha dejado fuera.
       *[other] { $rides } recorridos de otro plan se han dejado fuera.
    }
collect-notKept = Lo que llegó no se ha podido guardar en este dispositivo. Guárdalo en un archivo antes de cerrar esta página.
checked =
    { $rides ->
        [one] { $rides } recorrido recalculado en este dispositivo; las notas son correctas.
       *[other] { $rides } recorridos recalculados en este dispositivo; las notas son correctas.
    }
otherVersion =
    { $rides ->
        [one] { $rides } recorrido viene de otra versión del juego: las notas se muestran como llegaron, pero no se puede recalcular ni comparar con los demás.
       *[other] { $rides } recorridos vienen de otra versión del juego: las notas se muestran como llegaron, pero no se pueden recalcular ni comparar con los demás.
    }
unknownLevel =
    { $rides ->
        [one] { $rides } recorrido es de un nivel que no está aquí: las notas se muestran como llegaron, pero aquí no se puede recalcular.
       *[other] { $rides } recorridos son de niveles que no están aquí: las notas se muestran como llegaron, pero aquí no se pueden recalcular.
    }
marksOnly =
    { $rides ->
        [one] De { $rides } recorrido solo llegaron las notas; el archivo de una tableta tiene el recorrido entero.
       *[other] De { $rides } recorridos solo llegaron las notas; el archivo de una tableta tiene los recorridos enteros.
    }
withdrawn =
    { $rides ->
        [one] { $rides } recorrido lo retiró su propia tableta.
       *[other] { $rides } recorridos los retiró su propia tableta.
    }
checking = Aún por recalcular: { $rides }.

## Lo que llegó y no cuenta

damaged-title = Partes dañadas ({ $count })
damaged-hint = No cuentan. Pide que la tableta muestre otra vez sus recorridos; una copia buena ocupa su lugar.
damaged-piece =
    { $from ->
        [nobody] { $seq ->
            [0] De una tableta desconocida
           *[other] De una tableta desconocida, recorrido { $seq }
        }
       *[tablet] { $seq ->
            [0] Tableta { $tablet }
           *[other] Tableta { $tablet }, recorrido { $seq }
        }
    }
piece-not-json = cortado o cambiado durante el envío
piece-not-a-record = no es un recorrido entero
piece-newer-version = hecho por una versión más nueva; actualiza el juego aquí
piece-dirty-text = un nombre con caracteres ocultos
piece-checksum = cambiado durante el envío
piece-recording = las notas están bien, la grabación está dañada
piece-file-head = la primera línea de su archivo está dañada
piece-too-long = mucho más largo que cualquier recorrido
apart-title = Puestos aparte ({ $count })
apart-hint = Estos recorridos se guardan, pero no cuentan: al recalcularlos, no sale lo que dicen.
apart-ride = Tableta { $tablet }, recorrido { $seq }, { $name }
apart-totals = dice { $said }, sale { $found }
apart-no-recording = solo notas
apart-unknown-level = su nivel no está aquí
apart-other-level = su nivel se ha cambiado
apart-other-setup = su grabación es de otro recorrido
apart-changed-bike = una bici del juego con otros números
apart-changed-rider = un ciclista del juego con otros números
apart-impossible-setup = una bici o un ciclista que no pueden existir
apart-too-long = más largo de lo que puede ser un recorrido
apart-not-finished = nunca llegó al final
apart-other-version = hecho en otra versión del juego
apart-not-same-ride = al recalcularlo, es otro recorrido
apart-other-marks = al recalcularlo, tiene otras notas
conflict-title = Contradicciones ({ $count })
conflict-same-id = Dos recorridos distintos con el mismo identificador; se guardan los dos, no cuenta ninguno.
conflict-same-seq = Dos recorridos con el mismo número de una tableta; se guardan los dos, no cuenta ninguno.

## Un servidor propio del club

store-title = Un servidor de tu club
store-intro = Todo funciona sin él. Con uno, las tabletas se encuentran solas: en un equipo de la sala («npm run club») o en una base de datos CouchDB que el club tiene o alquila. No se envía nada a ningún sitio antes de que alguien lo acepte aquí, en este dispositivo.
store-take-title = Leer o pegar los ajustes
store-take-hint = El equipo del servidor los muestra como código, y también cada dispositivo que lo usa. La cámara de la tableta también abre el código.
store-take-paste = O el enlace de los ajustes
store-take-none = Estos no son los ajustes completos de un servidor. Lee el código otra vez, o copia el enlace entero.
store-give = Mostrar los ajustes a otro dispositivo
store-give-title = Ajustes del servidor
store-give-hint = Un código para todas las tabletas y para quienes dirigen. Quien lo tenga puede leer todos los recorridos y añadir otros: muéstralo a quien puede hacerlo y no le hagas fotos.
store-give-onlyHere = Esta página se abrió en localhost, que ninguna tableta puede abrir. Iníciala con «npm run club», o ábrela en la dirección que usan las tabletas.
store-give-hide = Ocultar los ajustes
store-details = Dirección, base de datos, nombre y contraseña
store-instead = Ocuparía el lugar de { $host }.
store-fetch = Traer ahora
store-url = Dirección
store-urlHint = por ejemplo https://rides.our-club.example
store-database = Base de datos
store-name = Nombre
store-password = Contraseña
store-passwordHint = Se queda en este dispositivo y la puede leer quien lo use. Toma un nombre que no pueda hacer nada más.
store-plainHttp = Esta página solo puede hablar con direcciones https, con el equipo del que vino y con este mismo equipo: con http simple, otros podrían leer durante el envío el nombre, la contraseña y los recorridos. Usa https.
store-plainHere = Con http simple, cualquiera en esta red puede leerlo todo. Úsalo en una red propia, o inicia el servidor con https.
store-mixed = Esta página se abrió con https, así que el navegador no hablará con un servidor por http. Usa https.
store-badAddress = Una dirección empieza por https:// y no lleva nombre ni contraseña; una base de datos tiene minúsculas y cifras.
store-consent = Si lo aceptas
store-consent-sends =
    { $typed ->
        [no] Después de cada recorrido de una sesión en grupo, este dispositivo envía a esa dirección: los apodos, el número de esta tableta y los recorridos con sus notas. Trae lo que otras tabletas han puesto allí.
       *[yes] Después de cada recorrido de una sesión en grupo, este dispositivo envía a { $host }: los apodos, el número de esta tableta y los recorridos con sus notas. Trae lo que otras tabletas han puesto allí.
    }
store-consent-more =
    Quien se ocupa de ese servidor puede leerlo todo. No se envía nada más ni se pregunta a nadie más.
    Pregunta antes a tu club; con niños y niñas, también a quienes deciden por ellos. Usa apodos por los que no se reconozca a nadie.
    Puedes parar en cualquier momento. Lo que se ha enviado se queda allí hasta que el club lo borre.
store-agree =
    { $typed ->
        [no] Acepto: enviar a esta dirección
       *[yes] Acepto: enviar a { $host }
    }
store-forget = Olvidar esta dirección
store-offered-file = Un archivo recuperado nombra { $host }. Allí no se ha enviado nada. Acepta solo si sabes que es de tu club.
store-offered-code = Estos son los ajustes de un servidor en { $host }. Allí no se ha enviado nada.
store-offered-before = Aquí se guarda una dirección de antes: { $host }. Allí no se envía nada hasta que alguien lo acepte aquí otra vez.
store-goesTo = Los recorridos van a { $host }
store-what = Qué se envía
store-whatIs = Apodos, el número de esta tableta y los recorridos de sesiones en grupo con sus notas
store-where = Adónde
store-soFar = Hasta ahora
store-agreed = Aceptado aquí
store-sent =
    { $rides ->
        [0] Allí no ha ido nada todavía.
        [one] Allí ha ido { $rides } recorrido, el último el { $moment }.
       *[other] Allí han ido { $rides } recorridos, el último el { $moment }.
    }
store-line = Los recorridos de este grupo van a { $host }, con los apodos, las notas y el número de esta tableta.
store-look = Verlo
store-stop = Dejar de enviar
store-stopHint = Lo que se ha enviado se queda allí hasta que el club lo borre. Los recorridos de este dispositivo se quedan como están.
store-test = Preguntar si responde
store-testing = Preguntando…
store-works = El servidor responde y te deja entrar.
store-off = No se envía nada.
store-notAsked = Ninguna sesión ha hablado con el servidor desde que se abrió esta página.
store-nothing = No hay nada pendiente para el servidor.
store-done =
    { $rides ->
        [one] El único recorrido y todos los informes están en el servidor.
       *[other] Los { $rides } recorridos y los informes están todos en el servidor.
    }
store-sending = Enviando al servidor: por enviar, { $left }.
store-again = Próximo intento en { $seconds } s.
store-safe =
    { $left ->
        [0] Todos los recorridos de este dispositivo están allí, y a salvo también en este dispositivo.
        [one] Queda { $left }; está a salvo en este dispositivo.
       *[other] Quedan { $left }; están a salvo en este dispositivo.
    }
store-unreachable = El servidor no responde: no hay red, está apagado, o esta página no está entre las que admite.
store-busy = El servidor no tiene tiempo ahora.
store-disk-full = El disco del servidor está lleno. Díselo a quien se ocupa de él.
store-wrong-password = El servidor no acepta este nombre y esta contraseña.
store-not-allowed = Este nombre no puede escribir en esta base de datos.
store-no-database = Esa base de datos no existe. Primero hay que crearla.
store-bad-address = Hay un error en la dirección o en el nombre de la base de datos.
store-not-a-store = Allí responde algo, pero no es un servidor de estos.
store-endless = El servidor da más de lo que se puede tomar de una vez. Lo que llegó se ha guardado; el resto se pide enseguida.
store-some-refused = El servidor no ha querido algunos recorridos. Están a salvo en este dispositivo; entrégalos en un archivo.
