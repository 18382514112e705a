### Sessies met een groep: plannen, het apparaat doorgeven, het groepsbeeld, het verslag. $name is een dier zoals “Rode vos”,
### of een naam die iemand zelf koos.

# Kleine getallen als woord: in een zin, en aan het begin ervan.
number =
    { $count ->
        [1] één
        [2] twee
        [3] drie
        [4] vier
        [5] vijf
        [6] zes
        [7] zeven
        [8] acht
        [9] negen
        [10] tien
       *[other] { $count }
    }
numberFirst =
    { $count ->
        [1] Eén
        [2] Twee
        [3] Drie
        [4] Vier
        [5] Vijf
        [6] Zes
        [7] Zeven
        [8] Acht
        [9] Negen
        [10] Tien
       *[other] { $count }
    }

title = Clinic
intro = Een groep, één weg en iets om over te praten. Geen namen, geen accounts: dieren zijn genoeg.
back = Clinic
opening = De sessies op dit apparaat worden geopend …
elsewhere = De clinic ging verder in een ander tabblad van deze browser. Eén tabblad tegelijk bewaart de ritten.
goOnHere = Hier verder
openFailed = De clinic kon niet worden opgehaald. Laad de pagina opnieuw en probeer het nog eens.

## De eerste pagina: ga verder met een sessie, of kies een plan

# $plan: titel van het plan van een sessie die nog niet voorbij is.
home-goOn = Ga verder: { $plan }
# $ridden en $all (Number): ritten van de sessie.
home-next = Hierna: { $name } · { $ridden } van { $all } gereden
home-waiting = { $ridden } van { $all } gereden
home-ready = Kant-en-klare plannen
home-saved = Jouw plannen
home-own = Maak een plan
home-teach = Lesplannen
home-teachHint = Wat je zegt, oefeningen voor buiten, bladen om af te drukken
home-join = Meedoen met een sessie
home-joinHint = Neem een plan over van een ander apparaat
home-store = Eigen opslag van een club
home-storeHint = Uit, tenzij je een adres opgeeft
home-ownHint = levels, pogingen, hulp, volgorde
home-sessions = Sessies op dit apparaat
# $date: zoals “27 november”.
home-session =
    { $date } · { $riders ->
        [one] { $riders } deelnemer
       *[other] { $riders } deelnemers
    } · { $rides ->
        [one] { $rides } rit
       *[other] { $rides } ritten
    }
# Hoe de knoppen van een sessie heten als ze worden voorgelezen.
home-open-round = Doorgeven: { $plan }
home-open-picture = Groepsbeeld: { $plan }
home-open-report = Verslag: { $plan }
home-change = Pas een kopie aan
home-forget = Wis het plan
home-forgetKeep = Toch houden
home-forgetSure = Voorgoed wissen
home-children = Voor kinderen
home-everyone = Voor iedereen
home-missing = Een level van dit plan staat niet op dit apparaat.

## Een plan in één regel

# $bike: de naam van een fiets, of facts-ownBike.
facts =
    { $count ->
        [1] ieder één poging · { $bike }
       *[other] ieder { number } pogingen · { $bike }
    }
facts-ownBike = fiets van dit apparaat

## Wie er rijden

go-title = Wie rijdt er?
go-intro = Zeg met hoeveel jullie zijn; iedereen krijgt een dier. Tik erop om het te ruilen. Wie later komt, kan altijd nog meedoen.
go-count = Deelnemers
go-fewer = Eén deelnemer minder
go-more = Eén deelnemer meer
go-swap = { $name }: ruilen voor een ander dier
go-onlyHandOut = Hier rijdt niemand: deel het plan alleen uit aan tablets
go-start = Start
# Onder de knop waarmee het begint. $plan: titel van het plan.
go-startHint =
    { $riders ->
        [one] { $plan } · { $riders } deelnemer, na elkaar
       *[other] { $plan } · { $riders } deelnemers, na elkaar
    }

## Hoe lang een plan duurt

# $count (Number): ritten van elke deelnemer.
minutes-who =
    { $riders ->
        [one] { $riders } deelnemer
       *[other] { $riders } deelnemers
    }, ieder { $count ->
        [1] één rit
       *[other] { number } ritten
    }
