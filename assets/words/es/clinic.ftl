### Group sessions: plans, handing the device round, the group picture, the report. $name is an animal like “Red fox”, or a
### name somebody chose.

# Small numbers in words, where the language writes them so: in a sentence, and at its beginning.
number =
    { $count ->
        [1] un
        [2] dos
        [3] tres
        [4] cuatro
        [5] cinco
        [6] seis
        [7] siete
        [8] ocho
        [9] nueve
        [10] diez
       *[other] { $count }
    }
numberFirst =
    { $count ->
        [1] Un
        [2] Dos
        [3] Tres
        [4] Cuatro
        [5] Cinco
        [6] Seis
        [7] Siete
        [8] Ocho
        [9] Nueve
        [10] Diez
       *[other] { $count }
    }

title = Sesión en grupo
intro = Un grupo, un camino y algo de que hablar. Sin nombres ni cuentas: basta con animales.
back = Sesión en grupo
opening = Se abren las sesiones de este dispositivo…
elsewhere = La sesión siguió en otra pestaña de este navegador. Solo una pestaña a la vez guarda los recorridos.
goOnHere = Seguir aquí
openFailed = No se ha podido cargar la sesión en grupo. Recarga la página y prueba otra vez.

## The first page: go on with a session, or choose a plan

# $plan: title of the plan of a session that is not over.
home-goOn = Seguir: { $plan }
# $ridden and $all (Number): rides of the session.
home-next = Siguiente: { $name } · { $ridden } de { $all } hechos
home-waiting = { $ridden } de { $all } hechos
home-ready = Planes listos
home-saved = Tus planes
home-own = Hacer un plan
home-teach = Planes de sesión
home-teachHint = Qué decir, ejercicios para fuera, hojas para imprimir
home-join = Unirse a una sesión
home-joinHint = Tomar un plan de otro dispositivo
home-store = Un servidor propio del club
home-storeHint = Apagado si no das una dirección
home-ownHint = niveles, intentos, ayudas, orden
home-sessions = Sesiones en este dispositivo
# $date: like “27 November”.
home-session =
    { $date } · { $riders ->
        [one] { $riders } ciclista
       *[other] { $riders } ciclistas
    } · { $rides ->
        [one] { $rides } recorrido
       *[other] { $rides } recorridos
    }
# What the buttons of a session are called when they are read out.
home-open-round = Turnos: { $plan }
home-open-picture = Imagen del grupo: { $plan }
home-open-report = Informe: { $plan }
home-change = Editar una copia
home-forget = Borrar el plan
home-forgetKeep = Conservarlo
home-forgetSure = Borrarlo para siempre
home-children = Para niños y niñas
home-everyone = Para todo el mundo
home-missing = Un nivel de este plan no está en este dispositivo.

## A plan in a line

# $bike: the name of a bike, or facts-ownBike.
facts =
    { $count ->
        [1] un intento por persona · { $bike }
       *[other] { number } intentos por persona · { $bike }
    }
facts-ownBike = bici de este dispositivo

## Who rides

go-title = ¿Quién pedalea?
go-intro = Di cuántas personas; a cada una le toca un animal. Toca uno para cambiarlo. Quien llegue tarde puede unirse cuando quiera.
go-count = Ciclistas
go-fewer = Un ciclista menos
go-more = Un ciclista más
go-swap = { $name }: cambiar por otro
go-onlyHandOut = Aquí no pedalea nadie: solo repartir a tabletas
go-start = Empezar
# Under the button that begins. $plan: title of the plan.
go-startHint =
    { $riders ->
        [one] { $plan } · { $riders } ciclista, por turnos
       *[other] { $plan } · { $riders } ciclistas, por turnos
    }

## How long a plan takes

# $count (Number): rides of each rider.
minutes-who =
    { $riders ->
        [one] { $riders } ciclista
       *[other] { $riders } ciclistas
    }, { $count ->
        [1] un recorrido
       *[other] { number } recorridos
    } por persona
