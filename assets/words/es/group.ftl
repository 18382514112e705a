### Names that a coach's device and the tablets of a group say alike: riders, plans and what is ridden.

## Riders are called by an animal and a colour: «Zorro rojo». Red and white bend with the animal, so each animal writes
## its colour out. Animals that are used to mock people in Spanish are others here: a dolphin for the seal, a sparrow for the wren.

colour =
    { $colour ->
        [amber] ámbar
        [blue] azul
        [brown] marrón
        [green] verde
        [grey] gris
        [red] rojo
        [violet] violeta
       *[white] blanco
    }
animal-badger = Tejón { colour }
animal-beaver = Castor { colour }
animal-bee =
    Abeja { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-crane =
    Grulla { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-crow = Cuervo { colour }
animal-deer = Ciervo { colour }
animal-duck = Pato { colour }
animal-fox = Zorro { colour }
animal-frog =
    Rana { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-goat =
    Cabra { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-hare =
    Liebre { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-hedgehog = Erizo { colour }
animal-heron =
    Garza { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-horse = Caballo { colour }
animal-lizard = Lagarto { colour }
animal-lynx = Lince { colour }
animal-marten =
    Marta { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-mole = Topo { colour }
animal-mouse = Ratón { colour }
animal-otter =
    Nutria { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-owl = Búho { colour }
animal-seal = Delfín { colour }
animal-snail = Caracol { colour }
animal-squirrel =
    Ardilla { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-stork =
    Cigüeña { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-swan = Cisne { colour }
animal-swift = Vencejo { colour }
animal-toad = Sapo { colour }
animal-trout =
    Trucha { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-weasel =
    Comadreja { $colour ->
        [red] roja
        [white] blanca
       *[other] { colour }
    }
animal-wolf = Lobo { colour }
animal-wren = Gorrión { colour }

## Plans that come with the game, and check rides in a plan

plan-children-first-hour = Un clic antes de la cuesta
plan-adults-first-evening = Mirar lejos
plan-children-check = Recorrido de control infantil
plan-adults-check = Recorrido de control
check-everyone = Recorrido de control
check-children = Recorrido de control infantil
check-everyone-hub = Recorrido de control para marchas en el buje
check-children-hub = Recorrido de control infantil para marchas en el buje
check-everyone-crank-motor = Recorrido de control para motor central
check-everyone-wheel-motor = Recorrido de control para motor en la rueda
