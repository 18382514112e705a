### Een plan naar tablets brengen en de ritten terug: codes, links, bestanden, camera; en een eigen opslag van de club.

size-bytes =
    { $bytes ->
        [one] { $bytes } byte
       *[other] { $bytes } bytes
    }
size-kilobytes = { $size } kB
rides =
    { $rides ->
        [one] { $rides } rit
       *[other] { $rides } ritten
    }

## Codes op het scherm

code-number = { $number } van { $all }
code-picture =
    { $all ->
        [1] Code: { $what }
       *[other] Code { $number } van { $all }: { $what }
    }
code-pause = Pauze
code-play = Verder
code-back = Vorige code
code-next = Volgende code
code-speed = Tempo
code-speed-slow = langzaam
code-speed-usual = gewoon
code-speed-fast = snel
code-big = Groot
code-jump = Toon code { $number }
code-hint = De codes volgen elkaar op. Waar de camera begint, maakt niet uit; die zegt wat er ontbreekt.

## Code, link of bestand

carry-making = Bezig met inpakken …
carry-tooBig = Dit is te veel voor codes. Gebruik het bestand.
carry-link = Link
carry-copy = Kopieer de link
carry-copied = Gekopieerd.
carry-notCopied = Over gewone http kopieert deze browser niet. De link is gemarkeerd: kopieer hem met een toets of vinger.
carry-onlyHere = Deze pagina is geopend op localhost. Dat kan geen tablet openen, dus er is geen link. Start het spel met “npm start -- --host” en deel hier opnieuw uit. Codes en bestand werken gewoon.
carry-file = Opslaan als bestand
carry-longLink = Sommige berichtenapps kappen zulke lange links af. Het bestand is veiliger.
carry-site = De link leidt naar dit adres; het andere apparaat moet het kunnen openen.

## Een plan uitdelen

handOut-intro = Elke tablet scant dit één keer. Daarna is er geen netwerk meer nodig, en niets van dit scherm.
handOut-what = het plan “{ $title }”
handOut-size =
    { $codes ->
        [1] { $size } · één code
       *[other] { $size } · { $codes } codes
    }
handOut-own = Je eigen levels zitten erin.
handOut-scanOne = Richt de camera-app van de tablet op de code en open de link, of scan de code in het spel op de pagina “{ $page }”.
handOut-scanMany = Open op de tablet in het spel de pagina “{ $page }” en houd de camera op de codes gericht.

## De avond ervoor

ready-title = Thuis, de avond ervoor
ready-intro = Op elke tablet, zolang er een netwerk is. Deze lijst controleert het apparaat waar je nu naar kijkt.
ready-done = klaar
ready-open = nog te doen
ready-wrong = werkt hier niet
ready-unknown = zegt deze browser niet
ready-again = Controleer opnieuw
ready-allowCamera = Sta de camera toe
ready-keep = Vraag de browser ritten te bewaren
ready-secure = Geopend over https of op localhost
ready-secure-done = Deze pagina is zo geopend dat camera en spelen zonder netwerk kunnen.
ready-secure-wrong = Deze pagina is over gewone http geopend: hier geen camera, geen kopie voor zonder netwerk, en het scherm gaat vanzelf uit. Open het spel één keer thuis op een adres dat met https begint, of op localhost op de computer die het aanbiedt.
ready-offline = Een kopie voor zonder netwerk
ready-offline-done = Het spel staat op dit apparaat en opent zonder netwerk.
ready-offline-open = Laad deze pagina nog een keer en wacht even. Zet het spel het liefst via het menu van de browser op het startscherm.
ready-offline-wrong = Zonder https bewaart deze browser geen kopie. Open het spel thuis over https.
ready-camera = Camera toegestaan
ready-camera-done = De camera kan worden gebruikt.
ready-camera-open = Sta de camera nu toe, zodat buiten niemand het gevraagd krijgt.
ready-camera-wrong = Er is geen camera die deze pagina mag gebruiken. Is er toch een, sta die dan voor deze pagina toe in de instellingen van de browser; gebruik anders de link of het bestand.
ready-keeping = Blijvend bewaard
ready-keeping-done = De browser ruimt ritten niet vanzelf op.
ready-keeping-open = De browser kan ritten opruimen als er ruimte nodig is. Vraag hem dat niet te doen; het spel op het startscherm zetten helpt. Geef de ritten dezelfde dag nog terug.

