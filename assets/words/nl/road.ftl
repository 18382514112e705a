### On the road: what recorded rides show of somebody's shifting, pitch by pitch. Lengths, gradients, shares and months
### come in written. "Best ride" is the one the game works out. GPX is the name of a format.

intro = Wat opgenomen ritten van je schakelen laten zien, klimmetje voor klimmetje.
opening = Een ogenblik: je ritten worden opgehaald.
openFailed = Wat bewaard is, kon niet worden geopend. Laad de pagina opnieuw.
limits = Eén meting per seconde laat niet zien of je zacht trapt, op welke seconde je schakelt of hoe de kettinglijn is. Waar geschakeld werd, is zo nauwkeurig als achter ± staat; wind, verkeer en gezelschap zitten er niet in.
late-heights = Veel apparaten schrijven de hoogte een paar seconden te laat op. Met vermogen in het bestand wordt dat gevonden en verbeterd. Zonder vermogen kan de voet van een heuvel { $way } en meer te ver weg liggen, en lijk je eerder te schakelen dan je deed.
# Stands in a table where nothing is known.
unknown = –

## Bringing a file

bring-title = Een rit meebrengen
bring-what = GPX-bestanden met cadans, één punt per seconde. Meer tegelijk mag.
# $parts: chainrings and sprockets, like "50 / 34 · 11–34". $tyre: a size, like "28-622".
bring-bike = Gereden met { $parts } en banden van { $tyre }.
bring-otherBike = Het was een andere fiets
# Beside a box that is ticked.
bring-teeth = Met deze tanden is niet gereden. Dan worden versnellingen zonder naam onderscheiden, en minder ervan.
bring-files = Kies GPX-bestanden
# Antwoorden op de vraag waarin de hoogtes van een bestand staan.
bring-metres = Ze zijn in meters
bring-feet = Ze zijn in voet
bring-privacy = Het bestand verlaat dit apparaat niet en wordt niet bewaard. Alleen getallen per klimmetje en de maand worden bewaard: geen plaats, geen tijdstip, geen track.
bring-reading = Lezen … { $share }
# $done and $all (Number): pitches.
bring-judging = De beste rit met jouw vermogen rijdt dezelfde klimmetjes: { $done } van { $all } …
# $name: of a file.
refused = { $name } is niet aangenomen
useless-no-times = Dit bestand zegt niet wanneer er gereden is, of de tijden lopen terug. Neem op met tijden.
useless-too-sparse = De meeste punten van dit bestand liggen meer dan drie seconden uit elkaar, te ver om versnellingen te herkennen. Stel het apparaat zo in dat het elke seconde opneemt.
useless-no-cadence = In dit bestand staat geen cadans, dus de versnellingen zijn niet te herkennen. Een sensor bij de trapas meet die; exporteer met alle gegevens.
useless-cadence-stuck = De cadans in dit bestand is overal hetzelfde getal, dus hij is niet gemeten en de versnellingen zijn niet te herkennen. Kies een rit met een sensor bij de trapas.
useless-no-road = Dit bestand kon niet worden bekeken. Kies het opnieuw.

## A ride

ride-title = Rit van { $length }, { $month }
ride-titleNoMonth = Rit van { $length }
# $title: one of the two above. $file: the name of a file.
ride-named = { $title } ({ $file })
# $title: of a ride.
ride-pitchesOf = Klimmetjes: { $title }
# $found (Number): pitches.
ride-summary =
    { $found ->
        [0] De versnelling was { $readable } van de tijd te herkennen. Geen klimmetje gevonden.
        [one] De versnelling was { $readable } van de tijd te herkennen. Eén klimmetje gevonden.
       *[other] De versnelling was { $readable } van de tijd te herkennen. { $found } klimmetjes gevonden.
    }
# $changes (String): a number, like "2.4".
ride-changes =
    { $per ->
        [mile] { $changes } keer geschakeld per mijl.
       *[km] { $changes } keer geschakeld per km.
    }
ride-inBand = In je bereik: { $share } van de tijd dat je trapte.
# $watts (String): a number.
ride-power = Uit de heuvels blijkt dat je met ongeveer { $watts } W rijdt; de beste rit naast die van jou heeft hetzelfde vermogen.
ride-powerUnknown = Er werd te weinig geklommen in je bereik om je vermogen te bepalen; de beste rit heeft dat van de fietser die hier is ingesteld.
ride-powerHelped = Met een motor laten de heuvels niet zien wat je benen gaven en wat de motor deed. De beste rit heeft het vermogen van de fietser die hier is ingesteld, en de ondersteuning die voor de fiets is ingesteld.
ride-heights =
    { $late ->
        [0] Het vermogen laat zien dat de hoogtes op tijd kwamen.
        [one] De hoogtes kwamen ongeveer een seconde te laat; dat is verbeterd.
       *[other] De hoogtes kwamen ongeveer { $late } seconden te laat; dat is verbeterd.
    }
