### De verzetcheck: of de versnellingen van een fiets genoeg zijn voor een weg, en wat andere onderdelen zouden veranderen.
### Een versnelling komt uitgeschreven: “34 × 28”, in een naaf “1 van 3”. Zo ook lengtes, hellingen en snelheden, met eenheid.
### “Per minuut” zijn omwentelingen van de pedalen; het bereik is de cadans waarin de fietser zich prettig voelt.

intro = Houd je deze heuvel vol met andere tandwielen of kettingbladen? Dezelfde rit, op elke fiets die wordt geprobeerd.
road = Weg
roads-ladder = Levels
roads-own = Eigen wegen
# $parts (String): tanden van bladen en tandwielen, zoals “50 / 34 · 11–28”. $low en $high: het bereik.
you = Jouw fiets: { $parts }. Jouw bereik: { $low } tot { $high } omwentelingen per minuut, bergop minder.
perMinute = { $rpm }/min
# Grenzen van wat derailleurs, ketting en freewheel aankunnen: precies, want onderdelen kunnen breken.
caution =
    { $rear ->
        [hub] Wat past, hangt af van wat de naaf en de ketting aankunnen: een naaf verdraagt niet elke verhouding van kettingblad tot tandwiel. Voordat je iets koopt of vervangt: vraag een vakbekwame fietsenmaker en lees de documenten van de fabrikant.
       *[sprockets] Wat past, hangt af van wat de derailleurs, de ketting en het freewheel aankunnen. Voordat je iets koopt of vervangt: vraag een vakbekwame fietsenmaker en lees de documenten van de fabrikant.
    }

## Het antwoord, in zinnen na elkaar

working = Je fiets rijdt deze weg …
failed = Deze weg kon met deze fiets niet worden gereden. Kies een andere weg, of kijk naar de aantallen tanden van de fiets.
again = Opnieuw proberen
# $rpm: waar de benen op uitkomen. $low: waar het bereik begint. $length en $slope: het steilste stuk.
lowest-short = In je lichtste versnelling { $gear } komen je benen op de steilste { $length } ({ $slope }) uit op { $rpm } per minuut. Je bereik begint daar bij { $low }.
lowest-walks =
    { $rpm ->
        [0] Met deze fiets moet je hier lopen. Je lichtste versnelling { $gear } staat stil op de steilste { $length } ({ $slope }).
       *[other] Met deze fiets moet je hier lopen: rijdend zou je niet sneller zijn. In je lichtste versnelling { $gear } zouden je benen op de steilste { $length } ({ $slope }) uitkomen op { $rpm } per minuut.
    }
lowest-enough = Je lichtste versnelling { $gear } is hier licht genoeg: op de steilste { $length } ({ $slope }) komen je benen uit op { $rpm } per minuut.
looking = Andere onderdelen worden geprobeerd …
# Ze: je benen, uit de zin ervoor (lowest-short, lowest-walks). Onderdelen die helpen, en niet genoeg zijn.
help-mild = Met { $gear } zouden ze uitkomen op { $rpm }.
# $after: na de zin help-mild, of alleen.
help-reaches =
    { $after ->
        [mild] Om hier in je bereik te blijven is { $gear } nodig.
       *[alone] Met { $gear } zou je in je bereik blijven.
    }
help-askFirst = De derailleurs van deze fiets kunnen dat misschien niet aan; zie hieronder.
# $needed en $own (String): hoe ver één omwenteling van de pedalen brengt, zoals “2,06 m”. $ring en $sprocket: tanden.
# $rear: meerdere tandwielen, of één op een naaf.
help-none =
    { $rear ->
        [hub] Geen van de onderdelen die hier zijn geprobeerd, houdt je in je bereik. Er is een versnelling van { $needed } per omwenteling nodig, en je lichtste is { $own }: een blad met { $ring } tanden bij jouw tandwiel, of een tandwiel met { $sprocket } bij jouw blad.
       *[sprockets] Geen van de onderdelen die hier zijn geprobeerd, houdt je in je bereik. Er is een versnelling van { $needed } per omwenteling nodig, en je lichtste is { $own }: een blad met { $ring } tanden bij je grootste tandwiel, of een tandwiel met { $sprocket } bij je kleinste blad.
    }
