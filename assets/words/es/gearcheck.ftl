### The gear check: whether the gears of a bike are enough for a road, and what other parts would change.
### A gear comes in written: "34 × 28", in a hub "1 of 3". So do lengths, slopes and speeds, with their units.
### "a minute" are turns of the pedals; the band is the range of cadences in which the rider feels well.

intro = ¿Aguantarías esta cuesta con otros piñones o platos? El mismo recorrido, con cada bici que se prueba.
road = Camino
roads-ladder = Niveles
roads-own = Caminos propios
# $parts (String): teeth of rings and sprockets, like "50 / 34 · 11–28". $low and $high: the band.
you = Tu bici: { $parts }. Tu franja: de { $low } a { $high } vueltas por minuto, menos en las subidas.
perMinute = { $rpm }/min
# Limits of what derailleurs can take, the chain and the freewheel: exact, because parts may break.
caution =
    { $rear ->
        [hub] Lo que se puede montar está limitado por lo que admiten el buje y la cadena: un buje no admite cualquier relación entre plato y piñón. Antes de comprar o cambiar nada, pregunta a un mecánico cualificado y lee los documentos del fabricante.
       *[sprockets] Lo que se puede montar está limitado por lo que admiten el cambio trasero, el desviador, la cadena y la rueda libre. Antes de comprar o cambiar nada, pregunta a un mecánico cualificado y lee los documentos del fabricante.
    }

## The answer, in sentences one after the other

working = Tu bici está recorriendo este camino…
failed = Esta bici no ha podido recorrer este camino. Elige otro camino, o mira los dientes de la bici.
again = Probar otra vez
# $rpm: where the legs settle. $low: where the band begins. $length and $slope: the steepest part.
lowest-short = Con tu marcha más suave, { $gear }, tus piernas se quedan en { $rpm } por minuto en lo más empinado: { $length } ({ $slope }). Ahí tu franja empieza en { $low }.
lowest-walks =
    { $rpm ->
        [0] Con esta bici aquí toca andar. Tu marcha más suave, { $gear }, se queda parada en lo más empinado: { $length } ({ $slope }).
       *[other] Con esta bici aquí toca andar: pedaleando no irías más rápido. Con tu marcha más suave, { $gear }, tus piernas se quedarían en { $rpm } por minuto en lo más empinado: { $length } ({ $slope }).
    }
lowest-enough = Tu marcha más suave, { $gear }, basta aquí: en lo más empinado, { $length } ({ $slope }), tus piernas se quedan en { $rpm } por minuto.
looking = Se están probando otras piezas…
# They: your legs, of the sentence before (lowest-short, lowest-walks). Parts that help, and are not enough.
help-mild = Con { $gear } se quedarían en { $rpm }.
# $after: after the sentence help-mild, or alone.
help-reaches =
    { $after ->
        [mild] Para seguir aquí en tu franja hace falta { $gear }.
       *[alone] Con { $gear } seguirías en tu franja.
    }
help-askFirst = Puede que el cambio trasero o el desviador de esta bici no lo admitan; mira más abajo.
# $needed and $own (String): how far one turn of the pedals carries, like "2.06 m". $ring and $sprocket: teeth.
# $rear: several sprockets, or one before a hub.
help-none =
    { $rear ->
        [hub] Ninguna de las piezas probadas aquí te mantiene en tu franja. Haría falta una marcha de { $needed } por vuelta, y la más suave que tienes es de { $own }: un plato de { $ring } dientes con tu piñón, o un piñón de { $sprocket } con tu plato.
       *[sprockets] Ninguna de las piezas probadas aquí te mantiene en tu franja. Haría falta una marcha de { $needed } por vuelta, y la más suave que tienes es de { $own }: un plato de { $ring } dientes con tu piñón más grande, o un piñón de { $sprocket } con tu plato más pequeño.
    }
