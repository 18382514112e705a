### Mehrere Personen auf einem Gerät.

title = Zu zweit und mehr
intro = Auf einer Straße, mit einem Gerät. Alle fahren für sich, niemand gegen andere.
road = Straße
ride = Losfahren
leave = Fahrt beenden

## Choosing

needsKeys = Dieser Bildschirm ist zu klein für die Daumentasten von zweien. Nimm ein Tablet, eine Tastatur oder zwei Gamepads; oder fahrt eine Staffel.
noRelay = Diese Straße ist für eine Staffel zu kurz oder hat zu wenige Berge: Alle brauchen einen Berg und ein Stück Straße für sich. Nimm eine andere Straße.
way = Wie
way-beside = Nebeneinander
way-facing = Gegenüber
way-relay = Staffel
wayHint-beside = Zwei zugleich, jede Person auf einer Hälfte des Bildschirms: am Tablet, mit einer Tastatur oder zwei Gamepads.
wayHint-facing = Zwei zugleich, die obere Hälfte des Tablets steht auf dem Kopf. Legt es flach zwischen euch, wo es nicht rutschen und nicht fallen kann.
wayHint-relay = Eine Straße, für alle ein Stück: Wer am Tor ankommt, gibt das Gerät weiter, im Stehen oder Sitzen.
count = Wie viele
# Who is meant; the heading over what they choose. $rider (Number): counted from 1. Side by side 1 sits left.
name-beside =
    { $rider ->
        [1] Links
       *[other] Rechts
    }
name-facing =
    { $rider ->
        [1] Obere Hälfte, umgedreht
       *[other] Untere Hälfte
    }
name-relay =
    { $rider ->
        [1] Zuerst
       *[other] Nummer { $rider }
    }
bike = Rad
rider = Person
ownRider = Wie auf diesem Gerät eingestellt
autoEase = Das Spiel tritt beim Schalten locker und bremst an Haltlinien, für alle
headStart = Wessen beste Fahrt hier länger dauert, fährt früher los, damit beide zusammen ankommen können
keys-left = Tasten links
keys-right = Pfeiltasten
pads-left = Daumentasten in der linken oder oberen Hälfte
pads-right = Daumentasten in der rechten oder unteren Hälfte

## The road as a picture, and its parts

# What the picture shows. $gates (Number): places where the next rider takes over. $road: the road’s title.
roadWithGates =
    { $gates ->
        [0] { $road }
        [one] { $road }, mit { $gates } Tor
       *[other] { $road }, mit { $gates } Toren
    }
roadOfBoth = { $road }: wie weit beide sind
# A part of a relay’s road, as its title. $leg (Number): counted from 1.
leg = { $road }, Stück { $leg } von { $legs }
# The one who sits left, and the one who sits right: one letter each, on the road of both.
mark-left = L
mark-right = R

## At the gate of a relay

gate =
    { $rider ->
        [1] Wer zuerst fährt
       *[other] Wer als Nummer { $rider } fährt
    }
gateIntro = Übergebt am Tor, im Stehen oder Sitzen und nie auf einem Rad, das rollt. Sieh nach, wo dein Stück liegt, dann fahr los.

## Riding

riding = Gemeinsame Fahrt: { $road }
# Stands under a big number that counts down, $seconds (Number).
headStartWait =
    { $seconds ->
        [one] Sekunde. So viel länger dauert die beste Fahrt der anderen Seite.
       *[other] Sekunden. So viel länger dauert die beste Fahrt der anderen Seite.
    }
longWait = Auf einer kürzeren Straße wartet man kürzer.
waiting = Über der Linie. Die andere Seite fährt noch.
failed = Die Fahrten wurden angehalten, denn ihr Bild ließ sich nicht laden oder zeichnen. Versuch es noch einmal; passiert es wieder, lade die Seite neu.
toGate = Zurück zum Tor

## After the rides

afterTitle = Was ihr herausgefunden habt
# $ride (Number): which ride of a series this was. $of (Number): rides in a series.
series = Fahrt { $ride } von { $of }. Von den eigenen { $of } Fahrten zählt bei allen die beste.
total = { $total } von 100
together = Zusammen: im Schnitt { $total } von 100
# The best of a rider’s own rides; riders are not set against each other. $all: totals of the rides, like “61 · 70”.
best =
    { $rides ->
        [one] Beste von { $rides } Fahrt: { $best } ({ $all })
       *[other] Beste von { $rides } Fahrten: { $best } ({ $all })
    }
judging = Es wird ausgerechnet, wie es lief …
notJudged = Wie diese Fahrt lief, ließ sich nicht ausrechnen. Fahr noch einmal.
look = Diese Fahrt ansehen
again = Noch einmal
newSeries = Drei neue Fahrten
moveOn-beside = Seiten tauschen
moveOn-facing = Seiten tauschen
moveOn-relay = Jemand anders zuerst
other = Andere Straße oder andere Personen
