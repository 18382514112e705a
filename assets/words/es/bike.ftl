### The page of bike and rider: the bikes to choose from, a bike of one's own, the rider, the tap test, colours.

intro = Toma la bici que más se parezca a la tuya. Se mueve como dicen sus marchas, sus ruedas y su peso.
bikes = Bici
ownHint = Tus propios platos, piñones y neumáticos
done = Usar esta bici
motorTitle = Antes de salir con motor

## Facts on the card of a bike, side by side, after how many gears it has

fact-motor-crank = motor central
fact-motor-wheel = motor en la rueda
fact-backPedal = freno de contrapedal
# What the shifters work by.
fact-mechanical = cable
fact-electronic = electrónico
# $tyre (String): the mark on its side, like "28-622".
fact-tyre = neumático { $tyre }

# What a drawing of all the gears shows, read aloud. $rings (String): teeth of the chainrings, like "26 / 36 / 48".
# $ringCount: how many chainrings. $sprockets (String): teeth of the sprockets; $rear: gears on sprockets, or in a hub.
drawing =
    { $rear ->
        [hub] { $ringCount ->
            [one] Plato { $rings }, marchas en el buje tras un piñón de { $sprockets }.
           *[other] Platos { $rings }, marchas en el buje tras un piñón de { $sprockets }.
        }
       *[sprockets] { $ringCount ->
            [one] Plato { $rings }. Piñones { $sprockets }.
           *[other] Platos { $rings }. Piñones { $sprockets }.
        }
    }

## A bike of one's own. Numbers after "for example" are typed like that, so they stay as they are

own-title = Bici propia
own-intro = Cuenta los dientes, o lee los números grabados en ellos.
rings = Platos
rings-hint = Por ejemplo 50/34, o 32.
gearing = Marchas de detrás
gearing-sprockets = Piñones y cambio trasero
gearing-three = Buje de 3 marchas
gearing-three-wide = Buje de 3 marchas, saltos más grandes
gearing-five = Buje de 5 marchas
gearing-five-wide = Buje de 5 marchas, saltos más grandes
gearing-seven = Buje de 7 marchas
gearing-eight = Buje de 8 marchas, saltos pequeños
gearing-eight-wide = Buje de 8 marchas, saltos grandes
gearing-fourteen = Buje de 14 marchas
hubSprocket = Piñón del buje
hubSprocket-hint = Sus dientes, por ejemplo 19.
hubSprocket-wrong = Un buje tiene un solo piñón. Escribe sus dientes, por ejemplo 19.
backPedalBrake = Frena al pedalear hacia atrás
hubRule = Un buje cambia mientras no aprietas: quita la presión o párate.
motor = Motor
motor-none = Sin motor
motor-crank = Motor central
motor-wheel = Motor en la rueda
help = Su ayuda
# The motor's power for one part of the rider's: 0, 0.5, 1 or 2.
help-much =
    { $ratio ->
        [0] Apagada
        [0.5] La mitad que tú
        [1] Tanto como tú
       *[other] El doble que tú
    }
battery = En la batería
battery-hint = En vatios hora, al empezar un recorrido, por ejemplo 500.
battery-wrong = Escribe los vatios hora de la batería, de 0 a 999, por ejemplo 500.
brakeSwitches = Las manetas de freno lo apagan
way = Piñones
way-range = Del más pequeño al más grande
way-each = Uno por uno
range = Del menor al mayor del casete
range-hint = Por ejemplo 11-32.
count = Cuántos piñones
# $teeth (String): a list like "11 13 15".
completed = Se toman { $teeth }. ¿No son los tuyos? Escríbelos uno por uno.
sprocketTeeth = Dientes de cada piñón
# $place: the how-manieth in the list of sprockets.
sprocket = Piñón { $place }
add = Añadir un piñón
remove = Quitar el piñón { $place }
emptySprocket = El piñón { $place } está vacío. Escribe sus dientes, o quítalo.
tyre = Neumático
tyre-hint = La marca del costado, por ejemplo 28-622.
crank = Largo de la biela
crank-hint = En mm, grabado por dentro, por ejemplo 170.
crank-wrong = Escribe el largo de la biela en mm, de 90 a 200, por ejemplo 170.
mass = Peso de la bici
mass-hint = En kg. Basta con una idea.
mass-wrong = Escribe el peso en kg, de 5 a 40, por ejemplo 14 o 9,5.
shifters = Manetas
shifters-mechanical = De cable
shifters-electronic = Electrónicas
refuses = Rechaza las marchas que cruzan la cadena
lastGood = El dibujo es de la última bici que era posible.
warning-capacity = Esto pide que el cambio trasero recoja { $capacityTeeth } dientes de cadena; los habituales recogen como mucho { $usualTeeth }. Pregunta a un mecánico y lee los documentos del fabricante.
warning-big-step = De { $fromTeeth } a { $toTeeth } dientes es un salto grande para un desviador. Pregunta a un mecánico y lee los documentos del fabricante.

## Why what was typed is no part of a bike

