### La page du vélo et du cycliste : les vélos au choix, un vélo à soi, le cycliste, le test du rythme, les couleurs.

intro = Prends le vélo qui ressemble le plus au tien. Il roule comme le disent ses vitesses, ses roues et son poids.
bikes = Vélo
ownHint = Tes propres plateaux, pignons et pneus
done = Rouler avec ce vélo
motorTitle = Avant de rouler avec un moteur

## Ce qu'il y a à savoir d'un vélo, côte à côte, après le nombre de ses vitesses

fact-motor-crank = moteur de pédalier
fact-motor-wheel = moteur de roue
fact-backPedal = frein à rétropédalage
fact-mechanical = à câble
fact-electronic = électronique
fact-tyre = pneu { $tyre }

drawing =
    { $rear ->
        [hub] { $ringCount ->
            [one] Plateau { $rings }, vitesses dans le moyeu derrière un pignon de { $sprockets }.
           *[other] Plateaux { $rings }, vitesses dans le moyeu derrière un pignon de { $sprockets }.
        }
       *[sprockets] { $ringCount ->
            [one] Plateau { $rings }. Pignons { $sprockets }.
           *[other] Plateaux { $rings }. Pignons { $sprockets }.
        }
    }

## Un vélo à soi. Les nombres après « par exemple » se tapent ainsi : ils restent comme ils sont

own-title = Vélo personnel
own-intro = Compte les dents, ou lis les nombres gravés dessus.
rings = Plateaux
rings-hint = Par exemple 50/34, ou 32.
gearing = Vitesses à l’arrière
gearing-sprockets = Pignons et dérailleur
gearing-three = Moyeu à 3 vitesses
gearing-three-wide = Moyeu à 3 vitesses, plus espacées
gearing-five = Moyeu à 5 vitesses
gearing-five-wide = Moyeu à 5 vitesses, plus espacées
gearing-seven = Moyeu à 7 vitesses
gearing-eight = Moyeu à 8 vitesses, serrées
gearing-eight-wide = Moyeu à 8 vitesses, espacées
gearing-fourteen = Moyeu à 14 vitesses
hubSprocket = Pignon du moyeu
hubSprocket-hint = Ses dents, comme 19.
hubSprocket-wrong = Un moyeu a un seul pignon. Écris ses dents, par exemple 19.
backPedalBrake = Il freine quand je pédale en arrière
hubRule = Un moyeu change quand tu n’appuies pas : relâche la pression, ou arrête-toi.
motor = Moteur
motor-none = Sans moteur
motor-crank = Moteur de pédalier
motor-wheel = Moteur de roue
help = Son assistance
help-much =
    { $ratio ->
        [0] Coupée
        [0.5] La moitié de ta force
        [1] Autant que toi
       *[other] Deux fois plus que toi
    }
battery = Dans la batterie
battery-hint = En wattheures, au début d’un passage, comme 500.
battery-wrong = Écris les wattheures de la batterie, de 0 à 999, par exemple 500.
brakeSwitches = Les leviers de frein le coupent
way = Pignons
way-range = Du plus petit au plus grand
way-each = Un par un
range = Étendue de la cassette
range-hint = Par exemple 11-32.
count = Combien de pignons
completed = Compris comme { $teeth }. Ce ne sont pas les tiens ? Écris-les un par un.
sprocketTeeth = Dents de chaque pignon
sprocket = Pignon { $place }
add = Ajouter un pignon
remove = Enlever le pignon { $place }
emptySprocket = Le pignon { $place } est vide. Écris ses dents, ou enlève-le.
tyre = Pneu
tyre-hint = L’inscription sur son flanc, comme 28-622.
crank = Longueur des manivelles
crank-hint = En mm, gravée à l’intérieur, comme 170.
crank-wrong = Écris la longueur des manivelles en mm, de 90 à 200, par exemple 170.
mass = Poids du vélo
mass-hint = En kg. Une estimation suffit.
mass-wrong = Écris le poids en kg, de 5 à 40, par exemple 14 ou 9,5.
shifters = Commande des vitesses
shifters-mechanical = À câble
shifters-electronic = Électronique
refuses = Refuse les vitesses qui croisent la chaîne
lastGood = Le dessin montre le dernier vélo possible.
warning-capacity = Ici, le dérailleur arrière devrait rattraper { $capacityTeeth } dents de chaîne ; les modèles habituels en rattrapent { $usualTeeth } au plus. Demande à un mécanicien, et lis les documents du fabricant.
warning-big-step = De { $fromTeeth } à { $toTeeth } dents, l’écart est grand pour un dérailleur avant. Demande à un mécanicien, et lis les documents du fabricant.

## Pourquoi ce qui a été tapé n'est pas une pièce de vélo

