### Les noms que plusieurs pages disent : le jeu, ses lieux, les vélos et les cyclistes.

direction = ltr

name = Before the Hill
promise = La bonne vitesse, avant d’en avoir besoin.

## Les pages

nav-home = Accueil
nav-levels = Niveaux
nav-children = Pour les enfants
nav-bike = Vélo et cycliste
nav-about = Comment jouer
nav-progress = Progrès
nav-gearcheck = Quels braquets ?
nav-settings = Réglages
nav-close = Fermer
nav-debrief = Ton passage
nav-bench = Atelier de niveaux
nav-road = Sur la route
nav-two = À plusieurs
nav-clinic = Séance en groupe
nav-join = Rejoindre une séance
nav-collect = Réunir les passages
nav-teach = Plans de séance
nav-skip = Aller au contenu

## Une page qui arrive au moment où on l'ouvre

coming-loading = Un instant : la page arrive.
coming-failed = Cette page n’a pas pu être chargée. Vérifie la connexion, puis réessaie.
coming-tryAgain = Réessayer

## Ce qu'il faut savoir de ce qui est gardé

health-not-fetched =
    Une partie du jeu n’a pas pu être chargée : rien n’est encore gardé, et tes propres niveaux ne sont pas affichés. Vérifie la connexion ; le jeu réessaie tout seul.

## Niveaux et passages

ladder-everyone = L’échelle
ladder-children = Pour les enfants
profile = Profil de la route, { $steepest } de pente au plus
riding-loading = La route se déroule…
riding-paused = Pause
riding-on = Continuer

## Vélos et cyclistes

bike-kids-20-1x7 = Enfant, 20 pouces
bike-kids-24-1x8 = Enfant, 24 pouces
bike-town-1x9 = Ville
bike-kids-20-hub-3 = Enfant, 20 pouces, moyeu 3
bike-town-hub-3 = Ville, moyeu 3
bike-town-hub-7 = Ville, moyeu 7
bike-trekking-hub-8-crank = Randonnée, moyeu 8, moteur de pédalier
bike-trekking-1x10-crank = Randonnée, moteur de pédalier
bike-town-hub-7-wheel = Ville, moyeu 7, moteur de roue
bike-trekking-3x8 = Randonnée
bike-road-2x11 = Route
bike-gravel-1x12 = Gravel
bike-own = Vélo personnel
bike-gears =
    { $where ->
        [single] { $rear } vitesse
        [hub] { $rear } vitesses dans le moyeu
        [both] { $rings } × { $rear } vitesses, dont { $rear } dans le moyeu
       *[sprockets] { $rings } × { $rear } vitesses
    }

## Les nombres avec leur unité, et une vitesse sans dents à compter

unit-kmh = { $value } km/h
unit-mph = { $value } mph
unit-m = { $value } m
unit-ft = { $value } ft
unit-km = { $value } km
unit-mi = { $value } mi
unit-percent = { $value } %
gear-in-hub = { $number } sur { $of }
