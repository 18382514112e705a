### De levelbouwer, waar je zelf wegen maakt: uit het hoofd of uit een opgenomen rit. Lengtes, hoogtes, snelheden,
### hellingen en aandelen komen al uitgeschreven, met hun eenheid.

intro = Maak een weg om op te oefenen: uit je hoofd, of uit een weg die echt gereden is.
opening = De levelbouwer wordt klaargezet …
openFailed = De levelbouwer kon niet worden opgehaald. Laad de pagina opnieuw en probeer het nog eens.
named = { $doing }: { $what }
range = { $low } tot { $high }

## De eerste pagina

home-make = Maak een level
home-fresh = Een nieuwe weg
home-freshSentence = Gemaakt in de levelbouwer.
home-freshHint = Vlak, klimmetje, vlak: verander het van daaruit.
home-roadHint = De rit van zondag, of de zwaarste { $length } ervan.
home-file = Open een levelbestand
home-fileHint = Een .json-bestand dat iemand hier heeft opgeslagen.
home-copy = Begin met een level van het spel
home-copyHint = Een kopie; het level zelf blijft.
home-choose = Level
home-copyButton = Kopieer het
home-own = Jouw levels
home-none = Nog geen. Wat je hier opslaat, staat ook op de pagina “Levels”.
home-ride = Rijden
home-edit = Wijzig
home-duplicate = Dupliceer
home-remove = Wis
home-removed = “{ $title }” is gewist.
home-restored = “{ $title }” is terug.
home-duplicated = “{ $title }” is toegevoegd.
home-unsaved = “{ $title }” ligt in de levelbouwer en is niet opgeslagen.
home-goOn = Ga ermee verder
home-drop = Gooi weg
home-facts = { $length }, tot { $steepest }

## Een level gaat open terwijl een ander niet is opgeslagen

leave-title = Nog niet opgeslagen
leave-text = “{ $title }” heeft wijzigingen die niet zijn opgeslagen. Wat moet ermee gebeuren?
leave-keep = Ga terug
leave-drop = Wijzigingen weggooien

## Opslaan

keep-save = Opslaan
keep-saved = Op dit apparaat opgeslagen.
keep-unsaved = Nog niet opgeslagen.
keep-changed = Gewijzigd sinds het opslaan.
keep-faulty = Opslaan kan zodra in orde is wat onder “{ check-title }” staat.
keep-private-window = Niet opgeslagen: de browser bewaart niets in dit venster. Download het als bestand.
keep-disk-full = Niet opgeslagen: op het apparaat is geen ruimte meer. Download het als bestand.
keep-newer-version = Niet opgeslagen: hier is een nieuwere versie van het spel geweest. Laad de pagina opnieuw.
keep-blocked = Niet opgeslagen: een ander tabblad van het spel zit in de weg. Sluit het en probeer het opnieuw.
keep-failed = Niet opgeslagen: de browser antwoordt niet. Download het voor de zekerheid als bestand.

## De weg in de levelbouwer

edit-undo = Ongedaan maken
edit-redo = Opnieuw
edit-list = Alle levels hier
edit-titleField = Titel
edit-sentenceField = Eén zin erover
edit-profile = De weg van opzij. Elke greep kun je slepen of met de pijltjestoetsen bewegen.
edit-facts =
    { $pitches ->
        [0] { $length }, { $climbed } omhoog, geen klimmetje
        [one] { $length }, { $climbed } omhoog, { $pitches } klimmetje
       *[other] { $length }, { $climbed } omhoog, { $pitches } klimmetjes
    }
edit-road = Weg
edit-placed = Op de weg
edit-addPiece = Voeg een stuk weg toe
edit-addPlaced = Leg iets op de weg
edit-earlier = Eerder
edit-later = Later
edit-duplicate = Dupliceer
edit-remove = Haal weg
edit-nothing = Nog niets.
edit-wholeMetres = Een level wordt in hele meters bewaard, dus lengtes in voet kunnen iets afwijken.
edit-more = Meer over dit level
edit-lesson = Wat je ervan leert
edit-audience = Voor
edit-everyone = iedereen
edit-children = kinderen
edit-seed = Toevalsgetal
edit-seedHint = Een ander getal, een andere weg van dezelfde soort.
edit-passMark = Gehaald vanaf
edit-aids = Hulp op het scherm
edit-no = { $number }. { $name }

zoom-title = Welk deel van de weg je ziet
zoom-closer = Dichterbij
zoom-wider = Ruimer
zoom-back = ◀ Terug
zoom-on = Verder ▶
zoom-whole = Hele weg

## Stukken weg

