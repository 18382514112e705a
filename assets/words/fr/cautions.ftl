### Ce qui est dit avant le premier passage, et sur tout ce que l'on emporte dehors.

title = Un jeu apprend le bon moment, pas la circulation.
outside = Avant d’essayer dehors
short =
    Sur un vrai vélo, entraîne-toi d’abord dans un endroit calme, plat et fermé à la circulation.
    Les yeux sur la route, pas sur la chaîne. Les freins, le casque et la loi de l’endroit où tu roules passent d’abord.
    Les enfants roulent avec un adulte responsable.
    Mal aux genoux ou à la poitrine : arrête-toi, et consulte un médecin.
accept = Rouler
more = Prudence
all = Tout lire
motor =
    Il démarre plus fort qu’on ne croit : appuie doucement au début, un doigt sur le frein.
    Il est lourd : il met plus de temps à s’arrêter, et il est dur à pousser et à soulever.
    Ne touche ni au moteur ni à la batterie ; si quelque chose ne va pas, c’est l’affaire d’un mécanicien.
    L’âge minimal, le casque à porter et la vitesse permise varient d’un endroit à l’autre : la loi de l’endroit où tu roules passe d’abord.
motorWheel = Une roue entraînée par un moteur dérape plus tôt sur sol mouillé, sur le gravier et dans les virages, surtout la roue avant : là, appuie doucement.
motorPlaces = Ce que disent certains endroits
motorPlacesHint = Lu une fois, et les lois changent. Demande ce qui vaut aujourd’hui là où tu roules. Ici, les vélos roulent comme le veut la norme européenne.
motorReported = rapporté, non vérifié dans le texte de loi
motorRule =
    { $place ->
        [eu] Union européenne
        [uk] Royaume-Uni
        [us] États-Unis, loi fédérale
        [california] Californie
        [canada] Canada, la plupart des provinces
        [australia] Australie
        [new-zealand] Nouvelle-Zélande
       *[japan] Japon
    } : { $watts ->
        [0] { $kmh ->
            [0] rien trouvé
           *[other] assistance jusqu’à { $speed }
        }
       *[other] { $kmh ->
            [0] { $watts } W
           *[other] { $watts } W, assistance jusqu’à { $speed }
        }
    } ({ $year ->
        [0] { $source }
       *[other] { $source }, { $yearText }
    }).
