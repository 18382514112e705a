### Der Gänge-Check: ob die Gänge eines Rads für eine Straße reichen, und was andere Teile ändern würden.
### Ein Gang kommt fertig geschrieben: „34 × 28“, in einer Nabe „1 von 3“. Ebenso Längen, Steigungen und Tempo, mit Einheit.

intro = Kämst du mit anderen Ritzeln oder Kettenblättern diesen Berg hinauf? Dieselbe Fahrt, auf jedem Rad, das probiert wird.
road = Straße
roads-ladder = Level
roads-own = Eigene Straßen
you = Dein Rad: { $parts }. Dein Bereich: { $low } bis { $high } U/min, bergauf weniger.
perMinute = { $rpm }/min
caution =
    { $rear ->
        [hub] Was passt, ist begrenzt durch das, was Nabe und Kette vertragen: Eine Nabe verträgt nicht jede Übersetzung von Kettenblatt zu Ritzel. Bevor du etwas kaufst oder änderst, frag eine Fachwerkstatt und lies die Unterlagen des Herstellers.
       *[sprockets] Was passt, ist begrenzt durch das, was Schaltwerk, Umwerfer, Kette und Freilauf vertragen. Bevor du etwas kaufst oder änderst, frag eine Fachwerkstatt und lies die Unterlagen des Herstellers.
    }

## Die Antwort, in Sätzen nacheinander

working = Dein Rad fährt diese Straße …
failed = Diese Straße war mit diesem Rad nicht zu fahren. Wähle eine andere Straße oder sieh dir die Zähnezahlen des Rads an.
again = Noch einmal versuchen
lowest-short = In deinem leichtesten Gang { $gear } kommen deine Beine auf den steilsten { $length } ({ $slope }) auf { $rpm } U/min. Dein Bereich beginnt dort bei { $low }.
lowest-walks =
    { $rpm ->
        [0] Mit diesem Rad musst du hier schieben. Dein leichtester Gang { $gear } bleibt auf den steilsten { $length } ({ $slope }) stehen.
       *[other] Mit diesem Rad musst du hier schieben: Fahrend wärst du nicht schneller. In deinem leichtesten Gang { $gear } kämen deine Beine auf den steilsten { $length } ({ $slope }) auf { $rpm } U/min.
    }
lowest-enough = Dein leichtester Gang { $gear } ist hier leicht genug: Auf den steilsten { $length } ({ $slope }) kommen deine Beine auf { $rpm } U/min.
looking = Andere Teile werden probiert …
help-mild = Mit { $gear } kämen sie auf { $rpm }.
help-reaches =
    { $after ->
        [mild] Um hier in deinem Bereich zu bleiben, braucht es { $gear }.
       *[alone] Mit { $gear } bliebst du in deinem Bereich.
    }
help-askFirst = Die Schaltung dieses Rads verträgt das vielleicht nicht; siehe unten.
help-none =
    { $rear ->
        [hub] Keines der probierten Teile hält dich in deinem Bereich. Es bräuchte einen Gang von { $needed } je Umdrehung, dein leichtester hat { $own }: ein Kettenblatt mit { $ring } Zähnen zu deinem Ritzel oder ein Ritzel mit { $sprocket } zu deinem Kettenblatt.
       *[sprockets] Keines der probierten Teile hält dich in deinem Bereich. Es bräuchte einen Gang von { $needed } je Umdrehung, dein leichtester hat { $own }: ein Kettenblatt mit { $ring } Zähnen zu deinem größten Ritzel oder ein Ritzel mit { $sprocket } zu deinem kleinsten Kettenblatt.
    }
