### Le bilan pour les enfants d'une dizaine d'années. Ce qui n'est pas ici est dit comme aux grands (debrief.ftl, les mêmes noms).
### Aucune phrase n'a plus de douze mots ; des mots courts et faciles, chaleureux, jamais un reproche.

## Des parties que plusieurs phrases ont en commun

pitch =
    { $pitches ->
        [1] la côte
       *[other] la côte { $pitch }
    }
pitch-begins =
    { $pitches ->
        [1] La côte
       *[other] La côte { $pitch }
    }
pitch-title =
    { $pitches ->
        [1] La côte
       *[other] Côte { $pitch }
    }
near =
    { $side ->
        [at] juste au début de la côte
        [after] { $metres } après le début de la côte
       *[before] { $metres } avant le début de la côte
    }
aim =
    { $side ->
        [at] juste au début
        [after] juste au début
       *[before] environ { $metres } avant la côte
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
heavy-shifts =
    { $heavy ->
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
       *[other] { $heavy } changements
    }
timing =
    { $timing ->
        [too-early] trop tôt
        [too-late] trop tard
       *[about-right] au bon moment
    }
mark =
    { $mark ->
        [cadence] Rythme des jambes
        [foresight] À temps
        [easing] Changer en douceur
        [chainLine] Chaîne droite
       *[economy] Mains tranquilles
    }

## La question avant toute explication, et sa réponse

guess-title = Devine
guess-question = Dans { pitch }, tu as changé…
guess-openQuestion = Dans ta côte la plus dure, tu as changé…
guess-why = Tu n’as pas changé de vitesse alors qu’il le fallait ? C’est trop tard. Après, on regarde ton passage.
guess-skip = Montre-moi
guess-working = On cherche le meilleur passage…
guess-notMarked = Impossible de calculer tes notes maintenant. Si ton passage est gardé, elles viendront à ta prochaine visite.
guess-matched = Oui ! C’était { timing }.
guess-differed =
    { $guess ->
        [too-early] Tu as dit « trop tôt ». C’était { timing }.
        [too-late] Tu as dit « trop tard ». C’était { timing }.
       *[about-right] Tu as dit « au bon moment ». C’était { timing }.
    }
guess-matchedKind = Tu as l’œil !
guess-differedKind = C’est difficile à dire quand on roule.
guess-noPitch = Cette route n’avait pas de côte raide.
guess-where =
    { $own ->
        [never] Tu n’as pas changé.
        [at] Tu as changé juste au début de la côte.
        [after] Tu as changé { $ownMetres } après le début de la côte.
       *[before] Tu as changé { $ownMetres } avant le début de la côte.
    } { $best ->
        [never] Le meilleur passage n’a pas changé de vitesse.
        [at] Le meilleur passage l’a fait juste au début de la côte.
        [after] Le meilleur passage l’a fait { $bestMetres } après le début.
       *[before] Le meilleur passage l’a fait { $bestMetres } avant le début.
    }
guess-stepsBefore =
    { $made ->
        [0] Tu n’as pas changé à temps. Le meilleur passage a fait { needed-gears }.
       *[other] À temps, tu as passé { made-gears } plus facile. Le meilleur passage a fait { needed-gears }.
    }
needed-gears =
    { $needed ->
        [0] zéro cran
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
       *[other] { $needed } crans
    }
guess-slowest = Tes jambes ont trop ralenti dans la côte.

## Ce que le passage est devenu

end-passed = Tu as réussi !
end-not-yet = Bien essayé. La côte t’attend.
end-ridden = Tu as fait toute la route.
end-explain = Regarde ton passage

## Trois phrases : ce qui a bien marché, une chose à essayer, quoi rouler ensuite

well-title = Bravo pour ça
well-finished = Tu as roulé jusqu’au bout.
well-cadence = Tes jambes ont tourné à un bon rythme.
well-foresight = Tu avais la bonne vitesse avant la côte.
well-easing = Tu as appuyé tout doucement pendant le changement.
well-chainLine = Ta chaîne était bien droite.
well-economy = Tu n’as jamais changé pour rien.

change-title = Essaie ça
advice = Passe { ready-gears } plus facile, { aim }.
ready-gears =
    { $ready ->
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
       *[other] { $ready } crans
    }
change-late-pitch =
    { $how ->
        [slightly] Tu as attendu un peu longtemps dans { pitch }. { advice }
       *[clearly] Tu as attendu trop longtemps dans { pitch }. { advice }
    }
change-stayed = Tu as gardé une vitesse dure dans { pitch }. { advice }
change-early-pitch =
    { $how ->
        [slightly] Tu as changé un peu tôt pour { pitch }. Attends, et change { aim }.
       *[clearly] Tu as changé trop tôt pour { pitch }. Attends, et change { aim }.
    }
change-few-steps =
    { $which ->
        [few] Tu as passé { made-gears } plus facile dans { pitch }. Il en faut { $gears ->
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
           *[other] { $gears }
        }.
       *[hard] Ta vitesse était trop dure dans { pitch }. Passe un cran plus facile.
    }
change-wrong-way = Tu as passé plus dur pour { pitch }, pas plus facile. { advice }
change-pushed = Tu as appuyé très fort dans { pitch }. { advice }
change-foot-down = La vitesse était trop dure dans { pitch }. { advice }
change-ease =
    { $heavy ->
        [0] Appuie un peu plus doucement quand tu changes.
       *[other] Tu as appuyé fort pendant { heavy-shifts }. Appuie doucement, puis change.
    }
change-ease-hub =
    { $heavy ->
        [0] Arrête d’appuyer un instant quand tu changes.
       *[other] Tu as appuyé pendant { heavy-shifts }. Arrête d’appuyer, change, appuie de nouveau.
    }
change-ease-motor =
    { $heavy ->
        [0] Attends un peu que le moteur s’arrête, puis change.
       *[other] Le moteur tirait pendant { heavy-shifts }. Pieds légers, attends, change.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Attends un peu que le moteur s’arrête, puis change.
       *[other] Le moteur tirait pendant { heavy-shifts }. Arrête d’appuyer, attends, change.
    }
change-stood-still = Tes jambes ne bougeaient pas pendant le changement. Fais-les tourner sans forcer.
change-coasted = Tes jambes n’ont rien fait pendant { seconds } à partir de { $place }. Fais-les tourner.
change-coasted-hub = Tes jambes n’ont rien fait pendant { seconds } à partir de { $place }. Appuie après le changement.
change-slow-legs = Tes jambes étaient lentes, surtout à partir de { $place } ({ seconds }). Prends une vitesse plus facile.
change-fast-legs = Tes jambes étaient rapides, surtout à partir de { $place } ({ seconds }). Prends une vitesse plus dure.
change-crossed = La chaîne était de travers pendant { seconds } à partir de { $place }. Prends l’autre plateau.
change-fidget =
    { $changes ->
        [one] Tu as changé { $changes } fois. { $needed ->
            [0] Ça passait aussi sans changer
           *[other] { $needed } fois, c’est assez
        }. Attends un peu plus.
       *[other] Tu as changé { $changes } fois. { $needed ->
            [0] Ça passait aussi sans changer
           *[other] { $needed } fois, c’est assez
        }. Attends un peu plus.
    }
change-dawdle = Tu as roulé très lentement. Garde tes jambes en mouvement et avance.
change-nothing = Rien du tout. Refais pareil !

next-title = Ensuite
next-again = Refais cette route. Pense seulement à ce que tu essaies.
next-onwards = En route pour « { $level } ».
next-onwardsNone = Choisis la route que tu veux.
next-easier-level = D’abord une route plus facile. Puis reviens ici.

## Une fiche pour chaque côte

cards-title = Côte par côte
card-needed = Crans du meilleur passage
card-before = Les tiens avant la côte
card-worst = Jambes les plus lentes dans la côte
card-bestDoes = Ici, le meilleur passage prend { gears } plus facile. Il commence { near }.
card-bestStays = Le meilleur passage ne change pas ici.
card-asksNothing = Ça passe aussi sans changer.
card-footDown = Ici, tu as dû poser le pied.
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
card-watch = Revoir cette côte
card-picture = Où les deux passages ont changé de vitesse dans { pitch }
card-table = Changements dans cette côte

## Les notes

asks-cadence = Tes jambes tournent à un bon rythme.
asks-foresight = Tu as la bonne vitesse avant la côte.
asks-easing = Tu appuies doucement quand tu changes.
asks-chainLine = La chaîne est bien droite.
asks-economy = Tu changes seulement quand il le faut.
noMark-cadence = Tu n’as pas pédalé assez longtemps.
noMark-foresight = Il n’y avait pas de côte raide pour toi.
noMark-easing = Tu n’as pas changé du tout.
noMark-chainLine = Il n’y avait rien à regarder ici.
noMark-economy = Il n’y avait rien à compter.
hold-weakest = Tu as { $most } au plus : ta note « { mark } » est basse.
hold-pace = Tu as roulé lentement. Il ne te reste que { $share }.
hold-tooSlow = Tu as roulé si lentement que cela ne compte pas.
hold-lessonMissing = Pour réussir, il te faut { $atLeast } à « { mark } ».
hold-markMissing = Il te faut aussi { $atLeast } à « { mark } ».
level-strong = super
level-good = bien
level-onTheWay = ça vient
level-start = commence ici
perfect = Tout va bien ici.
small = Presque tout va bien ici.
leftAlone = Tu n’as touché aucune manette. Sur cette route, il faut changer.

## Pourquoi une note est ce qu'elle est (why-...), et ce qui l'aurait changée (better-... : suit « Mieux : »)

why-below-band = Tes jambes étaient lentes pendant { seconds } à partir de { $from }.
better-below-band = passe plus facile quand tes jambes ralentissent.
why-above-band = Tes jambes étaient rapides pendant { seconds } à partir de { $from }.
better-above-band = passe plus dur quand ça descend.
why-coasted = Tes jambes n’ont rien fait pendant { seconds } à partir de { $from }.
better-coasted = garde tes jambes en mouvement.
better-coasted-hub = appuie de nouveau après le changement.
why-overloaded-pitch = { pitch-begins } était dure pour tes jambes.
better-overloaded-pitch = change avant que la côte commence.
why-early-pitch = Tu as changé trop tôt pour { pitch }.
better-early-pitch = attends un peu avant de changer.
why-foot-down-pitch = Tu as posé le pied dans { pitch }.
better-foot-down-pitch = passe plus facile avant que ça monte fort.
why-heavy-shift = Tu as appuyé fort pendant le changement à { $from }.
better-heavy-shift = appuie doucement, puis change.
better-heavy-shift-hub = arrête d’appuyer, change, appuie de nouveau.
better-heavy-shift-motor = attends un peu plus, que le moteur s’arrête aussi.
why-waited-shift = La chaîne a dû attendre à { $from }. Tes jambes ne bougeaient pas.
better-waited-shift = fais tourner tes jambes sans forcer quand tu changes.
why-crossed = La chaîne était de travers pendant { seconds } à partir de { $from }.
better-crossed = prends l’autre plateau.
why-many-shifts =
    { $changes ->
        [one] Tu as passé { $changes } cran. Il n’en fallait { $needed ->
            [0] aucun
           *[other] que { $needed }
        }.
       *[other] Tu as passé { $changes } crans. Il n’en fallait { $needed ->
            [0] aucun
           *[other] que { $needed }
        }.
    }
better-many-shifts = roule sur les petites bosses sans changer.
why-undone = Tu as changé à { $from }, puis remis la vitesse d’avant.
better-undone = garde un peu chaque nouvelle vitesse.

closed = D’abord, devine. Ensuite, tu vois le reste.

print-pitchTitle = { pitch-title }.
print-pitch =
    { $made ->
        [0] Crans qu’il te faut : { $needed }. Les tiens avant la côte : aucun. Jambes au plus lent : { $own } tr/min (meilleur passage { $best }).
       *[other] Crans qu’il te faut : { $needed }. Les tiens avant la côte : { $before } sur { $made }. Jambes au plus lent : { $own } tr/min (meilleur passage { $best }).
    }
