### Saving, taking back and deleting what is kept on the device.

title = Lo que se guarda aquí
count =
    { $rides ->
        [0] Aún no hay ningún recorrido guardado. Los recorridos y tus ajustes se quedan en este dispositivo.
        [one] { $rides } recorrido está guardado en este dispositivo, con tus ajustes. A veces un navegador borra lo que lleva mucho sin usarse: guarda un archivo de vez en cuando.
       *[other] { $rides } recorridos están guardados en este dispositivo, con tus ajustes. A veces un navegador borra lo que lleva mucho sin usarse: guarda un archivo de vez en cuando.
    }
save = Guardar todo en un archivo
takeBack = Recuperar un archivo
remove = Borrar todo lo de aquí
# Names of files, without blanks and accents.
fileEverything = before-the-hill.todo
fileReport = before-the-hill.informe
failed = No ha funcionado. Recarga la página y prueba otra vez.

## Deleting

sureTitle = ¿Borrar todo?
sure =
    { $rides ->
        [one] { $rides } recorrido y todos tus ajustes desaparecerán de este dispositivo. No se puede deshacer.
       *[other] { $rides } recorridos y todos tus ajustes desaparecerán de este dispositivo. No se puede deshacer.
    }
keep = Conservarlo
saveFirst = Guardar antes un archivo
removeSure = Borrar todo
deleted = Todo lo de este juego se ha borrado de este dispositivo.
notDeleted = No se ha podido borrar todo. Cierra las otras pestañas del juego y prueba otra vez.

## Saving and taking back

savedAll =
    { $rides ->
        [one] Guardado: { $rides } recorrido y tus ajustes.
       *[other] Guardado: { $rides } recorridos y tus ajustes.
    }
savedPart = Se ha guardado lo que se podía leer. El navegador no lo ha dado todo; prueba otra vez antes de borrar.
notAFile = Este archivo no lo guardó este juego. Elige uno que termine en .json.
tooBigFile = Este archivo es mucho más grande de lo que puede ser una copia. Elige el que hizo «Guardar todo en un archivo».
takingBack = Recuperando el archivo…
stopTaking = Parar
stopped = Parado. Recuperados hasta ahora: { $added }. Elige el archivo otra vez para seguir.
newerFile = Este archivo lo guardó una versión más nueva. Recarga la página para actualizar; no se ha cambiado nada.
changedFile = Este archivo se cambió o se dañó después de guardarlo. No se ha tomado nada de él.
changedTitle = ¿Recuperarlo de todos modos?
changedSure = Este archivo se cambió o se dañó después de guardarlo. Si sabes de dónde viene, se puede recuperar lo que aún se lea. Los recorridos que ya están aquí no cambian.
changedLeave = Dejarlo
changedTake = Recuperar lo que se lea
# The file names a club's own store.
namesStore = También nombra un servidor en { $host }. Allí no se envía nada.
lookAtStore = Verlo
takenBack = Recuperados: { $added }. Ya estaban aquí: { $already }.
refused =
    { $refused ->
        [one] { $refused } no se ha podido leer y se ha dejado fuera.
       *[other] { $refused } no se han podido leer y se han dejado fuera.
    }

health-slow =
    Todavía no se ha abierto lo que está guardado en este dispositivo, así que no se ven tus propios niveles ni tus resultados. Si sigue así, recarga la página.
health-memory = Esta ventana no guarda nada. Al cerrarla, tus recorridos se pierden.
health-small-copy = En esta ventana solo se guardan tus notas más recientes, no los recorridos.
health-disk-full =
    En este dispositivo ya no queda sitio, así que los recorridos nuevos no se guardan. Haz sitio; el juego lo intentará de nuevo.
health-recordings-lost =
    De algunos recorridos solo quedan las notas: los recorridos mismos se han perdido y no se pueden volver a ver.

## A ride that broke off

unfinished-olderLegs = Se recorrió antes de que cambiaran las piernas del juego, así que no puede seguir. Guarda lo recorrido, o déjalo ir.
unfinished-kept = Lo recorrido está guardado. Lo encuentras en Progreso, sin notas.
unfinished-notKept = Ahora no se ha podido guardar. Sigue aquí; prueba otra vez.
