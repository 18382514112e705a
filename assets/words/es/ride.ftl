### The page of a ride: before it, in a pause, the first steps with the levers, and when something breaks.

title = Recorriendo: { $level }
failed-not-fetched = No se ha podido cargar la imagen del recorrido. Mira si hay conexión y prueba otra vez.
failed-no-canvas = Este navegador no deja que el juego dibuje una imagen, así que no verías el camino. Permítelo en sus ajustes (a menudo en privacidad) o abre el juego en otro navegador.
failed-broken = Este recorrido no puede empezar: algo en él no funciona. Prueba otro nivel o elige la bici de nuevo.
again = Probar otra vez
pausedHint = El camino espera. Tu marcha también.
restart = Desde el principio
leave = Dejar el recorrido
stage = El recorrido
hands = Escape lo pone en pausa.
controls = Qué hacen tus manos
# Under it, where there are pads.
controlsPads = Toca el botón con el mismo signo.
watching = Tu recorrido, una vez más.
watchOn = Seguir viendo
backToDebrief = Volver a tu recorrido
steeper = Algo más empinado que antes: ya lo tienes.
gentler = Algo menos empinado que antes.

## The first steps with the levers

step-rear-easier = más suave
step-rear-harder = más dura
step-ease = aflojar
# What is said once it was done; in the hub gears shift another way.
done-rear-easier =
    { $gears ->
        [hub] El buje cambia cuando aprietas menos. Las piernas giran ligeras.
       *[sprockets] La cadena trepa. Las piernas giran ligeras.
    }
done-rear-harder = Piernas más lentas, más fuerza.
done-ease =
    { $gears ->
        [hub] { $motor ->
            [pulls] Sin presión, un buje cambia en cuanto suelta el motor. Ahora aprieta otra vez.
           *[none] Sin presión, un buje cambia al momento. Ahora aprieta otra vez.
        }
       *[sprockets] Al aflojar, la cadena se puede mover. Ahora aprieta otra vez.
    }
wrong-rear-easier = Esa era más suave.
wrong-rear-harder = Esa era más dura.
wrong-front-smaller = Eso era un plato más pequeño.
wrong-front-bigger = Eso era un plato más grande.
wrong-ease = Eso era aflojar.
wrong-press = Eso era apretar.
wrong-coast = Eso era dejarse llevar.
wrong-brake = Eso era el freno.
wrong-pause = Eso era la pausa.
instead = Prueba esta:
# Before a key that is held down.
hold = mantén
# The pad is lit and has the same sign and word.
pad = toca
holdPad = mantén
skip = Saltar
# All of it in a sentence, said aloud. $key: how the key is called.
say-rear-easier = Para una más suave, pulsa { $key }.
say-rear-harder = Para una más dura, pulsa { $key }.
say-ease =
    { $how ->
        [hold] Para aflojar, mantén { $key }.
       *[press] Para aflojar, pulsa { $key }.
    }

## Something in the game broke down

trouble-ride-title = El recorrido se ha parado
trouble-ride = Algo en el juego ha fallado, y tu recorrido se ha parado donde estabas. Sigue: tres segundos y los pedales giran.
trouble-again = Ha vuelto a fallar, así que este recorrido no puede seguir aquí. Guarda lo recorrido y recarga la página.
trouble-watching = Algo en el juego ha fallado. Vuelve y míralo otra vez.
trouble-kept = Lo que has recorrido está guardado en este dispositivo.
trouble-notKept = Lo que has recorrido no se ha podido guardar aquí. Guarda el informe: el recorrido va dentro.
trouble-goOn = Seguir
trouble-keep = Guardar lo recorrido
trouble-back = Volver
trouble-page = Algo en el juego ha fallado. Los recorridos guardados siguen guardados. Si algo se ve mal, recarga la página.
trouble-report = Guardar un informe
trouble-reportHint = Un archivo con versiones, lo que pasó y el recorrido. No lleva ningún nombre y no va a ninguna parte por sí solo.
trouble-reload = Recargar
trouble-close = Cerrar
