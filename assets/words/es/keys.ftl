### Keys

rear-easier = Detrás: más suave
rear-harder = Detrás: más dura
# With one lever there is nothing to tell it from.
only-rear-easier = Más suave
only-rear-harder = Más dura
front-smaller = Delante: plato más pequeño
front-bigger = Delante: plato más grande
ease = Aflojar
press = Apretar
coast = Dejarse llevar
brake = Frenar
pause = Pausa
name-Space = Espacio
name-Escape = Esc
name-Enter = Intro
name-Tab = Tab
# When it is said aloud.
spoken-ArrowUp = flecha arriba
spoken-ArrowDown = flecha abajo
spoken-ArrowLeft = flecha izquierda
spoken-ArrowRight = flecha derecha
