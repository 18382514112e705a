### Comment jouer, pourquoi cela ressemble au vélo, vie privée, prudence, et d'où viennent les chiffres.

title = Comment jouer
keys = Ce que font tes mains
tryLevers = Essayer les manettes
playTitle = En bref
play =
    Le pédalage se fait tout seul. Tes mains changent de vitesse, tes yeux regardent devant.
    La main droite commande le dérailleur arrière : plus facile ou plus dur. La main gauche commande les plateaux.
    Change avant la côte, cran par cran, avec les pieds légers pendant que la chaîne se déplace.
    Avec des vitesses dans le moyeu, c’est l’inverse : relâche la pression ou arrête-toi, change, puis appuie de nouveau.
    Un moteur de pédalier tire lui aussi sur la chaîne : pieds légers, attends, le temps d’un souffle, qu’il lâche, puis change. Au-dessus de { $speed }, il ne donne rien.
    La vitesse en chiffres est celle que demande la manette ; un pointillé dessous dit que la chaîne est encore en chemin.
    Fais tourner tes jambes à un rythme qui te plaît. Une petite bosse se passe sans rien changer.
modelTitle = Pourquoi cela ressemble au vélo
model =
    Poids, pente, vent, roulement et frottement de la chaîne sont calculés 120 fois par seconde avec des formules publiées. Rien n’est laissé au hasard : les mêmes gestes donnent le même passage.
privacyTitle = Vie privée
privacy =
    Ce jeu ne demande pas qui tu es. Il n’a ni compte ni compteur, et il ne parle à aucun autre ordinateur. Ce que tu fais reste sur cet appareil.
careTitle = Prudence
care =
    Un jeu apprend le bon moment, pas la circulation.
    Entraîne-toi d’abord dans un endroit calme, plat et fermé à la circulation. Les yeux sur la route, pas sur la chaîne.
    Les freins, le casque et la loi de l’endroit où tu roules passent d’abord.
    Les enfants roulent avec un adulte responsable.
    Un vélo à assistance électrique démarre plus fort qu’on ne croit, met plus de temps à s’arrêter et est lourd à pousser. Pour l’âge, le casque et la vitesse, c’est la loi de l’endroit où tu roules qui décide.
    Mal aux genoux ou à la poitrine : arrête-toi et consulte un médecin.
    Ce que l’on peut changer comme pignons, plateaux et chaînes est limité par ce que les dérailleurs acceptent : demande à un mécanicien qualifié et lis les documents du fabricant.
    Garde les doigts loin d’une chaîne qui bouge.
    Suis ce que disent ta fédération, ton école ou ton moniteur diplômé.
creditsTitle = D’où viennent les chiffres
credits =
    Rouler sur le plat, en côte et contre le vent : J. C. Martin et autres, Validation of a mathematical model for road cycling power, Journal of Applied Biomechanics 14, 1998.
    Vitesses dans le moyeu : l’équation de Willis pour les trains planétaires, et des rapports publiés ; ce qu’ils font perdre est discuté, et choisi ici.
    Moteurs : EN 15194:2017, cycles à assistance électrique ; le retard avec lequel ils démarrent et lâchent est choisi ici.
    Pertes dans la chaîne : J. B. Spicer et autres, Effects of frictional loss on bicycle chain drive efficiency, Journal of Mechanical Design 123, 2001.
    Tailles de pneus : ISO 5775. Contraste, taille et emploi au clavier : WCAG 2.2.
    Les images, les sons, les mots et les routes ont été faits pour ce jeu. Il s’appuie sur des bibliothèques libres : Phaser, Preact, fflate, howler.js, idb, saxes, Zod.
honest =
    Personne n’a encore montré qu’un jeu fait mieux changer de vitesse sur la route. Celui-ci mesure ce que tu apprends dans le jeu, et n’en dit pas plus.
