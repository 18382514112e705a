### Wat er mis is met een level, een plan of een gedeelde link, en wat je kunt doen. Woorden tussen aanhalingstekens zoals "atM" en
### Engelse woorden zoals flat staan zo in de bestanden en blijven zoals ze zijn.

## Shapes: what stands in a file against what should stand there

# What stands there now. $found: as it is in the file, where $is is value.
found =
    { $is ->
        [nothing] niets
        [list] een lijst
        [object] een object
       *[value] { $found }
    }
# What should stand there.
needed =
    { $needed ->
        [number] een getal
        [int] een heel getal
        [string] tekst tussen aanhalingstekens
        [boolean] true of false
        [array] een lijst tussen [ ]
        [object] een object tussen { "{ }" }
       *[other] iets anders
    }
schema-missing = Dit ontbreekt. Voeg toe: { needed }.
# $allowed: what may stand there, as one word or a list.
schema-missing-allowed =
    { $count ->
        [1] Dit ontbreekt. Schrijf { $allowed }.
       *[other] Dit ontbreekt. Neem een van deze: { $allowed }.
    }
schema-wrong-type = Hier staat { found }; nodig is { needed }.
schema-endless = Dit getal is te groot om te lezen. Nodig is { needed }.
schema-not-allowed =
    { $count ->
        [1] Hier staat { found }; nodig is { $allowed }.
       *[other] Hier staat { found }; dat is niet bekend. Neem een van deze: { $allowed }.
    }
schema-characters-most =
    { $most ->
        [one] Deze tekst mag hoogstens { $most } teken hebben; het zijn er { $has }.
       *[other] Deze tekst mag hoogstens { $most } tekens hebben; het zijn er { $has }.
    }
schema-characters-least =
    { $least ->
        [one] Deze tekst heeft minstens { $least } teken nodig; het zijn er { $has }.
       *[other] Deze tekst heeft minstens { $least } tekens nodig; het zijn er { $has }.
    }
schema-entries-most =
    { $most ->
        [one] Deze lijst mag hoogstens { $most } item hebben; het zijn er { $has }.
       *[other] Deze lijst mag hoogstens { $most } items hebben; het zijn er { $has }.
    }
schema-entries-least =
    { $least ->
        [one] Deze lijst heeft minstens { $least } item nodig; het zijn er { $has }.
       *[other] Deze lijst heeft minstens { $least } items nodig; het zijn er { $has }.
    }
# $found, $most, $least, $ratio and $percent: as numbers are written in the file.
schema-range-most = Hier staat { $found }; dat mag hoogstens { $most } zijn.
schema-range-least = Hier staat { $found }; dat moet minstens { $least } zijn.
# Behind the two before: people write gradients in percent.
slopes = Een helling is hier hoogte gedeeld door afstand: { $percent }% schrijf je als { $ratio }.
schema-bad-format = Hier staat { found }; dat past niet. Gebruik alleen kleine letters, cijfers en streepjes, bijvoorbeeld "two-pitches".
schema-invalid = Hier staat { found }; dat past niet. Vergelijk met een meegeleverd level.
schema-more =
    { $count ->
        [one] Er is nog { $count } probleem. Los eerst deze op.
       *[other] Er zijn nog { $count } problemen. Los eerst deze op.
    }
# $where: near a line, at the end, or unknown.
not-json =
    { $where ->
        [line] Dit is niet te lezen als JSON; de fout zit bij regel { $line }. Controleer komma’s, aanhalingstekens en haakjes.
        [end] Dit is niet te lezen als JSON; het houdt te vroeg op. Controleer komma’s, aanhalingstekens en haakjes.
       *[unknown] Dit is niet te lezen als JSON. Controleer komma’s, aanhalingstekens en haakjes.
    }

## Levels. A stretch has wind, gravel or is hidden; a piece is a part of the road

level-too-big = Dit is veel te lang voor een level. Kies een bestand dat in de levelbouwer is opgeslagen.
level-empty = Dit bestand is leeg. Een levelbestand bevat één object tussen accolades { "{ … }" }.
level-not-a-level = Een levelbestand bevat één object tussen accolades { "{ … }" }.
level-too-deep = Hier zit veel meer in dan een level heeft. Vraag er opnieuw om, als link of bestand.
level-newer-schema = Dit level is gemaakt door een nieuwere versie (formaat { $schema }); deze leest tot en met { $readsUpTo }. Werk het spel bij; het bestand is gelaten zoals het was.
level-unknown-key = "{ $key }" hoort hier niet bij een level. Haal het weg of controleer de spelling.
level-unknown-cue = Deze aanwijzing heeft "atM" nodig en een bekende "cue" of een "text" van hoogstens 76 tekens.
level-missing-kind = De soort van dit deel ontbreekt. Gebruik flat, climb, pitch, descent, rollers, random-pitches of recorded.
level-unknown-kind = Hier staat { found }; dat is geen soort deel. Gebruik flat, climb, pitch, descent, rollers, random-pitches of recorded.
level-no-weight = Minstens één onderdeel heeft een gewicht boven 0 nodig.
level-too-short = De weg is { $length } lang; minstens { $least } is nodig. Maak een deel langer of voeg er een toe.
level-too-long = De weg is { $length } lang; hoogstens { $most } is te rijden. Maak delen korter of haal ze weg.
level-gentler-than-steepest = Het minst steile klimmetje is steiler dan het steilste. Wissel de twee getallen om.
level-pitches-too-dense =
    { $pitchCount ->
        [one] { $pitchCount } klimmetje heeft minstens { $least } weg nodig; dit deel heeft { $length }.
       *[other] { $pitchCount } klimmetjes hebben minstens { $least } weg nodig; dit deel heeft { $length }.
    }
