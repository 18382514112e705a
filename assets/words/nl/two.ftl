### Meerdere fietsers op één apparaat.

title = Met twee of meer
intro = Op één weg met één apparaat. Ieder rijdt voor zichzelf, en tegen niemand.
road = Weg
ride = Rijden
leave = Stoppen met rijden

## Kiezen

needsKeys = Dit scherm is te klein voor de knoppen van twee. Neem een tablet, een toetsenbord of twee gamepads; of rijd een estafette.
noRelay = Deze weg is te kort voor een estafette, of heeft te weinig heuvels: iedereen heeft een heuvel en een eigen stuk weg nodig. Kies een andere weg.
way = Hoe
way-beside = Naast elkaar
way-facing = Tegenover elkaar
way-relay = Estafette
wayHint-beside = Twee tegelijk, ieder op een helft van het scherm: op een tablet, met één toetsenbord of twee gamepads.
wayHint-facing = Twee tegelijk, de bovenste helft van de tablet omgedraaid. Leg hem plat tussen jullie in, waar hij niet kan schuiven of vallen.
wayHint-relay = Eén weg, voor ieder een stuk: wie bij de poort komt, geeft het apparaat door, staand of zittend.
count = Fietsers
# Wie er bedoeld is; de kop boven wat die kiest. $rider (Number): vanaf 1 geteld. Naast elkaar zit 1 links.
name-beside =
    { $rider ->
        [1] Links
       *[other] Rechts
    }
name-facing =
    { $rider ->
        [1] Bovenste helft, omgedraaid
       *[other] Onderste helft
    }
name-relay =
    { $rider ->
        [1] Eerste
        [2] Tweede
        [3] Derde
        [4] Vierde
        [5] Vijfde
        [6] Zesde
       *[other] Nummer { $rider }
    }
bike = Fiets
rider = Fietser
ownRider = Zoals op dit apparaat ingesteld
autoEase = Het spel trapt zacht tijdens het schakelen en remt bij stopstrepen, voor allemaal
headStart = Wiens beste rit hier langer duurt, start eerst, zodat beiden samen kunnen aankomen
keys-left = Toetsen links
keys-right = Pijltjestoetsen
pads-left = Knoppen in de linker- of bovenste helft
pads-right = Knoppen in de rechter- of onderste helft

## De weg als plaatje, en zijn stukken

# Wat het plaatje toont. $gates (Number): plekken waar de volgende overneemt. $road: de titel van de weg.
roadWithGates =
    { $gates ->
        [0] { $road }
        [one] { $road }, met { $gates } poort
       *[other] { $road }, met { $gates } poorten
    }
roadOfBoth = { $road }: hoe ver beiden zijn gekomen
# Een stuk van de weg van een estafette, als titel. $leg (Number): vanaf 1 geteld.
leg = { $road }, stuk { $leg } van { $legs }
# Wie links zit, en wie rechts zit: elk één letter, op de weg van beiden.
mark-left = L
mark-right = R

## Bij de poort van een estafette

gate =
    { $rider ->
        [1] Eerste fietser
        [2] Tweede fietser
        [3] Derde fietser
        [4] Vierde fietser
        [5] Vijfde fietser
        [6] Zesde fietser
       *[other] Fietser nummer { $rider }
    }
gateIntro = Geef over bij de poort, staand of zittend en nooit op een fiets die rolt. Kijk waar jouw stuk is, rijd dan.

## Onderweg

riding = Samen onderweg: { $road }
# Staat onder een groot getal dat aftelt, $seconds (Number).
headStartWait =
    { $seconds ->
        [one] seconde. Zoveel langer duurt de beste rit van de ander.
       *[other] seconden. Zoveel langer duurt de beste rit van de ander.
    }
longWait = Op een kortere weg wacht je korter.
waiting = Over de streep. De ander rijdt nog.
failed = De ritten zijn gestopt, omdat hun beeld niet kon worden geladen of getekend. Probeer het opnieuw; gebeurt het nog een keer, laad de pagina dan opnieuw.
toGate = Terug naar de poort

## Na de ritten

afterTitle = Wat jullie ontdekt hebben
# $ride (Number): de hoeveelste rit van een reeks dit was. $of (Number): ritten in een reeks.
series = Rit { $ride } van { $of }. Van ieders eigen { $of } ritten telt de beste.
total = { $total } van 100
together = Samen: gemiddeld { $total } van 100
# De beste van iemands eigen ritten; fietsers worden niet met elkaar vergeleken. $all: de totalen van de ritten, zoals “61 · 70”.
best =
    { $rides ->
        [one] Beste van { $rides } rit: { $best } ({ $all })
       *[other] Beste van { $rides } ritten: { $best } ({ $all })
    }
judging = Er wordt uitgerekend hoe het ging …
notJudged = Hoe deze rit ging, kon niet worden uitgerekend. Rijd nog eens.
look = Bekijk deze rit
again = Nog een keer
newSeries = Drie nieuwe ritten
moveOn-beside = Wissel van kant
moveOn-facing = Wissel van kant
moveOn-relay = Iemand anders eerst
other = Een andere weg of andere fietsers
