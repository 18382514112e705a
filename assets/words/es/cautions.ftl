### What is said before the first ride, and on everything that is taken outside.

# Twelve words are read before the bike moves for the first time; the rest is one tap away, and asked after.
title = Un juego enseña a cambiar a tiempo, no a circular con tráfico.
outside = Antes de probarlo fuera
# Each line is a sentence of its own.
short =
    Con una bici de verdad, practica primero en un sitio tranquilo, llano y cerrado al tráfico.
    La vista en el camino, no en la cadena. Los frenos, el casco y la ley local van primero.
    Los niños y las niñas pedalean con una persona adulta a cargo.
    Si te duelen las rodillas o el pecho: para y consulta a un médico.
accept = Pedalear
more = Cuidado
all = Leerlo todo
# Before riding a bike with a motor outside. Each line is a sentence of its own.
motor =
    Arranca con más fuerza de lo que se piensa: al principio aprieta poco, con un dedo en el freno.
    Pesa mucho: tarda más en parar y cuesta empujarla y levantarla.
    No toques el motor ni la batería; si algo falla, es cosa de un mecánico.
    La edad, el casco y la velocidad permitidos cambian de un lugar a otro: la ley local va primero.
# A wheel that a motor drives.
motorWheel = Una rueda movida por un motor patina antes en suelo mojado, en grava y en curvas, sobre todo la delantera: ahí aprieta poco.
motorPlaces = Normas de algunos lugares
motorPlacesHint = Se miró una vez, y las leyes cambian. Pregunta qué vale hoy donde pedaleas. Las bicis del juego siguen la norma europea.
# Instead of a source.
motorReported = según terceros, sin cotejar con el texto de la ley
# One place: $place is a name of its own, $watts and $kmh are 0 where none was found, $speed is the speed with its unit, $year is 0 where it is not known.
motorRule =
    { $place ->
        [eu] Unión Europea
        [uk] Reino Unido
        [us] Estados Unidos, ley federal
        [california] California
        [canada] Canadá, casi todas las provincias
        [australia] Australia
        [new-zealand] Nueva Zelanda
       *[japan] Japón
    }: { $watts ->
        [0] { $kmh ->
            [0] no se encontró nada
           *[other] ayuda hasta { $speed }
        }
       *[other] { $kmh ->
            [0] { $watts } W
           *[other] { $watts } W, ayuda hasta { $speed }
        }
    } ({ $year ->
        [0] { $source }
       *[other] { $source }, { $yearText }
    }).
