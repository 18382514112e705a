### Séances en groupe : les plans, l'appareil qui passe de main en main, l'image du groupe, le rapport. $name est un animal comme
### « Renard rouge », ou un nom que quelqu'un a choisi.

number =
    { $count ->
        [1] un
        [2] deux
        [3] trois
        [4] quatre
        [5] cinq
        [6] six
        [7] sept
        [8] huit
        [9] neuf
        [10] dix
       *[other] { $count }
    }
numberFirst =
    { $count ->
        [1] Un
        [2] Deux
        [3] Trois
        [4] Quatre
        [5] Cinq
        [6] Six
        [7] Sept
        [8] Huit
        [9] Neuf
        [10] Dix
       *[other] { $count }
    }

title = Séance en groupe
intro = Un groupe, une route, et de quoi parler. Ni noms ni comptes : des animaux suffisent.
back = Séance en groupe
opening = Les séances de cet appareil s’ouvrent…
elsewhere = La séance a continué dans un autre onglet de ce navigateur. Un seul onglet à la fois garde les passages en ordre.
goOnHere = Continuer ici
openFailed = La séance n’a pas pu être chargée. Recharge la page, puis réessaie.

## La première page : continuer une séance, ou choisir un plan

home-goOn = Continuer : { $plan }
home-next = Au suivant : { $name } · { $ridden } sur { $all } faits
home-waiting = { $ridden } sur { $all } faits
home-ready = Plans tout prêts
home-saved = Tes plans
home-own = Faire un plan
home-teach = Plans de séance
home-teachHint = Quoi dire, des exercices pour dehors, des feuilles à imprimer
home-join = Rejoindre une séance
home-joinHint = Prendre le plan d’un autre appareil
home-store = Le serveur du club
home-storeHint = Coupé, sauf si tu donnes une adresse
home-ownHint = niveaux, essais, aides, ordre
home-sessions = Séances sur cet appareil
home-session =
    { $date } · { $riders ->
        [one] { $riders } cycliste
       *[other] { $riders } cyclistes
    } · { $rides ->
        [one] { $rides } passage
       *[other] { $rides } passages
    }
home-open-round = Chacun son tour : { $plan }
home-open-picture = Image du groupe : { $plan }
home-open-report = Rapport : { $plan }
home-change = Modifier une copie
home-forget = Effacer le plan
home-forgetKeep = Garder
home-forgetSure = L’effacer pour de bon
home-children = Pour les enfants
home-everyone = Pour tout le monde
home-missing = Un niveau de ce plan n’est pas sur cet appareil.

## Un plan en une ligne

facts =
    { $count ->
        [1] un essai chacun · { $bike }
       *[other] { number } essais chacun · { $bike }
    }
facts-ownBike = vélo réglé sur cet appareil

## Qui roule

go-title = Qui roule ?
go-intro = Dis combien vous êtes ; chacun reçoit un animal. Touche un animal pour l’échanger. On peut arriver en cours de route.
go-count = Cyclistes
go-fewer = Un cycliste de moins
go-more = Un cycliste de plus
go-swap = { $name } : échanger contre un autre
go-onlyHandOut = Personne ne roule ici : seulement le donner aux tablettes
go-start = C’est parti
go-startHint =
    { $riders ->
        [one] { $plan } · { $riders } cycliste, chacun son tour
       *[other] { $plan } · { $riders } cyclistes, chacun son tour
    }

## Combien de temps prend un plan

minutes-who =
    { $riders ->
        [one] { $riders } cycliste
       *[other] { $riders } cyclistes
    }, { $count ->
        [1] un passage
       *[other] { number } passages
    } chacun
minutes-about =
    { $minutes ->
        [1] environ une minute
       *[other] environ { $minutes } minutes
    }
minutes-whoAbout = { minutes-who } : { minutes-about }
minutes-tooLong = Plus de { $most } minutes avec un seul appareil. Plus court :
minutes-attempts =
    { $count ->
        [1] Un essai chacun
       *[other] { numberFirst } essais chacun
    } : { minutes-about }
minutes-road = Seulement « { $road } » : { minutes-about }
minutes-devices = { numberFirst } tablettes : { minutes-about }
minutes-two = À plusieurs sur une tablette
minutes-left =
    { $minutes ->
        [1] encore une minute environ
       *[other] encore { $minutes } minutes environ
    }
minutes-noneLeft = tout est fait
minutes-leftBehind =
    { $behind ->
        [one] { minutes-left }, { $behind } minute de retard
       *[other] { minutes-left }, { $behind } minutes de retard
    }

