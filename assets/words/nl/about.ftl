### Zo speel je, waarom het als fietsen voelt, privacy, veiligheid, en waar de getallen vandaan komen.

title = Zo speel je
keys = Wat je handen doen
tryLevers = Probeer de hendels
playTitle = In het kort
# Elke regel is een zin op zichzelf.
play =
    Trappen gaat vanzelf. Je handen schakelen, je ogen kijken vooruit.
    De rechterhand bedient de achterderailleur: lichter of zwaarder. De linkerhand bedient de kettingbladen.
    Schakel vóór de heuvel, stap voor stap, en trap zacht terwijl de ketting verspringt.
    Met versnellingen in de naaf gaat het andersom: haal de druk eraf of sta stil, schakel, trap dan door.
    Een middenmotor trekt ook aan de ketting: trap zacht, wacht een tel tot hij loslaat, schakel dan. Boven { $speed } geeft hij niets.
    De versnelling in cijfers is die waar de hendel op staat; een stippellijn eronder zegt dat de ketting nog onderweg is.
    Laat je benen draaien in een tempo dat je prettig vindt. Over een kort bultje kun je gewoon heen rijden.
modelTitle = Waarom het als fietsen voelt
model =
    Gewicht, helling, wind, rolweerstand en de wrijving van de ketting worden 120 keer per seconde uitgerekend met gepubliceerde formules. Niets hangt van geluk af: wie hetzelfde doet, krijgt dezelfde rit.
privacyTitle = Privacy
privacy =
    Dit spel vraagt niet wie je bent. Het heeft geen account en geen teller, en het praat met geen andere computer. Wat je doet, blijft op dit apparaat.
careTitle = Veiligheid
# Elke regel is een zin op zichzelf.
care =
    Een spel leert je timing, niet het verkeer.
    Oefen eerst op een rustige, vlakke, afgesloten plek. Ogen op de weg en niet op de ketting.
    Remmen, helm en de plaatselijke wetgeving gaan vóór alles.
    Kinderen rijden met een volwassene die de leiding heeft.
    Een fiets met motor trekt harder op dan je denkt, heeft meer tijd nodig om te stoppen en is zwaar om te duwen. Over leeftijd, helm en snelheid beslist de plaatselijke wetgeving.
    Pijn in je knieën of borst betekent: stop en raadpleeg een arts.
    Welke tandwielen, kettingbladen en kettingen je kunt vervangen, hangt af van wat de derailleurs aankunnen: vraag een vakbekwame fietsenmaker en lees de documenten van de fabrikant.
    Houd je vingers weg van een draaiende ketting.
    Volg wat je bond, school of gediplomeerde instructeur zegt.
creditsTitle = Waar de getallen vandaan komen
# Elke regel is een zin op zichzelf.
credits =
    Rijden op het vlakke, bergop en tegen de wind in: J. C. Martin en anderen, Validation of a mathematical model for road cycling power, Journal of Applied Biomechanics 14, 1998.
    Versnellingen in de naaf: de formule van Willis voor planetaire tandwielstelsels, en verhoudingen zoals gepubliceerd; hoeveel ze verspillen is omstreden, en gekozen.
    Motoren: EN 15194:2017, fietsen met elektrische trapondersteuning; hoe laat ze beginnen en loslaten is gekozen.
    Verliezen in de ketting: J. B. Spicer en anderen, Effects of frictional loss on bicycle chain drive efficiency, Journal of Mechanical Design 123, 2001.
    Bandenmaten: ISO 5775. Contrast, grootte en bediening met toetsen: WCAG 2.2.
    Beelden, geluiden, woorden en wegen zijn voor dit spel gemaakt. Het steunt op open bibliotheken: Phaser, Preact, fflate, howler.js, idb, saxes, Zod.
honest =
    Niemand heeft nog aangetoond dat je door een spel op de weg beter schakelt. Dit spel meet wat je erin leert, en beweert niet meer.
