### La bande après un passage : quatre pistes le long de la route, ce qui est lu dessous, et ses tableaux.

title = Le passage le long de la route
desc = Quatre pistes sur { $length } de route : hauteur et pente, vitesse engagée, cadence avec sa plage, pression sur les pédales ; { shifts }.
descClosed = Quatre pistes sur { $length } de route : hauteur et pente, vitesse engagée, cadence avec sa plage, pression sur les pédales.
shifts =
    { $shifts ->
        [0] aucun changement
        [1] un changement
        [2] deux changements
        [3] trois changements
        [4] quatre changements
        [5] cinq changements
        [6] six changements
        [7] sept changements
        [8] huit changements
        [9] neuf changements
        [10] dix changements
       *[other] { $shifts } changements
    }

## Les pistes : un nom en gras, aussi court que possible, et une indication dessous

road = Route
gear = Vitesse
cadence = Cadence
pressure = Pression
shifts-title = Changements
hint-gear = ↑ + dur  ↓ + facile
hint-cadence = ta plage { $low }–{ $high }
hint-pressure = — régulier

## Ce que veulent dire les lignes et les formes

legend-you = toi
legend-best = meilleur passage
legend-clean = changement net
legend-fair = un peu forcé
legend-heavy = changement forcé
legend-foot-down = pied à terre
legend-chain-dropped = chaîne sautée

## Choisir un bout de route et un endroit

zoom = Montrer
zoom-whole = Toute la route
zoom-to =
    { $audience ->
        [children] Côte { $pitch }
       *[everyone] Raidillon { $pitch }
    }
place = Endroit de la route
nextShift = Changement suivant
lastShift = Changement d’avant
watchHere = Revoir à partir d’ici
drag = Glisse ou touche.
keys = Ou utilise ← → (touches Page : { $step }).
jumps = N et P sautent d’un changement à l’autre.

## Ce qui est lu à un endroit, chaque fois un nom et une valeur

read-at = À
read-best = Meilleur passage
read-shift = Changement
read-slope =
    { $way ->
        [up] { $percent } en montée
        [down] { $percent } en descente
       *[flat] plat
    }
# Suit « pied » : avec son article.
pitch =
    { $audience ->
        [children] { $pitches ->
            [1] de la côte
           *[other] de la côte { $pitch }
        }
       *[everyone] { $pitches ->
            [1] du raidillon
           *[other] { $pitch ->
                [1] du premier raidillon
                [2] du deuxième raidillon
                [3] du troisième raidillon
                [4] du quatrième raidillon
                [5] du cinquième raidillon
                [6] du sixième raidillon
                [7] du septième raidillon
                [8] du huitième raidillon
                [9] du neuvième raidillon
                [10] du dixième raidillon
               *[other] du raidillon { $pitch }
            }
        }
    }
read-slopeNear =
    { $side ->
        [at] { read-slope }, juste au pied { pitch }
        [after] { read-slope }, { $metres } après le pied { pitch }
       *[before] { read-slope }, { $metres } avant le pied { pitch }
    }
read-rpm = { $rpm } tr/min
read-coasting = roue libre
read-standing = à l’arrêt
read-band = plage { $low }–{ $high }
read-pressure =
    { $how ->
        [coast] roue libre ({ $percent })
        [ease] léger ({ $percent })
        [steady] régulier ({ $percent })
       *[press] fort ({ $percent })
    }
read-bestHere = { $gear }, { $cadence }
read-shiftSays =
    { $kind ->
        [clean] net
        [fair] un peu forcé
       *[heavy] forcé
    }, { $direction ->
        [easier] plus facile
       *[harder] plus dur
    } : de { $from } à { $to }

## Les tableaux

table-summary = La même chose en chiffres
table-places = Le passage tous les { $step }
table-shifts = Tous les changements
table-place = Endroit
table-slope = Pente
table-gear = Vitesse
table-cadence = Cadence (tr/min)
table-band = Plage (tr/min)
table-pressure = Pression (%)
table-bestGear = Meilleur passage : vitesse
table-bestCadence = Meilleur passage : cadence (tr/min)
table-begins = Commence à
table-change = Changement
table-took = Durée (s)
table-load = Charge (%)
table-feel = Ressenti
feel-clean = net
feel-fair = un peu forcé
feel-heavy = forcé
