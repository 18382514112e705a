### The debrief for grown-ups. Children get what stands in debriefChildren.ftl instead, under the same names.

## Parts that several sentences have. Gears are always easier ones here, so "más suave" bends with them; gear changes
## are what "you made" or "asked for", so their parts have no verb.

# Which pitch (a steep piece of road) of the road. $pitch (Number): from 1. $pitches (Number): how many there are.
pitch =
    { $pitches ->
        [1] el repecho
       *[other] { $pitch ->
            [1] el primer repecho
            [2] el segundo repecho
            [3] el tercer repecho
            [4] el cuarto repecho
            [5] el quinto repecho
            [6] el sexto repecho
            [7] el séptimo repecho
            [8] el octavo repecho
            [9] el noveno repecho
            [10] el décimo repecho
           *[other] el repecho { $pitch }
        }
    }
# The same at the beginning of a sentence.
pitch-begins =
    { $pitches ->
        [1] El repecho
       *[other] { $pitch ->
            [1] El primer repecho
            [2] El segundo repecho
            [3] El tercer repecho
            [4] El cuarto repecho
            [5] El quinto repecho
            [6] El sexto repecho
            [7] El séptimo repecho
            [8] El octavo repecho
            [9] El noveno repecho
            [10] El décimo repecho
           *[other] El repecho { $pitch }
        }
    }
# The same as a title.
pitch-title =
    { $pitches ->
        [1] El repecho
       *[other] { $pitch ->
            [1] Primer repecho
            [2] Segundo repecho
            [3] Tercer repecho
            [4] Cuarto repecho
            [5] Quinto repecho
            [6] Sexto repecho
            [7] Séptimo repecho
            [8] Octavo repecho
            [9] Noveno repecho
            [10] Décimo repecho
           *[other] Repecho { $pitch }
        }
    }
# A place seen from the foot, where the pitch begins. $metres: a distance with its unit, like "12 m".
near =
    { $side ->
        [at] justo al pie
        [after] { $metres } después del pie
       *[before] { $metres } antes del pie
    }
# The same as a place to aim for.
aim =
    { $side ->
        [at] justo al pie
        [after] justo cuando se empina
       *[before] unos { $metres } antes del pie
    }
# Small numbers are written as words. $gears (Number): from 1.
gears =
    { $gears ->
        [1] una marcha más suave
        [2] dos marchas más suaves
        [3] tres marchas más suaves
        [4] cuatro marchas más suaves
        [5] cinco marchas más suaves
        [6] seis marchas más suaves
        [7] siete marchas más suaves
        [8] ocho marchas más suaves
        [9] nueve marchas más suaves
        [10] diez marchas más suaves
       *[other] { $gears } marchas más suaves
    }
# $made (Number): from 0.
made-gears =
    { $made ->
        [0] ninguna marcha más suave
        [1] una marcha más suave
        [2] dos marchas más suaves
        [3] tres marchas más suaves
        [4] cuatro marchas más suaves
        [5] cinco marchas más suaves
        [6] seis marchas más suaves
        [7] siete marchas más suaves
        [8] ocho marchas más suaves
        [9] nueve marchas más suaves
        [10] diez marchas más suaves
       *[other] { $made } marchas más suaves
    }
# $seconds (Number): from 1.
seconds =
    { $seconds ->
        [1] un segundo
        [2] dos segundos
        [3] tres segundos
        [4] cuatro segundos
        [5] cinco segundos
        [6] seis segundos
        [7] siete segundos
        [8] ocho segundos
        [9] nueve segundos
        [10] diez segundos
       *[other] { $seconds } segundos
    }
# One sprocket or ring further is one gear change, however the lever was pushed. $changes (Number): from 0.
changes =
    { $changes ->
        [0] ningún cambio de marcha
        [1] un cambio de marcha
        [2] dos cambios de marcha
        [3] tres cambios de marcha
        [4] cuatro cambios de marcha
        [5] cinco cambios de marcha
        [6] seis cambios de marcha
        [7] siete cambios de marcha
        [8] ocho cambios de marcha
        [9] nueve cambios de marcha
        [10] diez cambios de marcha
       *[other] { $changes } cambios de marcha
    }
