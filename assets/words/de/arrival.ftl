### Eine Seite, deren Programm nicht kam oder nicht laufen darf.

onItsWay = Das Spiel ist unterwegs zu dir.
stuck =
    Bleibt das so stehen, ist ein Teil nicht angekommen. Sieh nach, ob das Netz da ist: Ein öffentliches WLAN will oft, dass du dich erst auf seiner eigenen Seite anmeldest. Ein alter Browser braucht vielleicht ein Update.
again = Seite neu laden
safe = Was du gefahren bist, bleibt auf diesem Gerät aufbewahrt.
noScript =
    Dieser Browser führt auf dieser Seite keine Skripte (JavaScript) aus, und daraus besteht das Spiel. Bitte erlaube sie hier und lade dann die Seite neu.
framed =
    Eine andere Seite zeigt Before the Hill in sich. Das Spiel startet nur auf einer eigenen Seite, damit niemand etwas über seine Knöpfe legen kann.
alone = Einzeln öffnen
