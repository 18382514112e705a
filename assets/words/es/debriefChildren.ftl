### The debrief for children of about ten. What is not here is said as to grown-ups (debrief.ftl, the same names).
### No sentence has more than twelve words; short and easy words, warm and never a reproach.

## Parts that several sentences have. Gears are always easier ones here, so "más suave" bends with them.

# Which hill of the road. $pitch (Number): from 1. $pitches (Number): how many there are.
pitch =
    { $pitches ->
        [1] la cuesta
       *[other] la cuesta { $pitch }
    }
pitch-begins =
    { $pitches ->
        [1] La cuesta
       *[other] La cuesta { $pitch }
    }
pitch-title =
    { $pitches ->
        [1] La cuesta
       *[other] Cuesta { $pitch }
    }
# A place seen from where the hill begins. $metres: a distance with its unit, like "12 m".
near =
    { $side ->
        [at] justo donde empieza la cuesta
        [after] { $metres } después de empezar la cuesta
       *[before] { $metres } antes de la cuesta
    }
# The same as a place to aim for.
aim =
    { $side ->
        [before] unos { $metres } antes de la cuesta
       *[after] justo donde empieza
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
# $heavy (Number): from 1.
heavy-shifts =
    { $heavy ->
        [1] un cambio
        [2] dos cambios
        [3] tres cambios
        [4] cuatro cambios
        [5] cinco cambios
        [6] seis cambios
        [7] siete cambios
        [8] ocho cambios
        [9] nueve cambios
        [10] diez cambios
       *[other] { $heavy } cambios
    }
# When somebody shifted. Also on the buttons of the question.
timing =
    { $timing ->
        [too-early] demasiado pronto
        [too-late] demasiado tarde
       *[about-right] a tiempo
    }
# One of the five marks, as a name.
mark =
    { $mark ->
        [cadence] Ritmo de piernas
        [foresight] A tiempo
        [easing] Aflojar
        [chainLine] Cadena recta
       *[economy] Manos tranquilas
    }

## The question before anything is explained, and its answer

guess-title = Adivina
# The buttons under it say the rest: see "timing".
guess-question = En { pitch }, ¿cuándo cambiaste?
guess-openQuestion = En tu cuesta más dura, ¿cuándo cambiaste?
guess-why = ¿No cambiaste donde hacía falta? Eso es demasiado tarde. Después miramos tu recorrido.
guess-skip = Enséñamelo ya
guess-working = Buscamos el mejor recorrido…
guess-notMarked = Ahora no se pueden calcular tus notas. Si el recorrido se guarda, llegan la próxima vez.
guess-matched = ¡Sí! Fue { timing }.
# $guess: what the child said.
guess-differed =
    { $guess ->
        [too-early] Dijiste «demasiado pronto». Fue { timing }.
        [too-late] Dijiste «demasiado tarde». Fue { timing }.
       *[about-right] Dijiste «a tiempo». Fue { timing }.
    }
guess-matchedKind = ¡Buen ojo!
guess-differedKind = Al pedalear cuesta notarlo.
guess-noPitch = Este camino no tenía cuestas empinadas.
# $own and $best: where the child and the best ride shifted first. $ownMetres, $bestMetres: like "12 m".
guess-where =
    { $own ->
        [never] No cambiaste.
        [at] Cambiaste justo donde empieza la cuesta.
        [after] Cambiaste { $ownMetres } después de empezar la cuesta.
       *[before] Cambiaste { $ownMetres } antes de la cuesta.
    } { $best ->
        [never] El mejor recorrido no cambió.
        [at] El mejor recorrido cambió justo donde empieza la cuesta.
        [after] El mejor recorrido cambió { $bestMetres } después de empezar la cuesta.
       *[before] El mejor recorrido cambió { $bestMetres } antes de la cuesta.
    }
# $made (Number): easier gears before the hill, from 0. $needed (Number): those of the best ride.
guess-stepsBefore =
    { $made ->
        [0] No cambiaste a tiempo. El mejor recorrido: { needed-gears }.
       *[other] A tiempo pusiste { made-gears }. El mejor recorrido: { needed-gears }.
    }
needed-gears =
    { $needed ->
        [0] ninguna
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
       *[other] { $needed } marchas más suaves
    }
guess-slowest = En la cuesta, tus piernas iban demasiado lentas.

## What became of the ride

end-passed = ¡Lo has logrado!
end-not-yet = Buen intento. La cuesta te espera.
end-ridden = Has hecho todo el camino.
end-explain = Mira tu recorrido

## Three sentences: what went well, one thing to try, what to ride next

well-title = Te salió bien
well-finished = Has llegado hasta el final.
well-cadence = Tus piernas giraron a buen ritmo.
well-foresight = Tenías la marcha buena antes de la cuesta.
well-easing = Aflojaste la pedalada al cambiar.
well-chainLine = Tu cadena iba bien recta.
well-economy = No cambiaste sin necesidad.

change-title = Prueba esto
# What to do next time. $ready (Number): easier gears, from 1.
advice = Pon { ready-gears } { aim }.
ready-gears =
    { $ready ->
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
       *[other] { $ready } marchas más suaves
    }
# $how: whether it was only slightly late.
change-late-pitch =
    { $how ->
        [slightly] En { pitch } esperaste un poco de más. { advice }
       *[clearly] En { pitch } esperaste demasiado. { advice }
    }
change-stayed = En { pitch } ibas con una marcha dura. { advice }
change-early-pitch =
    { $how ->
        [slightly] En { pitch } cambiaste algo pronto. Espera y cambia { aim }.
       *[clearly] En { pitch } cambiaste demasiado pronto. Espera y cambia { aim }.
    }
change-few-steps =
    { $which ->
        [few] En { pitch } pusiste { made-gears }. Te hacen falta { $gears ->
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
           *[other] { $gears }
        }.
       *[hard] En { pitch } la marcha era demasiado dura. Pon una más suave.
    }
change-wrong-way = En { pitch } pusiste una marcha más dura, no más suave. { advice }
change-pushed = En { pitch } apretaste mucho. { advice }
change-foot-down = En { pitch } la marcha era demasiado dura. { advice }
# Shifts under pressure: on sprockets, in a hub, with a motor that pulls on the chain, and with both.
change-ease =
    { $heavy ->
        [0] Aprieta un poco menos al cambiar.
       *[other] Apretaste mucho en { heavy-shifts }. Afloja y luego cambia.
    }
change-ease-hub =
    { $heavy ->
        [0] Deja de apretar un momento al cambiar.
       *[other] Apretaste en { heavy-shifts }. Deja de apretar, cambia, aprieta otra vez.
    }
change-ease-motor =
    { $heavy ->
        [0] Espera un poco a que pare el motor y cambia.
       *[other] El motor tiraba en { heavy-shifts }. Afloja, espera y cambia.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Espera un poco a que pare el motor y cambia.
       *[other] El motor tiraba en { heavy-shifts }. Deja de apretar, espera y cambia.
    }
change-stood-still = Tus piernas estaban quietas al cambiar. Muévelas sin apretar.
# $place: a distance along the road, like "230 m".
change-coasted = Tus piernas estuvieron quietas { seconds } desde los { $place }. Que sigan girando.
change-coasted-hub = Tus piernas estuvieron quietas { seconds } desde los { $place }. Después de cambiar, aprieta.
change-slow-legs = Piernas lentas, sobre todo desde los { $place } ({ seconds }). Pon una más suave.
change-fast-legs = Piernas muy rápidas, sobre todo desde los { $place } ({ seconds }). Pon una más dura.
change-crossed = La cadena iba torcida { seconds } desde los { $place }. Usa el otro plato.
# $changes, $needed (Number): gears.
change-fidget =
    { $changes ->
        [one] Cambiaste { $changes } vez. { $needed ->
            [0] No hacía falta
           *[other] Necesitas solo { $needed }
        }. Espera un poco más.
       *[other] Cambiaste { $changes } veces. { $needed ->
            [0] No hacía falta
           *[other] Necesitas solo { $needed }
        }. Espera un poco más.
    }
change-dawdle = Ibas muy despacio. Mueve las piernas y sigue.
change-nothing = Nada de nada. ¡Hazlo otra vez así!

next-title = Lo siguiente
next-again = Haz este camino otra vez. Piensa solo en lo que pruebas.
# $level: the title of a level.
next-onwards = Sigue con «{ $level }».
next-onwardsNone = Elige el camino que quieras.
next-easier-level = Haz primero un camino más fácil. Luego vuelve.

## A card for each hill

cards-title = Cuesta a cuesta
card-needed = Marchas del mejor recorrido
card-before = Las tuyas antes de la cuesta
card-worst = Piernas más lentas en la cuesta
card-bestDoes = Aquí el mejor recorrido pone { gears }. Empieza a cambiar { near }.
card-bestStays = El mejor recorrido no cambia aquí.
card-asksNothing = También se pasa sin cambiar.
card-footDown = Aquí pusiste un pie en el suelo.
card-timing =
    { $timing ->
        [too-early] Demasiado pronto
        [too-late] Demasiado tarde
       *[about-right] A tiempo
    }
# The same where it was right, or nearly.
card-tendency =
    { $timing ->
        [too-early] Algo pronto
        [too-late] Algo tarde
       *[about-right] A tiempo
    }
card-watch = Ver esta cuesta
# Read aloud in place of a picture.
card-picture = Dónde cambiaron ambos recorridos en { pitch }
card-table = Cambios en esta cuesta

## The marks

asks-cadence = Tus piernas giran a buen ritmo.
asks-foresight = La marcha es la buena antes de la cuesta.
asks-easing = Aflojas la pedalada al cambiar.
asks-chainLine = La cadena va recta.
asks-economy = Cambias solo cuando hace falta.
noMark-cadence = Pedaleaste muy poco.
noMark-foresight = No hubo cuestas empinadas para ti.
noMark-easing = No cambiaste ninguna vez.
noMark-chainLine = Aquí no había nada que mirar.
noMark-economy = No había nada que contar.
# $most, $atLeast (Number): marks of 100. $share: like "60 %".
hold-weakest = Tienes como mucho { $most }: tu nota en «{ mark }» es baja.
hold-pace = Ibas despacio. Por eso te queda solo el { $share }.
hold-tooSlow = Ibas tan despacio que no cuenta.
hold-lessonMissing = Te hacen falta { $atLeast } en «{ mark }» para superarlo.
hold-markMissing = También te hacen falta { $atLeast } en «{ mark }».
level-strong = genial
level-good = bien
level-onTheWay = ya casi
level-start = empieza por aquí
perfect = Aquí todo bien.
small = Aquí casi todo bien.
leftAlone = No tocaste ninguna maneta. En este camino hace falta cambiar.

## Why a mark is what it is (why-…), and what would have changed it (better-…: goes on after "Better:")

# $from: where, like "230 m".
why-below-band = Piernas lentas { seconds } desde los { $from }.
better-below-band = pon una más suave cuando vayan lentas.
why-above-band = Piernas muy rápidas { seconds } desde los { $from }.
better-above-band = pon una más dura cuesta abajo.
why-coasted = Tus piernas estuvieron quietas { seconds } desde los { $from }.
better-coasted = que las piernas sigan girando.
better-coasted-hub = aprieta después de cambiar.
why-overloaded-pitch = { pitch-begins } fue dura para tus piernas.
better-overloaded-pitch = cambia antes de que empiece la cuesta.
why-early-pitch = Para { pitch } te preparaste demasiado pronto.
better-early-pitch = espera un poco antes de cambiar.
why-foot-down-pitch = Pusiste un pie en el suelo en { pitch }.
better-foot-down-pitch = pon una más suave antes de que se empine.
why-heavy-shift = Apretaste mucho en el cambio a los { $from }.
better-heavy-shift = afloja y luego cambia.
better-heavy-shift-hub = deja de apretar, cambia, aprieta otra vez.
better-heavy-shift-motor = espera algo más, hasta que pare también el motor.
why-waited-shift = La cadena esperó a los { $from }. Tus piernas estaban quietas.
better-waited-shift = mueve las piernas sin apretar al cambiar.
why-crossed = La cadena iba torcida { seconds } desde los { $from }.
better-crossed = usa el otro plato.
# $changes, $needed (Number): gears.
why-many-shifts =
    { $changes ->
        [one] Pasaste por { $changes } marcha. { $needed ->
            [0] No hacía falta
           *[other] Necesitas solo { $needed }
        }.
       *[other] Pasaste por { $changes } marchas. { $needed ->
            [0] No hacía falta
           *[other] Necesitas solo { $needed }
        }.
    }
better-many-shifts = pasa las subidas cortas sin cambiar.
why-undone = Cambiaste a los { $from } y luego volviste atrás.
better-undone = espera un poco con cada marcha nueva.

closed = Primero adivina. Luego ves lo demás.

print-pitchTitle = { pitch-title }.
print-pitch =
    { $made ->
        [0] Marchas que necesitas: { $needed }. Las tuyas antes de la cuesta: ninguna. Piernas más lentas: { $own } rpm (mejor recorrido { $best }).
       *[other] Marchas que necesitas: { $needed }. Las tuyas antes de la cuesta: { $before } de { $made }. Piernas más lentas: { $own } rpm (mejor recorrido { $best }).
    }
