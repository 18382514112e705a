### Quels braquets ? Si les vitesses d'un vélo suffisent pour une route, et ce que d'autres pièces changeraient.
### « Braquet » est le couple d'un plateau et d'un pignon ; ailleurs on dit vitesse, plus facile, plus dure.

intro = D’autres pignons ou plateaux te feraient-ils tenir cette côte ? Le même passage, avec chaque vélo essayé.
road = Route
roads-ladder = Niveaux
roads-own = Tes propres routes
you = Ton vélo : { $parts }. Ta plage : de { $low } à { $high } tr/min, moins en montée.
# Aussi dans un dessin étroit, au bord duquel « tr/min » serait coupé.
perMinute = { $rpm }/min
caution =
    { $rear ->
        [hub] Ce que l’on peut monter est limité par ce que le moyeu et la chaîne supportent : un moyeu n’accepte pas tous les rapports entre plateau et pignon. Avant d’acheter ou de changer quoi que ce soit, demande à un mécanicien qualifié et lis les documents du fabricant.
       *[sprockets] Ce que l’on peut monter est limité par ce que les dérailleurs, la chaîne et la roue libre supportent. Avant d’acheter ou de changer quoi que ce soit, demande à un mécanicien qualifié et lis les documents du fabricant.
    }

## La réponse, en phrases l'une après l'autre

working = Ton vélo roule sur cette route…
failed = Ce vélo n’a pas pu rouler sur cette route. Choisis une autre route, ou vérifie les dentures du vélo.
again = Réessayer
lowest-short = Avec ta vitesse la plus facile, { $gear }, tes jambes se stabilisent à { $rpm } tr/min sur les { $length } les plus raides ({ $slope }). À cet endroit, ta plage commence à { $low }.
lowest-walks =
    { $rpm ->
        [0] Avec ce vélo, tu marches ici. Ta vitesse la plus facile, { $gear }, s’arrête sur les { $length } les plus raides ({ $slope }).
       *[other] Avec ce vélo, tu marches ici : en roulant, tu n’irais pas plus vite. Avec ta vitesse la plus facile, { $gear }, tes jambes se stabiliseraient à { $rpm } tr/min sur les { $length } les plus raides ({ $slope }).
    }
lowest-enough = Ta vitesse la plus facile, { $gear }, suffit ici : sur les { $length } les plus raides ({ $slope }), tes jambes se stabilisent à { $rpm } tr/min.
looking = D’autres pièces sont à l’essai…
help-mild = Avec { $gear }, tes jambes se stabiliseraient à { $rpm }.
help-reaches =
    { $after ->
        [mild] Pour rester ici dans ta plage, il faut { $gear }.
       *[alone] Avec { $gear }, tu resterais dans ta plage.
    }
help-askFirst = Les dérailleurs de ce vélo ne le supportent peut-être pas ; vois plus bas.
help-none =
    { $rear ->
        [hub] Aucune des pièces essayées ici ne te garde dans ta plage. Il faudrait une vitesse de { $needed } par tour de pédales, et ta plus facile fait { $own } : un plateau de { $ring } dents avec ton pignon, ou un pignon de { $sprocket } avec ton plateau.
       *[sprockets] Aucune des pièces essayées ici ne te garde dans ta plage. Il faudrait une vitesse de { $needed } par tour de pédales, et ta plus facile fait { $own } : un plateau de { $ring } dents avec ton plus grand pignon, ou un pignon de { $sprocket } avec ton plus petit plateau.
    }
help-tooSteep = Aucune vitesse n’aide ici : avec ta puissance et ta cadence, { $slope } se roule à { $speed }, et à pied on va aussi vite.
minute-inBand = Ta minute la plus dure de ce passage reste dans ta plage, à { $rpm } tr/min.
minute-below = Ta minute la plus dure de ce passage va de { $from } à { $to } : { $rpm } tr/min, soit { $missing } sous ta plage.
highest-enough = Ta vitesse la plus dure, { $gear }, suffit partout ici.
highest-short =
    { $places ->
        [one] { $seconds ->
            [one] Ta vitesse la plus dure, { $gear }, ne suffit plus à un endroit, pendant { $seconds } seconde en tout : tes jambes moulinent à { $rpm } tr/min.
           *[other] Ta vitesse la plus dure, { $gear }, ne suffit plus à un endroit, pendant { $seconds } secondes en tout : tes jambes moulinent à { $rpm } tr/min.
        }
       *[other] { $seconds ->
            [one] Ta vitesse la plus dure, { $gear }, ne suffit plus à { $places } endroits, pendant { $seconds } seconde en tout : tes jambes moulinent à { $rpm } tr/min.
           *[other] Ta vitesse la plus dure, { $gear }, ne suffit plus à { $places } endroits, pendant { $seconds } secondes en tout : tes jambes moulinent à { $rpm } tr/min.
        }
    }

## Demander une pièce avec ses propres mots

ask = Demander une pièce
ask-label = Et si…
ask-example =
    { $rear ->
        [hub] 22 à l’arrière
       *[sprockets] 34 à l’arrière
    }