minutes-about =
    { $minutes ->
        [1] cerca de un minuto
       *[other] unos { $minutes } minutos
    }
minutes-whoAbout = { minutes-who }: { minutes-about }
# Stands before buttons, each with a way that is shorter.
minutes-tooLong = Más de { $most } minutos en un dispositivo. Más corto:
minutes-attempts =
    { $count ->
        [1] Un intento por persona
       *[other] { numberFirst } intentos por persona
    }: { minutes-about }
minutes-road = Solo «{ $road }»: { minutes-about }
minutes-devices = { numberFirst } tabletas: { minutes-about }
minutes-two = Dos o más por tableta
minutes-left =
    { $minutes ->
        [1] queda cerca de un minuto
       *[other] quedan unos { $minutes } minutos
    }
minutes-noneLeft = todo hecho
# $behind (Number): how many minutes later than planned.
minutes-leftBehind =
    { $behind ->
        [one] { minutes-left }, { $behind } minuto de retraso
       *[other] { minutes-left }, { $behind } minutos de retraso
    }

## A plan of one’s own

form-title = Tu plan
form-name = Título
form-nameHint = por ejemplo: martes, primeras cuestas
form-rides = Qué se recorre
form-ridesHint = En el orden en que los elijas.
form-ownLevels = Tus propios niveles
form-attempts = Intentos por persona
form-attemptsFewer = Un intento menos
form-attemptsMore = Un intento más
form-seed = El camino

form-seeds-same = el mismo cada vez
form-seeds-fresh = otro parecido en cada intento
form-bike = Bici
form-ownBike = La de este dispositivo
form-rider = Ciclista
form-byBike = El que va con la bici
form-byFeel = Cada cual elige
form-aids = Ayudas al pedalear

form-aidsNames-as-level = como en el nivel
form-aidsNames-none = ninguna
form-aidsNames-all = todas
form-shows = El grupo ve

form-showsNames-own-marks = cada cual, solo sus notas
form-showsNames-group-picture = la imagen del grupo
form-showsNames-table = también una tabla
form-order = Orden

form-orders-rotate = por turnos
form-orders-free = quien quiera
form-save = Guardar el plan
form-saveAndGo = Guardar y elegir ciclistas
form-problems = Aún no:
form-noRide = Elige al menos un camino.
form-noTitle = Ponle un título al plan.

## One session

tabs-round = Turnos
tabs-picture = Imagen del grupo
tabs-report = Informe
tabs-tablets = Tabletas
tabs-label = Sesión

## Several devices in one session

tablets-intro = Con varios dispositivos, en cada uno se pedalea por separado. Nada necesita red.

tablets-out-title = Repartir el plan
tablets-out-hint = Otros dispositivos lo toman por código, enlace o archivo.

tablets-back-title = Devolver los recorridos
tablets-back-hint = Lo recorrido en este dispositivo, para quien dirige.

tablets-collect-title = Reunir los recorridos
tablets-collect-hint = Qué ha vuelto, de dónde, y qué falta.

## Handing one device round

round-next = Siguiente
round-turn = intento { $attempt } de { $all }
round-start = Empezar
round-startFor = Empezar el recorrido de { $name }
round-skip = Saltar por ahora
round-later = Vuelve más tarde
round-remove = Quitar
round-removeWho = Quitar a { $name }
round-laterWho = { $name } vuelve más tarde
round-back = Ha vuelto
round-backWho = { $name } ha vuelto
round-chooseWho = Ahora pedalea { $name }
round-give = Pedaleó otra persona
round-giveTitle = ¿Quién pedaleó?
round-giveSays = El recorrido cuenta entonces para esa persona. Quien estaba aquí conserva su turno.
round-giveKeep = Estaba bien
round-add = Añadir ciclista
round-addPlus = + Añadir ciclista
round-undo = Retirar el último recorrido
round-undoWho = El último recorrido de { $name } no contará. Se puede repetir.
round-keep = Conservarlo
round-line = En la cola
round-nobodyInLine = Nadie.
round-away = Vuelven más tarde
# $riders (Number): how many.
round-gone = Ya en casa ({ $riders })
round-left =
    { $rides ->
        [one] queda { $rides } recorrido
       *[other] quedan { $rides } recorridos
    }
