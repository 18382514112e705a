### Namen, die nach der ersten Seite kommen: was ein Level lehrt, und Personen.

## Was ein Level lehrt

lesson-levers = Die beiden Hebel
lesson-cadence = Trittfrequenz
lesson-easing = Locker treten beim Schalten
lesson-look-ahead = Vorausschauen
lesson-rolling = Mit der Straße schalten
lesson-chain-line = Eine gerade Kette
lesson-ring-change = Das Kettenblatt wechseln
lesson-ride-over = Wann man nicht schaltet
lesson-hidden = Was man nicht sieht
lesson-stop-gear = Der Gang zum Anfahren
lesson-wind-and-gravel = Wind und Schotter
lesson-everything = Alles zusammen
lesson-check = Vergleichsfahrt
lesson-free = Freie Fahrt
# What stands under the name of such a ride.
sentence-check = Eine Straße, die du nicht kennst, ohne Hilfe.
sentence-free = Eine Straße, wie du sie magst: so lang und so hügelig, wie du willst.

## Was auf dem Aufnäher steht, wo der Name des Levels kein Wort für Kinder ist

patch-levers = Leichter und schwerer
patch-cadence = Beine in gutem Tempo

## Personen

rider-child-9 = Ein Kind von etwa neun
rider-adult-new = Neu auf dem Rad
rider-adult-weekly = Fährt jede Woche
rider-adult-strong = Kräftig
rider-own = Eigene Werte
