### L'échelle des niveaux, et les balades libres.

intro = De haut en bas, ou comme tu veux. Chacun enseigne une chose.
own = Les tiens
ridden = Fait
best = Meilleur : { $total } sur 100
best-not-passed = Meilleur : { $total }, pas encore réussi
next = À suivre
length = { $length }
needs-derailleur = pour des vitesses à pignons
needs-hub = pour des vitesses dans le moyeu, sans moteur
needs-motor = pour un moteur
needs-crank-motor = pour un moteur de pédalier
needs-wheel-motor = pour un moteur de roue
pitches =
    { $count ->
        [one] { $count } raidillon
       *[other] { $count } raidillons
    }
none = Aucun niveau n’a été trouvé dans cette copie du jeu.
patches = Écussons

## Balades libres

free-title = Balade libre
free-intro = La route que tu veux. Le même nom, les mêmes côtes et la même longueur donnent la même route sur tous les appareils.
free-seed = Nom de la route
free-seedHint = Un mot ou un nombre.
free-seedEmpty = Donne un nom à la route, ou prends-en une autre.
free-another = Une autre route
free-hilliness = Côtes
free-hilly-0 = presque plat
free-hilly-1 = doux
free-hilly-2 = vallonné
free-hilly-3 = raide
free-hilly-4 = très raide
free-length = Longueur
free-facts =
    { $pitches ->
        [0] { $length }, aucun raidillon, { $steepest } au plus, { $climbed } de montée en tout.
        [one] { $length }, { $pitches } raidillon, { $steepest } au plus, { $climbed } de montée en tout.
       *[other] { $length }, { $pitches } raidillons, { $steepest } au plus, { $climbed } de montée en tout.
    }
free-profile = Profil de la route : { $facts }
free-ride = Rouler sur cette route
free-link = Lien vers cette route
free-copy = Copier le lien
free-copied = Copié. Qui l’ouvre roule sur la même route.
free-notCopied = Le navigateur n’a pas permis la copie. Le lien est sélectionné : copie-le à la main.
free-bad-unreadable = Ce lien vers une balade libre est illisible. Il devrait finir par free-, un nombre, les côtes de 0 à 100 et la longueur en mètres, comme free-42-50-2000. Choisis plutôt une route ici.
free-bad-seed = Le numéro de la route dans ce lien est trop grand. Choisis plutôt une route ici.
free-bad-hilliness = Les côtes de ce lien dépassent 100. Choisis plutôt une route ici.
free-bad-length = La route de ce lien ne mesure pas entre { $shortest } et { $longest }. Choisis plutôt une route ici.
