### De nabespreking voor volwassenen. Kinderen krijgen wat in debriefChildren.ftl staat, onder dezelfde namen.

## Delen die in meerdere zinnen staan

# Welk klimmetje van de weg. $pitch (Number): vanaf 1. $pitches (Number): hoeveel er zijn.
pitch =
    { $pitches ->
        [1] het klimmetje
       *[other] { $pitch ->
            [1] het eerste klimmetje
            [2] het tweede klimmetje
            [3] het derde klimmetje
            [4] het vierde klimmetje
            [5] het vijfde klimmetje
            [6] het zesde klimmetje
            [7] het zevende klimmetje
            [8] het achtste klimmetje
            [9] het negende klimmetje
            [10] het tiende klimmetje
           *[other] klimmetje { $pitch }
        }
    }
# Hetzelfde aan het begin van een zin.
pitch-begins =
    { $pitches ->
        [1] Het klimmetje
       *[other] { $pitch ->
            [1] Het eerste klimmetje
            [2] Het tweede klimmetje
            [3] Het derde klimmetje
            [4] Het vierde klimmetje
            [5] Het vijfde klimmetje
            [6] Het zesde klimmetje
            [7] Het zevende klimmetje
            [8] Het achtste klimmetje
            [9] Het negende klimmetje
            [10] Het tiende klimmetje
           *[other] Klimmetje { $pitch }
        }
    }
# Hetzelfde als titel.
pitch-title =
    { $pitches ->
        [1] Het klimmetje
       *[other] { $pitch ->
            [1] Eerste klimmetje
            [2] Tweede klimmetje
            [3] Derde klimmetje
            [4] Vierde klimmetje
            [5] Vijfde klimmetje
            [6] Zesde klimmetje
            [7] Zevende klimmetje
            [8] Achtste klimmetje
            [9] Negende klimmetje
            [10] Tiende klimmetje
           *[other] Klimmetje { $pitch }
        }
    }
# Een plek, gezien vanaf de voet, waar het klimmetje begint. $metres: een afstand met eenheid, zoals “12 m”.
near =
    { $side ->
        [at] precies aan de voet
        [after] { $metres } na de voet
       *[before] { $metres } vóór de voet
    }
# Dezelfde plek om op te mikken.
aim =
    { $side ->
        [at] precies aan de voet
        [after] op het moment dat het steil wordt
       *[before] ongeveer { $metres } vóór de voet
    }
# Kleine getallen als woord. $gears (Number): vanaf 1.
gears =
    { $gears ->
        [1] één versnelling
        [2] twee versnellingen
        [3] drie versnellingen
        [4] vier versnellingen
        [5] vijf versnellingen
        [6] zes versnellingen
        [7] zeven versnellingen
        [8] acht versnellingen
        [9] negen versnellingen
        [10] tien versnellingen
       *[other] { $gears } versnellingen
    }
# $made (Number): vanaf 0.
made-gears =
    { $made ->
        [0] geen versnelling
        [1] één versnelling
        [2] twee versnellingen
        [3] drie versnellingen
        [4] vier versnellingen
        [5] vijf versnellingen
        [6] zes versnellingen
        [7] zeven versnellingen
        [8] acht versnellingen
        [9] negen versnellingen
        [10] tien versnellingen
       *[other] { $made } versnellingen
    }
# $seconds (Number): vanaf 1.
seconds =
    { $seconds ->
        [1] één seconde
        [2] twee seconden
        [3] drie seconden
        [4] vier seconden
        [5] vijf seconden
        [6] zes seconden
        [7] zeven seconden
        [8] acht seconden
        [9] negen seconden
        [10] tien seconden
       *[other] { $seconds } seconden
    }
# Eén tandwiel of blad verder is één keer, hoe de hendel ook werd ingedrukt. $changes (Number): vanaf 0.
changes =
    { $changes ->
        [0] nul keer
        [1] één keer
        [2] twee keer
        [3] drie keer
        [4] vier keer
        [5] vijf keer
        [6] zes keer
        [7] zeven keer
        [8] acht keer
        [9] negen keer
        [10] tien keer
       *[other] { $changes } keer
    }