## Un plan à soi

form-title = Ton plan
form-name = Titre
form-nameHint = par exemple : mardi, premières côtes
form-rides = Au programme
form-ridesHint = Dans l’ordre où tu les choisis.
form-ownLevels = Tes propres niveaux
form-attempts = Essais chacun
form-attemptsFewer = Un essai de moins
form-attemptsMore = Un essai de plus
form-seed = La route

form-seeds-same = chaque fois la même
form-seeds-fresh = à chaque essai une autre du même genre
form-bike = Vélo
form-ownBike = Celui réglé sur cet appareil
form-rider = Cycliste
form-byBike = Celui qui va avec le vélo
form-byFeel = Chacun choisit au ressenti
form-aids = Aides pendant le passage

form-aidsNames-as-level = comme dans le niveau
form-aidsNames-none = aucune
form-aidsNames-all = toutes
form-shows = Le groupe voit

form-showsNames-own-marks = seulement ses propres notes
form-showsNames-group-picture = l’image du groupe
form-showsNames-table = un tableau en plus
form-order = Ordre

form-orders-rotate = à tour de rôle
form-orders-free = qui veut
form-save = Enregistrer le plan
form-saveAndGo = Enregistrer et choisir les cyclistes
form-problems = Pas encore :
form-noRide = Choisis au moins une route.
form-noTitle = Donne un titre au plan.

## Une séance

tabs-round = Chacun son tour
tabs-picture = Image du groupe
tabs-report = Rapport
tabs-tablets = Tablettes
tabs-label = Séance

## Plusieurs appareils dans une séance

tablets-intro = Avec plusieurs appareils, chacun roule de son côté. Rien n’a besoin d’un réseau.

tablets-out-title = Distribuer le plan
tablets-out-hint = D’autres appareils le reçoivent par code, lien ou fichier.

tablets-back-title = Rendre les passages
tablets-back-hint = Les passages faits sur cet appareil, pour qui encadre.

tablets-collect-title = Réunir les passages
tablets-collect-hint = Ce qui est revenu, d’où, et ce qui manque.

## Un appareil qui passe de main en main

round-next = Au suivant
round-turn = essai { $attempt } sur { $all }
round-start = Partir
round-startFor = Lancer le passage de { $name }
round-skip = Plus tard
round-later = Revient plus tard
round-remove = Retirer
round-removeWho = Retirer { $name }
round-laterWho = { $name } revient plus tard
round-back = De retour
round-backWho = { $name } est de retour
round-chooseWho = { $name } roule maintenant
round-give = Quelqu’un d’autre a roulé
round-giveTitle = Qui a roulé ?
round-giveSays = Le passage compte alors pour cette personne. Qui était affiché ici garde son tour.
round-giveKeep = C’était juste
round-add = Ajouter un cycliste
round-addPlus = + Ajouter un cycliste
round-undo = Annuler le dernier passage
round-undoWho = Le dernier passage de { $name } ne comptera pas. Il peut être refait.
round-keep = Garder
round-line = Dans la file
round-nobodyInLine = Personne.
round-away = De retour plus tard
round-gone = À la maison ({ $riders })
round-left =
    { $rides ->
        [one] encore { $rides } passage
       *[other] encore { $rides } passages
    }
round-riding = { $name } roulait
round-ridingSays = Le passage n’est pas allé jusqu’au bout : il ne compte pas.
round-rideAgain = Refaire
round-notNow = Pas maintenant
round-marking = Le passage est en train d’être noté…
round-notMarked = Le passage n’a pas pu être noté maintenant. Il est gardé : recharge la page, et le jeu réessaie. Si on le refait, il est remplacé.
round-debrief = Bilan complet
round-ridden = { $name } a roulé
round-total = Total
round-nextRider = Au suivant
round-goOn = Continuer
round-nobody = Personne n’est encore là
round-nobodySays = Ajoute un cycliste pour commencer.
round-waiting = On attend ceux qui reviennent
round-done = Tout le monde a roulé
round-doneSays = C’est le moment de regarder ensemble.
round-toPicture = Vers l’image du groupe
round-feel = Tu roules comment ?
round-noLevel = Le niveau de ce passage n’est pas sur cet appareil.
round-notKept = Cela n’a pas pu être gardé sur l’appareil. On peut continuer, mais on le perdrait en rechargeant la page.
round-fullRound = Le groupe est complet.
round-taken = Ce nom est déjà pris.
round-addTitle = Qui est là ?
round-addOwn = Ou un nom de ton choix
round-addOwnHint = Pas un vrai. 20 caractères au plus.
round-addThis = Ajouter
round-others = D’autres animaux

