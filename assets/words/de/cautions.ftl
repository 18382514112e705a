### Was vor der ersten Fahrt gesagt wird, und auf allem, was man mit nach draußen nimmt.

# Twelve words are read before the bike moves for the first time; the rest is one tap away, and asked after.
title = Ein Spiel lehrt den richtigen Moment, nicht den Straßenverkehr.
outside = Bevor du es draußen versuchst
# Each line is a sentence of its own.
short =
    Übe mit einem echten Rad zuerst an einem ruhigen, ebenen, abgesperrten Ort.
    Augen auf die Straße, nicht auf die Kette. Bremsen, Helm und das Recht an deinem Ort gehen vor.
    Kinder fahren unter Aufsicht von Erwachsenen.
    Schmerzen in Knien oder Brust: anhalten und ärztlichen Rat holen.
accept = Los
more = Vorsicht
all = Alles lesen
# Before riding a bike with a motor outside. Each line is a sentence of its own.
motor =
    Es fährt kräftiger an, als man denkt: Tritt zuerst sanft, mit einem Finger an der Bremse.
    Es ist schwer: Es braucht länger zum Anhalten und lässt sich schlecht schieben und heben.
    Finger weg von Motor und Akku; was daran nicht stimmt, ist Sache der Fachwerkstatt.
    Ab welchem Alter, mit welchem Helm und wie schnell man fahren darf, ist von Ort zu Ort verschieden: Das Recht an deinem Ort geht vor.
# A wheel that a motor drives.
motorWheel = Ein Laufrad, das ein Motor antreibt, rutscht auf Nässe, auf Schotter und in Kurven eher weg, vor allem vorne: Tritt dort sanft.
motorPlaces = Was mancherorts gilt
motorPlacesHint = Nur einmal nachgesehen; Gesetze ändern sich. Frag nach, was heute dort gilt, wo du fährst. Die Räder hier fahren so, wie es die europäische Norm vorsieht.
# Instead of a source.
motorReported = berichtet, nicht am Gesetzestext geprüft
# One place: $place is a name of its own, $watts and $kmh are 0 where none was found, $speed is the speed with its unit, $year is 0 where it is not known.
motorRule =
    { $place ->
        [eu] Europäische Union
        [uk] Vereinigtes Königreich
        [us] Vereinigte Staaten, Bundesrecht
        [california] Kalifornien
        [canada] Kanada, die meisten Provinzen
        [australia] Australien
        [new-zealand] Neuseeland
       *[japan] Japan
    }: { $watts ->
        [0] { $kmh ->
            [0] nichts gefunden
           *[other] Unterstützung bis { $speed }
        }
       *[other] { $kmh ->
            [0] { $watts } W
           *[other] { $watts } W, Unterstützung bis { $speed }
        }
    } ({ $year ->
        [0] { $source }
       *[other] { $source }, { $yearText }
    }).
