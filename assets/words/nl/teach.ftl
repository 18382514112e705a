### Lesplannen: wat een trainer zegt en doet, oefenkaarten, een blad voor thuis en een diploma, ook op papier: elk één bladzijde.

intro = Wat je zegt, wat je rijdt, wat je buiten op de echte fiets doet en wat je uitdeelt.
back = Alle lesplannen

audiences-adults = Volwassen beginners
audiences-mixed = Gemengde groepen
audiences-children = Kinderen
# A length, as short as can be.
min = { $minutes } min
sheets = Om uit te delen
cards = Oefenkaarten
cardsHint = Vier op een bladzijde, om uit te knippen
home = Blad voor thuis
homeHint = Voor een kind en de ouders
certificate = Diploma
certificateHint = Wat er geleerd is, geen punten
own = Jouw kopieën
# Name of a file, where the title of a plan has no letters: small, without spaces.
fileName = lesplan
# Read out for a button: a length as it stands there, and for whom.
lengthFor = { $length }, { $audience }
# The title of a plan, and of the file of a copy: for whom, and how long.
planTitle = { $audience }, { $minutes } minuten
open = Open een kopie
openHint = Een bestand dat hier eerder is opgeslagen
ownGone = Een kopie staat in een eigen bestand. Open dat bestand opnieuw.
print = Afdrukken
change = Pas een kopie aan
save = Opslaan als bestand
done = Toon het blad
changing = Jouw kopie
changeHint = Eén zin per regel. Sla de kopie op als bestand voordat je deze pagina sluit.

fields-title = Titel
fields-minutes = Minuten
fields-level = Weg
rideRoad = Rij deze weg
toClinic = Begin met een groep
road = Weg: { $road }
noRoad = De weg van dit plan staat niet op dit apparaat.

parts-warmUp = Warmrijden
parts-say = Zeggen
parts-road = Rijden in het spel
parts-question = Vragen bij het groepsbeeld
parts-drill = Buiten op de echte fiets
parts-watch = Let op
parts-end = Tot slot

# Labels before what a drill needs and so on, on a card and in a plan.
row-needs = Nodig:
row-safe = Veiligheid:
row-watch = Let op:
row-easier = Makkelijker:
row-harder = Moeilijker:
# $drill: the title of a drill in a plan, before what is done.
drillInPlan = { $drill }.

problems-too-big = Dit bestand is te groot voor een lesplan. Open een bestand dat op deze pagina is opgeslagen.
problems-not-json = Dit bestand is niet te lezen. Open een bestand dat op deze pagina is opgeslagen.
problems-not-a-session-plan = Dit bestand is geen lesplan. Open een bestand dat op deze pagina is opgeslagen.
problems-newer-schema = Een nieuwere versie van het spel heeft dit plan opgeslagen. Werk deze bij en open het dan opnieuw.
problems-dirty-text = In dit plan staan tekens die niet te tonen zijn. Haal ze weg in een teksteditor en open het dan opnieuw.

# After the cautions of cautions.ftl, on every page. Exact: somebody could be hurt.
moreCautions =
    Houd je vingers weg van een draaiende ketting.
    In een naaf schakel je andersom: druk eraf, of stilstaand; daarna weer trappen. Met een terugtraprem draaien de pedalen niet achteruit.
    Fietsen met een motor trekken sterk op, hebben meer tijd nodig om te stoppen en zijn zwaar; een aangedreven voorwiel slipt op natte grond: trek rustig op, en alleen zoals de plaatselijke wetgeving toestaat. Middenmotor: zacht trappen (naaf: druk eraf), een tel wachten, dan schakelen.
defers = Volg wat je bond, school of gediplomeerde instructeur zegt; zij en de plaatselijke wetgeving gaan vóór dit blad.
practice = Al het andere op deze bladzijde is gangbare praktijk, zonder bron.

sources-adults =
    Hoogstens 12 fietsers per instructeur, twee of drie lessen van één tot twee uur; beginners een of twee per instructeur (AustCycle, Australië, 2012).
    Een cursus voor volwassenen duurt 9 uur, waarvan 5 op de fiets (cursus uit de VS, docslib.org 11303719).
    Met derailleurs: schakelen voordat het nodig is en blijven trappen (Special Olympics, coaching guide, Shifting gears).
sources-mixed =
    Hoogstens 12 fietsers per instructeur, twee of drie lessen van één tot twee uur (AustCycle, Australië, 2012).
    Engeland, niveau 1, buiten het verkeer: 9 tot 12 fietsers twee uur, 5 tot 8 anderhalf uur, 2 tot 4 één uur, per instructeur (delivery guide 8.3.1).
    Met derailleurs: schakelen voordat het nodig is en blijven trappen (Special Olympics, coaching guide, Shifting gears).
sources-children =
    “De versnellingen goed gebruiken (als de fiets die heeft)” hoort bij niveau 1, buiten het verkeer (UK cycle training standard, 2005).
    Engeland, niveau 1: 9 tot 12 kinderen twee uur, 5 tot 8 anderhalf uur, 2 tot 4 één uur, per instructeur (delivery guide 8.3.1).
    Vanaf 8 jaar, 15 per instructeur in de praktijk, drie uur (niveau 1, Nieuw-Zeeland). Ongeveer 9 jaar, met remmen en versnellingen (niveau 1, Schotland, oudergids 2014).