minutes-about =
    { $minutes ->
        [1] ongeveer een minuut
       *[other] ongeveer { $minutes } minuten
    }
minutes-whoAbout = { minutes-who }: { minutes-about }
# Staat vóór knoppen met elk een manier die korter is.
minutes-tooLong = Langer dan { $most } minuten op één apparaat. Korter kan zo:
minutes-attempts =
    { $count ->
        [1] Ieder één poging
       *[other] Ieder { number } pogingen
    }: { minutes-about }
minutes-road = Alleen “{ $road }”: { minutes-about }
minutes-devices = { numberFirst } tablets: { minutes-about }
minutes-two = Met twee of meer aan een tablet
minutes-left =
    { $minutes ->
        [1] nog ongeveer een minuut
       *[other] nog ongeveer { $minutes } minuten
    }
minutes-noneLeft = alles gereden
# $behind (Number): hoeveel minuten later dan gepland.
minutes-leftBehind =
    { $behind ->
        [one] { minutes-left }, { $behind } minuut achter
       *[other] { minutes-left }, { $behind } minuten achter
    }

## Een eigen plan

form-title = Jouw plan
form-name = Titel
form-nameHint = bijvoorbeeld: dinsdag, eerste heuvels
form-rides = Wat er gereden wordt
form-ridesHint = In de volgorde waarin je ze kiest.
form-ownLevels = Je eigen levels
form-attempts = Pogingen per deelnemer
form-attemptsFewer = Eén poging minder
form-attemptsMore = Eén poging meer
form-seed = De weg

form-seeds-same = elke keer dezelfde
form-seeds-fresh = elke poging een andere van die soort
form-bike = Fiets
form-ownBike = De fiets van dit apparaat
form-rider = Fietser
form-byBike = Wie bij de fiets past
form-byFeel = Ieder kiest op gevoel
form-aids = Hulp tijdens het rijden

form-aidsNames-as-level = zoals in het level
form-aidsNames-none = geen
form-aidsNames-all = alle hulp
form-shows = De groep ziet

form-showsNames-own-marks = alleen eigen punten
form-showsNames-group-picture = het groepsbeeld
form-showsNames-table = ook een tabel
form-order = Volgorde

form-orders-rotate = om de beurt
form-orders-free = wie wil
form-save = Plan opslaan
form-saveAndGo = Opslaan en deelnemers kiezen
form-problems = Nog niet:
form-noRide = Kies minstens één ding om te rijden.
form-noTitle = Geef het plan een titel.

## Eén sessie

tabs-round = Doorgeven
tabs-picture = Groepsbeeld
tabs-report = Verslag
tabs-tablets = Tablets
tabs-label = Sessie

## Meerdere apparaten in één sessie

tablets-intro = Met meerdere apparaten wordt op elk apparaat apart gereden. Een netwerk is nergens voor nodig.

tablets-out-title = Deel het plan uit
tablets-out-hint = Andere apparaten nemen het over met een code, link of bestand.

tablets-back-title = Geef de ritten terug
tablets-back-hint = Wat op dit apparaat gereden is, voor de trainer.

tablets-collect-title = Haal de ritten op
tablets-collect-hint = Wat er terugkwam, waarvandaan, en wat er ontbreekt.

## Eén apparaat doorgeven

round-next = Nu aan de beurt
round-turn = poging { $attempt } van { $all }
round-start = Start
round-startFor = Start de rit van { $name }
round-skip = Nu even overslaan
round-later = Komt later terug
round-remove = Afmelden
round-removeWho = { $name } afmelden
round-laterWho = { $name } komt later terug
round-back = Is er weer
round-backWho = { $name } is er weer
round-chooseWho = { $name } is hierna aan de beurt
round-give = Iemand anders reed
round-giveTitle = Wie reed er?
round-giveSays = De rit telt dan voor die deelnemer. Wie hier stond, houdt de eigen beurt.
round-giveKeep = Het klopte
round-add = Voeg een deelnemer toe
round-addPlus = + Nog een deelnemer
round-undo = Laatste rit terugnemen
round-undoWho = De laatste rit van { $name } telt dan niet. Die kan opnieuw worden gereden.
round-keep = Laten tellen
round-line = In de rij
round-nobodyInLine = Niemand.
round-away = Later terug
# $riders (Number): hoeveel.
round-gone = Naar huis ({ $riders })
round-left =
    { $rides ->
        [one] nog { $rides } rit
       *[other] nog { $rides } ritten
    }