ride-heightsUnknown = Zonder genoeg vermogen in het bestand is niet te zien of de hoogtes te laat kwamen; de ± houdt daar rekening mee.
ride-cadenceHalved = De sensor had elke voet geteld; de cadans is gehalveerd.
ride-noPitch = Geen klimmetje gevonden: de weg wordt nergens in één keer drie procentpunt steiler.
ride-keep = Getallen bewaren
ride-kept = Bewaard: de getallen die je hier ziet en verder niets.
ride-already = Deze rit is al bewaard.
ride-notKept = Hij kon op dit apparaat niet worden bewaard.

## The small picture of a pitch, and what explains its two marks

# Wordt voorgelezen. $own en $best: een van de plaatsen hieronder.
picture-desc = Eerste lichtere versnelling: { $own }.
picture-descBest = Eerste lichtere versnelling: { $own }; de beste rit: { $best }.
# The mark stands for a place that is known only roughly.
picture-own = jij, ongeveer
picture-best = beste rit met jouw vermogen

## The table of pitches

table-pitch = Klimmetje
table-first = Eerste lichtere versnelling
# How much of the shifting was done there, in per cent.
table-atFoot = Klaar aan de voet
# Three cadences.
table-cadence = Benen: ervoor, aan de voet, traagst
table-best = Beste rit
table-again = Opnieuw
# A pitch, like "8 %, 120 m".
table-name = { $slope }, { $length }
table-unread = versnellingen niet te herkennen
# What the best ride did. $place: one of the places below. $share: of the shifting that was done at the foot.
table-bestDone = { $place }, { $share } klaar
table-ride = Nog eens rijden
table-rideThis = Nog eens rijden: { $pitch }
# $foresight and $total (String): marks of 100, or the sign for what is not known.
table-inGame = In het spel: vooruitzien { $foresight }, totaal { $total }.
table-notMade = { $pitch }: van deze plek is geen level te maken.

## Where the first easier gear came

# $pm: how far from there it may have been.
place-before = { $metres } vóór de voet
place-beforePm = { $metres } vóór de voet ± { $pm }
place-after = { $metres } na de voet
place-afterPm = { $metres } na de voet ± { $pm }
place-none = geen lichtere versnelling

## A level made of a pitch

level-title = Jouw klimmetje: { $slope }, { $length }
level-sentence = Een klimmetje uit een eigen rit, met de weg ernaartoe.

## All kept rides

all-title = Alle bewaarde ritten
all-empty = Er is nog geen rit bewaard.
# $rides (Number), $pitches (Number).
all-mean =
    { $rides ->
        [one] { $pitches ->
            [0] Eén rit, geen klimmetje.
            [one] Eén rit, één klimmetje.
           *[other] Eén rit, { $pitches } klimmetjes.
        }
       *[other] { $pitches ->
            [0] { $rides } ritten, geen klimmetje.
            [one] { $rides } ritten, één klimmetje.
           *[other] { $rides } ritten, { $pitches } klimmetjes.
        }
    }
all-few = Onder de tien klimmetjes zegt een gemiddelde weinig.
all-byMonth = Maand voor maand
all-month = Maand
all-noMonth = maand onbekend
all-rides = Ritten
# Rides and pitches of a month. $rides (Number), $pitches (Number).
all-counted =
    { $pitches ->
        [one] { $rides } · { $pitches } klimmetje
       *[other] { $rides } · { $pitches } klimmetjes
    }
all-fall = Benen trager met
all-inBand = In bereik
all-check = Toetsritten in het spel
# $rpm (String): turns of the pedals a minute.
all-perMinute = { $rpm }/min
# $value: with its unit.
all-giveOrTake = { $value } ± { $pm }
# $totals: marks of 100.
all-checks = totaal { $totals }
# $title: of a ride.
all-numbered = { $number }. { $title }
# What a kept ride was ridden on. $parts: chainrings and sprockets.
all-parts = { $parts }.
all-what = Wat bewaard is
all-whatHint = Dit is alles, zoals het bewaard is. Het zegt niets over waar of hoe laat je reed.
all-forget = Wissen
all-forgetThis = Van dit apparaat wissen: { $ride }
