### Wat er vóór de eerste rit wordt gezegd, en op alles wat mee naar buiten gaat.

# Twaalf woorden lees je voordat de fiets voor het eerst rijdt; de rest is één tik verder, en daarna wordt ernaar gevraagd.
title = Een spel leert je timing, niet het verkeer.
outside = Voordat je het buiten probeert
# Elke regel is een zin op zichzelf.
short =
    Oefen op een echte fiets eerst op een rustige, vlakke, afgesloten plek.
    Ogen op de weg, niet op de ketting. Remmen, helm en de plaatselijke wetgeving gaan vóór alles.
    Kinderen rijden met een volwassene die de leiding heeft.
    Pijn in je knieën of borst: stop, en raadpleeg een arts.
accept = Rijden
more = Veiligheid
all = Alles lezen
# Voordat je buiten op een fiets met motor rijdt. Elke regel is een zin op zichzelf.
motor =
    Hij trekt harder op dan je denkt: trap eerst voorzichtig, met een vinger aan de rem.
    Hij is zwaar: hij heeft meer tijd nodig om te stoppen, en is moeilijk te duwen en te tillen.
    Handen af van de motor en de accu; wat daaraan mankeert, is voor een fietsenmaker.
    Vanaf welke leeftijd, met welke helm en hoe snel je mag rijden, verschilt van plaats tot plaats: de plaatselijke wetgeving gaat vóór alles.
# Een wiel dat door een motor wordt aangedreven.
motorWheel = Een wiel met motoraandrijving slipt eerder op natte grond, op grind en in bochten, vooral het voorwiel: trap daar zacht.
motorPlaces = Wat op sommige plaatsen geldt
motorPlacesHint = Eén keer nagekeken; wetten veranderen. Vraag na wat nu geldt waar jij rijdt. De fietsen hier rijden volgens de Europese norm.
# In plaats van een bron.
motorReported = zo vermeld, niet vergeleken met de wettekst
# Eén plaats: $place is een eigen naam, $watts en $kmh zijn 0 waar niets gevonden is, $speed is de snelheid met haar eenheid, $year is 0 waar het niet bekend is.
motorRule =
    { $place ->
        [eu] Europese Unie
        [uk] Verenigd Koninkrijk
        [us] Verenigde Staten, federaal
        [california] Californië
        [canada] Canada, de meeste provincies
        [australia] Australië
        [new-zealand] Nieuw-Zeeland
       *[japan] Japan
    }: { $watts ->
        [0] { $kmh ->
            [0] niets gevonden
           *[other] ondersteuning tot { $speed }
        }
       *[other] { $kmh ->
            [0] { $watts } W
           *[other] { $watts } W, ondersteuning tot { $speed }
        }
    } ({ $year ->
        [0] { $source }
       *[other] { $source }, { $yearText }
    }).
