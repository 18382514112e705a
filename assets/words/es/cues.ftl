### What is said on the way: the cues of levels. On a bike with its gears in the hub some things are the other way round.

hill-ahead = Viene una cuesta.
ease-then-shift =
    { $gears ->
        [hub] { $motor ->
            [pulls] Quita la presión, espera un respiro y cambia.
           *[none] Quita la presión y luego cambia.
        }
       *[sprockets] { $motor ->
            [pulls] Afloja, espera un respiro y cambia.
           *[none] Afloja y luego cambia.
        }
    }
two-easier-now = Ahora, dos más suaves.
one-at-a-time = Una marcha a la vez.
rest-on-the-way-up =
    { $gears ->
        [hub] { $motor ->
            [pulls] Las demás, subiendo: cada vez quita la presión y espera un respiro.
           *[none] Las demás, subiendo: cada vez quita la presión.
        }
       *[sprockets] { $motor ->
            [pulls] Las demás, subiendo: cada vez deja que suelte el motor.
           *[none] Las demás, subiendo: afloja cada vez.
        }
    }
harder-again = Pasado el alto: otra vez más dura.
hold-rhythm = Piernas siempre al mismo ritmo.
ride-over = Subida corta: deja la marcha y pásala.
small-ring =
    { $gears ->
        [hub] Ahora, en llano, una más suave.
       *[sprockets] Ahora, en llano, el plato más pequeño.
    }
big-ring =
    { $gears ->
        [hub] Una más dura, hay sitio para ella.
       *[sprockets] Plato más grande, hay sitio para él.
    }
straight-chain = Lleva la cadena recta.
stop-ahead = Viene una línea de detención.
easy-before-stop =
    { $gears ->
        [hub] Para y pon una más suave: el buje cambia mientras esperas.
       *[sprockets] Pon una más suave antes de parar: con ella arrancas.
    }
wind-ahead = Viene viento en contra. Es una cuesta que no se ve.
gravel-ahead = Viene grava. Frena como una cuesta.
look-far = Mira lejos.
last-pitch = El último repecho.
easier-lever = La maneta derecha: más suave.
harder-lever = La maneta derecha: más dura.
