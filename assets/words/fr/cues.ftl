### Ce qui est dit en route : les consignes des niveaux. Avec des vitesses dans le moyeu, certaines choses sont à l'envers.

hill-ahead = Une côte arrive.
ease-then-shift =
    { $gears ->
        [hub] { $motor ->
            [pulls] Relâche la pression, le temps d’un souffle, puis change.
           *[none] Relâche la pression, puis change.
        }
       *[sprockets] { $motor ->
            [pulls] Pieds légers, le temps d’un souffle, puis change.
           *[none] Pieds légers, puis change.
        }
    }
two-easier-now = Deux crans plus facile, maintenant.
one-at-a-time = Un cran à la fois.
rest-on-the-way-up =
    { $gears ->
        [hub] { $motor ->
            [pulls] Le reste en montant : relâche à chaque fois, le temps d’un souffle.
           *[none] Le reste en montant : relâche la pression à chaque fois.
        }
       *[sprockets] { $motor ->
            [pulls] Le reste en montant : laisse le moteur lâcher à chaque fois.
           *[none] Le reste en montant, pieds légers à chaque fois.
        }
    }
harder-again = Le sommet est passé : plus dur à nouveau.
hold-rhythm = Garde le même rythme de jambes.
ride-over = Petite bosse : passe par-dessus sans changer.
small-ring =
    { $gears ->
        [hub] Une vitesse plus facile, maintenant, sur le plat.
       *[sprockets] Plateau plus petit, maintenant, sur le plat.
    }
big-ring =
    { $gears ->
        [hub] Une vitesse plus dure : la route le permet.
       *[sprockets] Plateau plus grand : la route le permet.
    }
straight-chain = Garde la chaîne droite.
stop-ahead = Ligne d’arrêt en vue.
easy-before-stop =
    { $gears ->
        [hub] Arrête-toi, puis passe plus facile : un moyeu change pendant que tu attends.
       *[sprockets] Passe plus facile avant l’arrêt : tu repars avec cette vitesse.
    }
wind-ahead = Vent de face. C’est une côte que l’on ne voit pas.
gravel-ahead = Du gravier arrive. Il freine comme une côte.
look-far = Regarde loin devant.
last-pitch = Le dernier raidillon.
easier-lever = La manette droite : plus facile.
harder-lever = La manette droite : plus dur.
