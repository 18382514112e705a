### La page des progrès : les passages témoins et ce qu'ils peuvent montrer, les notes de tous les passages, et ce qui est gardé sans notes.

title = Progrès
intro = Les passages témoins disent si quelque chose a été appris. Les passages d’entraînement disent où s’entraîner.
road = Sur la route : ce que montrent des sorties enregistrées
empty = Aucun passage n’est encore gardé ici. Roule d’abord ; tes notes seront ici ensuite.
older =
    { $rides ->
        [one] { $rides } passage a été fait avant que les jambes du jeu changent. Il garde ses notes ; il ne peut plus être rejoué ni comparé à de plus récents.
       *[other] { $rides } passages ont été faits avant que les jambes du jeu changent. Ils gardent leurs notes ; ils ne peuvent plus être rejoués ni comparés à de plus récents.
    }

## Les passages témoins

check-title = Passages témoins
check-what = Un passage témoin est une route que tu n’as jamais vue, sans aucune aide. Fais-en un avant de t’entraîner et un autre jour un deuxième. Jusqu’à trois par jour sont réunis : plus il y en a, plus le changement qui se voit est petit.
check-minutes = Avec ton vélo, il dure environ { $everyone } min, celui des enfants environ { $children } min.
check-own-hub = Un moyeu se juge aussi aux lignes d’arrêt : ta route en a deux.
check-own-crank-motor = Un moteur de pédalier tire aussi sur la chaîne : dans deux côtes de ta route, tu changes pendant qu’il tire.
check-own-wheel-motor = À vive allure, le moteur n’aide plus : deux côtes de ta route arrivent à ce moment-là.
check-ride-everyone = Faire un passage témoin
check-ride-children = Passage témoin pour enfants
check-group = Vélo et route
check-groupOf =
    { $road ->
        [children] { $bike }, passage témoin pour enfants
        [hub] { $bike }, lignes d’arrêt pour moyeux
        [hub-children] { $bike }, lignes d’arrêt pour moyeux, enfants
        [crank-motor] { $bike }, côtes qui se raidissent, pour moteur de pédalier
        [wheel-motor] { $bike }, côtes rapides pour moteur de roue
       *[everyone] { $bike }
    }
change =
    { $way ->
        [up] { $points } de plus
        [down] { $points } de moins
       *[same] pareil
    }
days =
    { $days ->
        [one] un jour
       *[other] { $days } jours
    }
finding-need-first = Pas encore de passage témoin.
finding-need-second = Ton premier passage témoin a donné { $first } sur 100. Entraîne-toi, puis fais-en un autre, de préférence un autre jour.
finding-same-day =
    { $certain ->
        [yes] De { $first } à { $latest } en un jour : { change }, plus que ne le fait d’habitude le hasard seul. Un autre jour montrera si cela reste.
       *[no] De { $first } à { $latest } en un jour : { change }. Le hasard seul fait un tel écart. Refais-en un un autre jour.
    }
finding-retest =
    { $certain ->
        [better] De { $first } à { $latest }, { days } plus tard, sans aide : { change }, à { $chance } près. C’est un apprentissage, dans ce jeu.
        [worse] De { $first } à { $latest }, { days } plus tard, sans aide : { change }, à { $chance } près. Fatigue, ou manque d’entraînement ? Refais-en un.
       *[no] De { $first } à { $latest }, { days } plus tard, sans aide : { change }, à { $chance } près. On ne peut pas le distinguer du hasard.
    }
role-first = premier
role-same-day = même jour
role-retest = autre jour
check-chance = À moins de { $points } points du premier : le hasard seul peut faire cela.
check-sides =
    { $which ->
        [all] Réunis : { $before } du premier jour et { $after } du dernier.
       *[few] Réunis : { $before } du premier jour et { $after } du dernier. { $most } de chaque côté montreraient un changement plus petit.
    }
check-desc =
    { $rides ->
        [1] Un passage témoin : { $first } sur 100.
       *[other] { $rides } passages témoins dans l’ordre où ils ont été faits. Le premier a donné { $first } sur 100, le dernier { $latest }.
    }
check-table = Passages témoins en chiffres

## Ce que cela peut montrer

limits-title = Ce que cela peut montrer, et ce que cela ne peut pas
limits =
    Les passages d’entraînement ont des aides, et des routes que tu finis par connaître. Leurs notes peuvent monter sans que tu apprennes, et baisser pendant que tu travailles quelque chose de difficile. Ici, on ne les compare donc pas.
    Les passages témoins sont tous aussi difficiles et toujours nouveaux. Un seul dit peu de chose : compare le premier avec celui d’un autre jour, sur le même vélo.
    Tout cela parle de ce jeu. Personne n’a montré que de meilleures notes ici font mieux changer de vitesse sur une route.

## Les notes de tous les passages, en petits graphiques

marks-title = Notes de tous les passages
marks-hint = Le plus ancien à gauche. Pour trouver quoi travailler, pas pour prouver un progrès.
marks-which = Passages de
marks-all = tous les niveaux
mark-cadence = Cadence
mark-foresight = Anticipation
mark-easing = Pieds légers
mark-chainLine = Ligne de chaîne
mark-economy = Économie
mark-total = Total
marks-latest = dernier
marks-none = encore rien à juger
kind-ride = entraînement
kind-check = passage témoin
kind-clinic = en séance
marks-desc =
    { $rides ->
        [1] { $name } : un passage, { $first } sur 100.
       *[other] { $name } : { $rides } passages, de { $first } à { $latest } sur 100.
    }
marks-shown = Les { $shown } derniers passages sur { $all }.
marks-table = La même chose en chiffres
table-date = Date
table-level = Niveau
table-kind = Type
table-role = Lequel
table-total = Total
table-passed = Réussi
table-yes = oui
table-no = non

## Les passages gardés sans notes

unmarked-title = Gardés sans notes
standing-to-mark = { $date } : pas encore noté ; le jeu réessaie quand on l’ouvre
standing-unfinished = { $date } : interrompu avant l’arrivée, donc sans notes
standing-older = { $date } : fait avant que les jambes du jeu changent ; il ne peut plus être rejoué ni noté