# Begin van een zin die met “terwijl …” verdergaat: hoe vaak van alle keren. $heavy (Number): vanaf 1. $changes (Number): allemaal.
some-of =
    { $which ->
        [all] { $changes ->
            [1] Die ene keer schakelde je
            [2] Beide keren schakelde je
           *[other] Alle { changes } schakelde je
        }
       *[some] { $heavy ->
            [1] Eén van de { changes } schakelde je
            [2] Twee van de { changes } schakelde je
            [3] Drie van de { changes } schakelde je
            [4] Vier van de { changes } schakelde je
            [5] Vijf van de { changes } schakelde je
            [6] Zes van de { changes } schakelde je
            [7] Zeven van de { changes } schakelde je
            [8] Acht van de { changes } schakelde je
            [9] Negen van de { changes } schakelde je
            [10] Tien van de { changes } schakelde je
           *[other] { $heavy } van de { changes } schakelde je
        }
    }
# Iets om te proberen: wat de beste rit deed. $rest: of er daarna nog meer lichtere versnellingen volgen.
advice =
    { $rest ->
        [some] Schakel { aim } { gears } lichter, de rest tijdens de klim.
       *[none] Schakel { aim } { gears } lichter.
    }
# Wanneer iemand schakelde. Ook op de knoppen van de vraag.
timing =
    { $timing ->
        [too-early] te vroeg
        [too-late] te laat
       *[about-right] ongeveer goed
    }
# Een van de vijf onderdelen, als naam.
mark =
    { $mark ->
        [cadence] Cadans
        [foresight] Vooruitzien
        [easing] Zacht trappen
        [chainLine] Kettinglijn
       *[economy] Zuinig schakelen
    }
# Hetzelfde binnen een zin.
mark-within =
    { $mark ->
        [cadence] cadans
        [foresight] vooruitzien
        [easing] zacht trappen
        [chainLine] kettinglijn
       *[economy] zuinig schakelen
    }

## De vraag voordat er iets wordt uitgelegd, en het antwoord

guess-title = Raad eerst
# De knoppen eronder maken de zin af: zie “timing”.
guess-question = Op { pitch } schakelde je …
guess-openQuestion = Op het klimmetje dat je benen het meest kostte, schakelde je …
guess-why = Niet schakelen waar het nodig was, telt als te laat. Daarna volgt de uitleg van je rit.
guess-skip = Zeg het maar
guess-working = De beste rit op jouw fiets wordt uitgerekend …
guess-notMarked = De punten konden nu niet worden uitgerekend. Een bewaarde rit krijgt ze later, als het spel weer wordt geopend.
# Hoe ver dat is. $percent: zoals “40%”.
guess-share = { $percent } klaar
guess-matched = Goed gevoeld: { timing }.
# $guess: wat de fietser zei.
guess-differed =
    { $guess ->
        [too-early] Jij voelde “te vroeg”; het was { timing }.
        [too-late] Jij voelde “te laat”; het was { timing }.
       *[about-right] Jij voelde “ongeveer goed”; het was { timing }.
    }
guess-told = Het was { timing }.
guess-matchedKind = Wie het zelf merkt, wordt er beter in.
guess-differedKind = Moeilijk te voelen tijdens het rijden. De strook laat zien waar.
guess-noPitch = Geen klimmetje op deze weg was zo steil dat je moest schakelen.
# $own en $best: waar de fietser en de beste rit het eerst schakelden, gezien vanaf de voet. $ownMetres, $bestMetres: zoals “12 m”.
guess-where =
    { $own ->
        [never] Jij bleef in je versnelling
        [at] Je eerste lichtere versnelling kwam precies aan de voet
        [after] Je eerste lichtere versnelling kwam { $ownMetres } na de voet
       *[before] Je eerste lichtere versnelling kwam { $ownMetres } vóór de voet
    }; { $best ->
        [never] de beste rit schakelde helemaal niet.
        [at] de beste rit schakelde precies aan de voet.
        [after] de beste rit schakelde { $bestMetres } na de voet.
       *[before] de beste rit schakelde { $bestMetres } vóór de voet.
    }
