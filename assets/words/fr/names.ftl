### Noms qui viennent après la première page : ce qu’un niveau apprend, et les cyclistes.

## Ce qu’un niveau apprend

lesson-levers = Les deux manettes
lesson-cadence = La cadence
lesson-easing = Pieds légers pour changer
lesson-look-ahead = Regarder loin devant
lesson-rolling = Changer avec la route
lesson-chain-line = Une chaîne droite
lesson-ring-change = Changer de plateau
lesson-ride-over = Quand ne pas changer
lesson-hidden = Ce que l’on ne voit pas
lesson-stop-gear = La vitesse pour repartir
lesson-wind-and-gravel = Vent et gravier
lesson-everything = Tout à la fois
lesson-check = Passage témoin
lesson-free = Balade libre
# What stands under the name of such a ride.
sentence-check = Une route que tu n’as jamais vue, sans aide.
sentence-free = La route que tu veux, aussi longue et vallonnée que tu le veux.

## Ce que dit l’écusson, là où le nom de la leçon n’est pas un mot d’enfant

patch-levers = Plus facile, plus dur
patch-cadence = Des jambes au bon rythme

## Cyclistes

rider-child-9 = Enfant d’environ neuf ans
rider-adult-new = Débute à vélo
rider-adult-weekly = Roule chaque semaine
rider-adult-strong = En grande forme
rider-own = Chiffres personnels