## Codes, links en bestanden lezen

reader-ways = Lezen met
reader-camera = Camera
reader-picture = Foto of bestand
reader-text = Link of tekst
reader-start = Zet de camera aan
reader-stop = Zet de camera uit
reader-loading = De codelezer wordt geladen …
reader-looking = Houd de code zo dat hij bijna het hele beeld vult.
reader-noReader = De codelezer kon niet worden geladen. Is het netwerk weg? Gebruik de link of het bestand.
reader-video = Wat de camera ziet
camera-not-secure = De camera werkt alleen als deze pagina over https of op localhost is geopend. Maak een foto met de camera-app van de tablet en kies die hier, of gebruik de link of het bestand.
camera-refused = De camera is niet toegestaan. Sta die voor deze pagina toe in de instellingen van de browser, of gebruik een foto, de link of het bestand.
camera-none = Er is hier geen camera. Gebruik een foto, de link of het bestand.
camera-in-use = Een ander programma gebruikt de camera. Sluit het en probeer het opnieuw.
reader-choose = Kies foto’s of bestanden
reader-chooseHint = Foto’s van codes, of een bestand dat dit spel heeft opgeslagen. Meer tegelijk mag.
reader-noCode = In { $name } was geen code te lezen. Maak de foto van dichterbij, recht ervoor en zonder spiegeling.
reader-paste = Plak de link, of de tekst van een code of bestand
reader-take = Lees het
reader-reading = De ritten worden gelezen …
reader-stopReading = Stop met lezen
reader-stopped = Gestopt. Er is niets van overgenomen.
reader-failed = Dat kon hier niet worden gelezen. Sluit andere programma’s en kies het nog een keer.
reader-read =
    { $count ->
        [one] { $read } van { $count } code gelezen.
       *[other] { $read } van { $count } codes gelezen.
    }
reader-missing =
    { $count ->
        [one] Code { $numbers } ontbreekt.
       *[other] De codes { $numbers } ontbreken.
    }
reader-cut = De link is onderweg afgekapt. Kopieer hem helemaal, of gebruik de code of het bestand.
damaged-checksum =
    { $number ->
        [0] Een code kwam beschadigd aan. Lees hem nog een keer.
       *[other] Code { $number } kwam beschadigd aan. Lees hem nog een keer.
    }
damaged-newer-version =
    { $number ->
        [0] Een code komt van een nieuwere versie van het spel. Laad deze pagina opnieuw om bij te werken.
       *[other] Code { $number } komt van een nieuwere versie van het spel. Laad deze pagina opnieuw om bij te werken.
    }
damaged-contradicts =
    { $number ->
        [0] Een code zegt iets anders dan eerst. Toon de codes opnieuw vanaf het begin.
       *[other] Code { $number } zegt iets anders dan eerst. Toon de codes opnieuw vanaf het begin.
    }
damaged-too-many-messages = Er is te veel verschillends tegelijk gelezen. Open deze pagina opnieuw.
damaged-not-a-frame = Er is iets gelezen dat geen code van dit spel is.
unreadable-not-a-packet = Dit hoort niet bij dit spel.
unreadable-newer-version = Dit komt van een nieuwere versie van het spel. Laad deze pagina opnieuw om bij te werken.
unreadable-damaged = Alle codes zijn er, maar samen zijn ze niet wat er verstuurd is. Toon ze nog een keer.
unreadable-nothing = Er zit niets in.
unreadable-too-big = Dit is te groot voor ritten of een plan. Sla het opnieuw op op de tablet waar het vandaan komt en kies het dan hier.
reader-wrongPlan = Dit plan is niet te gebruiken:
reader-isPlan = Dit is een plan, het zijn geen ritten. Open het op “{ $page }”.
reader-isRides = Dit zijn ritten, het is geen plan. Open ze op het apparaat van de trainer, op “{ $page }”.

## Een tablet doet mee

join-intro = Scan de code van de trainer of open de link. Niet typen, geen namen.
join-found = Dit heeft de trainer gepland
join-rides = Wat er gereden wordt
join-unknownLevel = { $level }: niet op dit apparaat
join-ownLevel = eigen level van de trainer
join-missing = Een level van dit plan zit niet bij het spel op dit apparaat. Werk eerst het spel bij: laad deze pagina opnieuw zolang er een netwerk is.
join-join = Doe mee
join-no = Deze niet
join-here = Dit apparaat doet al mee. De ritten blijven zoals ze zijn.
join-other = Dit apparaat doet mee met een oudere versie van dit plan. Ritten die al gereden zijn, blijven bij die versie.
join-go = Naar de groep

