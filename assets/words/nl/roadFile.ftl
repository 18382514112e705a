### Wat er over een bestand met een opgenomen weg (GPX) wordt gezegd: waarom er geen weg van kan worden gemaakt, wat
### iemand kan kiezen, hoe ver de hoogtes te vertrouwen zijn. GPX, KML, TCX, FIT, JSON, XML, PDF, UTF-8 en DOCTYPE zijn
### namen van formaten. Een “track” is wat is opgenomen, de “weg” waar je op rijdt.

## Wat het bestand dan wel is

is-web-page-at-once = Dit is een webpagina, geen GPX-bestand. Misschien moest je voor de download inloggen. Log in en download het opnieuw.
is-web-page = Dit is een webpagina, geen GPX-bestand. Download de rit zelf.
is-kml = Dit is een KML-bestand. Exporteer de rit als GPX, met de hoogtes erbij.
is-tcx = Dit is een TCX-bestand. Exporteer de rit als GPX.
is-json = Dit is JSON, geen GPX-bestand. Exporteer de rit als GPX.
is-pdf = Dit is een PDF-document, geen GPX-bestand. Exporteer de rit als GPX.
is-picture = Dit is een afbeelding, geen GPX-bestand. Exporteer de rit als GPX.
is-fit = Dit is een FIT-bestand. Exporteer de rit als GPX.
is-binary = Dit is geen tekstbestand, dus ook geen GPX-bestand. Exporteer de rit als GPX.
is-other = Dit is geen GPX-bestand: het begint niet met “<”. Exporteer de rit als GPX.
is-xml = Dit is XML, maar geen GPX: het begint met <{ $root }>. Exporteer de rit als GPX.

## Waarom er geen weg van kan worden gemaakt

too-big = Dit bestand is te groot voor één rit. Exporteer een kortere rit.
truncated = Het bestand houdt halverwege op, bij regel { $line }. Exporteer of kopieer het opnieuw.
empty = Dit bestand is leeg. Exporteer of kopieer het opnieuw.
packed = Dit bestand is zo ingepakt dat het hier niet open kan. Pak het eerst uit; het bestand erin eindigt op .gpx.
packed-damaged = Dit ingepakte bestand is beschadigd of zit achter een wachtwoord, dus het kan niet open. Pak het eerst uit, of exporteer het opnieuw.
packed-without = In dit archief zit geen GPX-bestand. Het bestand erin moet op .gpx eindigen.
packed-several = In dit archief zitten meer GPX-bestanden. Pak het uit en kies er een.
encoding = Het bestand is geschreven in een codering die hier niet te lezen is ({ $label }). Sla het op als UTF-8.
not-well-formed = Het bestand is beschadigd bij regel { $line }: daar is het geen welgevormde XML. Exporteer het opnieuw.
doctype = Het bestand brengt een eigen documenttype mee (DOCTYPE). Dat is nooit nodig en niet veilig. Exporteer het opnieuw als gewone GPX.
too-deep = In het bestand zitten meer dan { $most } elementen in elkaar. Exporteer het opnieuw als gewone GPX.
too-many-points = Het bestand heeft meer dan { $most } punten. Exporteer een kortere rit.
no-such-track =
    { $trackCount ->
        [one] Er is geen track { $track }; het bestand heeft er maar één.
       *[other] Er is geen track { $track }; het bestand heeft er { $trackCount }.
    }
no-readable-points =
    { $pointCount ->
        [one] Het bestand heeft één punt, en de plaats daarvan op de wereldbol is niet te lezen. Exporteer het opnieuw, met plaatsen in graden.
       *[other] Het bestand heeft { $pointCount } punten, en van geen daarvan is de plaats op de wereldbol te lezen. Exporteer het opnieuw, met plaatsen in graden.
    }
only-waypoints =
    { $waypointCount ->
        [one] In het bestand staat één los punt (waypoint), maar geen track en geen route. Exporteer de rit zelf.
       *[other] In het bestand staan { $waypointCount } losse punten (waypoints), maar geen track en geen route. Exporteer de rit zelf.
    }
no-points = In het bestand staat geen track en geen route met punten. Exporteer de rit zelf.
no-length = De track komt nooit van zijn eerste plaats, zoals bij een rit binnenshuis, dus hij heeft geen lengte. Kies een rit op de weg.
too-short = De weg is { $length } lang; een level heeft minstens { $least } nodig. Kies een langere rit.
too-long = De track is { $length } lang; zo lang is geen rit. Exporteer één rit.
no-elevation = Het bestand heeft geen hoogtes, dus over de heuvels is niets bekend. Exporteer het uit een programma dat ze toevoegt.
no-readable-elevation =
    { $pointCount ->
        [one] De enige hoogte in het bestand is niet te lezen. Exporteer het opnieuw, in meters zoals 1420.5.
       *[other] Geen van de { $pointCount } hoogtes in het bestand is te lezen. Exporteer het opnieuw, in meters zoals 1420.5.
    }