help-tooSteep = Hier hilft kein Gang: Mit deiner Leistung und deiner Trittfrequenz fährt man { $slope } mit { $speed }, und zu Fuß ist man ebenso schnell.
minute-inBand = Deine schwerste Minute auf dieser Fahrt bleibt in deinem Bereich, bei { $rpm } U/min.
minute-below = Deine schwerste Minute auf dieser Fahrt ist von { $from } bis { $to }: { $rpm } U/min, { $missing } unter deinem Bereich.
highest-enough = Dein schwerster Gang { $gear } reicht hier überall.
highest-short =
    { $places ->
        [one] { $seconds ->
            [one] Dein schwerster Gang { $gear } ist an einer Stelle zu leicht, insgesamt eine Sekunde: Deine Beine wirbeln mit { $rpm } U/min.
           *[other] Dein schwerster Gang { $gear } ist an einer Stelle zu leicht, insgesamt { $seconds } Sekunden: Deine Beine wirbeln mit { $rpm } U/min.
        }
       *[other] { $seconds ->
            [one] Dein schwerster Gang { $gear } ist an { $places } Stellen zu leicht, insgesamt eine Sekunde: Deine Beine wirbeln mit { $rpm } U/min.
           *[other] Dein schwerster Gang { $gear } ist an { $places } Stellen zu leicht, insgesamt { $seconds } Sekunden: Deine Beine wirbeln mit { $rpm } U/min.
        }
    }

## Nach einem Teil fragen, mit eigenen Worten

ask = Nach einem Teil fragen
ask-label = Was wäre mit …
ask-example =
    { $rear ->
        [hub] 22 hinten
       *[sprockets] 34 hinten
    }
ask-button = Probieren
ask-working = Mit diesen Teilen wird gefahren …
ask-nothing = Schreib eine Zähnezahl, zum Beispiel „34 hinten“, „32 vorne“ oder „11-34“.
ask-which-end = Sag, wo: „hinten“ für Ritzel, „vorne“ für Kettenblätter.
ask-impossible = Aus diesen Zahlen lassen sich keine Kettenblätter oder Ritzel machen. Schreib sie wie „46/30“ oder „11-34“.
ask-same = Das hat dein Rad schon.
ask-answer = { $parts }: Auf den steilsten { $length } kämen deine Beine auf { $rpm } U/min statt auf { $own }.
hear-back = hinten, hinteres, hinterem, hintere, ritzel, ritzeln, kassette, kassetten, kranz, zahnkranz, ritzelpaket
hear-front = vorn, vorne, vorderes, vorderem, vordere, kettenblatt, kettenblätter, kettenblättern, blatt, blätter, kurbel, kurbelgarnitur
hear-and = und, mit
hear-to = bis

## Die Straße mit den Stellen, an denen die Gänge nicht reichen

profile = Wo die Gänge nicht reichen
profile-desc =
    Profil von { $length } Straße. { $below ->
        [0] Nirgends ist der leichteste Gang zu schwer.
        [one] An einer Stelle ist der leichteste Gang zu schwer.
       *[other] An { $below } Stellen ist der leichteste Gang zu schwer.
    } { $above ->
        [0] Nirgends ist der schwerste zu leicht.
        [one] An einer Stelle ist der schwerste zu leicht.
       *[other] An { $above } Stellen ist der schwerste zu leicht.
    }
profile-below = leichtester Gang zu schwer
profile-above = schwerster Gang zu leicht
profile-nowhere = Die Gänge dieses Rads reichen auf dieser Straße überall.

## Alle Gänge als Stufen aus Papier

stairs = Alle deine Gänge
stairs-box = Die Treppe deiner Gänge
stairs-hint = Für jeden Gang eine Stufe aus Papier, der leichteste zuerst, in der Reihenfolge, in der man wirklich schaltet. Zwischen den Stufen steht, was die Hände tun.
stairs-desc =
    { $gears ->
        [one] Eine Treppe mit einer einzigen Stufe. Die Tabelle darunter sagt dasselbe.
       *[other] Eine Treppe aus { $steps } Stufen mit allen { $gears } Gängen. Die Tabelle darunter sagt dasselbe.
    }
stairs-really =
    { $gears ->
        [one] { $gears } Gang.
       *[other] { $gears } Gänge, von denen { $different } wirklich verschieden sind.
    }
stairs-eachOwn =
    { $gears ->
        [one] Ein Gang.
       *[other] { $gears } Gänge, jeder für sich.
    }