## Een tablet geeft terug

handBack-intro = Toon de codes aan de camera van de trainer. Twee keer is hetzelfde als één keer; hier wordt niets gewist.
handBack-tablet = Deze tablet: { $tablet }
handBack-none = In deze groep is hier nog geen rit gereden.
handBack-marksOnly = Codes en link bevatten de punten. Het bestand bevat de hele ritten, zodat de trainer ze kan bekijken en opnieuw kan beoordelen.

## De ritten ophalen

collect-intro = Houd de camera op de codes van elke tablet gericht, of neem de link of het bestand. Volgorde en herhaling maken niet uit.
collect-tablets = Wat van wie gekomen is
collect-nobody = Er is nog niets gekomen.
collect-noSession = Op dit apparaat is er geen sessie waar deze ritten bij horen. Open ze op het apparaat van de trainer.
column-tablet = Tablet
column-here = Hier
column-missing = Ontbreekt
column-since = Ontbreekt al
column-heard = Laatste bericht
missing-nothing = niets
missing-rides =
    { $count ->
        [one] rit { $numbers } (er ontbreekt er { $count })
       *[other] ritten { $numbers } (er ontbreken er { $count })
    }
ago-now = zojuist
ago-minutes = { $minutes } min
ago-hours = { $hours } u
ago-neverSaid = een gat in de telling
ago-never = nooit
took =
    { $fresh ->
        [0] { $known ->
            [one] Niets nieuws: { $known } rit was er al.
           *[other] Niets nieuws: { $known } ritten waren er al.
        }
        [one] { $known ->
            [0] { $fresh } rit overgenomen.
            [one] { $fresh } rit overgenomen, { $known } was er al.
           *[other] { $fresh } rit overgenomen, { $known } waren er al.
        }
       *[other] { $known ->
            [0] { $fresh } ritten overgenomen.
            [one] { $fresh } ritten overgenomen, { $known } was er al.
           *[other] { $fresh } ritten overgenomen, { $known } waren er al.
        }
    }
took-damaged =
    { $pieces ->
        [one] { $pieces } deel was beschadigd.
       *[other] { $pieces } delen waren beschadigd.
    }
took-otherPlan =
    { $rides ->
        [one] { $rides } rit van een ander plan is weggelaten.
       *[other] { $rides } ritten van een ander plan zijn weggelaten.
    }
collect-notKept = Wat er kwam, kon op dit apparaat niet worden bewaard. Sla het op als bestand voordat je deze pagina sluit.
checked =
    { $rides ->
        [one] { $rides } rit op dit apparaat opnieuw gereden; de punten kloppen.
       *[other] { $rides } ritten op dit apparaat opnieuw gereden; de punten kloppen.
    }
otherVersion =
    { $rides ->
        [one] { $rides } rit komt van een andere versie van het spel: de punten staan er zoals ze kwamen, maar de rit kan niet opnieuw worden gereden of met de andere worden vergeleken.
       *[other] { $rides } ritten komen van een andere versie van het spel: de punten staan er zoals ze kwamen, maar de ritten kunnen niet opnieuw worden gereden of met de andere worden vergeleken.
    }
unknownLevel =
    { $rides ->
        [one] { $rides } rit gaat over een level dat niet hier is: de punten staan er zoals ze kwamen, maar de rit kan hier niet opnieuw worden gereden.
       *[other] { $rides } ritten gaan over levels die niet hier zijn: de punten staan er zoals ze kwamen, maar de ritten kunnen hier niet opnieuw worden gereden.
    }
marksOnly =
    { $rides ->
        [one] Van { $rides } rit kwamen alleen de punten; het bestand van een tablet bevat de hele rit.
       *[other] Van { $rides } ritten kwamen alleen de punten; het bestand van een tablet bevat de hele ritten.
    }
withdrawn =
    { $rides ->
        [one] { $rides } rit is door de eigen tablet teruggenomen.
       *[other] { $rides } ritten zijn door de eigen tablet teruggenomen.
    }
checking = Wordt opnieuw gereden: nog { $rides }.

## Wat kwam en niet meetelt