# How many of all gear changes, behind "you made". $heavy (Number): from 1. $changes (Number): all of them.
some-of =
    { $which ->
        [all] { $changes ->
            [1] el único cambio de marcha
           *[other] los { changes }
        }
       *[some] { $heavy ->
            [1] uno de { changes }
            [2] dos de { changes }
            [3] tres de { changes }
            [4] cuatro de { changes }
            [5] cinco de { changes }
            [6] seis de { changes }
            [7] siete de { changes }
            [8] ocho de { changes }
            [9] nueve de { changes }
            [10] diez de { changes }
           *[other] { $heavy } de { changes }
        }
    }
# Something to try: what the best ride did. $rest: whether more easier gears follow after these.
advice =
    { $rest ->
        [some] Pon { gears } { aim }, y las demás subiendo.
       *[none] Pon { gears } { aim }.
    }
# When somebody shifted. Also on the buttons of the question.
timing =
    { $timing ->
        [too-early] demasiado pronto
        [too-late] demasiado tarde
       *[about-right] más o menos a tiempo
    }
# One of the five marks, as a name.
mark =
    { $mark ->
        [cadence] Cadencia
        [foresight] Anticipación
        [easing] Aflojar
        [chainLine] Línea de cadena
       *[economy] Economía
    }
# The same within a sentence.
mark-within =
    { $mark ->
        [cadence] cadencia
        [foresight] anticipación
        [easing] aflojar
        [chainLine] línea de cadena
       *[economy] economía
    }

## The question before anything is explained, and its answer

guess-title = Primero, adivina
# The buttons under it say the rest: see "timing".
guess-question = En { pitch }, cambiaste…
guess-openQuestion = En el repecho que más costó a tus piernas, cambiaste…
guess-why = No cambiar donde hacía falta cuenta como demasiado tarde. Después se explica el recorrido.
guess-skip = Dímelo sin más
guess-working = Se está calculando el mejor recorrido con tu bici…
guess-notMarked = Ahora no se han podido calcular las notas. Un recorrido guardado las recibe más tarde, cuando se abra otra vez el juego.
# How far that is. $percent: like "40 %".
guess-share = { $percent } hecho
guess-matched = Lo has notado: fue { timing }.
# $guess: what the rider said.
guess-differed =
    { $guess ->
        [too-early] Dijiste «demasiado pronto»; fue { timing }.
        [too-late] Dijiste «demasiado tarde»; fue { timing }.
       *[about-right] Dijiste «más o menos a tiempo»; fue { timing }.
    }
guess-told = Fue { timing }.
guess-matchedKind = Notarlo por tu cuenta es como se mejora.
guess-differedKind = Pedaleando cuesta notarlo. La tira enseña dónde.
guess-noPitch = Ningún repecho de este camino era tan empinado como para pedir un cambio.
# $own and $best: where the rider and the best ride shifted first, seen from the foot. $ownMetres, $bestMetres: like "12 m".
guess-where =
    { $own ->
        [never] Seguiste en tu marcha
        [at] Tu primera marcha más suave llegó justo al pie
        [after] Tu primera marcha más suave llegó { $ownMetres } después del pie
       *[before] Tu primera marcha más suave llegó { $ownMetres } antes del pie
    }; { $best ->
        [never] el mejor recorrido no cambió.
        [at] el mejor recorrido cambió justo al pie.
        [after] el mejor recorrido cambió { $bestMetres } después del pie.
       *[before] el mejor recorrido cambió { $bestMetres } antes del pie.
    }
# $made (Number): easier gears before the foot, from 0. $needed (Number): those of the best ride.
guess-stepsBefore =
    { $made ->
        [0] Antes del pie no habías puesto ninguna más suave; el mejor recorrido, { needed }.
       *[other] Antes del pie habías puesto { made-gears }; el mejor recorrido, { needed }.
    }
