### Ce qui est écrit et dit pendant un passage : instruments, boutons, conseils, remarques, et la route pour qui roule à l'oreille.

## Les instruments. Il y a peu de place : un ou deux mots courts.

cadence = cadence
perMinute = par minute
gear = vitesse
pressure = jambes
legs-coast = au repos
legs-ease = légères
legs-steady = régulières
legs-press = en force
legs-too-slow = trop lentes
legs-too-fast = trop rapides
reserve = souffle
roadAhead = Les prochains { $length } de route
distance = roulé
chainFromAbove = La chaîne vue d’en haut
widened = largeur × { $times }
crossed = chaîne croisée
chainOff = chaîne sautée
motor-pulls = moteur actif
motor-rests = moteur au repos
motor-too-fast = rien au-delà de { $speed }
motor-empty = batterie vide
steeper = hauteurs × { $times }
stopLine = arrêt dans
outOfSight = hors de vue
# Who rides along as a silhouette.
beside-best = meilleur passage
beside-last = ton dernier passage
marksSoFar = jusqu’ici, sur 100
marks-cadence = cadence
marks-easing = pieds légers
marks-chainLine = ligne de chaîne

## Ce que les mains font ensuite

move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] Plus facile
               *[other] Plus facile, { $steps } crans
            }
        [rear-harder]
            { $steps ->
                [one] Plus dur
               *[other] Plus dur, { $steps } crans
            }
        [front-easier]
            { $steps ->
                [one] Plateau plus petit
               *[other] Plateau plus petit, { $steps } crans
            }
       *[front-harder]
            { $steps ->
                [one] Plateau plus grand
               *[other] Plateau plus grand, { $steps } crans
            }
    }
move-after =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] plus facile
               *[other] plus facile, { $steps } crans
            }
        [rear-harder]
            { $steps ->
                [one] plus dur
               *[other] plus dur, { $steps } crans
            }
        [front-easier]
            { $steps ->
                [one] plateau plus petit
               *[other] plateau plus petit, { $steps } crans
            }
       *[front-harder]
            { $steps ->
                [one] plateau plus grand
               *[other] plateau plus grand, { $steps } crans
            }
    }
move-then = { $first }, puis { $second }
step-now = maintenant
step-soon = bientôt
step-in = dans { $distance }

## Les boutons pour les pouces : ce qui est écrit dessus, et ce que dit un lecteur d'écran

pads = Commandes du vélo
pad-rear-easier = + facile
pad-rear-harder = + dur
pad-front-smaller = + petit
pad-front-bigger = + grand
pad-ease = léger
pad-press = fort
pad-brake = frein
pad-pause = pause
spoken-rear-easier =
    { $gears ->
        [hub] Vitesses du moyeu : plus facile
       *[sprockets] Dérailleur arrière : plus facile
    }
spoken-rear-harder =
    { $gears ->
        [hub] Vitesses du moyeu : plus dur
       *[sprockets] Dérailleur arrière : plus dur
    }
spoken-front-smaller = Dérailleur avant : plateau plus petit
spoken-front-bigger = Dérailleur avant : plateau plus grand
spoken-ease =
    { $gears ->
        [hub] Relâcher la pression ; moitié du haut ou glisser vers le haut : appuyer
       *[sprockets] Pieds légers ; moitié du haut ou glisser vers le haut : appuyer
    }
spoken-press = Appuyer fort
spoken-brake = Freiner
spoken-pause = Pause

## Les remarques, une à la fois

remark-heavy-shift = Changement forcé. D’abord, pieds légers.
remark-shift-hung = La chaîne accroche. Pieds légers, et elle passe.
remark-shift-waiting = Une chaîne ne se déplace que si tu pédales.
remark-hub-knocked = Un choc. Relâche la pression, et ça passe.
remark-motor-pulled = Le moteur tirait encore. Pieds légers, attends, puis change.
remark-hub-waits = Le moyeu attend. Relâche la pression.
remark-no-easier = C’est la vitesse la plus facile.
remark-no-harder = C’est la vitesse la plus dure.
remark-ring-easier = Aucun pignon plus facile. Un plateau plus petit est plus facile.
remark-ring-harder = Aucun pignon plus dur. Un plateau plus grand est plus dur.
remark-no-ring = Aucun autre plateau de ce côté.
remark-refused-crossed = Ce vélo ne croise pas sa chaîne.
remark-crossed = La chaîne est croisée.
remark-chain-dropped = La chaîne a sauté ! Pieds légers, puis pousse la manette avant.
remark-foot-down = Pied à terre. La vitesse était trop dure.
remark-line-missed = Ligne dépassée. Freine plus tôt.
remark-battery-empty = La batterie est vide. Maintenant, tes jambes font tout.
remark-reserve-empty = À bout de souffle. Plus moyen d’appuyer fort pendant un moment.

## À l'oreille : dit à voix haute, donc court. Les distances viennent avec leur unité.

ear-pitch-ahead = Raidillon dans { $distance } : { $slope }, long de { $length }.
ear-pitch-soon = Raidillon dans { $distance }.
ear-pitch-now = Pied du raidillon.
ear-pitch-over = Sommet passé.
ear-stop-ahead = Ligne d’arrêt dans { $distance }.
ear-stop-soon = Ligne d’arrêt dans { $distance }. Freine.
ear-downhill = Descente.
ear-move =
    { $move ->
        [rear-easier]
            { $steps ->
                [one] { $steps } cran plus facile
               *[other] { $steps } crans plus facile
            }
        [rear-harder]
            { $steps ->
                [one] { $steps } cran plus dur
               *[other] { $steps } crans plus dur
            }
        [front-easier] plateau plus petit
       *[front-harder] plateau plus grand
    }
ear-hint = { $move }.
ear-hint-then = { $first }, puis { $second }.
ear-begin = C’est parti.
ear-nothing = Aucun raidillon en vue.
