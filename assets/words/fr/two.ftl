### Plusieurs cyclistes sur un appareil.

title = À plusieurs
intro = Sur une route, avec un appareil. Chacun roule pour soi, et contre personne.
road = Route
ride = Rouler
leave = Arrêter de rouler

## Choisir

needsKeys = Cet écran est trop petit pour les boutons de deux personnes. Prenez une tablette, un clavier ou deux manettes de jeu ; ou roulez en relais.
noRelay = Cette route est trop courte pour un relais, ou a trop peu de côtes : à chacun il faut une côte et un bout de route. Choisissez une autre route.
way = Comment
way-beside = Côte à côte
way-facing = Face à face
way-relay = Relais
wayHint-beside = Deux à la fois, chacun sur une moitié de l’écran : sur une tablette, avec un clavier ou deux manettes de jeu.
wayHint-facing = Deux à la fois, la moitié du haut de la tablette à l’envers. Posez-la à plat entre vous, là où elle ne peut ni glisser ni tomber.
wayHint-relay = Une route, un relais pour chacun : qui arrive au portillon passe l’appareil, debout ou assis.
count = Cyclistes
name-beside =
    { $rider ->
        [1] À gauche
       *[other] À droite
    }
name-facing =
    { $rider ->
        [1] Moitié du haut, à l’envers
       *[other] Moitié du bas
    }
name-relay = Cycliste { $rider }
bike = Vélo
rider = Cycliste
ownRider = Comme réglé sur cet appareil
autoEase = Le jeu fait les pieds légers pendant un changement et freine aux lignes, pour tout le monde
headStart = Ici, qui a le meilleur passage le plus long part en premier, pour que les deux puissent finir ensemble
keys-left = Touches à gauche
keys-right = Flèches
pads-left = Boutons dans la moitié gauche ou du haut
pads-right = Boutons dans la moitié droite ou du bas

## La route en image, et ses parties

roadWithGates =
    { $gates ->
        [0] { $road }
        [one] { $road }, avec { $gates } portillon
       *[other] { $road }, avec { $gates } portillons
    }
roadOfBoth = { $road } : jusqu’où les deux sont arrivés
leg = { $road }, relais { $leg } sur { $legs }
mark-left = G
mark-right = D

## Au portillon d'un relais

gate = Cycliste { $rider }
gateIntro = Passez l’appareil au portillon, debout ou assis, jamais sur un vélo qui roule. Regarde où est ton relais, puis roule.

## En route

riding = En route ensemble : { $road }
headStartWait =
    { $seconds ->
        [one] seconde. Le meilleur passage de l’autre dure d’autant plus longtemps.
       *[other] secondes. Le meilleur passage de l’autre dure d’autant plus longtemps.
    }
longWait = Sur une route plus courte, l’attente est plus courte.
waiting = Ligne passée. L’autre roule encore.
failed = Les passages se sont arrêtés, car leur image n’a pas pu être chargée ou dessinée. Réessayez ; si cela se reproduit, rechargez la page.
toGate = Retour au portillon

## Après les passages

afterTitle = Ce que vous avez découvert
series = Passage { $ride } sur { $of }. De chacun, c’est le meilleur de ses { $of } passages qui compte.
total = { $total } sur 100
together = Ensemble : { $total } sur 100 en moyenne
best =
    { $rides ->
        [one] Le meilleur de { $rides } passage : { $best } ({ $all })
       *[other] Le meilleur de { $rides } passages : { $best } ({ $all })
    }
judging = On calcule comment cela s’est passé…
notJudged = Impossible de calculer comment ce passage s’est déroulé. Refais-le.
look = Regarder ce passage
again = Encore une fois
newSeries = Trois nouveaux passages
moveOn-beside = Changer de côté
moveOn-facing = Changer de côté
moveOn-relay = Quelqu’un d’autre en premier
other = Une autre route ou d’autres cyclistes