round-riding = Estaba pedaleando { $name }
round-ridingSays = El recorrido no llegó al final, así que no cuenta.
round-rideAgain = Repetir
round-notNow = Ahora no
round-marking = Se está poniendo nota al recorrido…
round-notMarked = Ahora no se ha podido poner nota al recorrido. Está guardado: recarga la página y se intenta de nuevo. Si se repite, ocupa su lugar.
round-debrief = Repaso completo
round-ridden = Ha pedaleado { $name }
round-total = Total
round-nextRider = Siguiente
round-goOn = Seguir
round-nobody = Aún no hay nadie
round-nobodySays = Añade ciclistas para empezar.
round-waiting = A la espera de quienes vuelven
round-done = Todo el grupo ha pedaleado
round-doneSays = Hora de verlo en común.
round-toPicture = A la imagen del grupo
round-feel = ¿Cómo pedaleas?
round-noLevel = El nivel de este recorrido no está en este dispositivo.
round-notKept = Esto no se ha podido guardar en el dispositivo. Se puede seguir, pero al recargar se perdería.
round-fullRound = En una ronda no caben más ciclistas.
round-taken = Ese nombre ya está en uso.
round-addTitle = ¿Quién está aquí?
round-addOwn = O un nombre inventado
round-addOwnHint = No uno de verdad. Como mucho, 20 caracteres.
round-addThis = Añadir
round-others = Otros animales

## One line about a ride that is over

remark-none = Ningún repecho pidió un cambio.
remark-fine =
    { $count ->
        [1] El repecho se pasó a tiempo.
       *[other] Los { number } repechos se pasaron a tiempo.
    }
# $pitch (Number): which pitch of the road, from 1. $distance: like “12 m”.
remark-early = Repecho { $pitch }: demasiado pronto, { $distance } antes del pie. Espera un poco.
remark-lateAfter = Repecho { $pitch }: demasiado tarde, { $distance } después del pie. Cambia antes de él.
remark-lateBefore = Repecho { $pitch }: tarde, solo { $distance } antes del pie. Cambia más pronto.
remark-notFinished = Repecho { $pitch }: al llegar al pie, los cambios no habían acabado. Sigue cambiando antes de él.
remark-never = Repecho { $pitch }: no se puso ninguna marcha más suave.
remark-earlyNoPlace = Repecho { $pitch }: demasiado pronto. Espera un poco.
remark-gear = Repecho { $pitch }: cambio a tiempo, pero no a la marcha adecuada.

## The group picture

picture-working = Se está calculando la imagen del grupo…
picture-failed = No se ha podido calcular la imagen. Recarga la página y ábrela otra vez.
picture-none = Aún no hay recorridos. La imagen crece con cada uno.
picture-closed = En este plan cada cual ve solo sus propias notas.
picture-apart =
    { $rides ->
        [one] { $rides } recorrido no salió como dicen las notas, y aquí no se cuenta.
       *[other] { $rides } recorridos no salieron como dicen las notas, y aquí no se cuentan.
    }
picture-otherVersion =
    { $rides ->
        [one] { $rides } recorrido vino de otra versión del juego: las notas cuentan como llegaron, pero aquí no se puede recalcular.
       *[other] { $rides } recorridos vinieron de otra versión del juego: las notas cuentan como llegaron, pero aquí no se pueden recalcular.
    }
