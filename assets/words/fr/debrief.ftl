### Le bilan pour les grands. Les enfants reçoivent à la place ce qui est dans debriefChildren.ftl, sous les mêmes noms.

## Des parties que plusieurs phrases ont en commun

pitch =
    { $pitches ->
        [1] le raidillon
       *[other] { $pitch ->
            [1] le premier raidillon
            [2] le deuxième raidillon
            [3] le troisième raidillon
            [4] le quatrième raidillon
            [5] le cinquième raidillon
            [6] le sixième raidillon
            [7] le septième raidillon
            [8] le huitième raidillon
            [9] le neuvième raidillon
            [10] le dixième raidillon
           *[other] le raidillon { $pitch }
        }
    }
pitch-begins =
    { $pitches ->
        [1] Le raidillon
       *[other] { $pitch ->
            [1] Le premier raidillon
            [2] Le deuxième raidillon
            [3] Le troisième raidillon
            [4] Le quatrième raidillon
            [5] Le cinquième raidillon
            [6] Le sixième raidillon
            [7] Le septième raidillon
            [8] Le huitième raidillon
            [9] Le neuvième raidillon
            [10] Le dixième raidillon
           *[other] Le raidillon { $pitch }
        }
    }
pitch-title =
    { $pitches ->
        [1] Le raidillon
       *[other] { $pitch ->
            [1] Premier raidillon
            [2] Deuxième raidillon
            [3] Troisième raidillon
            [4] Quatrième raidillon
            [5] Cinquième raidillon
            [6] Sixième raidillon
            [7] Septième raidillon
            [8] Huitième raidillon
            [9] Neuvième raidillon
            [10] Dixième raidillon
           *[other] Raidillon { $pitch }
        }
    }
near =
    { $side ->
        [at] juste au pied
        [after] { $metres } après le pied
       *[before] { $metres } avant le pied
    }
aim =
    { $side ->
        [at] juste au pied
        [after] juste quand la pente commence
       *[before] environ { $metres } avant le pied
    }
gears =
    { $gears ->
        [1] un cran
        [2] deux crans
        [3] trois crans
        [4] quatre crans
        [5] cinq crans
        [6] six crans
        [7] sept crans
        [8] huit crans
        [9] neuf crans
        [10] dix crans
       *[other] { $gears } crans
    }
made-gears =
    { $made ->
        [0] aucun cran
        [1] un cran
        [2] deux crans
        [3] trois crans
        [4] quatre crans
        [5] cinq crans
        [6] six crans
        [7] sept crans
        [8] huit crans
        [9] neuf crans
        [10] dix crans
       *[other] { $made } crans
    }
seconds =
    { $seconds ->
        [1] une seconde
        [2] deux secondes
        [3] trois secondes
        [4] quatre secondes
        [5] cinq secondes
        [6] six secondes
        [7] sept secondes
        [8] huit secondes
        [9] neuf secondes
        [10] dix secondes
       *[other] { $seconds } secondes
    }
changes =
    { $changes ->
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
       *[other] { $changes } changements
    }
some-of =
    { $which ->
        [all] { $changes ->
            [1] ton seul changement
           *[other] tes { changes }
        }
       *[some] { $heavy ->
            [1] un changement sur { $changes }
            [2] deux changements sur { $changes }
            [3] trois changements sur { $changes }
            [4] quatre changements sur { $changes }
            [5] cinq changements sur { $changes }
            [6] six changements sur { $changes }
            [7] sept changements sur { $changes }
            [8] huit changements sur { $changes }
            [9] neuf changements sur { $changes }
            [10] dix changements sur { $changes }
           *[other] { $heavy } changements sur { $changes }
        }
    }
advice =
    { $rest ->
        [some] Passe { gears } plus facile { aim }, le reste en montant.
       *[none] Passe { gears } plus facile { aim }.
    }
timing =
    { $timing ->
        [too-early] trop tôt
        [too-late] trop tard
       *[about-right] au bon moment
    }
mark =
    { $mark ->
        [cadence] Cadence
        [foresight] Anticipation
        [easing] Pieds légers
        [chainLine] Ligne de chaîne
       *[economy] Économie
    }
# Avec son article.
mark-within =
    { $mark ->
        [cadence] la cadence
        [foresight] l’anticipation
        [easing] les pieds légers
        [chainLine] la ligne de chaîne
       *[economy] l’économie
    }

