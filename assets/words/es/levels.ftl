### The ladder of levels, and free rides.

intro = De arriba abajo, o por donde quieras. Cada uno enseña una cosa.
own = Los tuyos
ridden = Hecho
best = Mejor nota: { $total } de 100
best-not-passed = Mejor nota: { $total }, aún sin superar
next = Siguiente
length = { $length } de largo
needs-derailleur = para cambio con piñones
needs-hub = para marchas en el buje, sin motor
needs-motor = para motor
needs-crank-motor = para motor central
needs-wheel-motor = para motor en la rueda
pitches =
    { $count ->
        [one] { $count } repecho
       *[other] { $count } repechos
    }
none = En esta copia del juego no se ha encontrado ningún nivel.
patches = Parches

## Free rides

free-title = Recorrido libre
free-intro = El camino que quieras. El mismo nombre, las mismas cuestas y el mismo largo dan el mismo camino en cada dispositivo.
free-seed = Nombre del camino
free-seedHint = Una palabra o un número.
free-seedEmpty = Ponle un nombre al camino, o toma otro.
free-another = Otro camino
free-hilliness = Cuestas
free-hilly-0 = casi llano
free-hilly-1 = suave
free-hilly-2 = ondulado
free-hilly-3 = empinado
free-hilly-4 = muy empinado
free-length = Largo
free-facts =
    { $pitches ->
        [0] { $length }, ningún repecho, { $steepest } como máximo, { $climbed } de subida en total.
        [one] { $length }, { $pitches } repecho, { $steepest } como máximo, { $climbed } de subida en total.
       *[other] { $length }, { $pitches } repechos, { $steepest } como máximo, { $climbed } de subida en total.
    }
free-profile = Perfil del camino: { $facts }
free-ride = Recorrer este camino
free-link = Enlace a este camino
free-copy = Copiar el enlace
free-copied = Copiado. Quien lo abra recorre el mismo camino.
free-notCopied = El navegador no ha dejado copiarlo. El enlace está marcado: cópialo a mano.
free-bad-unreadable = Este enlace a un recorrido libre no se puede leer. Debería terminar en free-, un número, las cuestas de 0 a 100 y el largo en metros, como free-42-50-2000. Elige aquí un camino en su lugar.
free-bad-seed = El número del camino en este enlace es demasiado grande. Elige aquí un camino en su lugar.
free-bad-hilliness = Las cuestas en este enlace pasan de 100. Elige aquí un camino en su lugar.
free-bad-length = El camino de este enlace no mide entre { $shortest } y { $longest }. Elige aquí un camino en su lugar.
