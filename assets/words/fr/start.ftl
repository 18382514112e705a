### La page d'accueil : le grand bouton, les chemins vers tout le reste, et un passage interrompu.

ride = Rouler
rideAgain = Continuer
byEar = Rouler à l’oreille
byEye = Rouler à vue
picture = Une personne à vélo arrive au pied d’une côte.
newer = Une nouvelle version est là.
loadNewer = La prendre

## Les chemins qui partent d'ici, chacun avec une ligne dessous

hint-children = De petites côtes et un panier de pommes
levels = Tous les niveaux
hint-levels = { $done } sur { $all } déjà faits
bike = Mon vélo
hint-bike = { $name }, { $gears }
hint-about = et aussi : prudence et vie privée
hint-progress = Passages témoins, sorties sur la route, et ce qui est gardé
hint-gearcheck = D’autres pignons m’aideraient-ils à monter cette côte ?
hint-two = Côte à côte, face à face, ou en relais
hint-clinic = Un groupe, sur un ou plusieurs appareils, sans noms
hint-teach = Une heure en groupe, avec des exercices pour dehors
hint-bench = Construis une route, ou apporte la tienne

## Un passage interrompu

unfinished-title = Ton passage s’est interrompu : { $level }
unfinished-turn = Un tour du groupe s’est interrompu : { $level }
unfinished-length =
    { $minutes ->
        [0]
            { $seconds ->
                [one] { $seconds } seconde est gardée.
               *[other] { $seconds } secondes sont gardées.
            }
       *[other] { $minutes } min { $seconds } s sont gardées.
    }
unfinished-goOn = Reprendre ici
unfinished-keep = Garder ce qui est fait
unfinished-letGo = L’effacer
