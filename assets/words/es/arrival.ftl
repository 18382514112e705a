### A page whose script has not come or may not start. The build writes these into the page itself, in English: they are
### true while the game is still on its way as well as when it never comes.

onItsWay = El juego viene de camino.
stuck =
    Si esto no cambia, es que una parte no ha llegado. Mira si hay red: una wifi pública a veces pide antes que te registres en su propia página. Un navegador antiguo quizá necesite actualizarse.
again = Recargar la página
safe = Lo que has recorrido sigue guardado en este dispositivo.
noScript =
    Este navegador no ejecuta scripts (JavaScript) en esta página, y el juego está hecho de ellos. Permítelos aquí y recarga la página.
framed =
    Otra página muestra «Antes de la cuesta» dentro de ella. El juego solo arranca en una página propia, para que nadie pueda poner nada encima de sus botones.
alone = Abrirlo aparte
