### Namen die op meerdere pagina’s staan: het spel, zijn plekken, fietsen en fietsers.

# Schrijfrichting: ltr van links naar rechts, rtl van rechts naar links.
direction = ltr

name = Before the Hill
promise = In de juiste versnelling voordat je hem nodig hebt.

## De pagina’s

nav-home = Start
nav-levels = Levels
nav-children = Voor kinderen
nav-bike = Fiets en fietser
nav-about = Zo speel je
nav-progress = Voortgang
nav-gearcheck = Verzetcheck
nav-settings = Instellingen
nav-close = Sluiten
nav-debrief = Jouw rit
nav-bench = Levelbouwer
nav-road = Op de weg
nav-two = Met twee of meer
nav-clinic = Clinic
nav-join = Meedoen met een sessie
nav-collect = Ritten ophalen
nav-teach = Lesplannen
nav-skip = Naar de pagina

## Een pagina die bij het openen wordt opgehaald

coming-loading = Een moment: deze pagina is onderweg.
coming-failed = Deze pagina kon niet worden geladen. Controleer de verbinding en probeer het opnieuw.
coming-tryAgain = Opnieuw proberen

## Wat je over het bewaren moet weten

health-not-fetched =
    Een deel van het spel kon niet worden opgehaald. Daarom wordt er nog niets bewaard en zie je je eigen levels niet. Controleer de verbinding; het spel probeert het zelf opnieuw.

## Levels en ritten

ladder-everyone = De ladder
ladder-children = Voor kinderen
# $steepest (String): een helling, zoals “8%”.
profile = De weg van opzij, hooguit { $steepest } steil
riding-loading = De weg wordt uitgerold …
riding-paused = Pauze
riding-on = Rij verder

## Fietsen en fietsers

bike-kids-20-1x7 = Kinderfiets 20 inch
bike-kids-24-1x8 = Kinderfiets 24 inch
bike-town-1x9 = Stadsfiets
bike-kids-20-hub-3 = Kinderfiets 20 inch, naaf met 3
bike-town-hub-3 = Stadsfiets, naaf met 3
bike-town-hub-7 = Stadsfiets, naaf met 7
bike-trekking-hub-8-crank = Toerfiets, naaf met 8 en middenmotor
bike-trekking-1x10-crank = Toerfiets met middenmotor
bike-town-hub-7-wheel = Stadsfiets, naaf met 7 en wielmotor
bike-trekking-3x8 = Toerfiets
bike-road-2x11 = Racefiets
bike-gravel-1x12 = Gravelbike
bike-own = Eigen fiets
# $rings (Number): kettingbladen. $rear (Number): tandwielen, of versnellingen in de naaf.
# $where: versnellingen op tandwielen, allemaal in de naaf, of een deel ervan.
bike-gears =
    { $where ->
        [single] { $rear } versnelling
        [hub] { $rear } versnellingen in de naaf
        [both] { $rings } × { $rear } versnellingen, waarvan { $rear } in de naaf
       *[sprockets] { $rings } × { $rear } versnellingen
    }

## Getallen met hun eenheid, en een versnelling zonder tanden om te tellen

unit-kmh = { $value } km/u
unit-mph = { $value } mijl/u
unit-m = { $value } m
unit-ft = { $value } ft
unit-km = { $value } km
unit-mi = { $value } mijl
unit-percent = { $value }%
gear-in-hub = { $number } van { $of }
