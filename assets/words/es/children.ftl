### The children's page. No sentence has more than twelve words.

title = Para niños y niñas
intro = Lleva las manzanas cuesta arriba. Tu amigo te espera.
roads = Elige un camino
done = Hecho
how =
    ¿Viene una cuesta? Pon una marcha más suave antes de que empiece.
    ¿Vas cuesta abajo? Pon una más dura si las piernas van locas.
    Mira la cara. Que no deje de sonreír.
    Con cambios bruscos o piernas muy lentas o locas, las manzanas saltan. Al erizo le encanta.
howTitle = Así se juega
learnt = Lo que ya sabes
nothingYet = Cambia de marcha y tu primer parche te espera al final.
together = ¿Dos para jugar? El turno cambia en la puerta.
wishes = Si quieres
voice = Leer en voz alta
numbers = Ver números
beside = Fuera, pedalea con una persona adulta. Nunca a solas por la carretera.
more = Los demás caminos
