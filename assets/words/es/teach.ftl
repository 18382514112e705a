### Planes de sesión: qué dice y hace quien dirige, fichas de ejercicios, una hoja para casa y un diploma, también en papel: una página cada uno.

intro = Qué decir, qué recorrer, qué hacer fuera con la bici de verdad y qué repartir.
back = Todos los planes

audiences-adults = Personas adultas que empiezan
audiences-mixed = Grupos mixtos
audiences-children = Niños y niñas
# A length, as short as can be.
min = { $minutes } min
sheets = Para repartir
cards = Fichas
cardsHint = Cuatro por página, para recortar
home = Hoja para casa
homeHint = Para un niño o una niña y su familia
certificate = Diploma
certificateHint = Lo aprendido, sin puntos
own = Tus copias
# Name of a file, where the title of a plan has no letters: small, without spaces.
fileName = plan-de-sesion
# Read out for a button: a length as it stands there, and for whom.
lengthFor = { $length }, { $audience }
# The title of a plan, and of the file of a copy: for whom, and how long.
planTitle = { $audience }, { $minutes } minutos
open = Abrir una copia
openHint = Un archivo que se guardó aquí
ownGone = Una copia solo existe en su archivo. Ábrelo otra vez.
print = Imprimir
change = Editar una copia
save = Guardar archivo
done = Ver la hoja
changing = Tu copia
changeHint = Una frase por línea. Guárdala en un archivo antes de cerrar esta página.

fields-title = Título
fields-minutes = Minutos
fields-level = Camino
rideRoad = Recorrer este camino
toClinic = Empezar con un grupo
road = Camino: { $road }
noRoad = El camino de este plan no está en este dispositivo.

parts-warmUp = Calentar
parts-say = Decir
parts-road = Pedalear en el juego
parts-question = Preguntar ante la imagen del grupo
parts-drill = Fuera, con la bici de verdad
parts-watch = Fíjate en
parts-end = Al final

# Labels before what a drill needs and so on, on a card and in a plan.
row-needs = Hace falta:
row-safe = Seguridad:
row-watch = Fíjate en:
row-easier = Más fácil:
row-harder = Más difícil:
# $drill: the title of a drill in a plan, before what is done.
drillInPlan = { $drill }.

problems-too-big = Este archivo es demasiado grande para un plan de sesión. Abre uno que se haya guardado en esta página.
problems-not-json = Este archivo no se puede leer. Abre uno que se haya guardado en esta página.
problems-not-a-session-plan = Este archivo no es un plan de sesión. Abre uno que se haya guardado en esta página.
problems-newer-schema = Este plan lo guardó una versión más nueva del juego. Actualiza esta y ábrelo otra vez.
problems-dirty-text = Este plan tiene caracteres que no se pueden mostrar. Quítalos en un editor de texto y ábrelo otra vez.

# After the cautions of cautions.ftl, on every page. Exact: somebody could be hurt.
moreCautions =
    No acerques los dedos a una cadena en marcha.
    Las marchas en el buje se cambian al revés: sin presión o en parado; después, apretar otra vez. Con freno de contrapedal, los pedales no giran hacia atrás.
    Las bicis con motor arrancan fuerte, tardan más en parar y pesan mucho; una rueda delantera con motor patina en suelo mojado: con suavidad, y solo como permita la ley local. Con motor central: aflojar (buje: quitar la presión), esperar un momento y cambiar.
defers = Sigue lo que diga tu federación, tu escuela o un instructor titulado; eso y la ley local van antes que esta hoja.
practice = Todo lo demás de esta página es práctica habitual, sin fuente.

sources-adults =
    Como máximo 12 ciclistas por instructor, dos o tres sesiones de una a dos horas; principiantes, uno o dos por instructor (AustCycle, Australia, 2012).
    Un curso para personas adultas tiene 9 horas, 5 de ellas pedaleando (curso de EE. UU., docslib.org 11303719).
    Con cambio de piñones, cambiar antes de que haga falta y seguir pedaleando (Special Olympics, coaching guide, Shifting gears).
sources-mixed =
    Como máximo 12 ciclistas por instructor, dos o tres sesiones de una a dos horas (AustCycle, Australia, 2012).
    Inglaterra, nivel 1, sin tráfico: de 9 a 12 ciclistas dos horas, de 5 a 8 una hora y media, de 2 a 4 una hora, por instructor (delivery guide 8.3.1).
    Con cambio de piñones, cambiar antes de que haga falta y seguir pedaleando (Special Olympics, coaching guide, Shifting gears).
sources-children =
    «Usar bien las marchas (si la bici las tiene)» es parte del nivel 1, sin tráfico (UK cycle training standard, 2005).
    Inglaterra, nivel 1: de 9 a 12 participantes dos horas, de 5 a 8 una hora y media, de 2 a 4 una hora, por instructor (delivery guide 8.3.1).
    Desde los 8 años, 15 por instructor en la práctica, tres horas (nivel 1, Nueva Zelanda). Unos 9 años, con frenos y marchas (nivel 1, Escocia, guía para familias, 2014).