round-riding = { $name } was aan het rijden
round-ridingSays = De rit kwam niet tot een eind en telt dus niet.
round-rideAgain = Opnieuw rijden
round-notNow = Nu niet
round-marking = De punten van de rit worden uitgerekend …
round-notMarked = De punten konden nu niet worden uitgerekend. De rit is bewaard: laad de pagina opnieuw, dan wordt het nog eens geprobeerd. Een nieuwe rit komt ervoor in de plaats.
round-debrief = Hele nabespreking
round-ridden = { $name } heeft gereden
round-total = Totaal
round-nextRider = Volgende deelnemer
round-goOn = Ga verder
round-nobody = Er is nog niemand
round-nobodySays = Voeg een deelnemer toe om te beginnen.
round-waiting = Wachten op wie terugkomt
round-done = Iedereen heeft gereden
round-doneSays = Tijd om er samen naar te kijken.
round-toPicture = Naar het groepsbeeld
round-feel = Hoe rijd jij?
round-noLevel = Het level van deze rit staat niet op dit apparaat.
round-notKept = Dit kon niet op het apparaat worden bewaard. Verdergaan kan, maar als de pagina opnieuw laadt, is het weg.
round-fullRound = Meer deelnemers passen er niet in één ronde.
round-taken = Deze naam is al bezet.
round-addTitle = Wie is er?
round-addOwn = Of een naam die je zelf kiest
round-addOwnHint = Niet je echte naam. Hooguit 20 tekens.
round-addThis = Toevoegen
round-others = Andere dieren

## Eén regel over een rit die voorbij is

remark-none = Voor geen klimmetje hoefde je te schakelen.
remark-fine =
    { $count ->
        [1] Bij het klimmetje was je op tijd.
       *[other] Bij alle { number } de klimmetjes was je op tijd.
    }
# $pitch (Number): welk klimmetje van de weg, vanaf 1. $distance: zoals “12 m”.
remark-early = Klimmetje { $pitch }: te vroeg, { $distance } vóór de voet. Wacht iets langer.
remark-lateAfter = Klimmetje { $pitch }: te laat, { $distance } na de voet. Schakel ervoor.
remark-lateBefore = Klimmetje { $pitch }: laat, pas { $distance } vóór de voet. Schakel eerder.
remark-notFinished = Klimmetje { $pitch }: aan de voet was je nog niet klaar met schakelen. Klik ervoor door.
remark-never = Klimmetje { $pitch }: je schakelde er niet lichter voor.
remark-earlyNoPlace = Klimmetje { $pitch }: te vroeg. Wacht iets langer.
remark-gear = Klimmetje { $pitch }: op tijd geschakeld, maar niet naar de juiste versnelling.

## Het groepsbeeld

picture-working = Het groepsbeeld wordt uitgerekend …
picture-failed = Het groepsbeeld kon niet worden uitgerekend. Laad de pagina opnieuw en open het nog eens.
picture-none = Nog geen rit. Het beeld groeit met elke rit.
picture-closed = In dit plan ziet iedereen alleen de eigen punten.
picture-apart =
    { $rides ->
        [one] { $rides } rit kwam bij het narekenen niet uit op de opgegeven punten en telt hier niet mee.
       *[other] { $rides } ritten kwamen bij het narekenen niet uit op de opgegeven punten en tellen hier niet mee.
    }
picture-otherVersion =
    { $rides ->
        [one] { $rides } rit kwam uit een andere versie van het spel: de punten tellen zoals ze binnenkwamen, maar de rit kan hier niet opnieuw worden gereden.
       *[other] { $rides } ritten kwamen uit een andere versie van het spel: de punten tellen zoals ze binnenkwamen, maar de ritten kunnen hier niet opnieuw worden gereden.
    }