## Une ligne sur un passage terminé

remark-none = Aucun raidillon ne demandait de changer.
remark-fine =
    { $count ->
        [1] Le raidillon a été pris à temps.
       *[other] Les { number } raidillons ont tous été pris à temps.
    }
remark-early = Raidillon { $pitch } : trop tôt, { $distance } avant le pied. Attends un peu.
remark-lateAfter = Raidillon { $pitch } : trop tard, { $distance } après le pied. Change avant.
remark-lateBefore = Raidillon { $pitch } : tard, seulement { $distance } avant le pied. Change plus tôt.
remark-notFinished = Raidillon { $pitch } : au pied, les changements n’étaient pas finis. Finis de changer avant.
remark-never = Raidillon { $pitch } : rien n’a été passé plus facile pour lui.
remark-earlyNoPlace = Raidillon { $pitch } : trop tôt. Attends un peu.
remark-gear = Raidillon { $pitch } : changement fait à temps, mais pas vers la bonne vitesse.

## L'image du groupe

picture-working = L’image du groupe est en train d’être calculée…
picture-failed = L’image n’a pas pu être calculée. Recharge la page, puis ouvre-la de nouveau.
picture-none = Encore aucun passage. L’image grandit à chaque passage.
picture-closed = Dans ce plan, chacun ne voit que ses propres notes.
picture-apart =
    { $rides ->
        [one] { $rides } passage n’a pas donné ce que disent ses notes : il n’est pas compté ici.
       *[other] { $rides } passages n’ont pas donné ce que disent leurs notes : ils ne sont pas comptés ici.
    }
picture-otherVersion =
    { $rides ->
        [one] { $rides } passage vient d’une autre version du jeu : ses notes comptent comme elles sont venues, mais il ne peut pas être rejoué ici.
       *[other] { $rides } passages viennent d’une autre version du jeu : leurs notes comptent comme elles sont venues, mais ils ne peuvent pas être rejoués ici.
    }
picture-open = La montrer quand même au groupe
picture-road = Route
picture-roadName =
    { $rides ->
        [one] { $road } ({ $rides } passage)
       *[other] { $road } ({ $rides } passages)
    }

picture-boards-where = Sur la route
picture-boards-caught = Raidillon par raidillon
picture-boards-timing = Quand
picture-boards-change = Premier et dernier
picture-boards-table = Tableau
picture-label = Ce qui est montré
picture-talk = En parler avec des enfants
picture-show = Montrer la réponse
picture-hide = Demander encore
picture-guess = D’abord deviner, puis regarder.
picture-rides =
    { $rides ->
        [one] { $rides } passage
       *[other] { $rides } passages
    } de { $riders ->
        [one] { $riders } cycliste
       *[other] { $riders } cyclistes
    }, sans noms
picture-caught =
    { $count ->
        [one] Le raidillon { $pitch } a piégé { $count } cycliste sur { $all }
       *[other] Le raidillon { $pitch } a piégé { $count } cyclistes sur { $all }
    }

picture-wrong-late =
    { $count ->
        [one] Raidillon { $pitch } : { $count } cycliste sur { $all } trop tard
       *[other] Raidillon { $pitch } : { $count } cyclistes sur { $all } trop tard
    }
picture-wrong-early =
    { $count ->
        [one] Raidillon { $pitch } : { $count } cycliste sur { $all } trop tôt
       *[other] Raidillon { $pitch } : { $count } cyclistes sur { $all } trop tôt
    }
# $both (Number): riders who were too early at one attempt and too late at another.
picture-wrong-mixed =
    { $both ->
        [0] { $all ->
            [one] Raidillon { $pitch } : sur { $all } cycliste, { $early } trop tôt et { $late } trop tard
           *[other] Raidillon { $pitch } : sur { $all } cyclistes, { $early } trop tôt et { $late } trop tard
        }
       *[other] { $all ->
            [one] Raidillon { $pitch } : parfois trop tôt, parfois trop tard
           *[other] Raidillon { $pitch } : sur { $all } cyclistes, { $early } trop tôt et { $late } trop tard, dont { $both } les deux
        }
    }
