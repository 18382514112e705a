### The start page: the big button, the ways to everything else, and a ride that broke off.

ride = Pedalear
rideAgain = Seguir
byEar = Pedalear de oído
byEye = Pedalear con la vista
picture = Alguien llega en bici al pie de una cuesta.
newer = Hay una versión más nueva.
loadNewer = Usarla

## The ways from here, each with a line under it

hint-children = Cuestas cortas y una cesta de manzanas
levels = Todos los niveles
hint-levels = { $done } de { $all } hechos
bike = Mi bici
# Under "My bike": its name and its gears.
hint-bike = { $name }, { $gears }
hint-about = y cuidado, y privacidad
hint-progress = Recorridos de control, salidas reales y lo que se guarda
hint-gearcheck = ¿Subiría esta cuesta con otros piñones?
hint-two = Lado a lado, cara a cara o por relevos
hint-clinic = Un grupo en uno o varios dispositivos, sin nombres
hint-teach = Una hora con un grupo, con ejercicios para fuera
hint-bench = Construye un camino, o trae uno que recorriste

## A ride that broke off

unfinished-title = Tu recorrido se interrumpió: { $level }
unfinished-turn = Un turno del grupo se interrumpió: { $level }
unfinished-length =
    { $minutes ->
        [0]
            { $seconds ->
                [one] Está guardado { $seconds } segundo.
               *[other] Están guardados { $seconds } segundos.
            }
       *[other] Están guardados { $minutes } min { $seconds } s.
    }
unfinished-goOn = Seguir desde aquí
unfinished-keep = Guardar lo recorrido
unfinished-letGo = Descartar