picture-open = Toch aan de groep laten zien
picture-road = Weg
picture-roadName =
    { $rides ->
        [one] { $road } ({ $rides } rit)
       *[other] { $road } ({ $rides } ritten)
    }

picture-boards-where = Langs de weg
picture-boards-caught = Per klimmetje
picture-boards-timing = Wanneer
picture-boards-change = Eerste en laatste
picture-boards-table = Tabel
picture-label = Wat je ziet
picture-talk = Met kinderen bespreken
picture-show = Toon het antwoord
picture-hide = Vraag het opnieuw
picture-guess = Eerst raden, dan kijken.
picture-rides =
    { $rides ->
        [one] { $rides } rit
       *[other] { $rides } ritten
    } van { $riders ->
        [one] { $riders } deelnemer
       *[other] { $riders } deelnemers
    }, zonder namen
# $count van de $all (Number) deelnemers had er moeite mee.
picture-caught =
    { $all ->
        [one] Klimmetje { $pitch } verraste { $count } van { $all } deelnemer
       *[other] Klimmetje { $pitch } verraste { $count } van de { $all } deelnemers
    }

picture-wrong-late =
    { $all ->
        [one] Klimmetje { $pitch }: { $count } van { $all } deelnemer te laat
       *[other] Klimmetje { $pitch }: { $count } van de { $all } deelnemers te laat
    }
picture-wrong-early =
    { $all ->
        [one] Klimmetje { $pitch }: { $count } van { $all } deelnemer te vroeg
       *[other] Klimmetje { $pitch }: { $count } van de { $all } deelnemers te vroeg
    }
# $both (Number): riders who were too early at one attempt and too late at another.
picture-wrong-mixed =
    { $both ->
        [0] { $all ->
            [one] Klimmetje { $pitch }: van { $all } deelnemer { $early } te vroeg en { $late } te laat
           *[other] Klimmetje { $pitch }: van de { $all } deelnemers { $early } te vroeg en { $late } te laat
        }
       *[other] { $all ->
            [one] Klimmetje { $pitch }: soms te vroeg, soms te laat
           *[other] Klimmetje { $pitch }: van de { $all } deelnemers { $early } te vroeg en { $late } te laat, { $both } van hen allebei
        }
    }
picture-right = Bij geen klimmetje was iemand te vroeg of te laat
# Waar de versnelling voor het klimmetje erin lag. $group en $best: een afstand zoals “12 m”.
picture-ready =
    Groep klaar { $groupSide ->
        [after] { $group } na de voet
       *[before] { $group } vóór de voet
    }, beste rit { $bestSide ->
        [after] { $best } na de voet
       *[before] { $best } vóór de voet
    }.
picture-neverReady =
    { $bestSide ->
        [after] De meesten waren er nooit klaar voor, de beste rit { $best } na de voet.
       *[before] De meesten waren er nooit klaar voor, de beste rit { $best } vóór de voet.
    }
picture-noPitch = Deze weg heeft geen klimmetje waarvoor je moet schakelen
picture-noLines = Deze ritten kwamen zonder hun lijnen; alleen de punten zijn te zien.
picture-ownRoads = Iedereen reed een eigen weg, dus er is geen gezamenlijke lijn.

picture-tracks-development = Versnelling
picture-tracks-cadenceRpm = Cadans

picture-legend-best = beste rit klaar
picture-legend-middle = groep klaar
# Of the lines for gear and cadence.
picture-legend-lines = groep: het midden en de helft eromheen
picture-legend-bestLine = beste rit
# Wat de tekening toont. $length: hoe lang de weg is, zoals “1.200 m”.
picture-stripDesc =
    { $rides ->
        [one] { $rides } rit over { $length } weg: bij elk klimmetje waar de groep en de beste rit hun versnelling klaar hadden, en hoeveel deelnemers te vroeg, ongeveer goed en te laat waren.
       *[other] { $rides } ritten over { $length } weg: bij elk klimmetje waar de groep en de beste rit hun versnelling klaar hadden, en hoeveel deelnemers te vroeg, ongeveer goed en te laat waren.
    }