## La question avant toute explication, et sa réponse

guess-title = D’abord, devine
guess-question = Dans { pitch }, tu as changé…
guess-openQuestion = Dans le raidillon qui a le plus coûté à tes jambes, tu as changé…
guess-why = Ne pas changer de vitesse là où il le fallait compte comme trop tard. Ensuite, le passage est expliqué.
guess-skip = Dis-le-moi
guess-working = Le meilleur passage sur ton vélo est en cours de calcul…
guess-notMarked = Les notes n’ont pas pu être calculées maintenant. Un passage gardé les reçoit plus tard, quand le jeu est rouvert.
guess-share = { $percent } de fait
guess-matched = Tu l’as senti : { timing }.
guess-differed =
    { $guess ->
        [too-early] Tu as senti « trop tôt » ; c’était { timing }.
        [too-late] Tu as senti « trop tard » ; c’était { timing }.
       *[about-right] Tu as senti « au bon moment » ; c’était { timing }.
    }
guess-told = C’était { timing }.
guess-matchedKind = C’est en le remarquant que l’on progresse.
guess-differedKind = Difficile à sentir en roulant. La bande montre où.
guess-noPitch = Sur cette route, aucun raidillon n’était assez raide pour demander de changer.
guess-where =
    { $own ->
        [never] Tu n’as pas changé de vitesse
        [at] Tu as commencé à passer plus facile juste au pied
        [after] Tu as commencé à passer plus facile { $ownMetres } après le pied
       *[before] Tu as commencé à passer plus facile { $ownMetres } avant le pied
    } ; { $best ->
        [never] le meilleur passage n’a pas changé de vitesse.
        [at] le meilleur passage a changé de vitesse juste au pied.
        [after] le meilleur passage a changé de vitesse { $bestMetres } après le pied.
       *[before] le meilleur passage a changé de vitesse { $bestMetres } avant le pied.
    }
guess-stepsBefore =
    { $made ->
        [0] Avant le pied, tu n’avais passé aucun cran plus facile ; le meilleur passage { needed }.
       *[other] Avant le pied, tu avais passé { made-gears } plus facile ; le meilleur passage { needed }.
    }
# Suit « le meilleur passage » : des crans ou des changements.
needed =
    { $needed ->
        [0] n’en a fait aucun
        [1] en a fait un
        [2] en a fait deux
        [3] en a fait trois
        [4] en a fait quatre
        [5] en a fait cinq
        [6] en a fait six
        [7] en a fait sept
        [8] en a fait huit
        [9] en a fait neuf
        [10] en a fait dix
       *[other] en a fait { $needed }
    }
guess-slowest = Tes jambes ont ralenti jusqu’à { $own } tr/min ; le meilleur passage est resté à { $best }.

## Ce que le passage est devenu

end-passed = Tu as réussi.
end-not-yet = La côte t’attend.
end-ridden = La route est faite.
end-explain = Ce qui s’est passé, pourquoi et où
stamp-early = tôt
stamp-soft = léger
stamp-smooth = fluide
stampState-earned = fait
stampState-not-yet = pas encore
stampState-not-asked = pas demandé ici

## Trois phrases : ce qui a bien marché, une chose à changer, quoi rouler ensuite

well-title = Ça a bien marché
well-finished = Tu as roulé jusqu’au bout.
well-cadence = Tes jambes ont gardé un bon rythme presque tout le temps.
well-foresight = Tu étais sur la bonne vitesse avant que la route la demande.
well-easing = Tu as eu les pieds légers à chaque changement.
well-chainLine = Tu as gardé la chaîne bien droite.
well-economy = Tu n’as fait aucun changement inutile.

change-title = Une chose à changer
change-late-pitch =
    { $how ->
        [slightly] Dans { pitch }, tu as passé plus facile un peu tard pour tes jambes. { advice }
       *[clearly] Dans { pitch }, tu as passé plus facile trop tard pour tes jambes. { advice }
    }
change-stayed = Dans { pitch }, tu as gardé une vitesse trop dure. { advice }
change-early-pitch =
    { $how ->
        [slightly] Pour { pitch }, tu as changé un peu tôt. Reste sur ta vitesse, et passe plus facile { aim }.
       *[clearly] Pour { pitch }, tu as changé trop tôt. Reste sur ta vitesse, et passe plus facile { aim }.
    }