problem-rings-unreadable = Écris les dents des plateaux, par exemple 50/34 ou 32.
problem-too-many-rings = { $count } plateaux, c’est plus qu’un vélo n’en a. Écris un à trois nombres, comme 48/36/26.
problem-ring-size = Un plateau de { $teeth } dents n’existe pas. Les plateaux habituels en ont de { $leastTeeth } à { $mostTeeth } ; recompte ou cherche le nombre gravé dessus.
problem-rings-order = Les plateaux sont dans le désordre. Écris-les du plus grand au plus petit ou du plus petit au plus grand, chacun une seule fois.
problem-sprockets-unreadable = Écris les dents des pignons, par exemple 11-32, ou chacune : 11 13 15 18 21 24 28 32.
problem-sprocket-size = Un pignon de { $teeth } dents n’existe pas. Les pignons habituels en ont de { $leastTeeth } à { $mostTeeth } ; recompte ou cherche le nombre gravé dessus.
problem-too-many-sprockets = { $count } pignons, c’est plus qu’une cassette n’en a. Écris-en { $most } au plus.
problem-sprocket-twice = Un nombre est écrit deux fois. Dans une cassette, tous les pignons sont différents.
problem-sprockets-order = Les pignons sont dans le désordre. Écris-les du plus petit au plus grand.
problem-sprocket-count = Dis combien il y a de pignons, de { $least } à { $most }.
problem-too-narrow = { $count } pignons n’entrent pas entre { $leastTeeth } et { $mostTeeth } dents. Écris-les un par un, ou moins.
problem-tyre-unreadable = Écris l’inscription ISO du flanc du pneu, par exemple 28-622 ou 47-406.
problem-tyre-size = { $tyreWidthMm }-{ $beadSeatMm } n’est pas un pneu de vélo. Le premier nombre est la largeur (18 à 125 mm), le second la jante (200 à 700 mm).

## Le cycliste

rider = Cycliste
rider-way = À quel point te connais-tu ?
rider-way-feel = Au ressenti
rider-way-numbers = En chiffres
rider-about-child-9 = Poids plume, jambes vives pour les petites côtes.
rider-about-adult-new = S’essouffle sur un pont.
rider-about-adult-weekly = Aime les côtes qui ont une fin.
rider-about-adult-strong = Cherche la côte.
rider-mass = Poids du cycliste
rider-mass-hint = En kg, avec les vêtements.
rider-mass-wrong = Écris le poids en kg, de 15 à 200, par exemple 68.
rider-power = Puissance régulière
rider-power-hint = En watts, ce que tu tiens une heure en parlant.
rider-power-wrong = Écris la puissance en watts, de 20 à 450, par exemple 130.
rider-low = La cadence la plus lente qui te plaît
rider-low-hint = Tours de pédales par minute.
rider-low-wrong = Écris les tours par minute, de 40 à 120, par exemple 70.
rider-high = La cadence la plus rapide qui te plaît
rider-high-hint = Tours de pédales par minute.
rider-high-wrong = Écris les tours par minute, de 45 à 130, par exemple 90.
rider-narrow = La plus rapide doit dépasser la plus lente de 5 au moins.

## Le test du rythme : taper une fois par tour de pédales donne la cadence

tap = Test du rythme
tap-intro = Fais tourner les pédales comme il te plaît, ou imagine-le. Tape chaque fois que le même pied est en bas, pendant 20 secondes. La touche Espace marche aussi.
tap-first = Tape
tap-firstHint = Le temps commence à ta première tape.
tap-left = { $seconds } s
tap-count =
    { $count ->
        [one] { $count } tape
       *[other] { $count } tapes
    }
tap-stop = Arrêter
tap-again = Recommencer
tap-found = Tu tournes environ { $rpm } fois par minute. Ta plage va maintenant de { $low } à { $high }.
tap-slips =
    { $missed ->
        [0] { $doubled ->
            [one] Une tape en trop : corrigé.
           *[other] { $doubled } tapes en trop : corrigé.
        }
        [one] { $doubled ->
            [0] Un tour sans tape : corrigé.
            [one] Un tour sans tape et une tape en trop : corrigé.
           *[other] Un tour sans tape et { $doubled } tapes en trop : corrigé.
        }
       *[other] { $doubled ->
            [0] { $missed } tours sans tape : corrigé.
            [one] { $missed } tours sans tape et une tape en trop : corrigé.
           *[other] { $missed } tours sans tape et { $doubled } tapes en trop : corrigé.
        }
    }
tap-undo = La plage d’avant
tap-undone = Ta plage est comme avant.
tap-too-few = Trop peu de tapes pour savoir. Tape une fois par tour jusqu’à la fin du temps.
tap-too-short = Trop court pour savoir. Continue jusqu’à la fin du temps.
tap-too-slow = C’est plus lent que pédaler. Tape à chaque tour, pas un tour sur deux.
tap-too-fast = C’est plus rapide que pédaler. Ne compte qu’un pied : une tape par tour entier.
tap-unsteady = Les tapes étaient irrégulières. Trouve d’abord un rythme, puis commence.
tap-unchanged = Ta plage n’a pas changé.

## Les couleurs et les formes du cycliste

kit = Tes couleurs
kit-intro = À quoi ressemble le cycliste sur l’image. Cela ne fait aller personne plus vite.
jersey = Maillot
jersey-orange = orange
jersey-berry = framboise
jersey-blue = bleu
jersey-green = vert
jersey-violet = violet
jersey-sun = jaune soleil
pattern = Motif
pattern-plain = uni
pattern-band = une bande
pattern-dots = à pois
helmet = Casque
helmet-holes = à trous
helmet-star = à étoile
helmet-crest = à crête
frame = Cadre
frame-usual = d’origine
frame-red = rouge
frame-blue = bleu
frame-green = vert
frame-plum = prune
