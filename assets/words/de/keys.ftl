### Keys

rear-easier = Hinten: leichter
rear-harder = Hinten: schwerer
# With one lever there is nothing to tell it from.
only-rear-easier = Leichter
only-rear-harder = Schwerer
front-smaller = Vorne: kleineres Blatt
front-bigger = Vorne: größeres Blatt
ease = Locker treten
press = Fest treten
coast = Rollen
brake = Bremsen
pause = Pause
name-Space = Leertaste
name-Escape = Esc
name-Enter = Eingabe
name-Tab = Tab
# When it is said aloud.
spoken-ArrowUp = Pfeil nach oben
spoken-ArrowDown = Pfeil nach unten
spoken-ArrowLeft = Pfeil nach links
spoken-ArrowRight = Pfeil nach rechts