homeSheet-title = Para casa
homeSheet-child = Para ti
homeSheet-childLines =
    Hoy he practicado el clic antes de la cuesta.
    Enseña a tu familia qué maneta pone una marcha más suave.
    Busca tres cuestas cerca de ti. ¿Dónde harías clic?
    Escucha: ¿tu clic suena flojo o fuerte?
homeSheet-draw = Dibuja una cuesta, y una cruz donde haces clic.
homeSheet-parents = Para la familia
homeSheet-parentLines =
    Antes de cada salida hay que revisar frenos, neumáticos, sillín y casco. Una marcha que salta o rasca es cosa de un mecánico.
    Lo primero es pedalear en compañía en un sitio tranquilo, llano y cerrado al tráfico. Siempre hay una persona adulta a cargo.
    Mejor preguntar «¿Qué viene?» que decir «¡Cambia ya!». El sitio lo encuentra el niño o la niña.
    Diez minutos bastan. Hay que parar mientras aún es divertido, y también si algo duele.
    Si se sale la cadena, la pone una persona adulta, con la bici parada.
# Before a line to write on, as are the two of the certificate.
homeSheet-name = Nombre, si quieres:

certificateSheet-title = Diploma
# Follows a line with a name.
certificateSheet-says = ha practicado con la bici y ha demostrado:
certificateSheet-learnt =
    Miro la cuesta antes de que llegue.
    Hago clic antes de la cuesta, no en medio.
    Aflojo la pedalada mientras se mueve la cadena.
    Paro con la marcha con la que arranco.
    Sé decir qué viene mientras pedaleo.
certificateSheet-tick = Quien dirige marca lo que se ha visto. El resto llega la próxima vez.
certificateSheet-date = Día y lugar:
certificateSheet-coach = Dirige:

## Drills on the real bike, called across a yard: a title, what is done (each line a sentence), and what stands behind the labels

card-cone-title = Clic en el cono
card-cone-doing =
    Hay un cono diez metros antes de la pendiente, o de una raya de tiza.
    Ve hacia él con calma, la vista en la pendiente.
    En el cono: afloja, un clic más suave, sigue.
card-cone-needs = Dos conos, tiza, 40 m de terreno tranquilo y llano con una pendiente suave o una raya.
card-cone-safe = De uno en uno, en el mismo sentido, a seis largos de bici. Nadie espera en la zona de frenado.
card-cone-watch = ¿El clic llega en el cono y acaba antes de la pendiente? ¿Todo el mundo lleva la vista al frente?
card-cone-easier = Primero sin clic: decir «ya» en el cono.
card-cone-harder = Se quita el cono. Cada cual elige el sitio y dice «ya».
card-soft-feet-title = Aflojar al pasar
card-soft-feet-doing =
    Pasa con calma ante quien dirige.
    Un clic aflojando la pedalada, justo antes.
    Escucha: un clic que suena poco es bueno.
card-soft-feet-needs = 40 m de terreno tranquilo y llano, y una bici con las marchas ya revisadas.
card-soft-feet-safe = Quien dirige está a un lado, nunca en la trayectoria. Ningún dedo cerca de una cadena.
card-soft-feet-watch = ¿Se paran las piernas? Deben apretar poco y seguir girando. Con marchas en el buje descansan; con motor central esperan un momento.
card-soft-feet-easier = Solo aflojar, sin clic.
card-soft-feet-harder = Dos clics seguidos, con una vuelta de biela en medio.
card-starting-gear-title = Parar con la marcha de arrancar
card-starting-gear-doing =
    Ve hacia la línea de detención.
    Clic más suave antes de frenar, mientras giran las piernas (buje: para, luego clic).
    Para, un pie a tierra, frenos apretados. Arranca con esa marcha.
card-starting-gear-needs = Tiza para una línea, 30 m de terreno tranquilo y llano. Antes, cada cual prueba sus frenos.
card-starting-gear-safe = De uno en uno. Quien sigue arranca cuando ya se ha ido quien iba antes. Motor: ayuda mínima, con suavidad.
card-starting-gear-watch = ¿Está puesta la marcha antes de que pare la rueda? ¿La primera pedalada sale fácil, sin tambaleo?
card-starting-gear-easier = Parar en cualquier sitio; el clic lo dice quien dirige.
card-starting-gear-harder = Sin línea: parar cuando quien dirige levanta la mano.
card-talk-title = Hablar y pedalear
card-talk-doing =
    Da una vuelta y di en voz alta qué viene: «llano», «cuesta», «parada».
    Di «clic» cuando cambies para eso.
    Quien va detrás solo escucha, y lo cuenta después.