help-tooSteep = Aquí no ayuda ninguna marcha: con tu potencia y tu cadencia, { $slope } se sube a { $speed }, y andando se va igual de rápido.
# The hardest minute of the ride.
minute-inBand = Tu minuto más duro de este recorrido sigue en tu franja, a { $rpm } por minuto.
# $from and $to (String): places on the road, like "320 m". $missing: turns a minute below the band.
minute-below = Tu minuto más duro de este recorrido va de { $from } a { $to }: { $rpm } por minuto, { $missing } por debajo de tu franja.
highest-enough = Tu marcha más dura, { $gear }, nunca se queda corta aquí.
# $places: in how many. $seconds: for how long in all.
highest-short =
    { $places ->
        [one] { $seconds ->
            [one] Tu marcha más dura, { $gear }, se queda corta en un sitio, un segundo en total: tus piernas giran a { $rpm } por minuto.
           *[other] Tu marcha más dura, { $gear }, se queda corta en un sitio, { $seconds } segundos en total: tus piernas giran a { $rpm } por minuto.
        }
       *[other] { $seconds ->
            [one] Tu marcha más dura, { $gear }, se queda corta en { $places } sitios, un segundo en total: tus piernas giran a { $rpm } por minuto.
           *[other] Tu marcha más dura, { $gear }, se queda corta en { $places } sitios, { $seconds } segundos en total: tus piernas giran a { $rpm } por minuto.
        }
    }

## Asking about a part in words of one's own

ask = Preguntar por una pieza
ask-label = ¿Y si…?
# Must be understood by means of the lists below.
ask-example =
    { $rear ->
        [hub] 22 detrás
       *[sprockets] 34 detrás
    }
ask-button = Probarlo
ask-working = Estas piezas están recorriendo este camino…
ask-nothing = Escribe un número de dientes, por ejemplo «34 detrás», «32 delante» o «11-34».
ask-which-end = Di en qué lado: «detrás» para piñones, «delante» para platos.
ask-impossible = Con estos números no salen platos ni piñones. Escríbelos como «46/30» o «11-34».
ask-same = Eso es lo que tu bici ya tiene.
ask-answer = { $parts }: en lo más empinado, { $length }, tus piernas se quedarían en { $rpm } por minuto en lugar de { $own }.
# Words that are listened for, in small letters, with commas between them, as many as people would use, with all
# their forms. What means sprockets or the rear end:
hear-back = detrás, detras, atrás, atras, trasero, trasera, traseros, piñón, piñon, piñones, pinon, pinones, casete, casetes, cassette, corona, coronas
# What means chainrings or the front end:
hear-front = delante, adelante, delantero, delantera, delanteros, plato, platos, biela, bielas
# What stands between two parts ("30 in front and 32 at the back"):
hear-and = y, e, con
# What stands between two ends of a range ("11 to 34"):
hear-to = a, hasta

## The road with the places where the gears run out

profile = Dónde se quedan cortas las marchas
# Read aloud. $below and $above: in how many places.
profile-desc =
    Perfil de { $length } de camino. { $below ->
        [0] En ningún sitio es demasiado dura la marcha más suave.
        [one] En un sitio es demasiado dura la marcha más suave.
       *[other] En { $below } sitios es demasiado dura la marcha más suave.
    } { $above ->
        [0] En ningún sitio es demasiado suave la más dura.
        [one] En un sitio es demasiado suave la más dura.
       *[other] En { $above } sitios es demasiado suave la más dura.
    }
profile-below = la más suave, demasiado dura
profile-above = la más dura, demasiado suave
profile-nowhere = En este camino, las marchas de esta bici no se quedan cortas.

## All gears as steps of paper

stairs = Todas tus marchas
stairs-box = La escalera de tus marchas
stairs-hint = Un escalón de papel por cada marcha, primero la más suave, en el orden en que se cambiaría de verdad. Entre los escalones pone qué hacen las manos.
stairs-desc =
    { $gears ->
        [one] Una escalera de un solo escalón. La tabla de abajo dice lo mismo.
       *[other] Una escalera de { $steps } escalones con las { $gears } marchas. La tabla de abajo dice lo mismo.
    }
