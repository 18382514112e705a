### Die erste Seite: der große Knopf, die Wege zu allem anderen, und eine Fahrt, die abbrach.

ride = Losfahren
rideAgain = Weiterfahren
byEar = Nach Gehör fahren
byEye = Nach Bild fahren
picture = Jemand kommt mit dem Rad am Fuß eines Anstiegs an.
newer = Eine neuere Version ist da.
loadNewer = Laden

## The ways from here, each with a line under it

hint-children = Kurze Berge und ein Korb Äpfel
levels = Alle Level
hint-levels = { $done } von { $all } gefahren
bike = Mein Rad
# Under "My bike": its name and its gears.
hint-bike = { $name }, { $gears }
hint-about = dazu Vorsicht und Datenschutz
hint-progress = Vergleichsfahrten, Fahrten auf der Straße und was aufbewahrt ist
hint-gearcheck = Kämst du mit anderen Ritzeln diesen Berg hinauf?
hint-two = Nebeneinander, gegenüber oder als Staffel
hint-clinic = Eine Gruppe, ein Gerät oder viele, keine Namen
hint-teach = Eine Stunde mit der Gruppe, mit Übungen für draußen
hint-bench = Bau eine Straße, oder bring eine gefahrene mit

## A ride that broke off

unfinished-title = Deine Fahrt brach ab: { $level }
unfinished-turn = Eine Fahrt der Gruppe brach ab: { $level }
unfinished-length =
    { $minutes ->
        [0]
            { $seconds ->
                [one] { $seconds } Sekunde davon ist aufbewahrt.
               *[other] { $seconds } Sekunden davon sind aufbewahrt.
            }
       *[other] { $minutes } min { $seconds } s davon sind aufbewahrt.
    }
unfinished-goOn = Von hier weiter
unfinished-keep = Gefahrenes behalten
unfinished-letGo = Verwerfen
