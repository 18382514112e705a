### Les niveaux du jeu : les titres, la ligne sous chacun, et ce qui est dit en route. Les niveaux faits par quelqu'un ont leurs propres mots.

## Des pommes pour la fête (pour les enfants)

title-apples-for-the-party = Des pommes pour la fête
sentence-apples-for-the-party = Porte les pommes par-dessus trois petites côtes. Ton ami t’attend.
cue-apples-for-the-party-1 = Une côte ! Passe plus facile avant qu’elle commence.
cue-apples-for-the-party-2 = Encore une côte. D’abord plus facile, puis on monte.
cue-apples-for-the-party-3 = Dernière côte. Ton ami te fait signe !

## Jusqu'à la mer (pour les enfants)

title-down-to-the-sea = Jusqu’à la mer
sentence-down-to-the-sea = Deux côtes, une longue descente, et une côte près de l’eau.
cue-down-to-the-sea-1 = Plus facile avant la côte.
cue-down-to-the-sea-2 = Encore une côte, puis on descend vers la mer.
cue-down-to-the-sea-3 = Une dernière petite côte au bord de l’eau.

## Rentrer sous les lampadaires (pour les enfants)

title-home-by-lamplight = Rentrer sous les lampadaires
sentence-home-by-lamplight = Cinq petites côtes en ville. La maison est tout en haut.
cue-home-by-lamplight-1 = Cinq côtes jusqu’à la maison. D’abord plus facile !
cue-home-by-lamplight-2 = Et on remonte.
cue-home-by-lamplight-3 = Lève les yeux : la prochaine côte est tout près.
cue-home-by-lamplight-4 = Presque à la maison. Encore une fois plus facile.
cue-home-by-lamplight-5 = Dernière côte. La porte est ouverte !

## Par-dessus les racines (pour les enfants)

title-over-the-roots = Par-dessus les racines
sentence-over-the-roots = Quatre bosses dans la forêt. Fais sourire tes jambes.
cue-over-the-roots-1 = Regarde le visage. Fais-le sourire.
cue-over-the-roots-2 = Le visage souffle ? Passe plus facile.
cue-over-the-roots-3 = Ça mouline ? Passe plus dur.
cue-over-the-roots-4 = Dernière bosse. Plus facile avant qu’elle commence !

## De la neige là-haut (pour les enfants)

title-snow-on-top = De la neige là-haut
sentence-snow-on-top = Le col est raide à la fin. Lève les yeux, change tôt.
cue-snow-on-top-1 = On monte vers la neige. Passe plus facile bien à l’avance.
cue-snow-on-top-2 = Un cran à la fois, et sans attendre.
cue-snow-on-top-3 = La côte raide. Plus facile avant !

## Clic avant la côte (pour les enfants)

title-click-before-the-hill = Clic avant la côte
sentence-click-before-the-hill = Une petite côte arrive. Passe plus facile avant qu’elle commence !

## Trois petites côtes (pour les enfants)

title-three-little-hills = Trois petites côtes
sentence-three-little-hills = Lève les yeux, vois la côte, et change avant elle.

## Pieds de plume (pour les enfants)

title-feather-feet = Pieds de plume
sentence-feather-feet = Pédale comme une plume un instant, pendant que la chaîne bouge.

## Stop, on repart, et la côte (pour les enfants)

title-stop-go-and-over-the-hill = Stop, on repart, et la côte
sentence-stop-go-and-over-the-hill = Arrête-toi à la ligne, vitesse facile. Repars, et trouve la côte cachée.

## Changer à l'arrêt

title-change-while-you-wait = Changer à l’arrêt
sentence-change-while-you-wait = Un moyeu change à l’arrêt. Arrête-toi avec n’importe quelle vitesse, passe plus facile en attendant, puis repars.
cue-change-while-you-wait-1 = D’abord l’arrêt. Puis plus facile, en attendant.
cue-change-while-you-wait-2 = La dernière côte vient sans arrêt.

## Regarde qui est là

title-look-who-is-there = Regarde qui est là
sentence-look-who-is-there = Des moutons, un tracteur, encore des moutons : ils attirent l’œil. La côte arrive quand même.
cue-look-who-is-there-1 = Salue qui tu veux. Mais d’abord un coup d’œil à la route.

## Deux manettes

title-two-levers = Deux manettes
sentence-two-levers = Découvre ce que font plus facile et plus dur, sur une route qui pardonne.

## Garde ton rythme

title-hold-your-rhythm = Garde ton rythme
sentence-hold-your-rhythm = En montée comme en descente, tes jambes tournent au même rythme.

## Un raidillon annoncé

title-one-pitch-announced = Un raidillon annoncé
sentence-one-pitch-announced = Tu le vois venir : sois sur une vitesse facile avant que la route se dresse.

## Route en vagues

title-rolling-road = Route en vagues
sentence-rolling-road = Des vagues de route, l’une après l’autre. Change avec elles, pas après elles.

## Pieds légers

title-soft-feet = Pieds légers
sentence-soft-feet = Allège un instant les pédales, puis change.

## Prêt à repartir

title-ready-to-go = Bien repartir
sentence-ready-to-go = La vitesse de l’arrêt est celle du départ. Les deux lignes sont juste avant une côte.

## Chaîne droite

title-straight-chain = Chaîne droite
sentence-straight-chain = Choisis le plateau qui laisse la chaîne droite, bien avant qu’elle se plaigne.

## Vent et gravier

title-wind-and-gravel = Vent et gravier
sentence-wind-and-gravel = Le vent et un sol meuble te freinent comme une côte, sauf que personne ne les dessine.

## Derrière le virage

title-round-the-bend = Derrière le virage
sentence-round-the-bend = Des haies cachent la suite. Des virages lents et une route qui se rétrécit sont des indices.

## Laisse la manette tranquille

title-ride-over = Laisse la manette tranquille
sentence-ride-over = Certaines bosses sont si courtes que l’élan te porte par-dessus. Deux ne le sont pas.

## Un plateau, et un peu de retour

title-ring-and-back = Un plateau, et un peu de retour
sentence-ring-and-back = Change de plateau devant et reviens un peu derrière : un pas tout en douceur.

## Arrêts, vent et un secret

title-stops-wind-and-a-secret = Des arrêts, du vent, un secret
sentence-stops-wind-and-a-secret = Deux lignes d’arrêt, un vent de face et un raidillon qui se cache derrière une haie.

## Rien que toi et la route

title-only-you-and-the-road = Rien que toi et la route
sentence-only-you-and-the-road = Tout à la fois et aucune aide. Regarde, anticipe, roule.

## Laisse souffler le moteur

title-let-the-motor-breathe = Laisse souffler le moteur
sentence-let-the-motor-breathe = Ton moteur tire lui aussi sur la chaîne. Pieds légers, attends le temps d’un souffle qu’il lâche, puis change.
cue-let-the-motor-breathe-1 = Une côte arrive. Pieds légers, le temps d’un souffle, puis change.
cue-let-the-motor-breathe-2 = La dernière. Laisse d’abord le moteur lâcher.

## Plus d'assistance après 25

title-without-help-above-25 = Plus d’assistance au-delà de { $speed }
sentence-without-help-above-25 = Au-dessus de { $speed }, ton moteur se tait et le vélo est lourd. Passe plus facile avant la côte, et l’assistance revient.
cue-without-help-above-25-1 = En descente, au-delà de { $speed } : le moteur ne donne plus rien.
cue-without-help-above-25-2 = Tes jambes seules, jusqu’à ce que la côte te ralentisse.
