### How to play, why it feels like riding, privacy, care, and where the numbers come from.

title = Cómo se juega
keys = Qué hacen tus manos
tryLevers = Probar las manetas
playTitle = En pocas palabras
# Each line is a sentence of its own.
play =
    Las piernas pedalean solas. Tus manos cambian, tus ojos miran lejos.
    La mano derecha lleva el cambio trasero: más suave o más dura. La mano izquierda lleva los platos.
    Cambia antes de la cuesta, marcha a marcha, y afloja la pedalada mientras la cadena se mueve.
    Con las marchas en el buje es al revés: quita la presión o párate, cambia y luego vuelve a apretar.
    Un motor central también tira de la cadena: afloja, espera un momento a que suelte y entonces cambia. Por encima de { $speed } no ayuda.
    La marcha en cifras es la que pide la maneta; una línea de puntos debajo dice que la cadena aún va de camino.
    Mantén las piernas girando a un ritmo que te guste. Una subida corta se pasa sin cambiar.
modelTitle = Por qué se siente como pedalear
model =
    El peso, la pendiente, el viento, la rodadura y el roce de la cadena se calculan 120 veces por segundo con fórmulas publicadas. Nada queda al azar: las mismas pulsaciones dan el mismo recorrido.
privacyTitle = Privacidad
privacy =
    Este juego no pregunta quién eres. No tiene cuentas ni contadores, y no habla con ningún otro equipo. Lo que haces se queda en este dispositivo.
careTitle = Cuidado
# Each line is a sentence of its own.
care =
    Un juego enseña a cambiar a tiempo, no a circular con tráfico.
    Practica primero en un sitio tranquilo, llano y cerrado al tráfico. La vista en el camino, no en la cadena.
    Los frenos, el casco y la ley local van primero.
    Los niños y las niñas pedalean con una persona adulta a cargo.
    Una bici con motor arranca con más fuerza de lo que se piensa, tarda más en parar y cuesta empujarla. La edad, el casco y la velocidad los fija la ley local.
    Si te duelen las rodillas o el pecho, para y consulta a un médico.
    Qué piñones, platos y cadenas se pueden poner está limitado por lo que admiten el cambio trasero y el desviador: pregunta a un mecánico cualificado y lee los documentos del fabricante.
    No acerques los dedos a una cadena en marcha.
    Sigue lo que diga tu federación, tu escuela o un instructor titulado.
creditsTitle = De dónde salen los números
# Each line is a sentence of its own.
credits =
    Pedalear en llano, cuesta arriba y contra el viento: J. C. Martin y otros, Validation of a mathematical model for road cycling power, Journal of Applied Biomechanics 14, 1998.
    Marchas en el buje: ecuación de Willis para trenes planetarios y relaciones tal como están publicadas; lo que pierden se discute, y aquí se ha elegido.
    Motores: EN 15194:2017, bicicletas con asistencia eléctrica al pedaleo; cuánto tardan en entrar y en soltar se ha elegido.
    Pérdidas en la cadena: J. B. Spicer y otros, Effects of frictional loss on bicycle chain drive efficiency, Journal of Mechanical Design 123, 2001.
    Medidas de neumáticos: ISO 5775. Contraste, tamaño y uso con teclado: WCAG 2.2.
    Las imágenes, los sonidos, las palabras y los caminos se hicieron para este juego. Se apoya en bibliotecas abiertas: Phaser, Preact, fflate, howler.js, idb, saxes, Zod.
honest =
    Nadie ha demostrado todavía que un juego haga cambiar mejor en carretera. Este mide lo que aprendes dentro de él y no promete más.
