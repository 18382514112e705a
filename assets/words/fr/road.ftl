### On the road: what recorded rides show of somebody's shifting, pitch by pitch. Lengths, gradients, shares and months
### come in written. "Best ride" is the one the game works out. GPX is the name of a format.

intro = Ce que tes sorties enregistrées montrent de tes changements de vitesse, raidillon par raidillon.
opening = Un instant : tes sorties arrivent.
openFailed = Impossible d’ouvrir ce qui est gardé. Recharge la page.
limits = Une mesure par seconde ne montre ni les pieds légers, ni la seconde exacte d’un changement, ni la ligne de chaîne. Le lieu d’un changement n’est connu qu’avec la marge qui suit ± ; le vent, la circulation et les compagnons de route ne sont pas pris en compte.
late-heights = Beaucoup d’appareils notent l’altitude avec quelques secondes de retard. Avec la puissance dans le fichier, ce retard est trouvé et corrigé. Sans elle, le pied d’une côte peut se trouver trop loin, de { $way } ou plus, et tu sembles changer de vitesse plus tôt qu’en réalité.
# Stands in a table where nothing is known.
unknown = –

## Bringing a file

bring-title = Apporter une sortie
bring-what = Fichiers GPX avec la cadence, un point par seconde. Plusieurs à la fois, c’est possible.
# $parts: chainrings and sprockets, like "50 / 34 · 11–34". $tyre: a size, like "28-622".
bring-bike = Roulé avec { $parts } et des pneus de { $tyre }.
bring-otherBike = C’était un autre vélo
# Beside a box that is ticked.
bring-teeth = Ce ne sont pas les dentures du vélo de cette sortie. Les vitesses sont alors distinguées sans nom, et moins nombreuses.
bring-files = Choisir des GPX
# Answers to the question what the heights of a file are in.
bring-metres = En mètres
bring-feet = En pieds
bring-privacy = Le fichier ne quitte pas cet appareil et n’est pas gardé. Seuls des chiffres pour chaque raidillon et le mois sont gardés : ni lieu, ni heure, ni trace.
bring-reading = Lecture… { $share }
# $done and $all (Number): pitches.
bring-judging = Le meilleur passage à ta puissance roule sur les mêmes raidillons : { $done } sur { $all }…
# $name: of a file.
refused = { $name } n’a pas été accepté
useless-no-times = Ce fichier ne dit pas quand la sortie a eu lieu, ou ses heures vont à reculons. Enregistre avec les heures.
useless-too-sparse = La plupart des points de ce fichier sont à plus de trois secondes les uns des autres : trop pour reconnaître les vitesses. Règle l’appareil pour qu’il enregistre chaque seconde.
useless-no-cadence = Ce fichier ne contient pas de cadence : impossible de reconnaître les vitesses. Un capteur au pédalier la mesure ; exporte avec toutes les données.
useless-cadence-stuck = La cadence de ce fichier est partout le même nombre : elle n’a pas été mesurée, et les vitesses ne peuvent pas être reconnues. Choisis une sortie avec un capteur au pédalier.
useless-no-road = Ce fichier n’a pas pu être lu. Choisis-le de nouveau.

## A ride

ride-title = Sortie de { $length }, { $month }
ride-titleNoMonth = Sortie de { $length }
# $title: one of the two above. $file: the name of a file.
ride-named = { $title } ({ $file })
# $title: of a ride.
ride-pitchesOf = Raidillons : { $title }
# $found (Number): pitches.
ride-summary =
    { $found ->
        [0] La vitesse a pu être reconnue { $readable } du temps. Aucun raidillon trouvé.
        [one] La vitesse a pu être reconnue { $readable } du temps. Un raidillon trouvé.
       *[other] La vitesse a pu être reconnue { $readable } du temps. { $found } raidillons trouvés.
    }
# $changes (String): a number, like "2.4".
ride-changes =
    { $per ->
        [mile] Changements de vitesse par mile : { $changes }.
       *[km] Changements de vitesse par km : { $changes }.
    }
ride-inBand = { $share } du temps pédalé dans ta plage.
# $watts (String): a number.
ride-power = D’après les côtes, tu roules à environ { $watts } W ; le meilleur passage à côté du tien a la même puissance.
ride-powerUnknown = Il y avait trop peu de montée dans ta plage pour connaître ta puissance ; le meilleur passage a celle de ton cycliste d’ici.
ride-powerHelped = Avec un moteur, les côtes ne disent pas ce que tes jambes ont donné et ce qu’il a fait. Le meilleur passage a la puissance de ton cycliste d’ici et l’assistance réglée pour le vélo.
ride-heights =
    { $late ->
        [0] La puissance montre que les altitudes sont à l’heure.
        [one] Les altitudes avaient environ une seconde de retard ; c’est corrigé.
       *[other] Les altitudes avaient environ { $late } secondes de retard ; c’est corrigé.
    }
