### Namen, die das Gerät der Leitung und die Tablets einer Gruppe gleich sagen: Tiere, Pläne und was gefahren wird.

## Ein Tier mit einer Farbe: „Roter Fuchs“, „Rote Eule“, „Rotes Pferd“.

colour =
    { $colour ->
        [amber] Gelber
        [blue] Blauer
        [brown] Brauner
        [green] Grüner
        [grey] Grauer
        [red] Roter
        [violet] Violetter
       *[white] Weißer
    }
colour-f =
    { $colour ->
        [amber] Gelbe
        [blue] Blaue
        [brown] Braune
        [green] Grüne
        [grey] Graue
        [red] Rote
        [violet] Violette
       *[white] Weiße
    }
colour-n =
    { $colour ->
        [amber] Gelbes
        [blue] Blaues
        [brown] Braunes
        [green] Grünes
        [grey] Graues
        [red] Rotes
        [violet] Violettes
       *[white] Weißes
    }
animal-badger = { colour } Dachs
animal-beaver = { colour } Biber
animal-bee = { colour-f } Biene
animal-crane = { colour } Kranich
animal-crow = { colour-f } Krähe
animal-deer = { colour } Hirsch
animal-duck = { colour-f } Ente
animal-fox = { colour } Fuchs
animal-frog = { colour } Frosch
animal-goat = { colour-f } Ziege
animal-hare = { colour } Hase
animal-hedgehog = { colour } Igel
animal-heron = { colour } Reiher
animal-horse = { colour-n } Pferd
animal-lizard = { colour-f } Eidechse
animal-lynx = { colour } Luchs
animal-marten = { colour } Marder
animal-mole = { colour } Maulwurf
animal-mouse = { colour-f } Maus
animal-otter = { colour } Otter
animal-owl = { colour-f } Eule
animal-seal = { colour-f } Robbe
animal-snail = { colour-f } Schnecke
animal-squirrel = { colour-n } Eichhörnchen
animal-stork = { colour } Storch
animal-swan = { colour } Schwan
animal-swift = { colour } Mauersegler
animal-toad = { colour-f } Kröte
animal-trout = { colour-f } Forelle
animal-weasel = { colour-n } Wiesel
animal-wolf = { colour } Wolf
animal-wren = { colour } Zaunkönig

## Pläne, die zum Spiel gehören, und Vergleichsfahrten in einem Plan

plan-children-first-hour = Klick vor dem Berg
plan-adults-first-evening = Vorausschauen
plan-children-check = Vergleichsfahrt für Kinder
plan-adults-check = Vergleichsfahrt
check-everyone = Vergleichsfahrt
check-children = Vergleichsfahrt für Kinder
check-everyone-hub = Vergleichsfahrt für Nabenschaltungen
check-children-hub = Vergleichsfahrt für Kinder mit Nabenschaltung
check-everyone-crank-motor = Vergleichsfahrt für Mittelmotoren
check-everyone-wheel-motor = Vergleichsfahrt für Nabenmotoren