damaged-title = Beschadigde delen ({ $count })
damaged-hint = Ze tellen niet mee. Laat de tablet de ritten nog een keer tonen; een goede kopie komt ervoor in de plaats.
damaged-piece =
    { $from ->
        [nobody] { $seq ->
            [0] Van een onbekende tablet
           *[other] Van een onbekende tablet, rit { $seq }
        }
       *[tablet] { $seq ->
            [0] Tablet { $tablet }
           *[other] Tablet { $tablet }, rit { $seq }
        }
    }
piece-not-json = onderweg afgekapt of veranderd
piece-not-a-record = geen hele rit
piece-newer-version = van een nieuwere versie; werk het spel hier bij
piece-dirty-text = een naam met verborgen tekens
piece-checksum = onderweg veranderd
piece-recording = de punten zijn goed, de opname is beschadigd
piece-file-head = de eerste regel van het bestand is beschadigd
piece-too-long = veel langer dan welke rit ook
apart-title = Apart gezet ({ $count })
apart-hint = Deze ritten zijn bewaard, maar tellen niet mee: opnieuw gereden komt er iets anders uit dan ze zeggen.
apart-ride = Tablet { $tablet }, rit { $seq }, { $name }
apart-totals = zegt { $said }, gevonden { $found }
apart-no-recording = alleen punten
apart-unknown-level = het level is niet hier
apart-other-level = het level is veranderd
apart-other-setup = de opname is van een andere rit
apart-changed-bike = een fiets van het spel met andere getallen
apart-changed-rider = een fietser van het spel met andere getallen
apart-impossible-setup = een fiets of fietser die niet kan bestaan
apart-too-long = langer dan een rit kan zijn
apart-not-finished = de rit kwam nooit aan het eind
apart-other-version = gereden op een andere versie van het spel
apart-not-same-ride = opnieuw gereden is het een andere rit
apart-other-marks = opnieuw gereden krijgt de rit andere punten
conflict-title = Tegenstrijdigheden ({ $count })
conflict-same-id = Twee verschillende ritten onder één kenmerk; beide zijn bewaard, geen van beide telt.
conflict-same-seq = Twee ritten onder één nummer van een tablet; beide zijn bewaard, geen van beide telt.

## Een eigen opslag van de club

store-title = Een opslag van je club
store-intro = Alles werkt ook zonder. Met een opslag vinden tablets elkaar vanzelf: op een computer in de zaal (“npm run club”), of in een CouchDB-database die de club zelf draait of huurt. Er wordt nergens iets naartoe gestuurd voordat iemand er hier, op dit apparaat, mee instemt.
store-take-title = Scan of plak de instellingen
store-take-hint = De computer met de opslag toont ze als code, en elk apparaat dat de opslag gebruikt ook. De camera-app van de tablet opent de code eveneens.
store-take-paste = Of de link met de instellingen
store-take-none = Dit zijn geen hele instellingen van een opslag. Scan de code nog een keer, of kopieer de hele link.
store-give = Toon de instellingen aan een ander apparaat
store-give-title = Instellingen van de opslag
store-give-hint = Eén code voor alle tablets en trainers. Wie hem heeft, kan alle ritten lezen en er ritten aan toevoegen: toon hem aan wie dat mag, en maak er geen foto van.
store-give-onlyHere = Deze pagina is geopend op localhost. Dat kan geen tablet openen. Start het spel met “npm run club”, of open het op het adres dat de tablets gebruiken.
store-give-hide = Verberg de instellingen
store-details = Adres, database, naam en wachtwoord
store-instead = Dit zou in de plaats komen van { $host }.
store-fetch = Haal nu op
store-url = Adres
store-urlHint = bijvoorbeeld https://rides.our-club.example
store-database = Database
store-name = Naam
store-password = Wachtwoord
store-passwordHint = Blijft op dit apparaat, leesbaar voor wie het gebruikt. Neem een naam die verder niets mag.
store-plainHttp = Deze pagina mag alleen praten met https-adressen, met de computer waar ze vandaan komt en met deze computer zelf: over gewone http kunnen anderen onderweg de naam, het wachtwoord en de ritten lezen. Gebruik https.
store-plainHere = Over gewone http kan iedereen in dit netwerk meelezen. Gebruik het in een eigen netwerk, of start de opslag met https.
store-mixed = Deze pagina is over https geopend, dus praat de browser niet over http met een opslag. Gebruik https.
store-badAddress = Een adres begint met https:// en bevat geen naam of wachtwoord; de naam van een database bestaat uit kleine letters en cijfers.
store-consent = Als je instemt
store-consent-sends =
    { $typed ->
        [no] Na elke rit van een groepssessie stuurt dit apparaat naar dat adres: de bijnamen, het nummer van deze tablet en de ritten met hun punten. Het haalt op wat andere tablets daar hebben neergezet.
       *[yes] Na elke rit van een groepssessie stuurt dit apparaat naar { $host }: de bijnamen, het nummer van deze tablet en de ritten met hun punten. Het haalt op wat andere tablets daar hebben neergezet.
    }
