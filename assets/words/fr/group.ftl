### Les noms que l'appareil de qui encadre et les tablettes d'un groupe disent pareil : cyclistes, plans et ce que l'on roule.

colour =
    { $colour ->
        [amber] ambré
        [blue] bleu
        [brown] brun
        [green] vert
        [grey] gris
        [red] rouge
        [violet] violet
       *[white] blanc
    }
colour-f =
    { $colour ->
        [amber] ambrée
        [blue] bleue
        [brown] brune
        [green] verte
        [grey] grise
        [red] rouge
        [violet] violette
       *[white] blanche
    }
animal-badger = Blaireau { colour }
animal-beaver = Castor { colour }
animal-bee = Abeille { colour-f }
animal-crane = Grue { colour-f }
animal-crow = Corbeau { colour }
animal-deer = Cerf { colour }
animal-duck = Canard { colour }
animal-fox = Renard { colour }
animal-frog = Grenouille { colour-f }
animal-goat = Chèvre { colour-f }
animal-hare = Lièvre { colour }
animal-hedgehog = Hérisson { colour }
animal-heron = Héron { colour }
animal-horse = Cheval { colour }
animal-lizard = Lézard { colour }
animal-lynx = Lynx { colour }
animal-marten = Martre { colour-f }
animal-mole = Taupe { colour-f }
animal-mouse = Souris { colour-f }
animal-otter = Loutre { colour-f }
animal-owl = Chouette { colour-f }
animal-seal = Dauphin { colour }
animal-snail = Escargot { colour }
animal-squirrel = Écureuil { colour }
animal-stork = Cigogne { colour-f }
animal-swan = Cygne { colour }
animal-swift = Martinet { colour }
animal-toad = Crapaud { colour }
animal-trout = Truite { colour-f }
animal-weasel = Belette { colour-f }
animal-wolf = Loup { colour }
animal-wren = Roitelet { colour }

## Les plans qui viennent avec le jeu, et les passages témoins d'un plan

plan-children-first-hour = Clic avant la côte
plan-adults-first-evening = Regarder loin devant
plan-children-check = Passage témoin pour enfants
plan-adults-check = Passage témoin
check-everyone = Passage témoin
check-children = Passage témoin pour enfants
check-everyone-hub = Passage témoin pour vitesses dans le moyeu
check-children-hub = Passage témoin pour enfants avec vitesses dans le moyeu
check-everyone-crank-motor = Passage témoin pour un moteur de pédalier
check-everyone-wheel-motor = Passage témoin pour un moteur de roue