help-tooSteep = Hier helpt geen versnelling: met jouw vermogen en jouw cadans rijd je { $slope } met { $speed }, en lopen gaat even snel.
# De zwaarste minuut van de rit.
minute-inBand = Je zwaarste minuut van deze rit blijft in je bereik, met { $rpm } per minuut.
# $from en $to (String): plekken op de weg, zoals “320 m”. $missing: omwentelingen per minuut onder het bereik.
minute-below = Je zwaarste minuut van deze rit loopt van { $from } tot { $to }: { $rpm } per minuut, { $missing } onder je bereik.
highest-enough = Je zwaarste versnelling { $gear } schiet hier nergens tekort.
# $places: op hoeveel plekken. $seconds: hoelang in totaal.
highest-short =
    { $places ->
        [one] { $seconds ->
            [one] Je zwaarste versnelling { $gear } schiet op één plek tekort, in totaal één seconde: je benen draaien daar { $rpm } per minuut.
           *[other] Je zwaarste versnelling { $gear } schiet op één plek tekort, in totaal { $seconds } seconden: je benen draaien daar { $rpm } per minuut.
        }
       *[other] { $seconds ->
            [one] Je zwaarste versnelling { $gear } schiet op { $places } plekken tekort, in totaal één seconde: je benen draaien daar { $rpm } per minuut.
           *[other] Je zwaarste versnelling { $gear } schiet op { $places } plekken tekort, in totaal { $seconds } seconden: je benen draaien daar { $rpm } per minuut.
        }
    }

## In eigen woorden naar een onderdeel vragen

ask = Vraag naar een onderdeel
ask-label = En met …
# Moet met de lijsten hieronder te begrijpen zijn.
ask-example =
    { $rear ->
        [hub] 22 achter
       *[sprockets] 34 achter
    }
ask-button = Probeer het
ask-working = Deze onderdelen rijden deze weg …
ask-nothing = Schrijf een aantal tanden op, bijvoorbeeld “34 achter”, “32 voor” of “11-34”.
ask-which-end = Zeg aan welke kant: “achter” voor tandwielen, “voor” voor kettingbladen.
ask-impossible = Van deze getallen zijn geen kettingbladen of tandwielen te maken. Schrijf ze zoals “46/30” of “11-34”.
ask-same = Dat heeft je fiets al.
ask-answer = { $parts }: op de steilste { $length } zouden je benen uitkomen op { $rpm } per minuut in plaats van { $own }.
# Woorden waarnaar geluisterd wordt, in kleine letters, met komma’s ertussen, zoveel als mensen zouden gebruiken, met al
# hun vormen. Wat tandwielen of de achterkant betekent:
hear-back = achter, achteraan, achterop, achteren, cassette, cassettes, tandwiel, tandwielen, achtertandwiel, achtertandwielen, tandwieltje, tandwieltjes, kransje, kransjes, krans, pion, pions, pignon, pignons
# Wat kettingbladen of de voorkant betekent:
hear-front = voor, vóór, vooraan, voorop, voren, blad, bladen, kettingblad, kettingbladen, voorblad, voorbladen, crank, cranks, crankstel, plateau
# Wat tussen twee onderdelen staat (“30 voor en 32 achter”):
hear-and = en, met, plus
# Wat tussen twee uiteinden van een bereik staat (“11 tot 34”):
hear-to = tot, naar, t/m

## De weg met de plekken waar de versnellingen tekortschieten

profile = Waar de versnellingen tekortschieten
# Voorgelezen. $below en $above: op hoeveel plekken.
profile-desc =
    { $length } weg van opzij. { $below ->
        [0] Nergens is de lichtste versnelling te zwaar.
        [one] Op één plek is de lichtste versnelling te zwaar.
       *[other] Op { $below } plekken is de lichtste versnelling te zwaar.
    } { $above ->
        [0] Nergens is de zwaarste te licht.
        [one] Op één plek is de zwaarste te licht.
       *[other] Op { $above } plekken is de zwaarste te licht.
    }
profile-below = lichtste versnelling te zwaar
profile-above = zwaarste versnelling te licht
profile-nowhere = De versnellingen van deze fiets schieten op deze weg nergens tekort.

## Alle versnellingen als treden van papier

stairs = Al je versnellingen
stairs-box = De trap van je versnellingen
stairs-hint = Eén papieren trede voor elke versnelling, de lichtste eerst, in de volgorde waarin je echt zou schakelen. Tussen de treden staat wat de handen doen.
stairs-desc =
    { $gears ->
        [one] Een trap van één trede. De tabel eronder zegt hetzelfde.
       *[other] Een trap van { $steps } treden met alle { $gears } versnellingen. De tabel eronder zegt hetzelfde.
    }
