### What is said on the way: the cues of levels. On a bike with its gears in the hub some things are the other way round.

hill-ahead = Viene una cuesta.
ease-then-shift =
    { $gears ->
        [hub] { $motor ->
            [pulls] Quita la presión, espera un momento y cambia.
           *[none] Quita la presión y luego cambia.
        }
       *[sprockets] { $motor ->
            [pulls] Afloja, espera un momento y cambia.
           *[none] Afloja y luego cambia.
        }
    }
two-easier-now = Ahora, dos más suaves.
one-at-a-time = Una marcha a la vez.
rest-on-the-way-up =
    { $gears ->
        [hub] { $motor ->
            [pulls] Las demás, subiendo: cada vez quita la presión y espera un momento.
           *[none] Las demás, subiendo: cada vez quita la presión.
        }
       *[sprockets] { $motor ->
            [pulls] Las demás, subiendo: cada vez deja que suelte el motor.
           *[none] Las demás, subiendo: afloja cada vez.
        }
    }
harder-again = Pasado el alto: otra vez más dura.
hold-rhythm = Mantén el ritmo de piernas.
ride-over = Subida corta: no cambies y pásala.
small-ring =
    { $gears ->
        [hub] Ahora, en llano, una más suave.
       *[sprockets] Ahora, en llano, el plato más pequeño.
    }
big-ring =
    { $gears ->
        [hub] Una más dura: el camino lo permite.
       *[sprockets] Plato más grande: el camino lo permite.
    }
straight-chain = Lleva la cadena recta.
stop-ahead = Viene una línea de detención.
easy-before-stop =
    { $gears ->
        [hub] Para y pon una más suave: el buje cambia mientras esperas.
       *[sprockets] Pon una más suave antes de parar: con ella arrancas.
    }
wind-ahead = Viene viento en contra. Es una cuesta que no se ve.
gravel-ahead = Viene grava. Es como una cuesta.
look-far = Mira lejos.
last-pitch = El último repecho.
easier-lever = Maneta derecha: una más suave.
harder-lever = Maneta derecha: una más dura.