picture-barOf-tooEarly =
    { $all ->
        [one] te vroeg: { $count } van { $all } deelnemer
       *[other] te vroeg: { $count } van de { $all } deelnemers
    }
picture-barOf-aboutRight =
    { $all ->
        [one] ongeveer goed: { $count } van { $all } deelnemer
       *[other] ongeveer goed: { $count } van de { $all } deelnemers
    }
picture-barOf-tooLate =
    { $all ->
        [one] te laat: { $count } van { $all } deelnemer
       *[other] te laat: { $count } van de { $all } deelnemers
    }
picture-pitch = Klimmetje { $pitch }
# Deelnemers; staat naast een klimmetje.
picture-caughtShort = verraste { $count } van { $all }
picture-dots = Eén stip is één deelnemer; een gevulde stip betekent: minstens één keer verrast.
picture-never = nooit

picture-timing-tooEarly = te vroeg
picture-timing-aboutRight = ongeveer goed
picture-timing-tooLate = te laat
# $one en $other: zoals “60%”, van alle keren dat een klimmetje werd gereden.
picture-shares-late = { $one } te laat, { $other } ongeveer goed
picture-shares-early = { $one } te vroeg, { $other } ongeveer goed
picture-shares-mixed = { $one } te vroeg, { $other } te laat
picture-timingCount = { $count } van de { $all } keer over een klimmetje
# $better, $worse en $all (Number): deelnemers, of paren van ritten als iemand meerdere wegen twee keer reed.
picture-change =
    { $worse ->
        [0] { $who ->
            [riders] { $all ->
                [one] { $better } van { $all } deelnemer duidelijk beter
               *[other] { $better } van de { $all } deelnemers duidelijk beter
            }
           *[pairs] { $all ->
                [one] { $better } van { $all } paar ritten duidelijk beter
               *[other] { $better } van de { $all } paren ritten duidelijk beter
            }
        }
       *[other] { $who ->
            [riders] { $all ->
                [one] { $better } van { $all } deelnemer duidelijk beter, { $worse } duidelijk slechter
               *[other] { $better } van de { $all } deelnemers duidelijk beter, { $worse } duidelijk slechter
            }
           *[pairs] { $all ->
                [one] { $better } van { $all } paar ritten duidelijk beter, { $worse } duidelijk slechter
               *[other] { $better } van de { $all } paren ritten duidelijk beter, { $worse } duidelijk slechter
            }
        }
    }
picture-changeSame = Niemand veranderde meer dan toeval oplevert
picture-changeNone = Nog niemand heeft iets twee keer gereden
# $chance (Number): punten die niets betekenen.
picture-changeSays = { $better } duidelijk beter, { $worse } duidelijk slechter, { $same } binnen wat toeval oplevert (minder dan { $chance } punten).
picture-first = Eerste poging
picture-last = Laatste poging
# $count (Number): deelnemers.
picture-bins = { $low } t/m { $high } punten: { $count }

## Wat kinderen gevraagd wordt, en de antwoorden. Geen zin heeft meer dan twaalf woorden.

picture-question-where = Wanneer schakelden we voor de heuvel?
picture-question-caught = Welke heuvel had de meesten van ons te pakken?
picture-question-timing = Waren we te vroeg, precies goed of te laat?
picture-question-change = Werden we beter door te oefenen?
picture-question-table = Hoe ging het?

picture-answer-caught =
    { $all ->
        [1] Heuvel { $hill } had ons te pakken
       *[other] Heuvel { $hill } had er { $count } van de { $all } te pakken
    }
picture-answer-nobody = Geen heuvel had ons te pakken. Goed geklikt!
picture-answer-noHill = Hier hoefden we voor geen heuvel te klikken

picture-answer-where-late =
    { $all ->
        [1] Heuvel { $hill }: te laat geklikt
       *[other] { $count ->
            [one] Heuvel { $hill }: { $count } van de { $all } klikte te laat
           *[other] Heuvel { $hill }: { $count } van de { $all } klikten te laat
        }
    }