ask-button = Essayer
ask-working = Ces pièces roulent sur cette route…
ask-nothing = Écris un nombre de dents, par exemple « 34 à l’arrière », « 32 à l’avant » ou « 11-34 ».
ask-which-end = Dis de quel côté : « à l’arrière » pour les pignons, « à l’avant » pour les plateaux.
ask-impossible = Ces nombres ne donnent ni plateaux ni pignons. Écris-les comme « 46/30 » ou « 11-34 ».
ask-same = C’est ce que ton vélo a déjà.
ask-answer = { $parts } : sur les { $length } les plus raides, tes jambes se stabiliseraient à { $rpm } tr/min au lieu de { $own }.
# Aussi sans accents, comme on tape vite.
hear-back = arrière, arriere, arrières, derrière, derriere, cassette, cassettes, pignon, pignons
hear-front = avant, devant, plateau, plateaux, pédalier, pedalier, manivelle, manivelles
hear-and = et, avec
hear-to = à, a

## La route et les endroits où les vitesses ne suffisent plus

profile = Où les vitesses ne suffisent plus
profile-desc =
    Profil de { $length } de route. { $below ->
        [0] La vitesse la plus facile n’est trop dure nulle part.
        [one] La vitesse la plus facile est trop dure à un endroit.
       *[other] La vitesse la plus facile est trop dure à { $below } endroits.
    } { $above ->
        [0] La plus dure n’est trop facile nulle part.
        [one] La plus dure est trop facile à un endroit.
       *[other] La plus dure est trop facile à { $above } endroits.
    }
profile-below = la plus facile, trop dure
profile-above = la plus dure, trop facile
profile-nowhere = Sur cette route, les vitesses de ce vélo suffisent partout.

## Toutes les vitesses en marches de papier

stairs = Toutes tes vitesses
stairs-box = L’escalier de tes vitesses
stairs-hint = Une marche de papier par vitesse, la plus facile d’abord, dans l’ordre où l’on changerait vraiment. Entre les marches, ce que font les mains.
stairs-desc =
    { $gears ->
        [one] Un escalier d’une seule marche. Le tableau dessous dit la même chose.
       *[other] Un escalier de { $steps } marches avec toutes les { $gears } vitesses. Le tableau dessous dit la même chose.
    }
stairs-really =
    { $gears ->
        [one] { $gears } vitesse.
       *[other] { $gears } vitesses, dont { $different } vraiment différentes.
    }
stairs-eachOwn =
    { $gears ->
        [one] Une seule vitesse.
       *[other] { $gears } vitesses, toutes différentes.
    }
sign-rear =
    { $rear ->
        [hub] main droite, vitesses dans le moyeu
       *[sprockets] main droite, pignons
    }
sign-front = main gauche, plateaux
sign-same = posé sur la marche : vaut autant
sign-near = posé sur la marche : en est proche
sign-crossed = croise la chaîne
table = La même chose en chiffres
table-gear = Braquet
table-development = Développement
table-step = Écart
table-hands = Mains
table-speed = Allure à { $rpm } tr/min
table-also = Sur la même marche
hands-count =
    { $count ->
        [one] { $count } cran
       *[other] { $count } crans
    }
hands =
    { $ring ->
        [bigger] { $rear ->
            [harder] main gauche : plateau plus grand, main droite : { hands-count } plus dur
            [easier] main gauche : plateau plus grand, main droite : { hands-count } plus facile
           *[same] main gauche : plateau plus grand
        }
       *[same] { $rear ->
            [harder] main droite : { hands-count } plus dur
           *[easier] main droite : { hands-count } plus facile
        }
    }
gear-crossed = { $gear }, croise la chaîne
also-same =
    { $chain ->
        [crossed] { $gear }, croise la chaîne (vaut autant)
       *[straight] { $gear } (vaut autant)
    }
also-near =
    { $chain ->
        [crossed] { $gear }, croise la chaîne (proche)
       *[straight] { $gear } (proche)
    }

## D'autres pièces dans un tableau

others = Ce que d’autres pièces changeraient
others-hint = La même personne, la même route, un passage avec chaque vélo. D’abord ceux qui montent sans marcher, puis la minute la plus dure, puis le passage le plus raide, puis le temps dans la plage. Ensuite, à part, les pièces pour lesquelles il faut d’abord demander.
# Above parts that pass a limit of the derailleurs.
askFirst = Demande d’abord en atelier : ces pièces dépassent ce que prennent d’habitude des dérailleurs comme les tiens
others-trying =
    { $count ->
        [0] Rien d’essayé jusqu’ici…
        [one] { $count } essai jusqu’ici…
       *[other] { $count } essais jusqu’ici…
    }
others-tried =
    { $count ->
        [one] { $count } autre jeu de pièces essayé.
       *[other] { $count } autres jeux de pièces essayés.
    }