sign-rear =
    { $rear ->
        [hub] rechte Hand, Gänge in der Nabe
       *[sprockets] rechte Hand, Ritzel
    }
sign-front = linke Hand, Kettenblätter
sign-same = liegt auf der Stufe: ebenso gut
sign-near = liegt nahe dabei
sign-crossed = die Kette läuft schräg
table = Dasselbe in Zahlen
table-gear = Gang
table-development = Entfaltung
table-step = Sprung
table-hands = Hände
table-speed = Tempo bei { $rpm }/min
table-also = Auf derselben Stufe
hands =
    { $ring ->
        [bigger] { $rear ->
            [harder] linke Hand: größeres Blatt, rechte Hand: { $count } schwerer
            [easier] linke Hand: größeres Blatt, rechte Hand: { $count } leichter
           *[same] linke Hand: größeres Blatt
        }
       *[same] { $rear ->
            [harder] rechte Hand: { $count } schwerer
           *[easier] rechte Hand: { $count } leichter
        }
    }
gear-crossed = { $gear }, die Kette läuft schräg
also-same =
    { $chain ->
        [crossed] { $gear }, die Kette läuft schräg (ebenso gut)
       *[straight] { $gear } (ebenso gut)
    }
also-near =
    { $chain ->
        [crossed] { $gear }, die Kette läuft schräg (nahe dabei)
       *[straight] { $gear } (nahe dabei)
    }

## Andere Teile in einer Tabelle

others = Was andere Teile ändern würden
others-hint = Dieselben Beine, dieselbe Straße, jedes Rad wird gefahren. Zuerst, wer fahrend hinaufkommt, dann die schwerste Minute, dann das steilste Stück, dann die Zeit im Bereich. Danach, für sich, Teile, nach denen du erst fragen musst.
# Above parts that pass a limit of the derailleurs.
askFirst = Frag erst in der Werkstatt: Diese Teile gehen über das hinaus, was eine Schaltung wie deine üblicherweise verträgt
others-trying =
    { $count ->
        [0] Noch keine probiert …
       *[other] { $count } bisher probiert …
    }
others-tried =
    { $count ->
        [one] Eine andere Zusammenstellung probiert.
       *[other] { $count } andere Zusammenstellungen probiert.
    }
others-none = Übliche Teile mit so vielen Kettenblättern und Ritzeln wie deine sind hier nicht bekannt.
others-all = Alle { $count } zeigen
others-fewer = Weniger zeigen
parts = Teile
getsUp = Kommt hinauf
getsUp-riding = fahrend
getsUp-walking = { $time } zu Fuß
minute = Schwerste Minute
minute-missing = { $rpm } unter dem Bereich
minute-kept = im Bereich
inBand = Zeit im Bereich
steepest = Steilste { $length }
yours = Dein Rad jetzt
changed-cassette = andere Kassette
changed-rings = andere Kettenblätter
changed-both = beides anders
take = Dieses Rad ausprobieren
take-this = Dieses Rad ausprobieren: { $parts }
trade-none = Fast wie dein Rad.
trade-easier-lowest = Der leichteste Gang wird leichter.
trade-harder-highest = Der schwerste Gang wird schwerer.
trade-smaller-steps = Die Sprünge zwischen den Gängen werden kleiner.
trade-fewer-twins = Weniger Gänge gibt es doppelt.
trade-fewer-shifts = Auf dieser Straße musst du seltener schalten.
trade-less-capacity = Das Schaltwerk muss weniger Kette aufnehmen.
trade-harder-lowest = Der leichteste Gang wird schwerer.
trade-loses-highest = Der schwerste Gang geht verloren.
trade-bigger-steps = Die Sprünge zwischen den Gängen werden größer.
trade-more-twins = Mehr Gänge gibt es doppelt.
trade-more-shifts = Auf dieser Straße musst du öfter schalten.
trade-more-capacity = Das Schaltwerk muss mehr Kette aufnehmen.
capacity = { $teeth } Zähne Kette aufzunehmen.
limit-sprocket =
    Frag erst: Ein Ritzel mit { $have } ist mehr als die { $most }, die { $derailleur ->
        [road] Schaltwerke von Rennrädern
       *[long] Schaltwerke mit langem Käfig
    } üblicherweise vertragen ({ $source ->
        [published] Angaben von Herstellern zu neun und zehn Gängen
       *[practice] übliche Praxis, keine Quelle
    }).