# A number alone. $needed (Number): from 0.
needed =
    { $needed ->
        [0] ninguna
        [1] una
        [2] dos
        [3] tres
        [4] cuatro
        [5] cinco
        [6] seis
        [7] siete
        [8] ocho
        [9] nueve
        [10] diez
       *[other] { $needed }
    }
# $own, $best (Number): turns of the pedals a minute.
guess-slowest = Tus piernas bajaron a { $own } rpm; el mejor recorrido mantuvo { $best }.

## What became of the ride

end-passed = Lo has logrado.
end-not-yet = La cuesta te espera.
end-ridden = Camino hecho.
end-explain = Qué pasó, por qué y dónde
# Stamps under it, each one word.
stamp-early = pronto
stamp-soft = ligero
stamp-smooth = fluido
# Read aloud after the word of a stamp.
stampState-earned = logrado
stampState-not-yet = aún no
stampState-not-asked = aquí no se pide

## Three sentences: what went well, one thing to change, what to ride next

well-title = Salió bien
well-finished = Has llegado hasta el final.
well-cadence = Tus piernas llevaron un buen ritmo casi todo el camino.
well-foresight = Llevabas la marcha adecuada antes de que el camino la pidiera.
well-easing = Aflojaste la pedalada en cada cambio.
well-chainLine = Llevaste la cadena recta.
well-economy = No hiciste ningún cambio de más.

change-title = Cambia una cosa
# $how: whether it was only slightly late.
change-late-pitch =
    { $how ->
        [slightly] En { pitch } las marchas más suaves llegaron algo tarde para tus piernas. { advice }
       *[clearly] En { pitch } las marchas más suaves llegaron demasiado tarde para tus piernas. { advice }
    }
change-stayed = En { pitch } seguiste con una marcha demasiado dura. { advice }
change-early-pitch =
    { $how ->
        [slightly] En { pitch } te preparaste algo pronto. Mantén la marcha y pon una más suave { aim }.
       *[clearly] En { pitch } te preparaste demasiado pronto. Mantén la marcha y pon una más suave { aim }.
    }
change-few-steps =
    { $which ->
        [few] En { pitch } pusiste solo { made-gears }. Ahí, pon { gears }.
       *[hard] En { pitch } la marcha aún era demasiado dura. Ahí, pon una marcha más suave.
    }
change-wrong-way = En { pitch } pusiste una marcha más dura en vez de una más suave. { advice }
change-pushed = En { pitch } apretaste mucho en lugar de cambiar. { advice }
change-foot-down = En { pitch } la marcha era demasiado dura y hubo que poner pie a tierra. { advice }
# Shifts under pressure: on sprockets, in a hub, with a motor that pulls on the chain, and with both.
change-ease =
    { $heavy ->
        [0] Aprieta menos los pedales mientras la cadena se mueve, solo un momento.
       *[other] Hiciste { some-of } apretando mucho. Afloja un momento y luego cambia.
    }
change-ease-hub =
    { $heavy ->
        [0] Quita la presión mientras cambia el buje, solo un momento.
       *[other] Hiciste { some-of } sin dejar de apretar: el buje dio un golpe. Quita la presión, cambia y aprieta otra vez.
    }
change-ease-motor =
    { $heavy ->
        [0] Dale tiempo al motor para soltar: afloja, espera un momento y cambia.
       *[other] Hiciste { some-of } mientras el motor aún tiraba de la cadena. Afloja, espera un momento a que suelte y cambia.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Dale tiempo al motor para soltar: quita la presión, espera un momento y cambia.
       *[other] Hiciste { some-of } mientras el motor aún tiraba. Quita toda la presión, espera un momento a que suelte y cambia.
    }