problem-rings-unreadable = Escribe los dientes de los platos, por ejemplo 50/34 o 32.
problem-too-many-rings = { $count } platos son más de los que tiene una bici. Escribe de uno a tres números, por ejemplo 48/36/26.
problem-ring-size = No se fabrican platos de { $teeth } dientes. Los habituales tienen de { $leastTeeth } a { $mostTeeth }; cuenta otra vez o busca el número grabado.
problem-rings-order = Los platos están desordenados. Escríbelos de grande a pequeño o de pequeño a grande, cada uno una sola vez.
problem-sprockets-unreadable = Escribe los dientes de los piñones, por ejemplo 11-32, o cada uno: 11 13 15 18 21 24 28 32.
problem-sprocket-size = No se fabrican piñones de { $teeth } dientes. Los habituales tienen de { $leastTeeth } a { $mostTeeth }; cuenta otra vez o busca el número grabado.
problem-too-many-sprockets = { $count } piñones son más de los que tiene un casete. Escribe como mucho { $most }.
problem-sprocket-twice = Un número está dos veces. Cada piñón de un casete es distinto.
problem-sprockets-order = Los piñones están desordenados. Escríbelos de pequeño a grande.
problem-sprocket-count = Di cuántos piñones hay, de { $least } a { $most }.
problem-too-narrow = Entre { $leastTeeth } y { $mostTeeth } dientes no caben { $count } piñones. Escribe cada uno, o menos.
problem-tyre-unreadable = Escribe la marca ISO del costado del neumático, por ejemplo 28-622 o 47-406.
problem-tyre-size = { $tyreWidthMm }-{ $beadSeatMm } no es un neumático de bici. El primer número es el ancho (de 18 a 125 mm), el segundo la llanta (de 200 a 700 mm).

## The rider

rider = Ciclista
rider-way = ¿Cuánto te conoces?
rider-way-feel = Por sensaciones
rider-way-numbers = Por números
rider-about-child-9 = Poco peso y piernas rápidas para cuestas pequeñas.
rider-about-adult-new = Se queda sin aliento en un puente.
rider-about-adult-weekly = Le gustan las cuestas que se acaban.
rider-about-adult-strong = Busca la cuesta.
rider-mass = Peso de quien pedalea
rider-mass-hint = En kg, con ropa.
rider-mass-wrong = Escribe el peso en kg, de 15 a 200, por ejemplo 68.
rider-power = Potencia sostenida
rider-power-hint = En vatios, lo que aguantas una hora mientras hablas.
rider-power-wrong = Escribe la potencia en vatios, de 20 a 450, por ejemplo 130.
rider-low = La cadencia más lenta que te gusta
rider-low-hint = Vueltas de pedal por minuto.
rider-low-wrong = Escribe las vueltas por minuto, de 40 a 120, por ejemplo 70.
rider-high = La cadencia más rápida que te gusta
rider-high-hint = Vueltas de pedal por minuto.
rider-high-wrong = Escribe las vueltas por minuto, de 45 a 130, por ejemplo 90.
rider-narrow = La más rápida debe pasar a la más lenta en 5 como mínimo.

## The tap test: one tap for each turn of the pedals finds the cadence

tap = Prueba de toques
tap-intro = Pedalea como te guste, o imagínalo. Toca una vez cada vez que el mismo pie esté abajo, durante 20 segundos. También vale la tecla Espacio.
# On the pad.
tap-first = Toca
tap-firstHint = El tiempo empieza con tu primer toque.
# What is left of the time.
tap-left = { $seconds } s
tap-count =
    { $count ->
        [one] { $count } toque
       *[other] { $count } toques
    }
tap-stop = Parar
tap-again = Tocar otra vez
# $rpm: the cadence found. $low and $high: edges of the band round it.
tap-found = Das unas { $rpm } vueltas por minuto. Tu franja va ahora de { $low } a { $high }.
# Slips that were noticed and left out of the count. $missed: turns nobody tapped. $doubled: taps that were no turn. Never both 0.
tap-slips =
    { $missed ->
        [0] { $doubled ->
            [one] Un toque de más: corregido.
           *[other] { $doubled } toques de más: corregidos.
        }
        [one] { $doubled ->
            [0] Una vuelta sin toque: corregida.
            [one] Una vuelta sin toque y un toque de más: corregido.
           *[other] Una vuelta sin toque y { $doubled } toques de más: corregido.
        }
       *[other] { $doubled ->
            [0] { $missed } vueltas sin toque: corregidas.
            [one] { $missed } vueltas sin toque y un toque de más: corregido.
           *[other] { $missed } vueltas sin toque y { $doubled } toques de más: corregido.
        }
    }
tap-undo = La franja de antes
tap-undone = Tu franja vuelve a ser la de antes.
tap-too-few = Muy pocos toques para saberlo. Toca una vez por vuelta hasta que acabe el tiempo.
tap-too-short = Muy poco tiempo para saberlo. Sigue hasta que se acabe.
tap-too-slow = Eso es más lento que pedalear. Toca en cada vuelta, no en una de cada dos.
tap-too-fast = Eso es más rápido que pedalear. Cuenta un solo pie: un toque por vuelta entera.
tap-unsteady = Los toques llegaban desiguales. Busca primero el ritmo y luego empieza.
# Stands after the sentence that says why.
tap-unchanged = Tu franja no ha cambiado.

## The rider's colours and shapes

kit = Tus colores
kit-intro = Cómo se te ve en la imagen. Nadie va más rápido por eso.
jersey = Maillot
jersey-orange = naranja
jersey-berry = frambuesa
jersey-blue = azul
jersey-green = verde
jersey-violet = violeta
jersey-sun = amarillo sol
pattern = Dibujo
pattern-plain = liso
pattern-band = una banda
pattern-dots = lunares
helmet = Casco
helmet-holes = con agujeros
helmet-star = con una estrella
helmet-crest = con una cresta
frame = Cuadro
frame-usual = como viene
frame-red = rojo
frame-blue = azul
frame-green = verde
frame-plum = ciruela