# $different: gears that are not nearly the same as another.
stairs-really =
    { $gears ->
        [one] { $gears } marcha.
       *[other] { $gears } marchas, de las que { $different } son distintas de verdad.
    }
stairs-eachOwn =
    { $gears ->
        [one] Una marcha.
       *[other] { $gears } marchas, todas distintas.
    }
# Under the steps: signs and what they mean.
sign-rear =
    { $rear ->
        [hub] mano derecha, marchas en el buje
       *[sprockets] mano derecha, piñones
    }
sign-front = mano izquierda, platos
sign-same = está en el escalón: vale lo mismo
sign-near = está cerca
sign-crossed = cruza la cadena
table = Lo mismo en números
table-gear = Marcha
table-development = Desarrollo
table-step = Salto
table-hands = Manos
table-speed = Velocidad a { $rpm }/min
table-also = En el mismo escalón
# What the hands do from one step to the next. $ring: to a bigger chainring, or none. $rear: what the right hand does, $count times.
hands =
    { $ring ->
        [bigger] { $rear ->
            [harder] mano izquierda: plato más grande, mano derecha: más dura × { $count }
            [easier] mano izquierda: plato más grande, mano derecha: más suave × { $count }
           *[same] mano izquierda: plato más grande
        }
       *[same] { $rear ->
            [harder] mano derecha: más dura × { $count }
           *[easier] mano derecha: más suave × { $count }
        }
    }
gear-crossed = { $gear }, cruza la cadena
# Another gear on a step: as good as that of the step, or near it. $chain: whether the chain is crossed there.
also-same =
    { $chain ->
        [crossed] { $gear }, cruza la cadena (vale lo mismo)
       *[straight] { $gear } (vale lo mismo)
    }
also-near =
    { $chain ->
        [crossed] { $gear }, cruza la cadena (cerca)
       *[straight] { $gear } (cerca)
    }

## Other parts in a table

others = Qué cambiarían otras piezas
others-hint = La misma persona, el mismo camino, un recorrido con cada bici. Primero quien sube pedaleando, luego el minuto más duro, luego el tramo más empinado, luego el tiempo en la franja. Después, en un grupo aparte, las piezas por las que hay que preguntar antes.
# Above parts that pass a limit of the derailleurs.
askFirst = Pregunta antes en un taller: estas piezas pasan de lo que suelen admitir un cambio y un desviador como los tuyos
others-trying =
    { $count ->
        [0] Ninguna probada hasta ahora…
       *[other] { $count } probadas hasta ahora…
    }
others-tried =
    { $count ->
        [one] Un juego de piezas distinto probado.
       *[other] { $count } juegos de piezas distintos probados.
    }
others-none = Aquí no se conocen piezas habituales con tantos platos y piñones como las tuyas.
others-all = Ver las { $count }
others-fewer = Ver menos
# Heads of the table.
parts = Piezas
# Whether one comes to the top riding or on foot.
getsUp = Sube
getsUp-riding = pedaleando
# $time (String): like "3:05".
getsUp-walking = andando { $time }
minute = Minuto más duro
minute-missing = { $rpm } bajo la franja
minute-kept = en la franja
inBand = Tiempo en la franja
steepest = Lo más empinado, { $length }
yours = Tu bici ahora
changed-cassette = otro casete
changed-rings = otros platos
changed-both = ambos cambiados
take = Probar esta bici
take-this = Probar esta bici: { $parts }
# What the parts gain and cost: some of these sentences, one after the other.
trade-none = Muy parecida a tu bici.
trade-easier-lowest = La marcha más suave es aún más suave.
trade-harder-highest = La marcha más dura es aún más dura.
trade-smaller-steps = Los saltos entre marchas son más pequeños.
trade-fewer-twins = Hay menos marchas repetidas.
trade-fewer-shifts = En este camino hacen falta menos cambios.
trade-less-capacity = El cambio trasero tiene menos cadena que recoger.
trade-harder-lowest = La marcha más suave es más dura.
trade-loses-highest = Se pierde la marcha más dura.
trade-bigger-steps = Los saltos entre marchas son más grandes.
trade-more-twins = Hay más marchas repetidas.
trade-more-shifts = En este camino hacen falta más cambios.
trade-more-capacity = El cambio trasero tiene más cadena que recoger.
capacity = { $teeth } dientes de cadena que recoger.
# What usual derailleurs do not take. $have and $most: teeth.
limit-sprocket =
    Pregunta antes: un piñón de { $have } es más que los { $most } que suelen admitir { $derailleur ->
        [road] los cambios traseros de carretera
       *[long] los cambios traseros de pata larga
    } ({ $source ->
        [published] cifras de fabricantes, para nueve y diez velocidades
       *[practice] práctica común, sin fuente
    }).