others-none = Aucune pièce courante avec autant de plateaux et de pignons que les tiens n’est connue ici.
others-all = Tout montrer ({ $count })
others-fewer = En montrer moins
parts = Pièces
getsUp = Montée
getsUp-riding = à vélo
getsUp-walking = à pied pendant { $time }
minute = Minute la plus dure
minute-missing = { $rpm } sous la plage
minute-kept = dans la plage
inBand = Temps dans la plage
steepest = Les { $length } les plus raides
yours = Ton vélo actuel
changed-cassette = autre cassette
changed-rings = autres plateaux
changed-both = les deux changés
take = Essayer ce vélo
take-this = Essayer ce vélo : { $parts }
trade-none = Presque comme ton vélo.
trade-easier-lowest = La vitesse la plus facile l’est encore plus.
trade-harder-highest = La vitesse la plus dure l’est encore plus.
trade-smaller-steps = Les écarts entre les vitesses sont plus petits.
trade-fewer-twins = Moins de vitesses existent en double.
trade-fewer-shifts = Il faut moins de changements sur cette route.
trade-less-capacity = Le dérailleur arrière a moins de chaîne à rattraper.
trade-harder-lowest = La vitesse la plus facile devient plus dure.
trade-loses-highest = La vitesse la plus dure est perdue.
trade-bigger-steps = Les écarts entre les vitesses sont plus grands.
trade-more-twins = Plus de vitesses existent en double.
trade-more-shifts = Il faut plus de changements sur cette route.
trade-more-capacity = Le dérailleur arrière a plus de chaîne à rattraper.
capacity = { $teeth } dents de chaîne à rattraper.
limit-sprocket =
    Demande d’abord : un pignon de { $have } dents dépasse les { $most } que prennent d’habitude { $derailleur ->
        [road] les dérailleurs arrière des vélos de route
       *[long] les dérailleurs arrière à chape longue
    } ({ $source ->
        [published] chiffres de fabricants, pour neuf et dix vitesses
       *[practice] usage courant, sans source
    }).
limit-capacity =
    Demande d’abord : { $have } dents de chaîne dépassent les { $most } que rattrapent d’habitude { $derailleur ->
        [road] les dérailleurs arrière des vélos de route
       *[long] les dérailleurs arrière à chape longue
    } ({ $source ->
        [published] chiffres de fabricants, pour neuf et dix vitesses
       *[practice] usage courant, sans source
    }).
limit-rings =
    Demande d’abord : un écart de { $have } dents entre les plateaux dépasse les { $most } que franchissent d’habitude les dérailleurs avant ({ $source ->
        [published] chiffres de fabricants, pour neuf et dix vitesses
       *[practice] usage courant, sans source
    }).

## Deux passages côte à côte

compare = Les deux passages
compare-close = Fermer les deux passages
compare-this = Les deux passages côte à côte : { $parts }
compare-closeThis = Fermer les deux passages : { $parts }
compare-desc = La cadence le long de la route : ton vélo en tirets, { $parts } en ligne pleine, la plage dessous en bande.
compare-yours = ton vélo
compare-band = bord inférieur de ta plage
compare-figure = Valeur
compare-time = Temps
compare-shifts = Changements
compare-lowest = Vitesse la plus facile
compare-gear = { $gear }, { $metres } par tour

## Le développement : ce qu'un tour de manivelles avance sur la vitesse la plus dure, limité dans les courses de jeunes

rollOut = Développement maximal, pour les courses de jeunes
rollOut-is = Un tour de manivelles sur la vitesse la plus dure, { $gear }, fait avancer ce vélo de { $metres }.
rollOut-limit = Limite
rollOut-none = Sans limite
rollOut-own = La limite de notre club
rollOut-metres = Limite en mètres
rollOut-unreadable = Écris la limite en mètres, de 2 à 12, par exemple 6,45.
rollOut-option =
    { $group ->
        [juniors] Juniors
        [under-16] Moins de 16 ans
        [under-14] Moins de 14 ans
       *[under-12] Moins de 12 ans
    } : { $metres } ({ $body ->
        [world-federation] fédération mondiale
       *[national-federation] une fédération nationale
    }, { $held ->
        [until] jusqu’au { $date }
       *[year] { $date }
    })
rollOut-source =
    { $body ->
        [world-federation] { $held ->
            [until] La fédération mondiale avait cette limite jusqu’au { $date } ; depuis, aucune n’est connue ici.
           *[year] Tiré du règlement de la fédération mondiale de { $date }.
        }
       *[national-federation] { $held ->
            [until] Une fédération nationale avait cette limite jusqu’au { $date } ; depuis, aucune n’est connue ici.
           *[year] Tiré du règlement d’une fédération nationale de { $date }.
        }
    }
rollOut-relaxed = Elle a été assouplie en { $year }.
rollOut-ask = Les règles varient et changent : demande à ta fédération la valeur de cette saison.
rollOut-within = La limite de { $limit } est respectée.
rollOut-beyond = C’est plus que la limite de { $limit }. La vitesse la plus dure qui la respecte est { $gear }.
rollOut-allBeyond = C’est plus que la limite de { $limit }, et toutes les autres vitesses de ce vélo la dépassent aussi.
rollOut-measured = En course, on fait rouler le vélo au sol et on mesure ; le pneu et sa pression changent le résultat de quelques centimètres.