# $made (Number): lichtere versnellingen vóór de voet, vanaf 0. $needed (Number): die van de beste rit.
guess-stepsBefore =
    { $made ->
        [0] Vóór de voet koos je geen lichtere versnelling; de beste rit { needed }.
       *[other] Vóór de voet ging je { made-gears } lichter; de beste rit { needed }.
    }
# Een getal alleen. $needed (Number): vanaf 0.
needed =
    { $needed ->
        [0] geen
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
       *[other] { $needed }
    }
# $own, $best (Number): omwentelingen van de pedalen per minuut.
guess-slowest = Je benen vertraagden tot { $own } per minuut; de beste rit hield { $best }.

## Wat er van de rit geworden is

end-passed = Gelukt.
end-not-yet = De heuvel wacht op je.
end-ridden = De weg zit erop.
end-explain = Wat er gebeurde, waarom en waar
# Stempels eronder, elk één woord.
stamp-early = vroeg
stamp-soft = zacht
stamp-smooth = soepel
# Voorgelezen na het woord van een stempel.
stampState-earned = gehaald
stampState-not-yet = nog niet
stampState-not-asked = hier niet gevraagd

## Drie zinnen: wat goed ging, één ding om te veranderen, wat je hierna rijdt

well-title = Ging goed
well-finished = Je reed hem helemaal uit.
well-cadence = Je benen hielden bijna overal een goed ritme.
well-foresight = Je zat in de juiste versnelling voordat de weg erom vroeg.
well-easing = Je trapte zacht, elke keer dat je schakelde.
well-chainLine = Je liet de ketting recht lopen.
well-economy = Je schakelde nooit onnodig.

change-title = Verander één ding
# $how: of het maar een beetje te laat was.
change-late-pitch =
    { $how ->
        [slightly] Op { pitch } kwamen je lichtere versnellingen een beetje laat voor je benen. { advice }
       *[clearly] Op { pitch } kwamen je lichtere versnellingen te laat voor je benen. { advice }
    }
change-stayed = Op { pitch } bleef je in een te zware versnelling. { advice }
change-early-pitch =
    { $how ->
        [slightly] Bij { pitch } was je een beetje vroeg klaar. Blijf nog in je versnelling en schakel dan lichter: { aim }.
       *[clearly] Bij { pitch } was je te vroeg klaar. Blijf nog in je versnelling en schakel dan lichter: { aim }.
    }
change-few-steps =
    { $which ->
        [few] Op { pitch } ging je maar { made-gears } lichter. Ga daar { gears } lichter.
       *[hard] Op { pitch } was je versnelling nog te zwaar. Ga daar één versnelling lichter.
    }
change-wrong-way = Op { pitch } schakelde je zwaarder in plaats van lichter. { advice }
change-pushed = Op { pitch } trapte je hard in plaats van te schakelen. { advice }
change-foot-down = Op { pitch } was de versnelling te zwaar en ging er een voet aan de grond. { advice }
# Schakelen onder druk: op tandwielen, in een naaf, met een motor die aan de ketting trekt, en met allebei.
change-ease =
    { $heavy ->
        [0] Trap zachter terwijl de ketting verspringt, heel even maar.
       *[other] { some-of } terwijl je hard trapte. Trap even zacht, schakel dan.
    }
change-ease-hub =
    { $heavy ->
        [0] Haal de druk eraf terwijl de naaf schakelt, heel even maar.
       *[other] { some-of } terwijl je doortrapte: de naaf bonkte. Haal de druk eraf, schakel, trap dan weer door.
    }
change-ease-motor =
    { $heavy ->
        [0] Geef de motor even tijd om los te laten: trap zacht, wacht een tel, schakel dan.
       *[other] { some-of } terwijl de motor nog aan de ketting trok. Trap zacht, wacht een tel tot hij loslaat, schakel dan.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Geef de motor even tijd om los te laten: haal de druk eraf, wacht een tel, schakel dan.
       *[other] { some-of } terwijl de motor nog trok. Haal de druk er helemaal af, wacht een tel tot hij loslaat, schakel dan.
    }