picture-right = Aucun raidillon n’a été pris trop tôt ou trop tard
picture-ready =
    Groupe prêt { $groupSide ->
        [after] { $group } après le pied
       *[before] { $group } avant le pied
    }, meilleur passage { $bestSide ->
        [after] { $best } après le pied
       *[before] { $best } avant le pied
    }.
picture-neverReady =
    { $bestSide ->
        [after] La plupart n’ont jamais été prêts ; le meilleur passage l’était { $best } après le pied.
       *[before] La plupart n’ont jamais été prêts ; le meilleur passage l’était { $best } avant le pied.
    }
picture-noPitch = Sur cette route, aucun raidillon ne demande de changer
picture-noLines = Ces passages sont venus sans leurs tracés ; seules les notes peuvent être montrées.
picture-ownRoads = Chacun a roulé sur sa propre route : il n’y a pas de tracé commun.

picture-tracks-development = Braquet
picture-tracks-cadenceRpm = Cadence

picture-legend-best = meilleur passage prêt
picture-legend-middle = groupe prêt
# Of the lines for gear and cadence.
picture-legend-lines = groupe : le milieu et la moitié autour
picture-legend-bestLine = meilleur passage
picture-stripDesc =
    { $rides ->
        [one] { $rides } passage sur { $length } de route : pour chaque raidillon, où le groupe et le meilleur passage avaient leur vitesse prête, et combien de cyclistes étaient trop tôt, au bon moment et trop tard.
       *[other] { $rides } passages sur { $length } de route : pour chaque raidillon, où le groupe et le meilleur passage avaient leur vitesse prête, et combien de cyclistes étaient trop tôt, au bon moment et trop tard.
    }
picture-barOf-tooEarly =
    { $count ->
        [one] trop tôt : { $count } cycliste sur { $all }
       *[other] trop tôt : { $count } cyclistes sur { $all }
    }
picture-barOf-aboutRight =
    { $count ->
        [one] au bon moment : { $count } cycliste sur { $all }
       *[other] au bon moment : { $count } cyclistes sur { $all }
    }
picture-barOf-tooLate =
    { $count ->
        [one] trop tard : { $count } cycliste sur { $all }
       *[other] trop tard : { $count } cyclistes sur { $all }
    }
picture-pitch = Raidillon { $pitch }
picture-caughtShort =
    { $count ->
        [one] { $count } piégé sur { $all }
       *[other] { $count } piégés sur { $all }
    }
picture-dots = Un point est un cycliste ; un point plein s’est fait piéger au moins une fois.
picture-never = jamais

picture-timing-tooEarly = trop tôt
picture-timing-aboutRight = au bon moment
picture-timing-tooLate = trop tard
picture-shares-late = { $one } trop tard, { $other } au bon moment
picture-shares-early = { $one } trop tôt, { $other } au bon moment
picture-shares-mixed = { $one } trop tôt, { $other } trop tard
picture-timingCount = { $count } fois sur { $all } au passage d’un raidillon
picture-change =
    { $worse ->
        [0] { $who ->
            [riders] { $better ->
                [one] { $better } cycliste sur { $all } en net progrès
               *[other] { $better } cyclistes sur { $all } en net progrès
            }
           *[pairs] { $better ->
                [one] { $better } paire de passages sur { $all } en net progrès
               *[other] { $better } paires de passages sur { $all } en net progrès
            }
        }
       *[other] { $who ->
            [riders] { $better ->
                [one] { $better } cycliste sur { $all } en net progrès, { $worse } en net recul
               *[other] { $better } cyclistes sur { $all } en net progrès, { $worse } en net recul
            }
           *[pairs] { $better ->
                [one] { $better } paire de passages sur { $all } en net progrès, { $worse } en net recul
               *[other] { $better } paires de passages sur { $all } en net progrès, { $worse } en net recul
            }
        }
    }
picture-changeSame = Personne n’a progressé ni reculé plus que le hasard ne l’explique
picture-changeNone = Personne n’a encore roulé deux fois la même chose
picture-changeSays = En net progrès : { $better }, en net recul : { $worse }, dans la part du hasard (moins de { $chance } points) : { $same }.
picture-first = Premier essai
picture-last = Dernier essai
picture-bins = { $low } à { $high } points : { $count }

## Ce que l'on demande aux enfants, et les réponses

picture-question-where = Quand avons-nous changé pour la côte ?
picture-question-caught = Quelle côte a piégé le plus de monde ?
picture-question-timing = Étions-nous en avance, à l’heure ou en retard ?
picture-question-change = Avons-nous fait des progrès en nous entraînant ?
picture-question-table = Comment ça s’est passé ?

