### De nabespreking voor kinderen van een jaar of tien. Wat hier niet staat, wordt gezegd als tegen volwassenen (debrief.ftl).
### Geen zin heeft meer dan twaalf woorden; korte, makkelijke woorden, warm en nooit een verwijt.

## Delen die in meerdere zinnen staan

# Welke heuvel van de weg. $pitch (Number): vanaf 1. $pitches (Number): hoeveel er zijn.
pitch =
    { $pitches ->
        [1] de heuvel
       *[other] heuvel { $pitch }
    }
pitch-begins =
    { $pitches ->
        [1] De heuvel
       *[other] Heuvel { $pitch }
    }
pitch-title =
    { $pitches ->
        [1] De heuvel
       *[other] Heuvel { $pitch }
    }
# Een plek, gezien vanaf waar de heuvel begint. $metres: een afstand met eenheid, zoals “12 m”.
near =
    { $side ->
        [at] precies waar de heuvel begint
        [after] { $metres } voorbij het begin van de heuvel
       *[before] { $metres } vóór de heuvel
    }
# Dezelfde plek om op te mikken.
aim =
    { $side ->
        [at] precies waar hij begint
        [after] precies waar hij begint
       *[before] ongeveer { $metres } vóór de heuvel
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
# $heavy (Number): vanaf 1.
heavy-shifts =
    { $heavy ->
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
       *[other] { $heavy } keer
    }
# Wanneer iemand schakelde. Ook op de knoppen van de vraag.
timing =
    { $timing ->
        [too-early] te vroeg
        [too-late] te laat
       *[about-right] precies goed
    }
# Een van de vijf onderdelen, als naam.
mark =
    { $mark ->
        [cadence] Vlotte benen
        [foresight] Op tijd klaar
        [easing] Zacht schakelen
        [chainLine] Rechte ketting
       *[economy] Rustige handen
    }

## De vraag voordat er iets wordt uitgelegd, en het antwoord

guess-title = Raad eens
# De knoppen eronder maken de zin af: zie “timing”.
guess-question = Op { pitch } schakelde je …
guess-openQuestion = Op je zwaarste heuvel schakelde je …
guess-why = Niet geschakeld waar het nodig was? Dat is te laat. Daarna kijken we naar je rit.
guess-skip = Laat maar zien
guess-working = We zoeken de beste rit …
guess-notMarked = We konden je punten nu niet uitrekenen. Is je rit bewaard? Dan komen ze als je het spel weer opent.
guess-matched = Ja! Het was { timing }.
# $guess: wat het kind zei.
guess-differed =
    { $guess ->
        [too-early] Jij zei “te vroeg”. Het was { timing }.
        [too-late] Jij zei “te laat”. Het was { timing }.
       *[about-right] Jij zei “precies goed”. Het was { timing }.
    }
guess-matchedKind = Goed gekeken!
guess-differedKind = Onder het fietsen merk je dat niet zo snel.
guess-noPitch = Op deze weg was geen steile heuvel.
# $own en $best: waar het kind en de beste rit het eerst schakelden. $ownMetres, $bestMetres: zoals “12 m”.
guess-where =
    { $own ->
        [never] Jij schakelde niet.
        [at] Jij schakelde precies waar de heuvel begint.
        [after] Jij schakelde { $ownMetres } voorbij het begin van de heuvel.
       *[before] Jij schakelde { $ownMetres } vóór de heuvel.
    } { $best ->
        [never] De beste rit schakelde niet.
        [at] De beste rit deed het precies waar de heuvel begint.
        [after] De beste rit deed het { $bestMetres } voorbij het begin.
       *[before] De beste rit deed het { $bestMetres } vóór de heuvel.
    }
# $made (Number): lichtere versnellingen vóór de heuvel, vanaf 0. $needed (Number): die van de beste rit.
guess-stepsBefore =
    { $made ->
        [0] Jij schakelde niet op tijd. De beste rit ging { needed-gears } lichter.
       *[other] Jij ging op tijd { made-gears } lichter. De beste rit ging { needed-gears } lichter.
    }
needed-gears =
    { $needed ->
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
       *[other] { $needed } versnellingen
    }
guess-slowest = Je benen werden te traag op de heuvel.

## Wat er van de rit geworden is

end-passed = Het is je gelukt!
end-not-yet = Goed geprobeerd. De heuvel wacht op je.
end-ridden = Je hebt alles gereden.
end-explain = Kijk naar je rit

## Drie zinnen: wat goed ging, één ding om te proberen, wat je hierna rijdt

well-title = Dit deed je goed
well-finished = Je reed helemaal tot het eind.
well-cadence = Je benen draaiden lekker vlot rond.
well-foresight = Je had de juiste versnelling al vóór de heuvel.
well-easing = Je trapte zacht terwijl je schakelde.
well-chainLine = Je ketting liep mooi recht.
well-economy = Je schakelde nooit voor niets.

change-title = Probeer dit eens
# Wat je de volgende keer doet. $ready (Number): lichtere versnellingen, vanaf 1.
advice = Ga { ready-gears } lichter, { aim }.
ready-gears =
    { $ready ->
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
       *[other] { $ready } versnellingen
    }
# $how: of het maar een beetje te laat was.
change-late-pitch =
    { $how ->
        [slightly] Je wachtte op { pitch } een beetje lang. { advice }
       *[clearly] Je wachtte op { pitch } te lang. { advice }
    }
change-stayed = Je bleef op { pitch } in een zware versnelling. { advice }
change-early-pitch =
    { $how ->
        [slightly] Je schakelde bij { pitch } een beetje vroeg. Wacht, en schakel { aim }.
       *[clearly] Je schakelde bij { pitch } te vroeg. Wacht, en schakel { aim }.
    }
change-few-steps =
    { $which ->
        [few] Je ging op { pitch } { made-gears } lichter. Je hebt er { $gears ->
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
           *[other] { $gears }
        } nodig.
       *[hard] Je versnelling was te zwaar op { pitch }. Ga één versnelling lichter.
    }
change-wrong-way = Je schakelde op { pitch } zwaarder, niet lichter. { advice }
change-pushed = Je trapte heel hard op { pitch }. { advice }
change-foot-down = De versnelling was te zwaar op { pitch }. { advice }
# Schakelen onder druk: op tandwielen, in een naaf, met een motor die aan de ketting trekt, en met allebei.
change-ease =
    { $heavy ->
        [0] Trap iets zachter terwijl je schakelt.
       *[other] Je trapte { heavy-shifts } hard bij het schakelen. Trap zacht, schakel dan.
    }
change-ease-hub =
    { $heavy ->
        [0] Trap even niet als je schakelt.
       *[other] Je trapte { heavy-shifts } door bij het schakelen. Trap even niet, schakel, trap weer.
    }
change-ease-motor =
    { $heavy ->
        [0] Wacht even tot de motor stopt, schakel dan.
       *[other] De motor trok { heavy-shifts } bij het schakelen. Trap zacht, wacht, schakel.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Wacht even tot de motor stopt, schakel dan.
       *[other] De motor trok { heavy-shifts } bij het schakelen. Trap niet, wacht, schakel.
    }
change-stood-still = Je benen stonden stil toen je schakelde. Draai ze zacht rond.
# $place: een afstand langs de weg, zoals “230 m”.
change-coasted = Je benen deden { seconds } niets vanaf { $place }. Houd ze aan het draaien.
change-coasted-hub = Je benen deden { seconds } niets vanaf { $place }. Trap door na het schakelen.
change-slow-legs = Je benen waren traag, vooral vanaf { $place } ({ seconds }). Kies een lichtere versnelling.
change-fast-legs = Je benen waren snel, vooral vanaf { $place } ({ seconds }). Kies een zwaardere versnelling.
change-crossed = De ketting liep { seconds } niet recht vanaf { $place }. Neem het andere blad voor.
# $changes, $needed (Number): versnellingen.
change-fidget =
    Je schakelde { $changes } keer. { $needed ->
        [0] Het kan ook zonder
       *[other] { $needed } keer is genoeg
    }. Wacht iets langer.
change-dawdle = Je reed heel langzaam. Houd je benen aan het draaien en rijd door.
change-nothing = Helemaal niets. Doe het precies zo nog een keer!

next-title = Volgende rit
next-again = Rijd deze weg nog een keer. Denk alleen aan wat je probeert.
# $level: de titel van een level.
next-onwards = Ga door naar “{ $level }”.
next-onwardsNone = Kies een weg die je leuk vindt.
next-easier-level = Rijd eerst een makkelijkere weg. Kom dan terug.

## Een kaart voor elke heuvel

cards-title = Heuvel voor heuvel
card-needed = Zoveel lichter gaat de beste rit
card-before = Bij jou vóór de heuvel
card-worst = Traagste benen op de heuvel
card-bestDoes = Hier gaat de beste rit { gears } lichter. Die begint { near }.
card-bestStays = De beste rit schakelt hier niet.
card-asksNothing = Het gaat ook zonder schakelen.
card-footDown = Hier moest je een voet aan de grond zetten.
card-timing =
    { $timing ->
        [too-early] Te vroeg
        [too-late] Te laat
       *[about-right] Precies goed
    }
# Hetzelfde waar het goed was, of bijna.
card-tendency =
    { $timing ->
        [too-early] Een beetje vroeg
        [too-late] Een beetje laat
       *[about-right] Precies goed
    }
card-watch = Bekijk deze heuvel
# Voorgelezen in plaats van een plaatje.
card-picture = Waar beide ritten schakelden op { pitch }
card-table = Waar er op deze heuvel is geschakeld

## De punten

asks-cadence = Je benen draaien lekker vlot rond.
asks-foresight = De versnelling klopt al vóór de heuvel.
asks-easing = Je trapt zacht terwijl je schakelt.
asks-chainLine = De ketting loopt recht.
asks-economy = Je schakelt alleen als het moet.
noMark-cadence = Je trapte niet lang genoeg.
noMark-foresight = Er was geen steile heuvel voor jou.
noMark-easing = Je schakelde helemaal niet.
noMark-chainLine = Hier was niets te zien.
noMark-economy = Er was niets te tellen.
# $most, $atLeast (Number): punten van 100. $share: zoals “60%”.
hold-weakest = Je krijgt hooguit { $most } zolang “{ mark }” zo laag is.
hold-pace = Je reed langzaam. Daarom houd je maar { $share } over.
hold-tooSlow = Je reed zo langzaam dat het niet telt.
hold-lessonMissing = Om te slagen heb je { $atLeast } nodig voor “{ mark }”.
hold-markMissing = Ook voor “{ mark }” heb je { $atLeast } nodig.
level-strong = super
level-good = goed
level-onTheWay = het komt al
level-start = begin hier
perfect = Hier is alles goed.
small = Hier is bijna alles goed.
leftAlone = Je drukte geen hendel in. Op deze weg moet dat wel.

## Waarom de punten zijn zoals ze zijn (why-…), en wat het had veranderd (better-…: gaat verder na “Beter:”)

# $from: waar, zoals “230 m”.
why-below-band = Je benen waren { seconds } traag vanaf { $from }.
better-below-band = schakel lichter als je benen traag worden.
why-above-band = Je benen waren { seconds } snel vanaf { $from }.
better-above-band = schakel zwaarder als het naar beneden gaat.
why-coasted = Je benen deden { seconds } niets vanaf { $from }.
better-coasted = houd je benen aan het draaien.
better-coasted-hub = trap door na het schakelen.
why-overloaded-pitch = { pitch-begins } was zwaar voor je benen.
better-overloaded-pitch = schakel voordat de heuvel begint.
why-early-pitch = Je was te vroeg klaar voor { pitch }.
better-early-pitch = wacht iets langer met schakelen.
why-foot-down-pitch = Je zette een voet aan de grond op { pitch }.
better-foot-down-pitch = schakel lichter voordat het steil wordt.
why-heavy-shift = Je trapte hard bij het schakelen op { $from }.
better-heavy-shift = trap zacht, schakel dan.
better-heavy-shift-hub = trap even niet, schakel, trap weer.
better-heavy-shift-motor = wacht iets langer, tot ook de motor stopt.
why-waited-shift = Op { $from } moest de ketting wachten. Je benen stonden stil.
better-waited-shift = draai je benen zacht rond als je schakelt.
why-crossed = De ketting liep { seconds } niet recht vanaf { $from }.
better-crossed = neem het andere blad voor.
# $changes, $needed (Number): versnellingen.
why-many-shifts =
    Je wisselde { $changes } keer van versnelling. { $needed ->
        [0] Het kan ook zonder
       *[other] { $needed } keer is genoeg
    }.
better-many-shifts = rijd gewoon over kleine bultjes heen.
why-undone = Op { $from } schakelde je heen en weer terug.
better-undone = geef elke nieuwe versnelling even de tijd.

closed = Raad eerst. Dan zie je de rest.

print-pitchTitle = { pitch-title }.
print-pitch =
    { $made ->
        [0] Zoveel lichter moet het: { $needed }. Bij jou vóór de heuvel: geen. Traagste benen: { $own }/min (beste rit { $best }).
       *[other] Zoveel lichter moet het: { $needed }. Bij jou vóór de heuvel: { $before } van { $made }. Traagste benen: { $own }/min (beste rit { $best }).
    }