card-talk-needs = Un circuito tranquilo y cerrado con una subida, o una raya que haga de subida.
card-talk-safe = Tres largos de bici entre ciclistas. Nadie adelanta. Nadie se gira para hablar.
card-talk-watch = ¿Se dice la cuesta antes del clic, y llega el clic antes de la cuesta?
card-talk-easier = Qué viene lo dice quien dirige.
card-talk-harder = Decirlo sin clic; hacer clic donde toca, en silencio.

## The plans: what a coach says and does, each line a sentence. What is said to children has at most twelve words.
## Those who lead are spoken to shortly; under “Say” stands what they call to the group.

road-20 = Dos personas lo recorren en la pantalla grande, una tras otra. El resto dice «ya» donde haría clic.
road-45 = Todo el grupo lo recorre una vez, en dos dispositivos, hasta ocho ciclistas. Quien espera dice «ya».
road-60 = Todo el grupo lo recorre una o dos veces, en dos dispositivos, hasta ocho ciclistas. Quien espera dice «ya».

longer-adults = Cada cual enseña en parado la maneta que pone una marcha más suave, con la rueda levantada y ningún dedo cerca de la cadena.
lines-adults-warmUp =
    Revisar las bicis: los frenos muerden, los neumáticos están duros, sillín y manillar firmes, cascos bien puestos.
    Dos vueltas tranquilas; en la segunda, un clic más duro y otra vez un clic más suave.
lines-adults-say =
    Cambia antes de la cuesta, mientras los pedales aún giran con facilidad.
    Afloja durante una vuelta, mientras se mueve la cadena.
    Un clic, siéntelo, y luego el siguiente.
lines-adults-question =
    ¿En qué repecho llegamos tarde casi todo el grupo, y qué podíamos haber visto antes?
    ¿Dónde harías clic ahora? Señálalo en el camino.
lines-adults-drill = En un sitio tranquilo, llano y cerrado al tráfico, en un solo sentido. Las fichas dicen cómo se monta y cómo se cuida la seguridad.
lines-adults-watch =
    Piernas que paran antes del clic, clics que llegan ya en la pendiente, ojos en la cadena.
    Alguien va atrancado: dos marchas más suaves y la misma vuelta otra vez. Si algo duele, se para.
lines-adults-end =
    Cada cual dice una cosa que hará antes de la próxima cuesta.
    La próxima vez: la misma vuelta, con el clic un poco antes o un poco después.

longer-mixed = Parejas de una persona nueva y una con experiencia; la de experiencia pregunta y no explica.
lines-mixed-warmUp =
    Revisar las bicis por parejas: frenos, neumáticos, sillín, manillar, cascos.
    Dos vueltas tranquilas por parejas, a tres largos de bici; cambiar quién va delante.
lines-mixed-say =
    Mira lejos: la próxima cuesta te dice la marcha.
    Acaba los clics antes de la cuesta; el último, aflojando.
    Rápido o lento hoy da igual; cuenta cambiar pronto y sin ruido.
lines-mixed-question =
    ¿Qué hizo el mejor recorrido antes del repecho que casi nadie de este grupo hizo?
    ¿Quienes tienen experiencia cambiaron antes, o solo menos veces?
lines-mixed-drill = Por parejas en un sitio tranquilo y cerrado al tráfico. Quien va detrás dice después dónde llegó el clic.
lines-mixed-watch =
    Ciclistas con experiencia que hacen carreras: una sola marcha para toda la vuelta.
    Ciclistas sin experiencia que copian a quien va delante: sus propias piernas dicen cuándo.
lines-mixed-end =
    Cada pareja cuenta una cosa que oyó o vio en la otra persona.
    La próxima vez: las parejas en el otro orden.

longer-children = Todo el mundo toca el timbre, frena y hace clic una vez, en parado junto a quien dirige.
lines-children-warmUp =
    Una persona adulta a cargo revisa cada bici: frenos, neumáticos, sillín, casco. Quien no tenga marchas hace los ejercicios sin el clic.
    Dos vueltas en fila, despacio, a un largo de bici.
lines-children-say =
    Clic antes de la cuesta, no en medio.
    Afloja la pedalada mientras se mueve la cadena.
    Mira la cuesta, no la cadena.
lines-children-question =
    ¿Qué cuesta sorprendió a más gente?
    ¿Dónde hacemos clic la próxima vez?
lines-children-drill = De uno en uno, en un sitio tranquilo y cerrado al tráfico, con una persona adulta a cargo. Las fichas dicen cómo.
lines-children-watch =
    Pies que se paran, cabezas que miran abajo, niños y niñas que esperan en medio.
    Alaba el clic, no la rapidez. No se compara a nadie con nadie.
lines-children-end =
    ¿Qué harás antes de la próxima cuesta?
    Enseña en casa cómo hace clic tu bici.
    Repartir la hoja para casa.