picture-answer-where-early =
    { $all ->
        [1] Heuvel { $hill }: te vroeg geklikt
       *[other] { $count ->
            [one] Heuvel { $hill }: { $count } van de { $all } klikte te vroeg
           *[other] Heuvel { $hill }: { $count } van de { $all } klikten te vroeg
        }
    }
picture-answer-where-mixed =
    { $all ->
        [1] Heuvel { $hill }: te vroeg of te laat geklikt
       *[other] { $count ->
            [one] Heuvel { $hill }: { $count } van de { $all } was te vroeg of te laat
           *[other] Heuvel { $hill }: { $count } van de { $all } waren te vroeg of te laat
        }
    }
picture-answer-always = Elke keer precies goed. Knap geklikt!

picture-answer-often-late = Vaker te laat dan goed
picture-answer-often-early = Vaker te vroeg dan goed
picture-answer-often-mixed = Soms te vroeg, soms te laat

picture-answer-sometimes-late = Meestal goed, soms te laat
picture-answer-sometimes-early = Meestal goed, soms te vroeg
picture-answer-sometimes-mixed = Meestal goed, soms te vroeg, soms te laat
picture-answer-better =
    { $who ->
        [riders] { $all ->
            [1] { $better ->
                [0] Nog niet duidelijk beter
               *[other] Duidelijk beter
            }
           *[other] Duidelijk beter: { $better } van de { $all }
        }
       *[pairs] We werden { $better } van de { $all } keer duidelijk beter
    }
picture-answer-hill = Heuvel { $hill }

picture-table-rider = Deelnemer
picture-table-ride = Rit
# Een rit van een plan waarvan het level hier niet is.
picture-table-rideNumber = Rit { $ride }
picture-table-attempt = Poging
picture-table-total = Totaal
picture-table-pitches = Klimmetjes (%)
picture-table-none = –

## Het verslag

report-title = Verslag
report-intro = Eén bladzijde per weg in zwart-wit, en bestanden voor een rekenblad of een ander programma.
report-names = Met dieren en bijnamen
report-namesHint = Zonder dit staan er geen namen op de bladzijde. In bestanden staan altijd bijnamen.
# Naam van een bestand, als de titel van het plan geen letters heeft: klein, zonder spaties.
report-fileName = sessie
report-print = Afdrukken
report-csv = Opslaan als CSV
report-json = Opslaan als JSON
report-remove = Wis de sessie
report-sureTitle = De sessie wissen?
report-sure =
    { $rides ->
        [one] { $rides } rit en de ronde verdwijnen van dit apparaat. Dat kan niet ongedaan worden gemaakt.
       *[other] { $rides } ritten en de ronde verdwijnen van dit apparaat. Dat kan niet ongedaan worden gemaakt.
    }
report-keep = Toch houden
report-saveFirst = Eerst opslaan
report-removeSure = Wissen
report-sheet = Afdrukvoorbeeld
report-rides =
    { $rides ->
        [one] { $rides } rit
       *[other] { $rides } ritten
    }, { $riders ->
        [one] { $riders } deelnemer
       *[other] { $riders } deelnemers
    }
report-table = Klimmetjes
report-pitch = Klimmetje
report-caught = Verrast (deelnemers)
report-timing = Vroeg / goed / laat (ritten)
report-group = Groep klaar
report-best = Beste rit klaar
report-ready = Klaar: de versnelling voor het klimmetje ligt erin en de laatste keer schakelen is voltooid.
# Een kop van het groepsbeeld, die daar geen punt heeft.
report-sentence = { $sentence }.
report-before = { $distance } vóór de voet
report-after = { $distance } na de voet
# Zoals picture-changeSays.
report-attempts = Eerste en laatste poging: { $better } duidelijk beter, { $worse } duidelijk slechter, { $same } binnen wat toeval oplevert (minder dan { $chance } punten).
report-all = Totalen, poging voor poging
report-footer = De punten komen uit een model van fietsen. Ze zeggen iets over de timing van het schakelen op deze wegen, niet over wat een fietser waard is.