# $different: versnellingen die niet bijna gelijk zijn aan een andere.
stairs-really =
    { $gears ->
        [one] { $gears } versnelling.
       *[other] { $gears } versnellingen, waarvan er { $different } echt verschillen.
    }
stairs-eachOwn =
    { $gears ->
        [one] Eén versnelling.
       *[other] { $gears } versnellingen, allemaal anders.
    }
# Onder de treden: tekens en wat ze betekenen.
sign-rear =
    { $rear ->
        [hub] rechterhand, versnellingen in de naaf
       *[sprockets] rechterhand, tandwielen
    }
sign-front = linkerhand, kettingbladen
sign-same = ligt op de trede: even goed
sign-near = ligt erbij in de buurt
sign-crossed = zet de ketting schuin
table = Hetzelfde in getallen
table-gear = Versnelling
table-development = Verzet
table-step = Stap
table-hands = Handen
table-speed = Snelheid bij { $rpm }/min
table-also = Op dezelfde trede
# Wat de handen doen van de ene trede naar de volgende. $ring: naar een groter kettingblad, of niets. $rear: wat de rechterhand doet, $count keer.
hands =
    { $ring ->
        [bigger] { $rear ->
            [harder] linkerhand: groter blad, rechterhand: { $count } zwaarder
            [easier] linkerhand: groter blad, rechterhand: { $count } lichter
           *[same] linkerhand: groter blad
        }
       *[same] { $rear ->
            [harder] rechterhand: { $count } zwaarder
           *[easier] rechterhand: { $count } lichter
        }
    }
gear-crossed = { $gear }, zet de ketting schuin
# Een andere versnelling op een trede: even goed als die van de trede, of erbij in de buurt. $chain: of de ketting daar schuin loopt.
also-same =
    { $chain ->
        [crossed] { $gear }, zet de ketting schuin (even goed)
       *[straight] { $gear } (even goed)
    }
also-near =
    { $chain ->
        [crossed] { $gear }, zet de ketting schuin (in de buurt)
       *[straight] { $gear } (in de buurt)
    }

## Andere onderdelen in een tabel

others = Wat andere onderdelen zouden veranderen
others-hint = Dezelfde fietser, dezelfde weg, elke fiets gereden. Eerst wie rijdend boven komt, dan de zwaarste minuut, dan het steilste stuk, dan de tijd in het bereik. Daarna, apart, onderdelen waar je eerst naar moet vragen.
# Above parts that pass a limit of the derailleurs.
askFirst = Vraag het eerst in de werkplaats: deze onderdelen gaan verder dan derailleurs als de jouwe gewoonlijk aankunnen
others-trying =
    { $count ->
        [0] Nog niets geprobeerd …
       *[other] Tot nu toe { $count } geprobeerd …
    }
others-tried =
    { $count ->
        [one] Eén ander stel onderdelen geprobeerd.
       *[other] { $count } andere stellen onderdelen geprobeerd.
    }
others-none = Gangbare onderdelen met evenveel bladen en tandwielen als die van jou zijn hier niet bekend.
others-all = Toon alle { $count }
others-fewer = Toon minder
# Koppen van de tabel.
parts = Onderdelen
# Of je rijdend of te voet boven komt.
getsUp = Komt boven
getsUp-riding = rijdend
# $time (String): zoals “3:05”.
getsUp-walking = { $time } te voet
minute = Zwaarste minuut
minute-missing = { $rpm } onder bereik
minute-kept = in bereik
inBand = Tijd in bereik
steepest = Steilste { $length }
yours = Jouw fiets nu
changed-cassette = andere cassette
changed-rings = andere kettingbladen
changed-both = allebei anders
take = Probeer deze fiets
take-this = Probeer deze fiets: { $parts }
# Wat de onderdelen opleveren en kosten: een paar van deze zinnen, na elkaar.
trade-none = Ongeveer zoals jouw fiets.
trade-easier-lowest = De lichtste versnelling wordt lichter.
trade-harder-highest = De zwaarste versnelling wordt zwaarder.
trade-smaller-steps = De stappen tussen de versnellingen worden kleiner.
trade-fewer-twins = Er zijn minder dubbele versnellingen.
trade-fewer-shifts = Op deze weg hoef je minder vaak te schakelen.
trade-less-capacity = De achterderailleur hoeft minder ketting op te vangen.
trade-harder-lowest = De lichtste versnelling wordt zwaarder.
trade-loses-highest = De zwaarste versnelling valt weg.
trade-bigger-steps = De stappen tussen de versnellingen worden groter.
trade-more-twins = Er zijn meer dubbele versnellingen.
trade-more-shifts = Op deze weg moet je vaker schakelen.
trade-more-capacity = De achterderailleur moet meer ketting opvangen.
capacity = { $teeth } tanden ketting om op te vangen.
# Wat gewone derailleurs niet aankunnen. $have en $most: tanden.
limit-sprocket =
    Vraag het eerst: een tandwiel van { $have } is meer dan de { $most } die { $derailleur ->
        [road] achterderailleurs van racefietsen
       *[long] achterderailleurs met een lange kooi
    } gewoonlijk aankunnen ({ $source ->
        [published] opgaven van fabrikanten voor negen en tien versnellingen
       *[practice] gangbare praktijk, geen bron
    }).