picture-answer-caught =
    { $all ->
        [1] La côte { $hill } nous a piégés
       *[other] La côte { $hill } a piégé { $count } d’entre nous sur { $all }
    }
picture-answer-nobody = Aucune côte ne nous a piégés. Bien joué !
picture-answer-noHill = Ici, aucune côte ne demandait de changer

picture-answer-where-late =
    { $all ->
        [1] Côte { $hill } : changé trop tard
       *[other] { $count ->
            [one] Côte { $hill } : { $count } sur { $all } a changé trop tard
           *[other] Côte { $hill } : { $count } sur { $all } ont changé trop tard
        }
    }
picture-answer-where-early =
    { $all ->
        [1] Côte { $hill } : changé trop tôt
       *[other] { $count ->
            [one] Côte { $hill } : { $count } sur { $all } a changé trop tôt
           *[other] Côte { $hill } : { $count } sur { $all } ont changé trop tôt
        }
    }
picture-answer-where-mixed =
    { $all ->
        [1] Côte { $hill } : changé trop tôt ou trop tard
       *[other] { $count ->
            [one] Côte { $hill } : { $count } sur { $all } a changé trop tôt ou trop tard
           *[other] Côte { $hill } : { $count } sur { $all } ont changé trop tôt ou trop tard
        }
    }
picture-answer-always = Juste à chaque fois. Bien joué !

picture-answer-often-late = Plus souvent trop tard que juste
picture-answer-often-early = Plus souvent trop tôt que juste
picture-answer-often-mixed = Parfois trop tôt, parfois trop tard

picture-answer-sometimes-late = Presque toujours juste, parfois trop tard
picture-answer-sometimes-early = Presque toujours juste, parfois trop tôt
picture-answer-sometimes-mixed = Presque toujours juste, parfois tôt, parfois tard
picture-answer-better =
    { $who ->
        [riders] { $all ->
            [1] { $better ->
                [0] Pas encore de nets progrès
               *[other] Nets progrès
            }
           *[other] { $better ->
                [one] { $better } d’entre nous sur { $all } a bien progressé
               *[other] { $better } d’entre nous sur { $all } ont bien progressé
            }
        }
       *[pairs] Nous avons bien progressé { $better } fois sur { $all }
    }
picture-answer-hill = Côte { $hill }

picture-table-rider = Cycliste
picture-table-ride = Passage
picture-table-rideNumber = Passage { $ride }
picture-table-attempt = Essai
picture-table-total = Total
picture-table-pitches = Raidillons (%)
picture-table-none = –

## Le rapport

report-title = Rapport
report-intro = Une page en noir et blanc pour chaque route, et des fichiers pour un tableur ou un autre programme.
report-names = Avec les animaux et les surnoms
report-namesHint = Sans eux, la page ne porte aucun nom. Les fichiers portent toujours les surnoms.
report-fileName = seance
report-print = Imprimer
report-csv = Enregistrer en CSV
report-json = Enregistrer en JSON
report-remove = Effacer la séance
report-sureTitle = Effacer la séance ?
report-sure =
    { $rides ->
        [one] { $rides } passage et la liste du groupe disparaîtront de cet appareil. C’est définitif.
       *[other] { $rides } passages et la liste du groupe disparaîtront de cet appareil. C’est définitif.
    }
report-keep = Garder
report-saveFirst = D’abord enregistrer
report-removeSure = Effacer
report-sheet = Aperçu
report-rides =
    { $rides ->
        [one] { $rides } passage
       *[other] { $rides } passages
    }, { $riders ->
        [one] { $riders } cycliste
       *[other] { $riders } cyclistes
    }
report-table = Raidillons
report-pitch = Raidillon
report-caught = Piégés (cyclistes)
report-timing = Tôt / juste / tard (passages)
report-group = Groupe prêt
report-best = Meilleur passage prêt
report-ready = Prêt : la vitesse du raidillon est passée et le dernier changement est fini.
report-sentence = { $sentence }.
report-before = { $distance } avant le pied
report-after = { $distance } après le pied
report-attempts = Premier et dernier essai. En net progrès : { $better }, en net recul : { $worse }, dans la part du hasard (moins de { $chance } points) : { $same }.
report-all = Totaux, essai par essai
report-footer = Les notes viennent d’un modèle de calcul. Elles jugent le moment des changements sur ces routes, pas la valeur d’un cycliste.