picture-open = Enseñarla al grupo de todos modos
picture-road = Camino
picture-roadName =
    { $rides ->
        [one] { $road } ({ $rides } recorrido)
       *[other] { $road } ({ $rides } recorridos)
    }

picture-boards-where = En el camino
picture-boards-caught = Repecho a repecho
picture-boards-timing = Cuándo
picture-boards-change = Primero y último
picture-boards-table = Tabla
picture-label = Qué se ve
picture-talk = Hablar con niños y niñas
picture-show = Ver la respuesta
picture-hide = Preguntar otra vez
picture-guess = Primero adivinar, luego mirar.
picture-rides =
    { $rides ->
        [one] { $rides } recorrido
       *[other] { $rides } recorridos
    } de { $riders ->
        [one] { $riders } ciclista
       *[other] { $riders } ciclistas
    }, sin nombres
# $count of $all (Number) riders had trouble with it.
picture-caught =
    { $all ->
        [one] El repecho { $pitch } sorprendió a { $count } de { $all } ciclista
       *[other] El repecho { $pitch } sorprendió a { $count } de { $all } ciclistas
    }

picture-wrong-late =
    { $all ->
        [one] Repecho { $pitch }: { $count } de { $all } ciclista, demasiado tarde
       *[other] Repecho { $pitch }: { $count } de { $all } ciclistas, demasiado tarde
    }
picture-wrong-early =
    { $all ->
        [one] Repecho { $pitch }: { $count } de { $all } ciclista, demasiado pronto
       *[other] Repecho { $pitch }: { $count } de { $all } ciclistas, demasiado pronto
    }
# $both (Number): riders who were too early at one attempt and too late at another.
picture-wrong-mixed =
    { $both ->
        [0] { $all ->
            [one] Repecho { $pitch }: de { $all } ciclista, { $early } demasiado pronto y { $late } demasiado tarde
           *[other] Repecho { $pitch }: de { $all } ciclistas, { $early } demasiado pronto y { $late } demasiado tarde
        }
       *[other] { $all ->
            [one] Repecho { $pitch }: unas veces demasiado pronto, otras demasiado tarde
           *[other] Repecho { $pitch }: de { $all } ciclistas, { $early } demasiado pronto y { $late } demasiado tarde, { $both } de ellos las dos cosas
        }
    }
picture-right = En ningún repecho se cambió demasiado pronto o tarde
# Where the gear for the pitch was in. $group and $best: distances like “12 m”.
picture-ready =
    El grupo estuvo a punto { $groupSide ->
        [after] { $group } después del pie
       *[before] { $group } antes del pie
    }; el mejor recorrido, { $bestSide ->
        [after] { $best } después del pie
       *[before] { $best } antes del pie
    }.
picture-neverReady =
    { $bestSide ->
        [after] La mayoría nunca estuvo a punto; el mejor recorrido, { $best } después del pie.
       *[before] La mayoría nunca estuvo a punto; el mejor recorrido, { $best } antes del pie.
    }
picture-noPitch = Este camino no tiene ningún repecho que pida un cambio
picture-noLines = Estos recorridos llegaron sin sus líneas; solo se pueden ver las notas.
picture-ownRoads = Cada cual recorrió su propio camino, así que no hay una línea común.

picture-tracks-development = Marcha
picture-tracks-cadenceRpm = Cadencia

picture-legend-best = mejor recorrido, a punto
picture-legend-middle = grupo, a punto
# Of the lines for gear and cadence.
picture-legend-lines = grupo: el medio y la mitad alrededor
picture-legend-bestLine = mejor recorrido
# What the drawing shows. $length: length of the road, like “1200 m”.
picture-stripDesc =
    { $rides ->
        [one] { $rides } recorrido sobre { $length } de camino: en cada repecho, dónde tenían lista la marcha el grupo y el mejor recorrido, y cuántos ciclistas cambiaron demasiado pronto, a tiempo y demasiado tarde.
       *[other] { $rides } recorridos sobre { $length } de camino: en cada repecho, dónde tenían lista la marcha el grupo y el mejor recorrido, y cuántos ciclistas cambiaron demasiado pronto, a tiempo y demasiado tarde.
    }