change-few-steps =
    { $which ->
        [few] Dans { pitch }, tu as seulement passé { made-gears } plus facile. Là, passe { gears } plus facile.
       *[hard] Dans { pitch }, ta vitesse était encore trop dure. Là, passe un cran plus facile.
    }
change-wrong-way = Dans { pitch }, tu as passé plus dur au lieu de plus facile. { advice }
change-pushed = Dans { pitch }, tu as appuyé fort au lieu de changer. { advice }
change-foot-down = Dans { pitch }, la vitesse était trop dure et tu as mis pied à terre. { advice }
change-ease =
    { $heavy ->
        [0] Appuie moins sur les pédales pendant que la chaîne se déplace, juste un instant.
       *[other] Tu as fait { some-of } en appuyant fort. Pieds légers un instant, puis change.
    }
change-ease-hub =
    { $heavy ->
        [0] Relâche la pression pendant que le moyeu change, juste un instant.
       *[other] Tu as fait { some-of } en continuant d’appuyer : le moyeu a cogné. Relâche la pression, change, puis appuie de nouveau.
    }
change-ease-motor =
    { $heavy ->
        [0] Laisse au moteur un instant pour lâcher : pieds légers, le temps d’un souffle, puis change.
       *[other] Tu as fait { some-of } alors que le moteur tirait encore sur la chaîne. Pieds légers, attends, le temps d’un souffle, que le moteur lâche, puis change.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Laisse au moteur un instant pour lâcher : relâche la pression, le temps d’un souffle, puis change.
       *[other] Tu as fait { some-of } alors que le moteur tirait encore. Relâche toute la pression, attends, le temps d’un souffle, que le moteur lâche, puis change.
    }
change-stood-still = Tu as demandé { some-of } alors que tes jambes se reposaient. Un moyeu aime cela, une chaîne doit tourner : continue de faire tourner les pédales, sans forcer.
change-coasted = Tes jambes se sont reposées là où la route a besoin d’elles, le plus longtemps à partir de { $place } : { seconds }. Continue de faire tourner les pédales.
change-coasted-hub = Tes jambes se sont reposées là où la route a besoin d’elles, le plus longtemps à partir de { $place } : { seconds }. Un moyeu n’a besoin que d’un instant ; ensuite, appuie de nouveau.
change-slow-legs = Tes jambes ont tourné lentement, le plus longtemps à partir de { $place } : { seconds }. Un cran plus facile les garde en mouvement.
change-fast-legs = Tes jambes ont tourné vite, le plus longtemps à partir de { $place } : { seconds }. Un cran plus dur les calme.
change-crossed = La chaîne était croisée pendant { seconds } à partir de { $place }. Change de plateau, et d’un cran à l’arrière pour compenser.
change-fidget = Tu as fait { changes } ; le meilleur passage { needed }. Attends le temps d’un souffle avant le suivant.
change-dawdle = Tu as mis { $times } fois le temps du meilleur passage. Roule avec une vitesse que tu peux emmener à un bon rythme, et continue.
change-nothing = Rien. Refais-le exactement comme ça.

next-title = Ensuite
next-again = Encore cette route : un essai de plus, avec en tête seulement la chose à changer.
next-onwards = En route pour « { $level } ».
next-onwardsNone = Le niveau que tu veux : celui-ci, tu le tiens.
next-easier-level = D’abord une route plus douce, puis reviens à celle-ci.

## Une fiche pour chaque raidillon

cards-title = Raidillon par raidillon
card-steep = { $percent } sur { $length }
card-needed = Meilleur passage, crans plus facile
card-before = Les tiens avant le pied
card-ofMade =
    { $made ->
        [0] aucun
       *[other] { $before } sur { $made } faits
    }
card-worst = Jambes les plus lentes dans le raidillon
card-worstPair = { $own } tr/min (meilleur : { $best })
card-bestDoes =
    { $which ->
        [all] Ici, le meilleur passage prend { gears } plus facile, le tout avant le pied, en commençant { near }.
        [none] Ici, le meilleur passage prend { gears } plus facile, rien avant le pied, en commençant { near }.
       *[some] Ici, le meilleur passage prend { gears } plus facile, dont { $before ->
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
           *[other] { $before }
        } avant le pied, en commençant { near }.
    }