ride-heightsUnknown = Faute de puissance suffisante dans ce fichier, on ne peut pas dire si les altitudes sont en retard ; le ± en tient compte.
ride-cadenceHalved = Le capteur avait compté chaque pied ; la cadence est divisée par deux.
ride-noPitch = Aucun raidillon trouvé : la pente n’augmente jamais de trois points d’un coup.
ride-keep = Garder les chiffres
ride-kept = Gardé : les chiffres que tu vois ici et rien d’autre.
ride-already = Cette sortie est déjà gardée.
ride-notKept = Elle n’a pas pu être gardée sur cet appareil.

## The small picture of a pitch, and what explains its two marks

# Read aloud. $own and $best: one of the places below.
picture-desc = Première vitesse plus facile : { $own }.
picture-descBest = Première vitesse plus facile : { $own } ; meilleur passage : { $best }.
# The mark stands for a place that is known only roughly.
picture-own = toi, à peu près
picture-best = meilleur passage à ta puissance

## The table of pitches

table-pitch = Raidillon
table-first = Première vitesse plus facile
# How much of the shifting was done there, in per cent.
table-atFoot = Fait au pied
# Three cadences.
table-cadence = Jambes : avant, au pied, au plus lent
table-best = Meilleur passage
table-again = Encore
# A pitch, like "8 %, 120 m".
table-name = { $slope }, { $length }
table-unread = vitesses illisibles
# What the best ride did. $place: one of the places below. $share: of the shifting that was done at the foot.
table-bestDone = { $place }, { $share } de fait
table-ride = Refaire
table-rideThis = Refaire : { $pitch }
# $foresight and $total (String): marks of 100, or the sign for what is not known.
table-inGame = Dans le jeu : anticipation { $foresight }, total { $total }.
table-notMade = { $pitch } : impossible de faire un niveau de cet endroit.

## Where the first easier gear came

# $pm: how far from there it may have been.
place-before = { $metres } avant le pied
place-beforePm = { $metres } avant le pied ± { $pm }
place-after = { $metres } après le pied
place-afterPm = { $metres } après le pied ± { $pm }
place-none = aucune vitesse plus facile

## A level made of a pitch

level-title = Ton raidillon : { $slope }, { $length }
level-sentence = Un raidillon d’une de tes sorties, avec le chemin qui y mène.

## All kept rides

all-title = Toutes les sorties gardées
all-empty = Aucune sortie n’est encore gardée.
# $rides (Number), $pitches (Number).
all-mean =
    { $rides ->
        [one] { $pitches ->
            [0] Une sortie, aucun raidillon.
            [one] Une sortie, un raidillon.
           *[other] Une sortie, { $pitches } raidillons.
        }
       *[other] { $pitches ->
            [0] { $rides } sorties, aucun raidillon.
            [one] { $rides } sorties, un raidillon.
           *[other] { $rides } sorties, { $pitches } raidillons.
        }
    }
all-few = En dessous de dix raidillons, une moyenne ne dit pas grand-chose.
all-byMonth = Mois par mois
all-month = Mois
all-noMonth = mois inconnu
all-rides = Sorties
# Rides and pitches of a month. $rides (Number), $pitches (Number).
all-counted =
    { $pitches ->
        [one] { $rides } · { $pitches } raidillon
       *[other] { $rides } · { $pitches } raidillons
    }
all-fall = Perte de cadence
all-inBand = Dans la plage
all-check = Passages témoins dans le jeu
# $rpm (String): turns of the pedals a minute.
all-perMinute = { $rpm } tr/min
# $value: with its unit.
all-giveOrTake = { $value } ± { $pm }
# $totals: marks of 100.
all-checks = total { $totals }
# $title: of a ride.
all-numbered = { $number }. { $title }
# What a kept ride was ridden on. $parts: chainrings and sprockets.
all-parts = { $parts }.
all-what = Ce qui est gardé
all-whatHint = C’est tout, tel que c’est gardé. Rien n’y dit où ni à quelle heure tu as roulé.
all-forget = Retirer
all-forgetThis = Retirer de cet appareil : { $ride }