picture-barOf-tooEarly =
    { $all ->
        [one] demasiado pronto: { $count } de { $all } ciclista
       *[other] demasiado pronto: { $count } de { $all } ciclistas
    }
picture-barOf-aboutRight =
    { $all ->
        [one] más o menos a tiempo: { $count } de { $all } ciclista
       *[other] más o menos a tiempo: { $count } de { $all } ciclistas
    }
picture-barOf-tooLate =
    { $all ->
        [one] demasiado tarde: { $count } de { $all } ciclista
       *[other] demasiado tarde: { $count } de { $all } ciclistas
    }
picture-pitch = Repecho { $pitch }
# Riders; stands beside a pitch.
picture-caughtShort = sorprendió a { $count } de { $all }
picture-dots = Un punto es una persona; a quien le sorprendió al menos una vez, el punto va relleno.
picture-never = nunca

picture-timing-tooEarly = demasiado pronto
picture-timing-aboutRight = más o menos a tiempo
picture-timing-tooLate = demasiado tarde
# $one and $other: like “60 %”, of all times a pitch was ridden.
picture-shares-late = { $one } demasiado tarde, { $other } más o menos a tiempo
picture-shares-early = { $one } demasiado pronto, { $other } más o menos a tiempo
picture-shares-mixed = { $one } demasiado pronto, { $other } demasiado tarde
picture-timingCount =
    { $all ->
        [one] { $count } de { $all } paso por un repecho
       *[other] { $count } de { $all } pasos por un repecho
    }
# $better, $worse and $all (Number): riders, or pairs of rides where somebody rode several roads twice.
picture-change =
    { $worse ->
        [0] { $who ->
            [riders] { $all ->
                [one] { $better } de { $all } ciclista, claramente mejor
               *[other] { $better } de { $all } ciclistas, claramente mejor
            }
           *[pairs] { $all ->
                [one] { $better } de { $all } par de recorridos, claramente mejor
               *[other] { $better } de { $all } pares de recorridos, claramente mejor
            }
        }
       *[other] { $who ->
            [riders] { $all ->
                [one] { $better } de { $all } ciclista, claramente mejor; { $worse }, claramente peor
               *[other] { $better } de { $all } ciclistas, claramente mejor; { $worse }, claramente peor
            }
           *[pairs] { $all ->
                [one] { $better } de { $all } par de recorridos, claramente mejor; { $worse }, claramente peor
               *[other] { $better } de { $all } pares de recorridos, claramente mejor; { $worse }, claramente peor
            }
        }
    }
picture-changeSame = Nadie mejoró ni empeoró más de lo que da el azar
picture-changeNone = Nadie ha recorrido aún nada dos veces
# $chance (Number): points that mean nothing.
picture-changeSays = { $better } claramente mejor, { $worse } claramente peor, { $same } dentro de lo que da el azar (menos de { $chance } puntos).
picture-first = Primer intento
picture-last = Último intento
# $count (Number): riders.
picture-bins = De { $low } a { $high } puntos: { $count }

## What children are asked, and answers

picture-question-where = ¿Cuándo cambiamos para la cuesta?
picture-question-caught = ¿Qué cuesta sorprendió a más gente?
picture-question-timing = ¿Fuimos pronto, a tiempo o tarde?
picture-question-change = ¿Mejoramos con la práctica?
picture-question-table = ¿Qué tal fue?

picture-answer-caught =
    { $all ->
        [1] La cuesta { $hill } nos sorprendió
       *[other] La cuesta { $hill } sorprendió a { $count } de { $all }
    }
picture-answer-nobody = Ninguna cuesta nos sorprendió. ¡Bien cambiado!
picture-answer-noHill = Aquí ninguna cuesta pidió un clic