store-consent-more =
    Wie die opslag beheert, kan dat allemaal lezen. Verder wordt niets verstuurd en niemand iets gevraagd.
    Vraag het eerst aan je club, en bij kinderen ook aan wie over hen beslist. Gebruik bijnamen waaraan niemand te herkennen is.
    Je kunt op elk moment stoppen. Wat verstuurd is, blijft daar tot de club het wist.
store-agree =
    { $typed ->
        [no] Akkoord: stuur naar dit adres
       *[yes] Akkoord: stuur naar { $host }
    }
store-forget = Vergeet dit adres
store-offered-file = Een teruggehaald bestand noemt { $host }. Daar is niets naartoe gestuurd. Stem alleen in als je weet dat het van je club is.
store-offered-code = Dit zijn de instellingen van een opslag op { $host }. Daar is niets naartoe gestuurd.
store-offered-before = Hier is nog een adres van eerder bewaard: { $host }. Daar wordt niets naartoe gestuurd tot iemand hier opnieuw instemt.
store-goesTo = Ritten gaan naar { $host }
store-what = Wat er verstuurd wordt
store-whatIs = Bijnamen, het nummer van deze tablet, en ritten van groepssessies met hun punten
store-where = Waarheen
store-soFar = Tot nu toe
store-agreed = Hier ingestemd
store-sent =
    { $rides ->
        [0] Er is daar nog niets naartoe gegaan.
        [one] Er ging { $rides } rit naartoe, het laatst op { $moment }.
       *[other] Er gingen { $rides } ritten naartoe, het laatst op { $moment }.
    }
store-line = Ritten van deze groep gaan naar { $host }, met bijnamen, punten en het nummer van deze tablet.
store-look = Bekijken
store-stop = Stop met sturen
store-stopHint = Wat verstuurd is, blijft daar tot de club het wist. Ritten op dit apparaat blijven zoals ze zijn.
store-test = Vraag of de opslag antwoordt
store-testing = Bezig met vragen …
store-works = De opslag antwoordt en laat je binnen.
store-off = Er wordt niets verstuurd.
store-notAsked = Sinds deze pagina is geopend, heeft geen sessie de opslag bereikt.
store-nothing = Er wacht niets op de opslag.
store-done =
    { $rides ->
        [one] De enige rit en alle verslagen staan in de opslag.
       *[other] Alle { $rides } ritten en verslagen staan in de opslag.
    }
store-sending = Wordt naar de opslag gestuurd: nog { $left }.
store-again = Volgende poging over { $seconds } s.
store-safe =
    { $left ->
        [0] Alle ritten van dit apparaat staan daar, en ook veilig op dit apparaat.
        [one] Nog { $left } te versturen; die staat veilig op dit apparaat.
       *[other] Nog { $left } te versturen; die staan veilig op dit apparaat.
    }
store-unreachable = De opslag antwoordt niet: geen netwerk, uitgeschakeld, of deze pagina hoort niet bij de toegelaten pagina’s.
store-busy = De opslag heeft nu geen tijd.
store-disk-full = De schijf van de opslag is vol. Zeg het tegen wie hem beheert.
store-wrong-password = De opslag accepteert deze naam en dit wachtwoord niet.
store-not-allowed = Deze naam mag niet in deze database schrijven.
store-no-database = Die database bestaat niet. Die moet eerst worden aangemaakt.
store-bad-address = Het adres of de naam van de database kan niet kloppen.
store-not-a-store = Er antwoordt iets, maar dat is geen opslag van deze soort.
store-endless = De opslag geeft meer dan er in één keer kan worden opgenomen. Wat kwam, is bewaard; de rest wordt zo gevraagd.
store-some-refused = Sommige ritten wilde de opslag niet aannemen. Ze staan veilig op dit apparaat; geef ze door als bestand.
