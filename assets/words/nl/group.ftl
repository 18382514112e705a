### Namen die het apparaat van een trainer en de tablets van een groep gelijk zeggen: deelnemers, plannen en wat er gereden wordt.

## Deelnemers heten naar een kleur en een dier: “Rode vos”. Bij een het-woord blijft de kleur zonder -e: “Rood hert”.

colour =
    { $colour ->
        [amber] Oranje
        [blue] Blauwe
        [brown] Bruine
        [green] Groene
        [grey] Grijze
        [red] Rode
        [violet] Paarse
       *[white] Witte
    }
colour-het =
    { $colour ->
        [amber] Oranje
        [blue] Blauw
        [brown] Bruin
        [green] Groen
        [grey] Grijs
        [red] Rood
        [violet] Paars
       *[white] Wit
    }
animal-badger = { colour } das
animal-beaver = { colour } bever
animal-bee = { colour } honingbij
animal-crane = { colour } kraanvogel
animal-crow = { colour } kraai
animal-deer = { colour-het } hert
animal-duck = { colour } eend
animal-fox = { colour } vos
animal-frog = { colour } kikker
animal-goat = { colour } geit
animal-hare = { colour } haas
animal-hedgehog = { colour } egel
animal-heron = { colour } reiger
animal-horse = { colour-het } paard
animal-lizard = { colour } hagedis
animal-lynx = { colour } lynx
animal-marten = { colour } marter
animal-mole = { colour } mol
animal-mouse = { colour } muis
animal-otter = { colour } otter
animal-owl = { colour } uil
animal-seal = { colour } zeehond
animal-snail = { colour } slak
animal-squirrel = { colour } eekhoorn
animal-stork = { colour } ooievaar
animal-swan = { colour } zwaan
animal-swift = { colour } gierzwaluw
animal-toad = { colour } pad
animal-trout = { colour } forel
animal-weasel = { colour } wezel
animal-wolf = { colour } wolf
animal-wren = { colour } winterkoning

## Plannen die bij het spel horen, en toetsritten in een plan

plan-children-first-hour = Klik vóór de heuvel
plan-adults-first-evening = Vooruitkijken
plan-children-check = Toetsrit voor kinderen
plan-adults-check = Toetsrit
check-everyone = Toetsrit
check-children = Toetsrit voor kinderen
check-everyone-hub = Toetsrit voor versnellingen in de naaf
check-children-hub = Toetsrit voor kinderen met versnellingen in de naaf
check-everyone-crank-motor = Toetsrit voor een middenmotor
check-everyone-wheel-motor = Toetsrit voor een wielmotor
