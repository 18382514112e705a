### De ladder van levels, en vrije ritten.

intro = Van boven naar beneden, of waar je maar wilt. Elk level leert je één ding.
own = Eigen levels
ridden = Gereden
best = Beste: { $total } van 100
best-not-passed = Beste: { $total }, nog niet gehaald
next = Volgende
length = { $length } lang
needs-derailleur = voor versnellingen op tandwielen
needs-hub = voor versnellingen in de naaf, zonder motor
needs-motor = voor een motor
needs-crank-motor = voor een middenmotor
needs-wheel-motor = voor een wielmotor
pitches =
    { $count ->
        [one] { $count } klimmetje
       *[other] { $count } klimmetjes
    }
none = In deze kopie van het spel zijn geen levels gevonden.
patches = Lapjes

## Vrije ritten

free-title = Vrije rit
free-intro = Elke weg die je wilt. Dezelfde naam, heuvels en lengte geven op elk apparaat dezelfde weg.
free-seed = Naam van de weg
free-seedHint = Een woord of een getal.
free-seedEmpty = Geef de weg een naam, of neem een andere weg.
free-another = Een andere weg
free-hilliness = Heuvels
free-hilly-0 = bijna vlak
free-hilly-1 = glooiend
free-hilly-2 = heuvelachtig
free-hilly-3 = steil
free-hilly-4 = heel steil
free-length = Lengte
free-facts =
    { $pitches ->
        [0] { $length }, geen klimmetje, hooguit { $steepest }, in totaal { $climbed } omhoog.
        [one] { $length }, { $pitches } klimmetje, hooguit { $steepest }, in totaal { $climbed } omhoog.
       *[other] { $length }, { $pitches } klimmetjes, hooguit { $steepest }, in totaal { $climbed } omhoog.
    }
free-profile = De weg van opzij: { $facts }
free-ride = Rij deze weg
free-link = Link naar deze weg
free-copy = Kopieer de link
free-copied = Gekopieerd. Wie hem opent, rijdt dezelfde weg.
free-notCopied = De browser stond kopiëren niet toe. De link is geselecteerd: kopieer hem zelf.
free-bad-unreadable = Deze link naar een vrije rit is niet te lezen. Hij hoort te eindigen op free-, een getal, de heuvels van 0 tot 100 en de lengte in meters, zoals free-42-50-2000. Kies hier in plaats daarvan een weg.
free-bad-seed = Het getal van de weg in deze link is te groot. Kies hier in plaats daarvan een weg.
free-bad-hilliness = De heuvels in deze link gaan boven 100. Kies hier in plaats daarvan een weg.
free-bad-length = De weg in deze link is niet tussen { $shortest } en { $longest } lang. Kies hier in plaats daarvan een weg.