piece-flat = Vlak
piece-climb = Klim
piece-pitch = Klimmetje
piece-descent = Afdaling
piece-rollers = Golvend
piece-random-pitches = Toevallige klimmetjes
piece-recorded = Opgenomen weg
facts-sloped = { $length }, { $slope }
facts-rollers = { $length }, ≤ { $slope }
facts-random-pitches = { $length }, { $count } × ≤ { $slope }

## Wat er op de weg ligt

place-stopLinesM = Stopstreep
place-winds = Wind
place-surfaces = Wegdek
place-hidden = Verborgen stuk
place-cues = Aanwijzing
surface-gravel = grind
surface-grass = gras
surface-cobbles = kasseien
wind =
    { $way ->
        [head] tegenwind { $speed }
       *[tail] rugwind { $speed }
    }
wind-mps = { $value } m/s
placed-stretch = { $stretch }, { $what }
hidden-sight = { place-hidden }, zicht { $sight }
placed-sight = zicht { $sight }
placed-cue = { $at }: { $cue }
ownCue = Eigen woorden
cueText = Wat er gezegd wordt

## Velden

field-lengthM = Lengte
field-slope = Helling
field-waveM = Van top tot top, ongeveer
field-steepest = Steilst
field-gentlest = Minst steile klimmetje
field-pitchCount = Klimmetjes
field-beforeEach = Weg vóór elk (0: toeval)
field-fromM = Van
field-toM = Tot
field-atM = Op
field-windMps = Wind van voren (min: van achteren)
field-sightM = Zicht

## Wat er mis is, en wat kan verrassen

check-title = Kijk hier
check-good = Niets om je zorgen over te maken voor deze fietser op deze fiets.
check-working = Even kijken …
check-goThere = Ga erheen
check-trim = Knip eraf
check-cannotRide = Voordat je het kunt rijden:
check-surprising = Mag, maar kan verrassen:

## De beste rit

reference-title = Hoe het zou voelen
reference-intro = De beste rit die hier mogelijk is.
reference-bike = Fiets
reference-rider = Fietser
reference-asRidden = Met het vermogen van de opname ({ $watts } W)
reference-working = De beste rit wordt berekend: { $share }
reference-ask = Bereken de beste rit
reference-long = Dit is een lange weg; het berekenen duurt even.
reference-failed = De beste rit kon niet worden berekend.
reference-waits = Eerst moet de weg in orde zijn.
reference-time = Tijd
reference-lowest = Laagste cadans
reference-lowestAt = { $rpm } per minuut, op { $at }
reference-shifts = Geschakeld
reference-worst = Zwaarste klimmetje
reference-worstIs = { $steepest } op { $at }: de benen vertragen tot { $rpm } per minuut
reference-noPitch = geen kort klimmetje; het steilst op { $at }, { $steepest }
reference-asksNothing = Geen klimmetje vraagt hier om een lichtere versnelling: de benen houden de versnelling waarmee ze aankomen, of het is al de lichtste. Met deze fiets en deze fietser krijgt vooruitzien geen punten.
reference-level = geen, de weg is vlak
reference-feet = Voet aan de grond
reference-cadenceLane = Cadans (/min)
reference-speedLane = Snelheid
reference-scale = { $low } – { $high }
reference-lane = { $what }: { $range }
reference-best = de beste rit
reference-ridden = wat er gereden is
reference-legend = Tekens op de weg: ▲ lichter schakelen, ▼ zwaarder schakelen.
reference-shift =
    { $direction ->
        [easier] lichter op { $at }: { $gear }
       *[harder] zwaarder op { $at }: { $gear }
    }
reference-list = Alle keren schakelen in een lijst

## Naast wat er gereden is

compare-title = Naast de echte rit
compare-times = Je deed er van { $from } tot { $to } { $rode } over, met stops; de beste rit duurt { $best }.
# $watts: told from the recorded ride. $theirs: of the rider of the best ride.
compare-power =
    { $how ->
        [same] Uit de heuvels blijkt dat je met ongeveer { $watts } W reed, alsof er geen wind was. De beste rit heeft hetzelfde vermogen.
        [other] Uit de heuvels blijkt dat je met ongeveer { $watts } W reed, alsof er geen wind was. De beste rit heeft { $theirs } W: een deel van het verschil is vermogen, niet schakelen.
        [helped] Met een motor laten de heuvels niet zien wat je benen gaven en wat de motor deed. De beste rit heeft { $theirs } W en de ondersteuning die voor de fiets is ingesteld.
       *[unknown] Er werd te weinig geklommen om je vermogen te bepalen. De beste rit heeft { $theirs } W: een deel van het verschil kan vermogen zijn, niet schakelen.
    }