change-stood-still = Pediste { some-of } con las piernas quietas. A un buje le gusta; una cadena tiene que girar: sigue pedaleando sin apretar.
# $place: a distance along the road, like "230 m".
change-coasted = Tus piernas descansaron donde el camino las pide, el rato más largo desde los { $place }: { seconds }. Que los pedales sigan girando.
change-coasted-hub = Tus piernas descansaron donde el camino las pide, el rato más largo desde los { $place }: { seconds }. A un buje le basta un momento; luego aprieta.
change-slow-legs = Tus piernas giraron despacio, el rato más largo desde los { $place }: { seconds }. Con una marcha más suave siguen girando.
change-fast-legs = Tus piernas giraron muy rápido, el rato más largo desde los { $place }: { seconds }. Una marcha más dura las calma.
change-crossed = La cadena iba cruzada { seconds } desde los { $place }. Cambia de plato, y detrás la marcha que lo compense.
change-fidget =
    { $needed ->
        [0] Hiciste { changes }; el mejor recorrido no necesitó ninguno. Espera un momento antes del siguiente.
        [1] Hiciste { changes }; el mejor recorrido necesitó uno. Espera un momento antes del siguiente.
       *[other] Hiciste { changes }; el mejor recorrido necesitó { needed }. Espera un momento antes del siguiente.
    }
# $times (Number): 1.4 is "1.4 times as long".
change-dawdle = Tardaste { $times } veces lo que el mejor recorrido. Usa la marcha que puedas mover a buen ritmo y no pares.
change-nothing = Nada. Hazlo otra vez igual.

next-title = Lo siguiente
next-again = Este camino otra vez: un intento más, pensando solo en esa cosa que mejorar.
# $level: the title of a level.
next-onwards = Sigue con «{ $level }».
next-onwardsNone = El nivel que quieras: este ya es tuyo.
next-easier-level = Primero un camino más fácil; luego vuelve a este.

## A card for each pitch

cards-title = Repecho a repecho
# $percent: how steep, like "8 %". $length: how long, like "120 m".
card-steep = { $percent } durante { $length }
# Four labels with their values.
card-needed = Mejor recorrido, marchas más suaves
card-before = Las tuyas antes del pie
card-ofMade =
    { $made ->
        [0] ninguna
       *[other] { $before } de { $made }
    }
card-worst = Piernas más lentas en el repecho
card-worstPair = { $own } rpm (el mejor: { $best })
# $before (Number): how many of the gears come before the foot; $which: whether that is all of them, some, or none.
card-bestDoes =
    { $which ->
        [all] Aquí el mejor recorrido pone { gears }, todo antes del pie; empieza { near }.
        [none] Aquí el mejor recorrido pone { gears }, nada antes del pie; empieza { near }.
       *[some] Aquí el mejor recorrido pone { gears }, { $before ->
            [1] una
            [2] dos
            [3] tres
            [4] cuatro
            [5] cinco
            [6] seis
            [7] siete
            [8] ocho
            [9] nueve
            [10] diez
           *[other] { $before }
        } antes del pie; empieza { near }.
    }
card-bestStays = El mejor recorrido no cambia aquí.
card-asksNothing = Se pasa también sin cambiar.
card-footDown = Aquí hubo que poner pie a tierra.
card-timing =
    { $timing ->
        [too-early] Demasiado pronto
        [too-late] Demasiado tarde
       *[about-right] Más o menos a tiempo
    }
# The same where it was right, or nearly.
card-tendency =
    { $timing ->
        [too-early] Algo pronto
        [too-late] Algo tarde
       *[about-right] Más o menos a tiempo
    }
card-watch = Ver este repecho
# Read aloud in place of a picture.
card-picture = Dónde cambiaron ambos recorridos en { pitch }
card-pictureDesc = El camino de lado. Encima, tus cambios; debajo, los del mejor recorrido.
card-table = Cambios en este repecho
card-who = Quién
# Within the picture and the table: whose shift it is.
card-you = tú
card-best = mejor
card-where = Dónde

## The marks