homeSheet-title = Voor thuis
homeSheet-child = Voor jou
homeSheet-childLines =
    Vandaag heb ik geoefend: klikken vóór de heuvel.
    Laat thuis zien welke hendel het lichter maakt.
    Zoek drie heuvels bij jou in de buurt. Waar zou je klikken?
    Luister: is je klik stil of luid?
homeSheet-draw = Teken een heuvel, en een kruisje waar je klikt.
homeSheet-parents = Voor ouders
homeSheet-parentLines =
    Kijk vóór elke rit naar remmen, banden, zadel en helm. Een versnelling die verspringt of kraakt, is voor de fietsenmaker.
    Rijd eerst samen op een rustige, vlakke, afgesloten plek. Er is altijd een volwassene bij die de leiding heeft.
    Vraag “Wat komt eraan?” en niet “Nu schakelen!”. Het kind vindt de plek.
    Tien minuten zijn genoeg. Stop terwijl het leuk is, en als iets pijn doet.
    Is de ketting eraf gelopen? Dan legt een volwassene hem terug, terwijl de fiets stilstaat.
# Before a line to write on, as are the two of the certificate.
homeSheet-name = Naam, als je wilt:

certificateSheet-title = Diploma
# Follows a line with a name.
certificateSheet-says = heeft op de fiets geoefend en laten zien:
certificateSheet-learnt =
    Ik kijk naar de heuvel voordat hij komt.
    Ik klik vóór de heuvel, niet erop.
    Ik trap zacht terwijl de ketting verspringt.
    Ik stop in de versnelling waarin ik wegrijd.
    Ik kan zeggen wat eraan komt terwijl ik fiets.
certificateSheet-tick = De trainer vinkt aan wat te zien was. De rest komt de volgende keer.
certificateSheet-date = Dag en plaats:
certificateSheet-coach = Trainer:

## Drills on the real bike, called across a yard: a title, what is done (each line a sentence), and what stands behind the labels

card-cone-title = Klik bij de pylon
card-cone-doing =
    Een pylon staat tien meter vóór de helling, of vóór een krijtstreep.
    Rijd er rustig naartoe, ogen op de helling.
    Bij de pylon: zacht trappen, één klik lichter, doorrijden.
card-cone-needs = Twee pylonnen, krijt, 40 m rustig, vlak terrein met een flauwe helling of een streep.
card-cone-safe = Eén fietser tegelijk, allemaal dezelfde kant op, zes fietslengtes ertussen. Niemand wacht in de uitloop.
card-cone-watch = Komt de klik bij de pylon, en is hij klaar vóór de helling? Blijven de hoofden omhoog?
card-cone-easier = Eerst zonder klik: zeg “nu” bij de pylon.
card-cone-harder = Haal de pylon weg. Iedereen kiest zelf de plek en zegt “nu”.
card-soft-feet-title = Zacht trappend langs de trainer
card-soft-feet-doing =
    Rijd rustig langs de trainer.
    Eén klik terwijl je zacht trapt, vlak vóór de trainer.
    Luister: een stille klik is een goede.
card-soft-feet-needs = 40 m rustig, vlak terrein, en een fiets waarvan de versnellingen vooraf zijn nagekeken.
card-soft-feet-safe = De trainer staat opzij en nooit in de rijlijn. Geen vingers bij een ketting.
card-soft-feet-watch = Stoppen de benen? Ze moeten zacht blijven doortrappen. Met een naafversnelling rusten ze; met een middenmotor wachten ze een tel.
card-soft-feet-easier = Alleen zacht trappen, geen klik.
card-soft-feet-harder = Twee klikken na elkaar, met één keer rondtrappen ertussen.
card-starting-gear-title = Stop in de versnelling om weg te rijden
card-starting-gear-doing =
    Rijd naar de stopstreep.
    Schakel lichter voordat je remt, terwijl je benen nog draaien (naafversnelling: stop, schakel dan).
    Stop, één voet aan de grond, remmen ingeknepen. Rijd weer weg in die versnelling.
card-starting-gear-needs = Krijt voor een streep, 30 m rustig, vlak terrein. Iedereen probeert eerst de remmen.
card-starting-gear-safe = Eén fietser tegelijk. De volgende gaat als de vorige weg is. Motor: minste ondersteuning, voorzichtig.
card-starting-gear-watch = Zit de versnelling erin voordat het wiel stilstaat? Gaat de eerste trap licht, zonder slingeren?
card-starting-gear-easier = Stop waar je wilt; de trainer roept “klik”.
card-starting-gear-harder = Zonder streep: stop als de trainer een hand opsteekt.
card-talk-title = Praat en rijd
card-talk-doing =
    Rijd een rondje en zeg hardop wat eraan komt: “vlak”, “heuvel”, “stop”.
    Zeg “klik” als je ervoor schakelt.
    Wie achter je rijdt luistert alleen, en vertelt het daarna.