compare-withCadence = Tussen { $from } en { $to } reed je dit met { $rode } per minuut; de beste rit rijdt daar in { $gear }, met { $cadence }.
compare-withSpeed = Tussen { $from } en { $to } reed je { $rode }; de beste rit rijdt daar in { $gear }, met { $speed }.
compare-noCadence = In het bestand staat geen cadans, dus alleen snelheden zijn te vergelijken.
compare-notKept = Snelheid en cadans van die rit zie je alleen hier. Ze horen niet bij het level.
compare-keep = Bewaar ze op dit apparaat
compare-kept = Op dit apparaat bewaard, naast het level. Ze gaan nooit mee in een link of een bestand.
compare-forget = Wis ze
compare-saveFirst = Sla eerst het level op.
compare-waits = Komt zodra de beste rit is berekend.

## Een proefrit

try-title = Proefrit
try-from = Begin op
try-start = Begin van de proefrit
try-ride = Rij vanaf daar
try-hint = Op je eigen fiets. Proefritten worden niet bewaard.

## Delen

share-title = Delen
share-intro = Link, code en bestand bevatten het level zelf: de weg, de titel en de zin. Verder niets.
share-link = Link
share-copy = Kopieer de link
share-copied = Gekopieerd.
share-copyFailed = De browser stond kopiëren niet toe. Selecteer de link en kopieer hem zelf.
share-code = De link als code voor een camera
share-tooLong = Deze weg is te lang voor een code. Gebruik de link of het bestand.
share-file = Download het bestand

## Het level als tekst

json-title = Als tekst
json-intro = Hetzelfde level als JSON. Wat je hier wijzigt, wijzigt de weg, en andersom.
json-field = Het level als JSON
json-good = Dit is het level in de levelbouwer.
json-bad = Nog niet overgenomen:
json-line = Regel { $line }

## Een level dat als link of bestand kwam

opened-title = Een level voor jou
opened-intro = Het is nog niet bewaard. Bekijk het eerst.
opened-keep = Bewaar het
opened-ride = Rij zonder te bewaren
opened-leave = Laat maar
opened-badTitle = Dit kan niet worden geopend
opened-already = Precies deze weg heb je al: “{ $title }”.
opened-keepCopy = Bewaar nog een kopie
opened-climbed = Omhoog
opened-fingerprint = Vingerafdruk van de weg
opened-reading = Uitpakken …
opened-no = Deze browser kan de link niet uitpakken. Vraag om het bestand.

## Een weg uit een opgenomen rit

road-title = Een weg uit een GPX-bestand
road-intro = Het bestand wordt hier gelezen, in je browser, en gaat nergens heen. In een level staan alleen hoogtes en afstanden.
road-choose = Kies een GPX-bestand
road-drop = of sleep het ergens naar deze pagina. Het mag ingepakt zijn (.gz of .zip).
road-reading = Lezen: { $share }
road-cancel = Stoppen
road-cancelled = Gestopt. Er is niets bewaard.
road-refused = Van dit bestand kan geen weg worden gemaakt
road-facts = { $length }, { $climbed } omhoog, tot { $steepest }, uit { $points } punten.
road-quality = Hoe ver je de hoogtes kunt vertrouwen
road-grades-good = Goed: ze kloppen met elkaar.
road-grades-fair = Matig: gebruik ze voorzichtig.
road-grades-poor = Slecht: de heuvels liggen misschien niet waar ze lijken.
road-notes = Wat er is rechtgezet
road-questions = Te beslissen
road-options-join = allemaal, achter elkaar
road-options-straight = in een rechte lijn overbruggen
road-options-longest-part = alleen het langste deel zonder gat
road-options-metres = meter
road-options-feet = voet
road-track = alleen nummer { $track }
road-stretch = Welk stuk?
road-profile = De opgenomen weg van opzij, met het gekozen stuk
road-hardest = De zwaarste { $length }
road-whole = De hele weg
road-longest = De eerste { $length }
road-chosen = Het level: { $length }, { $climbed } omhoog, tot { $steepest }.
road-flatter = De opgenomen weg was steiler: { $climbed } omhoog, tot { $steepest }. Een level gaat tot { $limit }, dus de steile stukken klimmen minder.
road-titleField = Titel van het level
road-titleHint = Die kies jij; uit het bestand wordt niets overgenomen.
road-sentence = Een weg die echt gereden is.
road-make = Sla op als level
road-needsTitle = Geef het een titel.
road-timed = In het bestand staat hoe snel er gereden is. In de levelbouwer kun je dat vergelijken.
road-working = Een moment …