limit-capacity =
    Vraag het eerst: { $have } tanden ketting is meer dan de { $most } die { $derailleur ->
        [road] achterderailleurs van racefietsen
       *[long] achterderailleurs met een lange kooi
    } gewoonlijk opvangen ({ $source ->
        [published] opgaven van fabrikanten voor negen en tien versnellingen
       *[practice] gangbare praktijk, geen bron
    }).
limit-rings =
    Vraag het eerst: bladen die { $have } tanden verschillen, is meer dan de { $most } die voorderailleurs gewoonlijk overbruggen ({ $source ->
        [published] opgaven van fabrikanten voor negen en tien versnellingen
       *[practice] gangbare praktijk, geen bron
    }).

## Twee ritten naast elkaar

compare = Beide ritten
compare-close = Sluit beide ritten
compare-this = Beide ritten naast elkaar: { $parts }
compare-closeThis = Sluit beide ritten: { $parts }
# Voorgelezen.
compare-desc = Cadans over de weg: jouw fiets als onderbroken lijn, { $parts } als volle lijn, daaronder het bereik als strook.
compare-yours = jouw fiets
compare-band = ondergrens van je bereik
compare-figure = Getal
compare-time = Tijd
compare-shifts = Keer geschakeld
compare-lowest = Lichtste versnelling
# $metres (String): hoe ver één omwenteling van de pedalen brengt.
compare-gear = { $gear }, { $metres } per omwenteling

## Verzetmeting: hoe ver één omwenteling van de cranks in de zwaarste versnelling brengt; in wedstrijden voor de jeugd is dat begrensd

rollOut = Verzetmeting, voor wedstrijden van jonge renners
rollOut-is = Eén omwenteling van de cranks in de zwaarste versnelling { $gear } brengt deze fiets { $metres } ver.
rollOut-limit = Grens
rollOut-none = Geen grens
rollOut-own = De grens van onze club
rollOut-metres = Grens in meters
rollOut-unreadable = Schrijf de grens in meters op, van 2 tot 12, bijvoorbeeld 6,45.
# Wie, hoe ver, wiens regel, en wanneer die gold. $date (String): een jaar, of de laatste dag.
rollOut-option =
    { $group ->
        [juniors] Junioren
        [under-16] Onder 16
        [under-14] Onder 14
       *[under-12] Onder 12
    }: { $metres } ({ $body ->
        [world-federation] wereldbond
       *[national-federation] één nationale bond
    }, { $held ->
        [until] tot { $date }
       *[year] { $date }
    })
rollOut-source =
    { $body ->
        [world-federation] { $held ->
            [until] De wereldbond had deze grens tot { $date }; sindsdien is hier geen grens bekend.
           *[year] Uit het reglement van de wereldbond van { $date }.
        }
       *[national-federation] { $held ->
            [until] Eén nationale bond had deze grens tot { $date }; sindsdien is hier geen grens bekend.
           *[year] Uit het reglement van één nationale bond van { $date }.
        }
    }
# $year (String).
rollOut-relaxed = In { $year } is hij versoepeld.
rollOut-ask = Regels verschillen en veranderen: vraag je bond naar het getal van dit seizoen.
rollOut-within = Dat blijft binnen de grens van { $limit }.
rollOut-beyond = Dat is meer dan de grens van { $limit }. De zwaarste versnelling die erbinnen blijft, is { $gear }.
rollOut-allBeyond = Dat is meer dan de grens van { $limit }, net als elke andere versnelling van deze fiets.
rollOut-measured = Bij een wedstrijd wordt de fiets over de grond gerold en gemeten; band en bandenspanning schelen een paar centimeter.