change-stood-still = { some-of } terwijl je benen rustten. Een naaf houdt daarvan, een ketting moet lopen: blijf zacht doortrappen.
# $place: een afstand langs de weg, zoals “230 m”.
change-coasted = Je benen rustten waar de weg ze nodig heeft, het langst vanaf { $place }: { seconds }. Houd de pedalen aan het draaien.
change-coasted-hub = Je benen rustten waar de weg ze nodig heeft, het langst vanaf { $place }: { seconds }. Een naaf heeft maar een ogenblik nodig; trap dan door.
change-slow-legs = Je benen draaiden traag, het langst vanaf { $place }: { seconds }. Eén versnelling lichter houdt ze aan het draaien.
change-fast-legs = Je benen draaiden snel, het langst vanaf { $place }: { seconds }. Eén versnelling zwaarder brengt ze tot rust.
change-crossed = De ketting liep { seconds } schuin vanaf { $place }. Wissel van kettingblad, en kies achter een tandwiel dat erbij past.
change-fidget = Je wisselde { changes } van versnelling; de beste rit { $needed ->
        [0] geen enkele keer
       *[other] { needed } keer
    }. Wacht een tel voordat je de volgende kiest.
# $times: een uitgeschreven getal, zoals “1,4”.
change-dawdle = Je deed er { $times } keer zo lang over als de beste rit. Rijd in de versnelling die je in een goed ritme kunt trappen, en blijf rijden.
change-nothing = Niets. Doe het precies zo nog een keer.

next-title = Hierna
next-again = Nog eens deze weg: nog één poging, met alleen dat ene om te veranderen in je hoofd.
# $level: de titel van een level.
next-onwards = Op naar “{ $level }”.
next-onwardsNone = Elk level dat je wilt: dit kun je.
next-easier-level = Eerst een makkelijkere weg, en dan terug naar deze.

## Een kaart voor elk klimmetje

cards-title = Klimmetje voor klimmetje
# $percent: hoe steil, zoals “8%”. $length: hoe lang, zoals “120 m”.
card-steep = { $percent } over { $length }
# Vier opschriften met hun waarden.
card-needed = Beste rit, versnellingen lichter
card-before = Jij vóór de voet
card-ofMade =
    { $made ->
        [0] niet geschakeld
       *[other] { $before } van { $made } geschakeld
    }
card-worst = Traagste benen op het klimmetje
card-worstPair = { $own }/min (beste { $best })
# $before (Number): hoeveel versnellingen vóór de voet komen; $which: of dat ze allemaal zijn, een deel, of geen.
card-bestDoes =
    { $which ->
        [all] Hier gaat de beste rit { gears } lichter, allemaal vóór de voet, de eerste { near }.
        [none] Hier gaat de beste rit { gears } lichter, geen enkele vóór de voet, de eerste { near }.
       *[some] Hier gaat de beste rit { gears } lichter, waarvan { $before ->
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
           *[other] { $before }
        } vóór de voet, de eerste { near }.
    }
card-bestStays = De beste rit schakelt hier niet.
card-asksNothing = Het gaat ook zonder schakelen.
card-footDown = Hier ging er een voet aan de grond.
card-timing =
    { $timing ->
        [too-early] Te vroeg
        [too-late] Te laat
       *[about-right] Ongeveer goed
    }
# Hetzelfde waar het goed was, of bijna.
card-tendency =
    { $timing ->
        [too-early] Een beetje vroeg
        [too-late] Een beetje laat
       *[about-right] Ongeveer goed
    }
card-watch = Bekijk dit klimmetje
# Voorgelezen in plaats van een plaatje.
card-picture = Waar beide ritten schakelden op { pitch }
card-pictureDesc = De weg van opzij. Erboven waar jij schakelde, eronder waar de beste rit dat deed.
card-table = Waar er op dit klimmetje is geschakeld
card-who = Wie
# In het plaatje en de tabel: wie er schakelde.
card-you = jij
card-best = beste
card-where = Waar

## De punten