limit-capacity =
    Pregunta antes: { $have } dientes de cadena son más que los { $most } que suelen recoger { $derailleur ->
        [road] los cambios traseros de carretera
       *[long] los cambios traseros de pata larga
    } ({ $source ->
        [published] cifras de fabricantes, para nueve y diez velocidades
       *[practice] práctica común, sin fuente
    }).
limit-rings =
    Pregunta antes: { $have } dientes entre platos son más que los { $most } que suelen abarcar los desviadores ({ $source ->
        [published] cifras de fabricantes, para nueve y diez velocidades
       *[practice] práctica común, sin fuente
    }).

## Two rides side by side

compare = Ambos recorridos
compare-close = Cerrar ambos recorridos
compare-this = Ambos recorridos lado a lado: { $parts }
compare-closeThis = Cerrar ambos recorridos: { $parts }
# Read aloud.
compare-desc = La cadencia a lo largo del camino: tu bici, con línea discontinua; { $parts }, con línea continua; debajo, la franja.
compare-yours = tu bici
compare-band = borde inferior de tu franja
compare-figure = Dato
compare-time = Tiempo
compare-shifts = Cambios
compare-lowest = Marcha más suave
# $metres (String): how far one turn of the pedals carries.
compare-gear = { $gear }, { $metres } por vuelta

## Roll-out: how far one turn of the cranks carries in the hardest gear, which has a limit in races of young riders

rollOut = Control de desarrollos, para carreras de jóvenes
rollOut-is = Una vuelta de biela con la marcha más dura, { $gear }, lleva esta bici { $metres }.
rollOut-limit = Límite
rollOut-none = Sin límite
rollOut-own = El límite de nuestro club
rollOut-metres = Límite en metros
rollOut-unreadable = Escribe el límite en metros, de 2 a 12, por ejemplo 6,45.
# Who, how far, whose rule, and when it held. $date (String): a year, or the last day.
rollOut-option =
    { $group ->
        [juniors] Júnior
        [under-16] Sub-16
        [under-14] Sub-14
       *[under-12] Sub-12
    }: { $metres } ({ $body ->
        [world-federation] federación mundial
       *[national-federation] una federación nacional
    }, { $held ->
        [until] hasta el { $date }
       *[year] { $date }
    })
rollOut-source =
    { $body ->
        [world-federation] { $held ->
            [until] La federación mundial tuvo este límite hasta el { $date }; desde entonces no se conoce aquí ninguno.
           *[year] Del reglamento de la federación mundial de { $date }.
        }
       *[national-federation] { $held ->
            [until] Una federación nacional tuvo este límite hasta el { $date }; desde entonces no se conoce aquí ninguno.
           *[year] Del reglamento de una federación nacional de { $date }.
        }
    }
# $year (String).
rollOut-relaxed = Se flexibilizó en { $year }.
rollOut-ask = Las reglas varían y cambian: pregunta a tu federación la cifra de esta temporada.
rollOut-within = Eso cumple el límite de { $limit }.
rollOut-beyond = Eso es más que el límite de { $limit }. La marcha más dura que lo cumple es { $gear }.
rollOut-allBeyond = Eso es más que el límite de { $limit }, igual que todas las demás marchas de esta bici.
rollOut-measured = En una carrera, la bici se hace rodar por el suelo y se mide; el neumático y la presión lo cambian unos centímetros.
