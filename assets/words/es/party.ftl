### The party at the end of a road for play. No sentence has more than twelve words.

title = ¡Fiesta!
# $apples (Number): 1 to 7.
carried =
    { $apples ->
        [1] Has traído una manzana.
        [2] Has traído dos manzanas.
        [3] Has traído tres manzanas.
        [4] Has traído cuatro manzanas.
        [5] Has traído cinco manzanas.
        [6] Has traído seis manzanas.
        [7] Has traído siete manzanas.
       *[other] Has traído { $apples } manzanas.
    }
all = ¡Has traído todas las manzanas, sin perder ninguna!
# They hopped out of the basket on the way. $apples (Number): 1 to 7.
found =
    { $apples ->
        [1] Una manzana saltó de la cesta. El erizo la trae.
        [2] Dos manzanas saltaron de la cesta. El erizo las trae.
        [3] Tres manzanas saltaron de la cesta. El erizo las trae.
        [4] Cuatro manzanas saltaron de la cesta. El erizo las trae.
        [5] Cinco manzanas saltaron de la cesta. El erizo las trae.
        [6] Seis manzanas saltaron de la cesta. El erizo las trae.
        [7] Siete manzanas saltaron de la cesta. El erizo las trae.
       *[other] { $apples } manzanas saltaron de la cesta. El erizo las trae.
    }
shared = Ahora, ¡todo el mundo a comer!
# $lesson: what a level teaches, like "Cadence".
learnt = Ya lo sabes: { $lesson }.
# Without a single change of gear.
noClick = Esta vez no has cambiado de marcha. Cambia y ganarás un parche.

## What to do another time: what made most apples hop

tip-jolts = La próxima vez: cambia antes de la cuesta y afloja la pedalada.
tip-grinding = La próxima vez: ¿la cara resopla? Pon antes una más suave.
tip-whirring = La próxima vez: ¿la cara se marea? Pon una más dura.
tip-none = ¡Qué finura! El erizo se zampa igualmente un buen bocado.

## Buttons

again = Otra vez
# $level: the title of a level.
next = Siguiente: { $level }
takeOver = Cambio de turno: pedalea quien espera
roads = Todos los caminos
grownUps = Para personas adultas: el recorrido al detalle

# Read aloud in place of the picture.
picture = Una mesa con manzanas. En la fiesta están tu amigo, el perro y el erizo.