card-bestStays = Le meilleur passage ne change pas ici.
card-asksNothing = Ça passe aussi sans changer.
card-footDown = Ici, tu as mis pied à terre.
card-timing =
    { $timing ->
        [too-early] Trop tôt
        [too-late] Trop tard
       *[about-right] Au bon moment
    }
card-tendency =
    { $timing ->
        [too-early] Un peu tôt
        [too-late] Un peu tard
       *[about-right] Au bon moment
    }
card-watch = Revoir ce raidillon
card-picture = Où les deux passages ont changé de vitesse dans { pitch }
card-pictureDesc = La route vue de côté. Au-dessus tes changements, en dessous ceux du meilleur passage.
card-table = Changements dans ce raidillon
card-who = Qui
card-you = toi
card-best = meilleur
card-where = Où

## Les notes

marks-title = Notes
marks-total = Total
marks-passed = Réussi (à partir de { $pass })
marks-notYet = Pas encore (réussi à partir de { $pass })
asks-cadence = Les jambes dans ta plage
asks-foresight = La vitesse prête avant la côte
asks-easing = Des pieds légers pendant le changement
asks-chainLine = Une chaîne droite
asks-economy = Aucun changement inutile
noMark = sans note
noMark-cadence = Tu n’as pas pédalé assez longtemps pour en juger.
noMark-foresight = Aucun raidillon de ce passage ne demandait de changer.
noMark-easing = Tu n’as pas changé : les pieds légers n’ont pas eu à servir.
noMark-chainLine = Rien à juger : un seul plateau, ou aucun changement.
noMark-economy = Il n’y avait rien à compter.
hold-weakest = { mark } : cette note limite le total. Avec elle, il est de { $most } au plus.
hold-pace = Tu as mis { $times } fois le temps du meilleur passage. Il reste { $share } du total.
hold-tooSlow = Tu as mis { $times } fois le temps du meilleur passage. À cette allure, il n’y a pas de total.
hold-lessonMissing = Cette route travaille { mark-within } : pour la réussir, il faut y obtenir au moins { $atLeast }.
hold-markMissing = Pour réussir, il faut aussi au moins { $atLeast } pour { mark-within }.
level-strong = très bien
level-good = bien
level-onTheWay = en bonne voie
level-start = commence ici
perfect = Rien n’a été perdu ici.
small = Ici, presque rien n’a été perdu.
leftAlone = Aucune manette n’a été touchée là où la route le demandait.
more =
    { $more ->
        [1] Encore un
        [2] Encore deux
        [3] Encore trois
        [4] Encore quatre
        [5] Encore cinq
       *[other] Encore { $more }
    }
better = Mieux :

## Pourquoi une note est ce qu'elle est (why-...), et ce qui l'aurait changée (better-... : suit « Mieux : »)

why-below-band = Jambes lentes pendant { seconds } à partir de { $from }, jusqu’à { $rpm } tr/min.
better-below-band = passe plus facile dès que les jambes commencent à ralentir.
why-above-band = Jambes rapides pendant { seconds } à partir de { $from }, jusqu’à { $rpm } tr/min.
better-above-band = passe plus dur quand la route te laisse filer.
why-coasted = Tes jambes se sont reposées pendant { seconds } à partir de { $from }, là où le meilleur passage pédale.
better-coasted = continue de faire tourner les pédales sur le plat et en côte.
better-coasted-hub = appuie de nouveau dès que le moyeu a pris sa vitesse.
why-overloaded-pitch = { pitch-begins } a pesé sur tes jambes : tu as perdu { $percent } de ce que fait gagner le bon moment.
better-overloaded-pitch = commence à changer avant le pied.
why-early-pitch = Tu as changé trop tôt pour { pitch } : tu as perdu { $percent } de ce que fait gagner le bon moment.
better-early-pitch = reste un peu plus longtemps sur ta vitesse.
why-foot-down-pitch = Tu as mis pied à terre dans { pitch }.
better-foot-down-pitch = prends une vitesse facile avant que ce soit raide.
why-heavy-shift =
    { $derailleur ->
        [front] Changement de plateau sous pression à { $from }, à { $percent } de la pression régulière.
       *[rear] Changement sous pression à { $from }, à { $percent } de la pression régulière.
    }