marks-title = Punten
# Vóór het totaal van 100.
marks-total = Alles samen
# $pass (Number): het totaal vanaf waar een level gehaald is.
marks-passed = Gehaald (vanaf { $pass })
marks-notYet = Nog niet (gehaald vanaf { $pass })
asks-cadence = Benen binnen je bereik
asks-foresight = De versnelling klaar vóór de heuvel
asks-easing = Zacht trappen tijdens het schakelen
asks-chainLine = Een rechte ketting
asks-economy = Niet schakelen als het niet hoeft
noMark = geen punten
noMark-cadence = Je trapte niet lang genoeg om er iets over te zeggen.
noMark-foresight = Geen klimmetje van deze rit vroeg om schakelen.
noMark-easing = Je schakelde niet, dus er was niets om zacht voor te trappen.
noMark-chainLine = Niets te beoordelen: één kettingblad, of helemaal niet geschakeld.
noMark-economy = Er was niets te tellen.
# $most, $atLeast (Number): punten van 100. $share: zoals “60%”.
hold-weakest = { mark } drukt het totaal: met zo weinig punten daarvoor is het hooguit { $most }.
hold-pace = Je deed er { $times } keer zo lang over als de beste rit. Zo blijft { $share } van het totaal over.
hold-tooSlow = Je deed er { $times } keer zo lang over als de beste rit. In dat tempo is er geen totaal.
hold-lessonMissing = Op deze weg gaat het om { mark-within }: haal daar minstens { $atLeast } punten om te slagen.
hold-markMissing = Om te slagen moet je ook voor { mark-within } minstens { $atLeast } punten halen.
level-strong = sterk
level-good = goed
level-onTheWay = goed op weg
level-start = begin hier
perfect = Hier ging niets verloren.
small = Hier gingen alleen kleinigheden verloren.
leftAlone = Er werd geen hendel ingedrukt waar de weg erom vroeg.
# Klapt meer redenen uit. $more (Number): 1 tot 5.
more =
    { $more ->
        [1] Nog één
        [2] Nog twee
        [3] Nog drie
        [4] Nog vier
        [5] Nog vijf
       *[other] Nog { $more }
    }
# Staat vóór de raad bij een reden (better-…).
better = Beter:

## Waarom de punten zijn zoals ze zijn (why-…), en wat het had veranderd (better-…: gaat verder na “Beter:”)

# $from: waar, zoals “230 m”. $rpm (Number): omwentelingen van de pedalen per minuut.
why-below-band = Trage benen, { seconds } lang vanaf { $from }, op hun traagst { $rpm } per minuut.
better-below-band = schakel lichter zodra je benen trager worden.
why-above-band = Snelle benen, { seconds } lang vanaf { $from }, op hun snelst { $rpm } per minuut.
better-above-band = schakel zwaarder als de weg je vaart geeft.
why-coasted = Je benen rustten { seconds } vanaf { $from }, waar de beste rit trapt.
better-coasted = houd de pedalen aan het draaien, op het vlakke en bergop.
better-coasted-hub = trap door zodra de naaf zijn versnelling heeft.
# $percent: zoals “40%”.
why-overloaded-pitch = { pitch-begins } drukte op je benen: { $percent } van wat goede timing bespaart, ging verloren.
better-overloaded-pitch = begin vóór de voet met schakelen.
why-early-pitch = Je was te vroeg klaar voor { pitch }: { $percent } van wat goede timing bespaart, ging verloren.
better-early-pitch = blijf iets langer in je versnelling.
why-foot-down-pitch = Op { pitch } ging er een voet aan de grond.
better-foot-down-pitch = zit in een lichte versnelling voordat het steil wordt.
# $derailleur: die voor verplaatst de ketting van blad naar blad.
why-heavy-shift =
    { $derailleur ->
        [front] Op { $from } van kettingblad gewisseld onder druk, met { $percent } van de gewone druk.
       *[rear] Op { $from } geschakeld onder druk, met { $percent } van de gewone druk.
    }