backwards = Het stuk eindigt voordat het begint. Kies waar het begint en waar het eindigt.
unreadable = Het bestand kon niet worden gelezen. Is het intussen verplaatst of veranderd? Kies het opnieuw.
no-reader = Het deel dat bestanden leest, antwoordt niet. Laad de pagina opnieuw en kies dan het bestand nog eens.
no-road = De weg is hier niet meer. Kies het bestand opnieuw.

## Wat iemand kiest

several-tracks =
    { $how ->
        [joined] In het bestand staan { $trackCount } tracks. Ze zijn achter elkaar gezet. Is dat de weg?
       *[one] In het bestand staan { $trackCount } tracks. Track { $track } is genomen. Is dat de weg?
    }
holes =
    { $holeCount ->
        [one] De track heeft een gat; het is { $longest } lang en ligt { $at } na de start. Het is in een rechte lijn overbrugd. Dat zo laten, of alleen het langste deel zonder gat nemen?
       *[other] De track heeft { $holeCount } gaten; het langste is { $longest } lang en ligt { $at } na de start. Ze zijn in rechte lijnen overbrugd. Dat zo laten, of alleen het langste deel zonder gat nemen?
    }
perhaps-feet-steep = { $share } van deze weg zou steiler zijn dan { $steep }. Misschien staan de hoogtes in het bestand in voet. Waarin staan ze?
perhaps-feet-fast = De fietser zou { $climb } per uur zijn geklommen, en dat kunnen geen benen. Misschien staan de hoogtes in het bestand in voet. Waarin staan ze?

## Wat er is gedaan

salvaged =
    { $pointCount ->
        [one] Het bestand is beschadigd bij regel { $line }. Wat te lezen was, is bewaard: { $pointCount } punt. Kijk of de weg er helemaal is.
       *[other] Het bestand is beschadigd bij regel { $line }. Wat te lezen was, is bewaard: { $pointCount } punten. Kijk of de weg er helemaal is.
    }
stops =
    { $long ->
        [seconds] Pauzes zijn weggehaald, zodat de spreiding van de plaatsen geen weg wordt: { $count } ({ $time } s in totaal).
        [minutes] Pauzes zijn weggehaald, zodat de spreiding van de plaatsen geen weg wordt: { $count } ({ $time } min in totaal).
       *[unknown] Pauzes zijn weggehaald, zodat de spreiding van de plaatsen geen weg wordt: { $count }.
    }
zero-elevations = Hoogtes van precies 0 waar de weg daar ver vandaan is, weggelaten: { $pointCount }.
impossible-points =
    { $pointCount ->
        [one] { $pointCount } punt is weggelaten: daar kan niemand zijn geweest.
       *[other] { $pointCount } punten zijn weggelaten: daar kan niemand zijn geweest.
    }
unreadable-points = Punten zonder leesbare plaats, weggelaten: { $pointCount }.
unreadable-elevations = Hoogtes die geen hoogte zijn, weggelaten: { $pointCount }.
unwritten-elevations = Punten zonder hoogte liggen op een rechte lijn tussen hun buren: { $pointCount }.
elevation-spikes = Losse pieken in de hoogte, weggelaten: { $pointCount }.
time-backwards = De tijden lopen hier en daar terug, dus daarmee wordt niets vergeleken. De weg zelf heeft ze niet nodig.
cadence-halved = De benen zouden de halve rit { $rpm } keer per minuut hebben gedraaid: de sensor telde elke voet. De cadans is gehalveerd.
cadence-stuck = De cadans is overal { $rpm } per minuut, dus hij is niet gemeten; hij is weggelaten.
capped = { $length } van de weg is steiler dan { $limit } (tot { $steepest }); een level begrenst dat tot { $limit }.

## Hoe ver de hoogtes te vertrouwen zijn

sparse = De punten liggen { $step } uit elkaar: te weinig voor heuvels ertussen.
rounded-places = De plaatsen zijn geschreven in stappen van { $step }, dus de weg wordt langer en minder steil dan hij is.
elevation-missing = Op { $share } van de weg ontbreken de hoogtes; daar staan rechte lijnen voor in de plaats.
holes-share = { $share } van de weg bestaat uit gaten die in een rechte lijn zijn overbrugd.
bridged = Op { $share } van de weg springen de hoogtes zoals geen weg dat doet; dat is overbrugd.
jumps =
    { $jumpCount ->
        [one] De hoogtes springen één keer zoals geen weg dat doet, alsof het apparaat opnieuw is ingesteld; de weg gaat verder op de hoogte waarop hij kwam.
       *[other] De hoogtes springen { $jumpCount } keer zoals geen weg dat doet, alsof het apparaat opnieuw is ingesteld; de weg gaat verder op de hoogte waarop hij kwam.
    }
noisy = De hoogtes wijken van punt tot punt { $noise } af; hellingen kunnen er { $points } procentpunt naast zitten, ook al zijn ze gemiddeld over { $width }.
spikes = { $share } van de hoogtes zijn losse pieken; die zijn weggelaten.
whole-metres = De hoogtes zijn hele meters, dus kleine bultjes zijn vaag.
all-equal = Alle hoogtes zijn gelijk. Of de weg is zo vlak als water, of ze zijn nooit gemeten.
