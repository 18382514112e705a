### The bundled levels: titles, the line under each, and what is said on the way. Levels of a person's own have their own words.

## Apples for the party (for children)

title-apples-for-the-party = Manzanas para la fiesta
sentence-apples-for-the-party = Lleva las manzanas por tres cuestas pequeñas. Tu amigo te espera.
cue-apples-for-the-party-1 = ¡Una cuesta! Pon una más suave antes de que empiece.
cue-apples-for-the-party-2 = Otra cuesta. Primero más suave, luego arriba.
cue-apples-for-the-party-3 = Última cuesta. ¡Tu amigo te saluda!

## Down to the sea (for children)

title-down-to-the-sea = Camino del mar
sentence-down-to-the-sea = Dos cuestas, una larga bajada y otra cuesta junto al agua.
cue-down-to-the-sea-1 = Más suave, antes de la cuesta.
cue-down-to-the-sea-2 = Una cuesta más y luego, ¡al mar!
cue-down-to-the-sea-3 = Una última cuesta junto al agua.

## Home by lamplight (for children)

title-home-by-lamplight = A casa a la luz de los faroles
sentence-home-by-lamplight = Cinco cuestas pequeñas por el pueblo. Tu casa está arriba.
cue-home-by-lamplight-1 = Cinco cuestas hasta casa. ¡Primero más suave!
cue-home-by-lamplight-2 = Y arriba otra vez.
cue-home-by-lamplight-3 = Mira lejos: la próxima cuesta está cerca.
cue-home-by-lamplight-4 = Ya casi. Una más suave otra vez.
cue-home-by-lamplight-5 = Última cuesta. ¡La puerta está abierta!

## Over the roots (for children)

title-over-the-roots = Sobre las raíces
sentence-over-the-roots = Cuatro lomas en el bosque. Que tus piernas sonrían.
cue-over-the-roots-1 = Mira la cara. Que no deje de sonreír.
cue-over-the-roots-2 = ¿La cara resopla? Pon una más suave.
cue-over-the-roots-3 = ¿La cara se marea? Pon una más dura.
cue-over-the-roots-4 = Última loma. ¡Más suave, antes de que empiece!

## Snow on top (for children)

title-snow-on-top = Nieve en lo alto
sentence-snow-on-top = El puerto se empina al final. Mira lejos y cambia pronto.
cue-snow-on-top-1 = Hacia la nieve. Pon pronto una más suave.
cue-snow-on-top-2 = Clic a clic, y pronto.
cue-snow-on-top-3 = La más empinada. ¡Antes, una marcha suave!

## Click before the hill (for children)

title-click-before-the-hill = Un clic antes de la cuesta
sentence-click-before-the-hill = Viene una cuesta pequeña. ¡Pon una más suave antes de que empiece!

## Three little hills (for children)

title-three-little-hills = Tres cuestas pequeñas
sentence-three-little-hills = Mira lejos. ¿Ves la próxima cuesta? Prepárate antes de llegar.

## Feather feet (for children)

title-feather-feet = Pies de pluma
sentence-feather-feet = Pedalea un momento como una pluma, mientras la cadena se mueve.

## Stop, go, and over the hill (for children)

title-stop-go-and-over-the-hill = Para, arranca y pasa la cuesta
sentence-stop-go-and-over-the-hill = Para en la línea con una marcha suave. Arranca y busca la cuesta escondida.

## Change while you wait

title-change-while-you-wait = Cambia mientras esperas
sentence-change-while-you-wait = Un buje cambia en parado. Para en cualquier marcha, pon una más suave mientras esperas y arranca.
cue-change-while-you-wait-1 = Primero para. Luego pon una más suave, mientras esperas.
cue-change-while-you-wait-2 = La última cuesta viene sin parada.

## Look who is there

title-look-who-is-there = Mira quién anda ahí
sentence-look-who-is-there = Ovejas, un tractor, más ovejas: la vista se va hacia ellos. La cuesta llega igual.
cue-look-who-is-there-1 = Saluda a quien quieras. Pero mira antes el camino.

## Two levers

title-two-levers = Dos manetas
sentence-two-levers = Descubre qué hacen «más suave» y «más dura» en un camino que perdona.

## Hold your rhythm

title-hold-your-rhythm = Mantén el ritmo
sentence-hold-your-rhythm = Cuesta arriba y cuesta abajo, las piernas giran siempre al mismo ritmo.

## One pitch, announced

title-one-pitch-announced = Un repecho anunciado
sentence-one-pitch-announced = Se ve venir: lleva una marcha suave antes de que el camino se empine.

## Rolling road

title-rolling-road = Camino ondulado
sentence-rolling-road = Olas de camino, una tras otra. Cambia con ellas, no después.

## Soft feet

title-soft-feet = Pies ligeros
sentence-soft-feet = Quita peso de los pedales un momento y luego cambia.

## Ready to go again

title-ready-to-go = Todo a punto para arrancar
sentence-ready-to-go = Con la marcha en la que paras, arrancas. Las dos líneas están antes de una cuesta.

## Straight chain

title-straight-chain = Cadena recta
sentence-straight-chain = Elige el plato que deja recta la cadena, mucho antes de que se queje.

## Wind and gravel

title-wind-and-gravel = Viento y grava
sentence-wind-and-gravel = El viento y el suelo suelto frenan como una cuesta, solo que nadie los dibuja.

## Round the bend

title-round-the-bend = Tras la curva
sentence-round-the-bend = Los setos esconden lo que viene. Las curvas lentas y un camino que se estrecha dan pistas.

## Leave the lever alone

title-ride-over = Deja la maneta en paz
sentence-ride-over = Algunas subidas son tan cortas que la velocidad te lleva por encima. Dos, no.

## A ring, and back a little

title-ring-and-back = Un plato, y un poco de vuelta
sentence-ring-and-back = Cambia de plato delante y compensa un poco detrás: un solo paso sin tirones.

## Stops, wind and a secret

title-stops-wind-and-a-secret = Paradas, viento y un secreto
sentence-stops-wind-and-a-secret = Dos líneas de detención, viento en contra y un repecho escondido tras un seto.

## Only you and the road

title-only-you-and-the-road = Tú y el camino, nada más
sentence-only-you-and-the-road = Todo a la vez y sin ninguna ayuda. Mira, anticípate, pedalea.

## Let the motor breathe

title-let-the-motor-breathe = Deja respirar al motor
sentence-let-the-motor-breathe = Tu motor también tira de la cadena. Afloja, espera un momento a que suelte y cambia.
cue-let-the-motor-breathe-1 = Viene una cuesta. Afloja, espera un momento y cambia.
cue-let-the-motor-breathe-2 = La última. Primero, que suelte el motor.

## Without help above 25

title-without-help-above-25 = Sin ayuda a más de { $speed }
sentence-without-help-above-25 = Por encima de { $speed } el motor calla y la bici pesa. Pon una más suave antes de la cuesta y la ayuda vuelve.
cue-without-help-above-25-1 = Cuesta abajo a más de { $speed }: ahora el motor no da nada.
cue-without-help-above-25-2 = Solo tus piernas, hasta que la cuesta te frene.