better-heavy-shift = trap een halve omwenteling zacht, schakel dan.
better-heavy-shift-hub = haal de druk eraf, dan pakt de naaf zijn versnelling.
better-heavy-shift-motor = haal de druk er een tel eerder af, tot ook de motor heeft losgelaten.
why-waited-shift = Op { $from } wachtte de ketting: je benen rustten.
better-waited-shift = blijf zacht doortrappen terwijl hij verspringt.
why-crossed = De ketting liep { seconds } schuin vanaf { $from }.
better-crossed = wissel eerder van kettingblad.
why-many-shifts = Je wisselde { changes } van versnelling; de beste rit { $needed ->
        [0] geen enkele keer
       *[other] { needed } keer
    }.
better-many-shifts = rijd over korte bultjes gewoon heen.
why-undone = Op { $from } schakelde je heen en meteen weer terug.
better-undone = geef een nieuwe versnelling drie omwentelingen de tijd.

## Wat je nu kunt doen

doing-title = En nu
doing-again = Nog eens rijden
# $level: de titel van een level.
doing-next = Hierna: { $level }
doing-watch = Kijk vanaf het begin
doing-print = Afdrukken
doing-saveRide = Rit opslaan
doing-savePicture = Plaatje opslaan
doing-pictureFailed = Deze browser kon het plaatje niet tekenen. Afdrukken kan ook.
doing-backToGroup = Terug naar de groep
doing-backToBench = Terug naar de levelbouwer
doing-besideRoad = Naast je rit op de weg
# De eerste rit van een kind in een les. $lesson: zoals “Cadans”.
freshPatch = Je hebt een nieuw lapje: { $lesson }.
differs = Opnieuw gereden kwam deze opname iets anders uit. Het beeld klopt misschien niet helemaal.
closed = De rest gaat open als je geraden hebt.

## Of de rit bewaard is, en waarom niet

saved-saving = De rit wordt bewaard …
saved-saved = Deze rit is op dit apparaat bewaard.
saved-not-saved = Deze rit is niet bewaard.
notSaved-private-window = Deze rit is niet bewaard: de browser bewaart niets in dit venster. Sla hem op als bestand, of open een gewoon venster.
notSaved-disk-full = Deze rit is niet bewaard: het apparaat heeft geen ruimte meer. Sla hem op als bestand, of maak ruimte; het spel probeert het dan opnieuw.
notSaved-connection-lost = Deze rit is nog niet bewaard: de browser is zijn opslag kwijt. Sla hem op als bestand; het spel probeert het opnieuw.
notSaved-newer-version = Deze rit is niet bewaard: er is hier een nieuwere versie van het spel geweest. Laad de pagina opnieuw om bij te werken.
notSaved-blocked = Deze rit is niet bewaard: een ander tabblad van het spel zit in de weg. Sluit het; het spel probeert het opnieuw.
notSaved-hangs = Deze rit is nog niet bewaard: de browser antwoordt niet. Sla hem voor de zekerheid op als bestand.
notSaved-corrupt = Deze rit is niet bewaard: iets wat hier is opgeslagen, is niet te lezen. Sla hem op als bestand.
notSaved-somebody-else = Deze rit is samen met anderen gereden en wordt hier niet bewaard. Sla hem op als bestand.
notSaved-trial = Een proefrit wordt niet bewaard.
notSaved-not-judged = Deze rit kon niet worden uitgerekend en is dus niet bewaard. Sla hem op als bestand.
notSaved-not-fetched = Deze rit is nog niet bewaard: een deel van het spel kon niet worden opgehaald. Controleer de verbinding; het spel probeert het opnieuw. Sla hem voor de zekerheid op als bestand.
notSaved-localBackup = De punten zijn bewaard, de rit zelf niet.

## Het afgedrukte blad

print-title = Before the Hill: een rit
print-subtitle = { $level } · { $bike } · { $rider }
print-legend = Zwart: jij. Grijs: de beste rit die voor deze fiets en fietser is gevonden. Punt: schoon geschakeld; half: iets onder druk; driehoek: onder druk. Kruis: een voet aan de grond.
# $total (Number): van 100.
print-marks = { marks-title }. { marks-total }: { $total }.
print-pitchTitle = { pitch-title }.
# $needed (Number): lichtere versnellingen.
print-pitch = { card-needed }: { $needed }. { card-before }: { card-ofMade }. { card-worst }: { card-worstPair }.