level-recorded-too-steep = Hier is de opgenomen weg steiler dan { $limit }. Maak eerst de hoogtes vloeiender.
level-backwards = Dit stuk eindigt voordat het begint. "toM" moet groter zijn dan "fromM".
level-beyond-end =
    { $part ->
        [cue] Deze aanwijzing ligt voorbij het einde van de weg; die is { $length } lang.
       *[stretch] Dit stuk eindigt voorbij het einde van de weg; die is { $length } lang.
    }
# $other: its place in the file, like winds[1].
level-overlap = Dit stuk overlapt met { $other }. Laat het ene eindigen waar het andere begint.
level-stop-too-near =
    { $near ->
        [beyond-end] De stopstreep op { $at } ligt voorbij het einde van de weg; die is { $length } lang.
        [end] De stopstreep op { $at } heeft { $least } weg achter zich nodig; de weg eindigt op { $length }.
        [start] De stopstreep op { $at } heeft { $least } weg nodig tussen zichzelf en de start.
       *[line] De stopstreep op { $at } heeft { $least } weg nodig tussen zichzelf en de stopstreep op { $last }.
    }

## Levels that may be ridden, but will surprise. $gear is like 34 × 34

level-cannot-climb = Deze fietser moet lopen van { $from } tot { $to } (tot { $slope } steil), zelfs in de lichtste versnelling ({ $gear }): ongeveer { $walkS } s te voet.
# These two stand behind the one before. $metres: how far a turn of the pedals carries.
takes-gear = Om te rijden zou een versnelling van { $metres } per omwenteling nodig zijn.
takes-power = Geen versnelling helpt; om te rijden zou meer dan { $watts } W nodig zijn.
level-cannot-hold-cadence = Deze fietser kan op de helling van { $slope } bij { $at } geen { $heldRpm } per minuut volhouden in de lichtste versnelling ({ $gear }); er blijven { $cadenceRpm } per minuut over.
level-stop-uphill = De stopstreep op { $at } ligt bergop ({ $slope }): daar weer wegrijden is zwoegen.
level-stop-downhill = De stopstreep op { $at } ligt bergaf ({ $slope }): van daar wegrijden leer je niets.
level-hidden-long = De weg blijft { $length } verborgen met { $sight } zicht: dat is blind rijden, niet vooruitkijken.
level-hidden-pitch = Het klimmetje van { $steepest } op { $foot } zie je pas { $sight } ervoor; niemand kan zo op tijd schakelen.
level-seed-unused = Elke rit van dit level heeft dezelfde weg, dus je ziet niet wat er geleerd is. Voeg een golvend stuk of toevallige klimmetjes toe.
# $seed: another seed of chance.
level-seed-moves-stop = Met een ander toevalsgetal ({ $seed }) komt deze stopstreep op { $slope } te liggen.

## Plans of group sessions

plan-too-big = Dit is veel te lang voor een plan. Vraag de trainer er opnieuw om.
plan-not-a-plan = Een planbestand bevat één object tussen accolades { "{ … }" }.
plan-too-deep = Hier zit veel meer in dan een plan heeft. Vraag de trainer er opnieuw om.
plan-newer-schema = Dit plan is gemaakt door een nieuwere versie (formaat { $schema }); deze leest tot en met { $readsUpTo }. Werk het spel bij; het bestand is gelaten zoals het was.
plan-unknown-key = "{ $key }" hoort niet bij een plan. Haal het weg of controleer de spelling.
plan-unknown-kind = Een rit van een plan heeft de soort bundled, own of check.
plan-bad-format = Gebruik alleen kleine letters, cijfers en streepjes, bijvoorbeeld "first-evening".
plan-invalid = Dit past hier niet. Vergelijk met een kant-en-klaar plan.
plan-dirty-text = De titel heeft onzichtbare tekens, of spaties aan het begin of eind. Typ hem opnieuw.
# $first: one or two words; $others: a list.
plan-unknown-bike = Die fiets bestaat hier niet. Gebruik { $first }, of een van deze: { $others }.
plan-unknown-rider = Die fietser bestaat hier niet. Gebruik { $first }, of een van deze: { $others }.
plan-unknown-level = Er is hier geen level "{ $levelId }". Kies een ander, of zet het level zelf in het plan.

## Shared links

link-too-big = Wat gedeeld is, is te groot voor een level.
link-not-packed = Wat gedeeld is, is geen level. Deel het opnieuw vanuit de levelbouwer.
link-not-shared = Dit is geen gedeeld level. Kopieer de hele link, van de eerste tot de laatste letter.
link-newer-version = Dit level is gedeeld door een nieuwere versie (formaat { $version }); deze leest tot en met { $readsUpTo }. Werk het spel bij.
link-damaged = Het gedeelde level is onvolledig of onderweg veranderd. Kopieer de hele link opnieuw.
link-unknown-packing = Het gedeelde level is ingepakt op een manier die hier niet bekend is. Werk het spel bij.