marks-title = Notas
# Before the total of 100.
marks-total = En total
# $pass (Number): the total from which a level is passed.
marks-passed = Superado (desde { $pass })
marks-notYet = Aún no (se supera desde { $pass })
asks-cadence = Las piernas dentro de tu franja
asks-foresight = La marcha lista antes de la cuesta
asks-easing = Aflojar al cambiar
asks-chainLine = Una cadena recta
asks-economy = Ningún cambio de más
noMark = sin nota
noMark-cadence = No pedaleaste lo bastante para valorarlo.
noMark-foresight = Ningún repecho de este recorrido pidió un cambio.
noMark-easing = No cambiaste, así que no hubo por qué aflojar.
noMark-chainLine = Nada que valorar: un solo plato, o ningún cambio.
noMark-economy = No hubo nada que contar.
# $most, $atLeast (Number): marks of 100. $share: like "60 %".
hold-weakest = { mark } frena el total: con esta nota llega como mucho a { $most }.
hold-pace = Tardaste { $times } veces lo que el mejor recorrido. Queda el { $share } del total.
hold-tooSlow = Tardaste { $times } veces lo que el mejor recorrido. A ese paso no hay total.
hold-lessonMissing = El tema de este camino: { mark-within }. Para superarlo, saca ahí { $atLeast } como mínimo.
hold-markMissing = Para superarlo, saca también { $atLeast } como mínimo en «{ mark-within }».
level-strong = muy bien
level-good = bien
level-onTheWay = en camino
level-start = empieza por aquí
perfect = Aquí no se perdió nada.
small = Aquí solo se perdieron detalles.
leftAlone = No se tocó ninguna maneta donde el camino lo pedía.
# Unfolds more reasons. $more (Number): 1 to 5.
more =
    { $more ->
        [1] Uno más
        [2] Dos más
        [3] Tres más
        [4] Cuatro más
        [5] Cinco más
       *[other] { $more } más
    }
# Stands before the advice of a reason (better-…).
better = Mejor:

## Why a mark is what it is (why-…), and what would have changed it (better-…: goes on after "Better:")

# $from: where, like "230 m". $rpm (Number): turns of the pedals a minute.
why-below-band = Piernas lentas { seconds } desde los { $from }, hasta bajar a { $rpm } rpm.
better-below-band = una más suave en cuanto las piernas empiecen a frenarse.
why-above-band = Piernas rápidas { seconds } desde los { $from }, hasta subir a { $rpm } rpm.
better-above-band = una más dura cuando el camino te deje.
why-coasted = Tus piernas descansaron { seconds } desde los { $from }, donde el mejor recorrido pedalea.
better-coasted = que los pedales sigan girando en llano y cuesta arriba.
better-coasted-hub = apretar en cuanto el buje tenga su marcha.
# $percent: like "40 %".
why-overloaded-pitch = { pitch-begins } te cargó las piernas: se perdió el { $percent } de lo que ahorra cambiar a tiempo.
better-overloaded-pitch = empezar a cambiar antes del pie.
why-early-pitch = Para { pitch } te preparaste demasiado pronto: se perdió el { $percent } de lo que ahorra cambiar a tiempo.
better-early-pitch = mantener la marcha un poco más.
why-foot-down-pitch = Hubo que poner pie a tierra en { pitch }.
better-foot-down-pitch = llevar una marcha suave antes de que se empine.
# $derailleur: the one at the front moves the chain from ring to ring.
why-heavy-shift =
    { $derailleur ->
        [front] Cambio de plato bajo presión a los { $from }, con el { $percent } de la presión normal.
       *[rear] Cambio bajo presión a los { $from }, con el { $percent } de la presión normal.
    }
