### De pagina van een rit: ervoor, in een pauze, de eerste stappen met de hendels, en als er iets stukgaat.

title = Onderweg: { $level }
failed-not-fetched = Het beeld van de rit kon niet worden geladen. Controleer de verbinding en probeer het opnieuw.
failed-no-canvas = Deze browser laat het spel geen beeld tekenen, dus is er niets om op te rijden. Sta het toe in de instellingen (vaak onder privacy), of open het spel in een andere browser.
failed-broken = Deze rit kan niet beginnen: iets eraan werkt niet. Probeer een ander level, of kies de fiets opnieuw.
again = Opnieuw proberen
pausedHint = De weg wacht. Je versnelling ook.
restart = Van voren af aan
leave = Stoppen met rijden
stage = De rit
hands = Escape is pauze.
controls = Wat je handen doen
# Under it, where there are pads.
controlsPads = Tik op de knop met hetzelfde teken.
watching = Je rit, nog een keer.
watchOn = Verder kijken
backToDebrief = Terug naar je rit
steeper = Iets steiler dan daarnet: je hebt het door.
gentler = Iets minder steil dan daarnet.

## De eerste stappen met de hendels

step-rear-easier = lichter
step-rear-harder = zwaarder
step-ease = zacht trappen
# Wat er gezegd wordt als het gelukt is; versnellingen in de naaf schakelen anders.
done-rear-easier =
    { $gears ->
        [hub] De naaf schakelt als je minder hard trapt. Je benen draaien vlot.
       *[sprockets] De ketting klimt. Je benen draaien vlot.
    }
done-rear-harder = Tragere benen, meer kracht.
done-ease =
    { $gears ->
        [hub] { $motor ->
            [pulls] Met de druk eraf schakelt een naaf zodra de motor loslaat. Trap nu weer door.
           *[none] Met de druk eraf schakelt een naaf meteen. Trap nu weer door.
        }
       *[sprockets] Trap je zacht, dan kan de ketting verspringen. Trap nu weer door.
    }
wrong-rear-easier = Dat was lichter.
wrong-rear-harder = Dat was zwaarder.
wrong-front-smaller = Dat was een kleiner blad.
wrong-front-bigger = Dat was een groter blad.
wrong-ease = Dat was zacht trappen.
wrong-press = Dat was hard trappen.
wrong-coast = Dat was laten rollen.
wrong-brake = Dat was de rem.
wrong-pause = Dat was pauze.
instead = Probeer deze:
# Vóór een toets die je ingedrukt houdt.
hold = houd vast:
# De knop licht op en heeft hetzelfde teken en woord.
pad = tik
holdPad = houd vast
skip = Overslaan
# Alles in één zin, hardop gezegd. $key: hoe de toets heet.
say-rear-easier = Voor een lichtere versnelling druk je op { $key }.
say-rear-harder = Voor een zwaardere versnelling druk je op { $key }.
say-ease =
    { $how ->
        [hold] Om zacht te trappen houd je { $key } vast.
       *[press] Om zacht te trappen druk je op { $key }.
    }

## Er ging iets stuk in het spel

trouble-ride-title = De rit is gestopt
trouble-ride = Er ging iets stuk in het spel, en je rit is gestopt waar je was. Ga verder: nog drie seconden, dan draaien de pedalen.
trouble-again = Het ging weer stuk, dus deze rit kan hier niet verder. Bewaar wat er gereden is en laad de pagina dan opnieuw.
trouble-watching = Er ging iets stuk in het spel. Ga terug en kijk nog een keer.
trouble-kept = Wat je reed, is op dit apparaat bewaard.
trouble-notKept = Wat je reed, kon hier niet worden bewaard. Sla het verslag op: de rit zit erin.
trouble-goOn = Ga verder
trouble-keep = Bewaar wat er gereden is
trouble-back = Terug
trouble-page = Er ging iets stuk in het spel. Ritten die bewaard waren, zijn dat nog steeds. Ziet iets er vreemd uit, laad de pagina dan opnieuw.
trouble-report = Verslag opslaan
trouble-reportHint = Een bestand met versies, wat er gebeurde en de rit. Er staat geen naam in, en het gaat uit zichzelf nergens heen.
trouble-reload = Opnieuw laden
trouble-close = Sluiten