picture-answer-where-late =
    { $all ->
        [1] Cuesta { $hill }: demasiado tarde
       *[other] Cuesta { $hill }: demasiado tarde, { $count } de { $all }
    }
picture-answer-where-early =
    { $all ->
        [1] Cuesta { $hill }: demasiado pronto
       *[other] Cuesta { $hill }: demasiado pronto, { $count } de { $all }
    }
picture-answer-where-mixed =
    { $all ->
        [1] Cuesta { $hill }: pronto o tarde
       *[other] Cuesta { $hill }: pronto o tarde, { $count } de { $all }
    }
picture-answer-always = Siempre a tiempo. ¡Bien cambiado!

picture-answer-often-late = Más veces tarde que a tiempo
picture-answer-often-early = Más veces pronto que a tiempo
picture-answer-often-mixed = Unas veces pronto, otras veces tarde

picture-answer-sometimes-late = Casi siempre a tiempo, a veces tarde
picture-answer-sometimes-early = Casi siempre a tiempo, a veces pronto
picture-answer-sometimes-mixed = Casi siempre a tiempo, a veces pronto, a veces tarde
picture-answer-better =
    { $who ->
        [riders] { $all ->
            [1] { $better ->
                [0] Todavía sin mejora clara
               *[other] Mejora clara
            }
           *[other] Mejora clara en { $better } de { $all }
        }
       *[pairs] { $all ->
            [one] Mejoramos claramente { $better } de { $all } vez
           *[other] Mejoramos claramente { $better } de { $all } veces
        }
    }
picture-answer-hill = Cuesta { $hill }

picture-table-rider = Ciclista
picture-table-ride = Recorrido
# A ride of a plan whose level is not here.
picture-table-rideNumber = Recorrido { $ride }
picture-table-attempt = Intento
picture-table-total = Total
picture-table-pitches = Repechos (%)
picture-table-none = –

## The report

report-title = Informe
report-intro = Una página por camino en blanco y negro, y archivos para una hoja de cálculo u otro programa.
report-names = Con animales y apodos
report-namesHint = Sin esto, la página no lleva nombres. Los archivos llevan siempre apodos.
# Name of a file, where the title of the plan has no letters: small, without spaces.
report-fileName = sesion
report-print = Imprimir
report-csv = Guardar como CSV
report-json = Guardar como JSON
report-remove = Borrar la sesión
report-sureTitle = ¿Borrar la sesión?
report-sure =
    { $rides ->
        [one] { $rides } recorrido y los turnos desaparecen de este dispositivo. No se puede deshacer.
       *[other] { $rides } recorridos y los turnos desaparecen de este dispositivo. No se puede deshacer.
    }
report-keep = Conservarla
report-saveFirst = Guardarla antes
report-removeSure = Borrarla
report-sheet = Vista previa
report-rides =
    { $rides ->
        [one] { $rides } recorrido
       *[other] { $rides } recorridos
    }, { $riders ->
        [one] { $riders } ciclista
       *[other] { $riders } ciclistas
    }
report-table = Repechos
report-pitch = Repecho
report-caught = Sorprendió a (ciclistas)
report-timing = Pronto / a tiempo / tarde (recorridos)
report-group = Grupo a punto
report-best = Mejor recorrido a punto
report-ready = A punto: la marcha para el repecho está puesta y su último cambio ha acabado.
# A headline of the group picture, which has no full stop there.
report-sentence = { $sentence }.
report-before = { $distance } antes del pie
report-after = { $distance } después del pie
# As picture-changeSays.
report-attempts = Primer y último intento: { $better } claramente mejor, { $worse } claramente peor, { $same } dentro de lo que da el azar (menos de { $chance } puntos).
report-all = Totales, intento a intento
report-footer = Las notas salen de un modelo del pedaleo. Dicen cuándo se cambió en estos caminos, no lo que vale una persona.