card-talk-needs = Een rustig, afgesloten rondje met één bultje, of een streep die daarvoor doorgaat.
card-talk-safe = Drie fietslengtes tussen fietsers. Niemand haalt in. Niemand draait zich om om te praten.
card-talk-watch = Wordt de heuvel vóór de klik gezegd, en komt de klik vóór de heuvel?
card-talk-easier = De trainer zegt wat eraan komt.
card-talk-harder = Zeg het zonder klik; klik waar het hoort, zonder iets te zeggen.

## The plans: what a coach says and does, each line a sentence. What is said to children has at most twelve words.
## Those who lead are spoken to shortly; under “Say” stands what they call to the group.

road-20 = Twee rijden hem op het grote scherm, na elkaar. De rest roept “nu” waar zij zouden klikken.
road-45 = Iedereen rijdt hem één keer, op twee apparaten met hoogstens acht fietsers. Wie wacht, roept “nu”.
road-60 = Iedereen rijdt hem één of twee keer, op twee apparaten met hoogstens acht fietsers. Wie wacht, roept “nu”.

longer-adults = Iedereen wijst stilstaand de hendel aan die het lichter maakt, met het wiel opgetild; niemand heeft vingers bij de ketting.
lines-adults-warmUp =
    Kijk de fietsen na: remmen pakken, banden zijn hard, zadel en stuur zitten vast, helmen zitten goed.
    Twee rustige rondjes; in het tweede één klik zwaarder en weer één klik lichter.
lines-adults-say =
    Schakel vóór de heuvel, terwijl de pedalen nog makkelijk draaien.
    Trap één keer rond met zachte druk terwijl de ketting verspringt.
    Eén klik, even voelen, dan de volgende.
lines-adults-question =
    Bij welk klimmetje waren de meesten van ons te laat, en wat hadden we ervoor kunnen zien?
    Waar zou je nu klikken? Wijs het aan op de weg.
lines-adults-drill = Op een rustige, vlakke, afgesloten plek, allemaal dezelfde kant op. Op de kaarten staat hoe je het uitzet en veilig houdt.
lines-adults-watch =
    Benen die vóór de klik stoppen, klikken die pas op de helling komen, ogen op de ketting.
    Iemand zwoegt: twee versnellingen lichter en hetzelfde rondje nog eens. Pijn betekent stoppen.
lines-adults-end =
    Iedereen zegt één ding dat hij of zij vóór de volgende heuvel gaat doen.
    Volgende keer: hetzelfde rondje, met de klik iets eerder of iets later.

longer-mixed = Tweetallen van één nieuwe en één ervaren fietser; de ervaren fietser vraagt en legt niet uit.
lines-mixed-warmUp =
    Kijk de fietsen na in tweetallen: remmen, banden, zadel, stuur, helmen.
    Twee rustige rondjes in tweetallen, drie fietslengtes ertussen; wissel wie voorop rijdt.
lines-mixed-say =
    Kijk vooruit: de volgende heuvel zegt je welke versnelling past.
    Rond je klikken af vóór de heuvel; trap zacht bij de laatste.
    Snel of langzaam maakt vandaag niet uit, vroeg en stil wel.
lines-mixed-question =
    Wat deed de beste rit vóór het klimmetje dat de meesten van ons niet deden?
    Schakelden de ervaren fietsers eerder, of alleen minder?
lines-mixed-drill = In tweetallen op een rustige, afgesloten plek. Wie achteraan rijdt, zegt daarna waar de klik kwam.
lines-mixed-watch =
    Ervaren fietsers die racen: geef ze één versnelling voor het hele rondje.
    Nieuwe fietsers die nadoen wat ze vóór zich zien: hun eigen benen zeggen wanneer.
lines-mixed-end =
    Elk tweetal vertelt één ding dat ze bij de ander hoorden of zagen.
    Volgende keer: de tweetallen andersom.

longer-children = Iedereen belt, remt en klikt één keer, stilstaand naast de trainer.
lines-children-warmUp =
    Een volwassene die de leiding heeft, kijkt elke fiets na: remmen, banden, zadel, helm. Wie geen versnellingen heeft, oefent zonder de klik.
    Twee rondjes achter elkaar aan, langzaam, één fietslengte ertussen.
lines-children-say =
    Klik vóór de heuvel, niet erop.
    Trap zacht terwijl de ketting verspringt.
    Kijk naar de heuvel, niet naar de ketting.
lines-children-question =
    Welke heuvel had de meesten van ons te pakken?
    Waar klikken we de volgende keer?
lines-children-drill = Eén kind tegelijk, op een rustige, afgesloten plek, met een volwassene die de leiding heeft. Op de kaarten staat hoe.
lines-children-watch =
    Voeten die stoppen, hoofden die omlaag kijken, kinderen die in de weg wachten.
    Prijs de klik, niet de snelheid. Niemand wordt met een ander vergeleken.
lines-children-end =
    Wat doe je vóór de volgende heuvel?
    Laat thuis zien hoe je fiets klikt.
    Deel het blad voor thuis uit.