better-heavy-shift = pieds légers pendant un demi-tour, puis change.
better-heavy-shift-hub = relâche la pression, et le moyeu prend sa vitesse.
better-heavy-shift-motor = pieds légers un souffle plus tôt, pour que le moteur ait lâché lui aussi.
why-waited-shift = À { $from }, la chaîne a attendu : tes jambes se reposaient.
better-waited-shift = continue de faire tourner les pédales, sans forcer, pendant qu’elle se déplace.
why-crossed = La chaîne était croisée pendant { seconds } à partir de { $from }.
better-crossed = change de plateau plus tôt.
why-many-shifts = Tu as fait { changes } ; le meilleur passage { needed }.
better-many-shifts = laisse filer les petites bosses.
why-undone = Un changement à { $from } a été annulé aussitôt.
better-undone = laisse à une nouvelle vitesse trois tours de pédales.

## Ce que l'on peut faire maintenant

doing-title = Et maintenant
doing-again = Refaire
doing-next = Ensuite : { $level }
doing-watch = Revoir depuis le début
doing-print = Imprimer
doing-saveRide = Enregistrer le passage
doing-savePicture = Enregistrer une image
doing-pictureFailed = Ce navigateur n’a pas pu dessiner l’image. Imprimer marche aussi.
doing-backToGroup = Retour au groupe
doing-backToBench = Retour à l’atelier
doing-besideRoad = À côté de ta sortie sur route
freshPatch = Un nouvel écusson est à toi : { $lesson }.
differs = Rejoué, cet enregistrement a donné quelque chose d’un peu différent. L’image n’est peut-être pas exacte.
closed = Le reste s’ouvre après ta réponse.

## Si le passage est gardé, et sinon pourquoi

saved-saving = On garde le passage…
saved-saved = Ce passage est gardé sur cet appareil.
saved-not-saved = Ce passage n’a pas été gardé.
notSaved-private-window = Ce passage n’est pas gardé : le navigateur ne garde rien dans cette fenêtre. Enregistre-le dans un fichier, ou ouvre une fenêtre normale.
notSaved-disk-full = Ce passage n’est pas gardé : l’appareil n’a plus de place. Enregistre-le dans un fichier, ou libère de la place ; le jeu réessaiera.
notSaved-connection-lost = Ce passage n’est pas encore gardé : le navigateur a perdu son espace de stockage. Enregistre-le dans un fichier ; le jeu réessaiera.
notSaved-newer-version = Ce passage n’est pas gardé : une version plus récente du jeu est passée par ici. Recharge la page pour mettre à jour.
notSaved-blocked = Ce passage n’est pas gardé : un autre onglet du jeu l’empêche. Ferme-le ; le jeu réessaiera.
notSaved-hangs = Ce passage n’est pas encore gardé : le navigateur ne répond pas. Par prudence, enregistre-le dans un fichier.
notSaved-corrupt = Ce passage n’est pas gardé : quelque chose de gardé ici est illisible. Enregistre-le dans un fichier.
notSaved-somebody-else = Ce passage a été fait avec d’autres et n’est pas gardé ici. Enregistre-le dans un fichier.
notSaved-trial = Un tour d’essai n’est pas gardé.
notSaved-not-judged = Ce passage n’a pas pu être calculé : il n’est pas gardé. Enregistre-le dans un fichier.
notSaved-not-fetched = Ce passage n’est pas encore gardé : une partie du jeu n’a pas pu être chargée. Vérifie la connexion ; le jeu réessaiera. Par prudence, enregistre-le dans un fichier.
notSaved-localBackup = Ses notes sont gardées, le passage lui-même ne l’est pas.

## La feuille imprimée

print-title = Before the Hill : un passage
print-subtitle = { $level } · { $bike } · { $rider }
print-legend = Noir : toi. Gris : le meilleur passage trouvé pour ce vélo et ce cycliste. Point : changement net ; demi-point : un peu forcé ; triangle : forcé. Croix : pied à terre.
print-marks = { marks-title }. { marks-total } : { $total }.
print-pitchTitle = { pitch-title }.
print-pitch = { card-needed } : { $needed }. { card-before } : { card-ofMade }. { card-worst } : { card-worstPair }.