limit-capacity =
    Frag erst: { $have } Zähne Kette sind mehr als die { $most }, die { $derailleur ->
        [road] Schaltwerke von Rennrädern
       *[long] Schaltwerke mit langem Käfig
    } üblicherweise aufnehmen ({ $source ->
        [published] Angaben von Herstellern zu neun und zehn Gängen
       *[practice] übliche Praxis, keine Quelle
    }).
limit-rings =
    Frag erst: Kettenblätter mit { $have } Zähnen Unterschied sind mehr als die { $most }, die Umwerfer üblicherweise überbrücken ({ $source ->
        [published] Angaben von Herstellern zu neun und zehn Gängen
       *[practice] übliche Praxis, keine Quelle
    }).

## Zwei Fahrten nebeneinander

compare = Beide Fahrten
compare-close = Beide Fahrten schließen
compare-this = Beide Fahrten nebeneinander: { $parts }
compare-closeThis = Beide Fahrten schließen: { $parts }
compare-desc = Trittfrequenz über der Straße: dein Rad als gestrichelte Linie, { $parts } als durchgezogene, der Bereich unten als Band.
compare-yours = dein Rad
compare-band = Untergrenze deines Bereichs
compare-figure = Zahl
compare-time = Zeit
compare-shifts = Schaltvorgänge
compare-lowest = Leichtester Gang
compare-gear = { $gear }, { $metres } je Umdrehung

## Ablauflänge: wie weit eine Umdrehung der Kurbel im schwersten Gang trägt; in Rennen junger Leute ist sie begrenzt

rollOut = Ablauflänge, für Rennen im Nachwuchs
rollOut-is = Eine Umdrehung der Kurbel trägt dieses Rad im schwersten Gang { $gear } { $metres } weit.
rollOut-limit = Grenze
rollOut-none = Keine Grenze
rollOut-own = Die Grenze unseres Vereins
rollOut-metres = Grenze in Metern
rollOut-unreadable = Schreib die Grenze in Metern, von 2 bis 12, zum Beispiel 6,45.
rollOut-option =
    { $group ->
        [juniors] Junioren und Juniorinnen
        [under-16] Unter 16
        [under-14] Unter 14
       *[under-12] Unter 12
    }: { $metres } ({ $body ->
        [world-federation] Weltverband
       *[national-federation] ein nationaler Verband
    }, { $held ->
        [until] bis zum { $date }
       *[year] { $date }
    })
rollOut-source =
    { $body ->
        [world-federation] { $held ->
            [until] Der Weltverband hatte diese Grenze bis zum { $date }; seither ist hier keine bekannt.
           *[year] Aus dem Regelwerk des Weltverbands von { $date }.
        }
       *[national-federation] { $held ->
            [until] Ein nationaler Verband hatte diese Grenze bis zum { $date }; seither ist hier keine bekannt.
           *[year] Aus dem Regelwerk eines nationalen Verbands von { $date }.
        }
    }
rollOut-relaxed = Sie wurde { $year } gelockert.
rollOut-ask = Regeln sind verschieden und ändern sich: Frag deinen Verband nach der Zahl dieser Saison.
rollOut-within = Das hält die Grenze von { $limit } ein.
rollOut-beyond = Das ist mehr als die Grenze von { $limit }. Der schwerste Gang, der sie einhält, ist { $gear }.
rollOut-allBeyond = Das ist mehr als die Grenze von { $limit }, und jeder andere Gang dieses Rads ist es auch.
rollOut-measured = Beim Rennen wird das Rad über den Boden gerollt und gemessen; Reifen und Luftdruck ändern es um ein paar Zentimeter.