better-heavy-shift = aflojar media vuelta de pedal y luego cambiar.
better-heavy-shift-hub = quitar la presión; entonces el buje toma su marcha.
better-heavy-shift-motor = aflojar un momento antes, hasta que suelte también el motor.
why-waited-shift = A los { $from } la cadena esperó: tus piernas descansaban.
better-waited-shift = seguir pedaleando, sin apretar, mientras se mueve.
why-crossed = La cadena iba cruzada { seconds } desde los { $from }.
better-crossed = cambiar antes de plato.
why-many-shifts =
    { $needed ->
        [0] Hiciste { changes }; el mejor recorrido, ninguno.
        [1] Hiciste { changes }; el mejor recorrido, uno.
       *[other] Hiciste { changes }; el mejor recorrido, { needed }.
    }
better-many-shifts = dejar pasar las subidas cortas.
why-undone = Un cambio a los { $from } se deshizo enseguida.
better-undone = darle a cada marcha nueva tres vueltas de pedal.

## What can be done now

doing-title = Y ahora
doing-again = Otra vez
# $level: the title of a level.
doing-next = Siguiente: { $level }
doing-watch = Ver desde el principio
doing-print = Imprimir
doing-saveRide = Guardar el recorrido
doing-savePicture = Guardar una imagen
doing-pictureFailed = Este navegador no ha podido dibujar la imagen. También se puede imprimir.
doing-backToGroup = Volver al grupo
doing-backToBench = Volver al taller de niveles
doing-besideRoad = Junto a tu salida en carretera
# A child's first ride of a lesson. $lesson: like "Cadence".
freshPatch = Tienes un parche nuevo: { $lesson }.
differs = Al recalcularla, esta grabación salió algo distinta. La imagen puede no coincidir.
closed = Lo demás se abre después de tu respuesta.

## Whether the ride is kept, and why not

saved-saving = Guardando el recorrido…
saved-saved = Este recorrido está guardado en este dispositivo.
saved-not-saved = Este recorrido no se ha guardado.
notSaved-private-window = Este recorrido no se guarda: el navegador no guarda nada en esta ventana. Guárdalo en un archivo, o abre una ventana normal.
notSaved-disk-full = Este recorrido no se guarda: en el dispositivo no queda sitio. Guárdalo en un archivo, o haz sitio; el juego lo intentará de nuevo.
notSaved-connection-lost = Este recorrido aún no se guarda: el navegador ha perdido su almacenamiento. Guárdalo en un archivo; el juego lo intentará de nuevo.
notSaved-newer-version = Este recorrido no se guarda: aquí ha estado una versión más nueva del juego. Recarga la página para actualizar.
notSaved-blocked = Este recorrido no se guarda: lo impide otra pestaña del juego. Ciérrala; el juego lo intentará de nuevo.
notSaved-hangs = Este recorrido aún no se guarda: el navegador no responde. Guárdalo en un archivo para no perderlo.
notSaved-corrupt = Este recorrido no se guarda: algo de lo guardado aquí no se puede leer. Guárdalo en un archivo.
notSaved-somebody-else = Este recorrido se hizo junto con otras personas y no se guarda aquí. Guárdalo en un archivo.
notSaved-trial = Un recorrido de prueba no se guarda.
notSaved-not-judged = Este recorrido no se ha podido calcular, así que no se guarda. Guárdalo en un archivo.
notSaved-not-fetched = Este recorrido aún no se guarda: no se ha podido cargar una parte del juego. Mira si hay conexión; el juego lo intentará de nuevo. Guárdalo en un archivo para no perderlo.
notSaved-localBackup = Sus notas están guardadas; el recorrido mismo, no.

## The printed sheet

print-title = Antes de la cuesta: un recorrido
print-subtitle = { $level } · { $bike } · { $rider }
print-legend = Negro: tú. Gris: el mejor recorrido hallado para esta bici y quien pedalea. Punto: cambio limpio; medio punto: algo forzado; triángulo: forzado. Cruz: pie a tierra.
# $total (Number): of 100.
print-marks = { marks-title }. { marks-total }: { $total }.
print-pitchTitle = { pitch-title }.
# $needed (Number): easier gears.
print-pitch = { card-needed }: { $needed }. { card-before }: { card-ofMade }. { card-worst }: { card-worstPair }.
