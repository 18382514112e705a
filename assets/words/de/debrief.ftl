### Die Auswertung für Erwachsene. Kinder bekommen unter denselben Namen, was in debriefChildren.ftl steht.

## Parts that several sentences have

# Im Dativ: Es steht nach „an“, „für … zu früh bereit“ heißt darum „an … zu früh bereit“.
pitch =
    { $pitches ->
        [1] der Rampe
       *[other] { $pitch ->
            [1] der ersten Rampe
            [2] der zweiten Rampe
            [3] der dritten Rampe
            [4] der vierten Rampe
            [5] der fünften Rampe
            [6] der sechsten Rampe
            [7] der siebten Rampe
            [8] der achten Rampe
            [9] der neunten Rampe
            [10] der zehnten Rampe
           *[other] Rampe { $pitch }
        }
    }
pitch-begins =
    { $pitches ->
        [1] Die Rampe
       *[other] { $pitch ->
            [1] Die erste Rampe
            [2] Die zweite Rampe
            [3] Die dritte Rampe
            [4] Die vierte Rampe
            [5] Die fünfte Rampe
            [6] Die sechste Rampe
            [7] Die siebte Rampe
            [8] Die achte Rampe
            [9] Die neunte Rampe
            [10] Die zehnte Rampe
           *[other] Rampe { $pitch }
        }
    }
pitch-title =
    { $pitches ->
        [1] Die Rampe
       *[other] { $pitch ->
            [1] Erste Rampe
            [2] Zweite Rampe
            [3] Dritte Rampe
            [4] Vierte Rampe
            [5] Fünfte Rampe
            [6] Sechste Rampe
            [7] Siebte Rampe
            [8] Achte Rampe
            [9] Neunte Rampe
            [10] Zehnte Rampe
           *[other] Rampe { $pitch }
        }
    }
near =
    { $side ->
        [at] genau am Fuß
        [after] { $metres } hinter dem Fuß
       *[before] { $metres } vor dem Fuß
    }
aim =
    { $side ->
        [at] genau am Fuß
        [after] genau dann, wenn es steil wird
       *[before] etwa { $metres } vor dem Fuß
    }
gears =
    { $gears ->
        [1] einen Gang
        [2] zwei Gänge
        [3] drei Gänge
        [4] vier Gänge
        [5] fünf Gänge
        [6] sechs Gänge
        [7] sieben Gänge
        [8] acht Gänge
        [9] neun Gänge
        [10] zehn Gänge
       *[other] { $gears } Gänge
    }
made-gears =
    { $made ->
        [0] keinen Gang
        [1] einen Gang
        [2] zwei Gänge
        [3] drei Gänge
        [4] vier Gänge
        [5] fünf Gänge
        [6] sechs Gänge
        [7] sieben Gänge
        [8] acht Gänge
        [9] neun Gänge
        [10] zehn Gänge
       *[other] { $made } Gänge
    }
seconds =
    { $seconds ->
        [1] eine Sekunde
        [2] zwei Sekunden
        [3] drei Sekunden
        [4] vier Sekunden
        [5] fünf Sekunden
        [6] sechs Sekunden
        [7] sieben Sekunden
        [8] acht Sekunden
        [9] neun Sekunden
        [10] zehn Sekunden
       *[other] { $seconds } Sekunden
    }
changes =
    { $changes ->
        [0] keinen Gangwechsel
        [1] einen Gangwechsel
        [2] zwei Gangwechsel
        [3] drei Gangwechsel
        [4] vier Gangwechsel
        [5] fünf Gangwechsel
        [6] sechs Gangwechsel
        [7] sieben Gangwechsel
        [8] acht Gangwechsel
        [9] neun Gangwechsel
        [10] zehn Gangwechsel
       *[other] { $changes } Gangwechsel
    }
some-of =
    { $which ->
        [all] { $changes ->
            [1] Der einzige Gangwechsel geschah
            [2] Beide Gangwechsel geschahen
           *[other] Alle { $changes } Gangwechsel geschahen
        }
       *[some] { $heavy ->
            [1] Einer von { $changes } Gangwechseln geschah
            [2] Zwei von { $changes } Gangwechseln geschahen
            [3] Drei von { $changes } Gangwechseln geschahen
            [4] Vier von { $changes } Gangwechseln geschahen
            [5] Fünf von { $changes } Gangwechseln geschahen
            [6] Sechs von { $changes } Gangwechseln geschahen
            [7] Sieben von { $changes } Gangwechseln geschahen
            [8] Acht von { $changes } Gangwechseln geschahen
            [9] Neun von { $changes } Gangwechseln geschahen
            [10] Zehn von { $changes } Gangwechseln geschahen
           *[other] { $heavy } von { $changes } Gangwechseln geschahen
        }
    }
advice =
    { $rest ->
        [some] Schalte { gears } leichter, { aim }, den Rest bergauf.
       *[none] Schalte { gears } leichter, { aim }.
    }
timing =
    { $timing ->
        [too-early] zu früh
        [too-late] zu spät
       *[about-right] etwa richtig
    }
mark =
    { $mark ->
        [cadence] Trittfrequenz
        [foresight] Vorausschau
        [easing] Lockerer Tritt
        [chainLine] Kettenlinie
       *[economy] Sparsamkeit
    }
mark-within =
    { $mark ->
        [cadence] „Trittfrequenz“
        [foresight] „Vorausschau“
        [easing] „Lockerer Tritt“
        [chainLine] „Kettenlinie“
       *[economy] „Sparsamkeit“
    }

## The question before anything is explained, and its answer

guess-title = Erst raten
guess-question = An { pitch } war dein Schalten …
guess-openQuestion = An der Rampe, die deine Beine am meisten Kraft gekostet hat, war dein Schalten …
guess-why = Gar nicht schalten, wo es nötig war, zählt als zu spät. Danach wird die Fahrt erklärt.
guess-skip = Sag es mir gleich
guess-working = Die beste Fahrt auf deinem Rad wird berechnet …
guess-notMarked = Die Wertung ließ sich gerade nicht berechnen. Eine aufbewahrte Fahrt bekommt sie später, wenn das Spiel wieder geöffnet wird.
guess-share = { $percent } geschafft
guess-matched = Richtig gespürt: { timing }.
guess-differed =
    { $guess ->
        [too-early] Dein Gefühl war „zu früh“; es war { timing }.
        [too-late] Dein Gefühl war „zu spät“; es war { timing }.
       *[about-right] Dein Gefühl war „etwa richtig“; es war { timing }.
    }
guess-told = Es war { timing }.
guess-matchedKind = Wer es selbst merkt, wird besser.
guess-differedKind = Beim Fahren ist das schwer zu spüren. Der Streifen zeigt, wo es war.
guess-noPitch = Keine Rampe auf dieser Straße war so steil, dass man schalten musste.
guess-where =
    { $own ->
        [never] Du bist in deinem Gang geblieben
        [at] Dein erster leichterer Gang kam genau am Fuß
        [after] Dein erster leichterer Gang kam { $ownMetres } hinter dem Fuß
       *[before] Dein erster leichterer Gang kam { $ownMetres } vor dem Fuß
    }; { $best ->
        [never] die beste Fahrt schaltete gar nicht.
        [at] die beste Fahrt schaltete genau am Fuß.
        [after] die beste Fahrt schaltete { $bestMetres } hinter dem Fuß.
       *[before] die beste Fahrt schaltete { $bestMetres } vor dem Fuß.
    }
guess-stepsBefore =
    { $made ->
        [0] Vor dem Fuß hattest du noch nicht leichter geschaltet; die beste Fahrt { needed }.
       *[other] Vor dem Fuß hattest du { made-gears } leichter geschaltet; die beste Fahrt { needed }.
    }
needed =
    { $needed ->
        [0] keinen
        [1] einen
        [2] zwei
        [3] drei
        [4] vier
        [5] fünf
        [6] sechs
        [7] sieben
        [8] acht
        [9] neun
        [10] zehn
       *[other] { $needed }
    }
guess-slowest = Deine Beine fielen auf { $own } U/min; die beste Fahrt hielt { $best }.

## What became of the ride

end-passed = Geschafft.
end-not-yet = Der Berg wartet auf dich.
end-ridden = Die Straße ist geschafft.
end-explain = Was geschah, warum und wo
stamp-early = früh
stamp-soft = locker
stamp-smooth = rund
stampState-earned = geschafft
stampState-not-yet = noch nicht
stampState-not-asked = hier nicht gefragt

## Three sentences: what went well, one thing to change, what to ride next

well-title = Das lief gut
well-finished = Du bist bis zum Ende gefahren.
well-cadence = Deine Beine hielten fast überall einen guten Rhythmus.
well-foresight = Du warst im richtigen Gang, bevor die Straße ihn verlangte.
well-easing = Bei jedem Schalten hast du locker getreten.
well-chainLine = Deine Kette lief gerade.
well-economy = Du hast nie unnötig geschaltet.

change-title = Ändere eine Sache
change-late-pitch =
    { $how ->
        [slightly] An { pitch } kamen die leichteren Gänge für deine Beine etwas spät. { advice }
       *[clearly] An { pitch } kamen die leichteren Gänge für deine Beine zu spät. { advice }
    }
change-stayed = An { pitch } bist du in einem zu schweren Gang geblieben. { advice }
change-early-pitch =
    { $how ->
        [slightly] An { pitch } warst du etwas zu früh bereit. Bleib noch in deinem Gang und schalte dann leichter: { aim }.
       *[clearly] An { pitch } warst du zu früh bereit. Bleib noch in deinem Gang und schalte dann leichter: { aim }.
    }
change-few-steps =
    { $which ->
        [few] An { pitch } hast du nur { made-gears } leichter geschaltet. Schalte dort { gears } leichter.
       *[hard] An { pitch } war dein Gang immer noch zu schwer. Schalte dort noch einen Gang leichter.
    }
change-wrong-way = An { pitch } hast du schwerer geschaltet statt leichter. { advice }
change-pushed = An { pitch } hast du fest getreten, statt zu schalten. { advice }
change-foot-down = An { pitch } war der Gang zu schwer, und ein Fuß kam auf den Boden. { advice }
change-ease =
    { $heavy ->
        [0] Tritt etwas lockerer, solange die Kette wandert, nur für einen Moment.
       *[other] { some-of }, während du fest getreten hast. Tritt einen Moment locker, dann schalte.
    }
change-ease-hub =
    { $heavy ->
        [0] Nimm den Druck weg, während die Nabe schaltet, nur für einen Moment.
       *[other] { some-of }, während du weitergetreten hast: Die Nabe schlug. Druck weg, schalten, dann wieder treten.
    }
change-ease-motor =
    { $heavy ->
        [0] Lass dem Motor einen Moment, bis er loslässt: locker treten, einen Atemzug warten, dann schalten.
       *[other] { some-of }, während der Motor noch an der Kette zog. Locker treten, einen Atemzug warten, bis er loslässt, dann schalten.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Lass dem Motor einen Moment, bis er loslässt: Druck weg, einen Atemzug warten, dann schalten.
       *[other] { some-of }, während der Motor noch zog. Druck ganz weg, einen Atemzug warten, bis er loslässt, dann schalten.
    }
change-stood-still = { some-of }, während deine Beine ruhten. Eine Nabe mag das, eine Kette muss laufen: Tritt locker weiter.
change-coasted = Deine Beine ruhten, wo die Straße sie braucht, am längsten ab { $place }: { seconds }. Lass die Pedale kreisen.
change-coasted-hub = Deine Beine ruhten, wo die Straße sie braucht, am längsten ab { $place }: { seconds }. Eine Nabe braucht nur einen Moment; dann tritt weiter.
change-slow-legs = Deine Beine kreisten langsam, am längsten ab { $place }: { seconds }. Ein Gang leichter hält sie in Schwung.
change-fast-legs = Deine Beine wirbelten, am längsten ab { $place }: { seconds }. Ein Gang schwerer beruhigt sie.
change-crossed = Die Kette lief ab { $place } schräg: { seconds }. Wechsle das Kettenblatt und nimm hinten einen passenden Gang dazu.
change-fidget = Du hast { changes } gemacht; die beste Fahrt brauchte { needed }. Warte vor dem nächsten einen Atemzug.
change-dawdle = Du hast { $times }-mal so lange gebraucht wie die beste Fahrt. Fahr in dem Gang, den du in gutem Rhythmus treten kannst, und bleib dran.
change-nothing = Nichts. Mach es noch einmal genau so.

next-title = Als Nächstes
next-again = Diese Straße noch einmal, und nur die eine Änderung im Kopf.
next-onwards = Weiter zu „{ $level }“.
next-onwardsNone = Jedes Level, das du magst: Dieses hier kannst du.
next-easier-level = Erst eine leichtere Straße, dann komm hierher zurück.

## A card for each pitch

cards-title = Rampe für Rampe
card-steep = { $percent } auf { $length }
card-needed = Beste Fahrt, Gänge leichter
card-before = Deine vor dem Fuß
card-ofMade =
    { $made ->
        [0] keiner
       *[other] { $before } von { $made }
    }
card-worst = Langsamste Beine an der Rampe
card-worstPair = { $own } U/min (beste { $best })
card-bestDoes =
    { $which ->
        [all] Hier schaltet die beste Fahrt { gears } leichter, alles vor dem Fuß, zum ersten Mal { near }.
        [none] Hier schaltet die beste Fahrt { gears } leichter, nichts davon vor dem Fuß, zum ersten Mal { near }.
       *[some] Hier schaltet die beste Fahrt { gears } leichter, { $before ->
            [1] einen
            [2] zwei
            [3] drei
            [4] vier
            [5] fünf
            [6] sechs
            [7] sieben
            [8] acht
            [9] neun
            [10] zehn
           *[other] { $before }
        } davon vor dem Fuß, zum ersten Mal { near }.
    }
card-bestStays = Die beste Fahrt schaltet hier nicht.
card-asksNothing = Es geht auch ohne Schalten.
card-footDown = Hier kam ein Fuß auf den Boden.
card-timing =
    { $timing ->
        [too-early] Zu früh
        [too-late] Zu spät
       *[about-right] Etwa richtig
    }
card-tendency =
    { $timing ->
        [too-early] Etwas früh
        [too-late] Etwas spät
       *[about-right] Etwa richtig
    }
card-watch = Diese Rampe ansehen
card-picture = Wo beide Fahrten an { pitch } schalteten
card-pictureDesc = Die Straße von der Seite. Darüber dein Schalten, darunter das der besten Fahrt.
card-table = Schalten an dieser Rampe
card-who = Wer
card-you = du
card-best = beste
card-where = Wo

## The marks

marks-title = Wertung
marks-total = Alles zusammen
marks-passed = Bestanden (ab { $pass })
marks-notYet = Noch nicht (bestanden ab { $pass })
asks-cadence = Beine in deinem Bereich
asks-foresight = Der Gang ist vor dem Berg bereit
asks-easing = Lockerer Tritt beim Schalten
asks-chainLine = Eine gerade Kette
asks-economy = Kein unnötiges Schalten
noMark = ohne Wertung
noMark-cadence = Du hast nicht lange genug getreten, um das zu werten.
noMark-foresight = Keine Rampe dieser Fahrt verlangte, zu schalten.
noMark-easing = Du hast nicht geschaltet, also gab es nichts, wofür du locker treten musstest.
noMark-chainLine = Nichts zu werten: ein Kettenblatt, oder gar nicht geschaltet.
noMark-economy = Es gab nichts zu zählen.
hold-weakest = { mark } drückt die Gesamtwertung: Mit diesem Wert sind es höchstens { $most }.
hold-pace = Du hast { $times }-mal so lange gebraucht wie die beste Fahrt. Damit bleiben { $share } der Gesamtwertung.
hold-tooSlow = Du hast { $times }-mal so lange gebraucht wie die beste Fahrt. Bei diesem Tempo gibt es keine Gesamtwertung.
hold-lessonMissing = Auf dieser Straße geht es um { mark-within }: Zum Bestehen brauchst du dort mindestens { $atLeast }.
hold-markMissing = Zum Bestehen brauchst du auch in { mark-within } mindestens { $atLeast }.
level-strong = stark
level-good = gut
level-onTheWay = auf gutem Weg
level-start = hier anfangen
perfect = Hier ging nichts verloren.
small = Hier gingen nur Kleinigkeiten verloren.
leftAlone = Kein Hebel wurde gedrückt, wo die Straße es verlangte.
more =
    { $more ->
        [1] Noch einer
        [2] Noch zwei
        [3] Noch drei
        [4] Noch vier
        [5] Noch fünf
       *[other] Noch { $more }
    }
better = Besser:

## Why a mark is what it is (why-…), and what would have changed it (better-…: goes on after "Better:")

why-below-band = Langsame Beine ab { $from }: { seconds }, am langsamsten { $rpm } U/min.
better-below-band = leichter schalten, sobald die Beine langsamer werden.
why-above-band = Schnelle Beine ab { $from }: { seconds }, am schnellsten { $rpm } U/min.
better-above-band = schwerer schalten, wenn die Straße dich laufen lässt.
why-coasted = Deine Beine ruhten ab { $from }, { seconds } lang; die beste Fahrt tritt dort.
better-coasted = die Pedale im Flachen und bergauf kreisen lassen.
better-coasted-hub = weitertreten, sobald die Nabe ihren Gang hat.
why-overloaded-pitch = { pitch-begins } ging in die Beine: { $percent } von dem, was gutes Timing spart, waren verloren.
better-overloaded-pitch = vor dem Fuß mit dem Schalten anfangen.
why-early-pitch = An { pitch } warst du zu früh bereit: { $percent } von dem, was gutes Timing spart, waren verloren.
better-early-pitch = den Gang etwas länger halten.
why-foot-down-pitch = An { pitch } kam ein Fuß auf den Boden.
better-foot-down-pitch = im leichten Gang sein, bevor es steil wird.
why-heavy-shift =
    { $derailleur ->
        [front] Kettenblatt bei { $from } unter Druck gewechselt, mit { $percent } des stetigen Drucks.
       *[rear] Bei { $from } unter Druck geschaltet, mit { $percent } des stetigen Drucks.
    }
better-heavy-shift = eine halbe Umdrehung locker treten, dann schalten.
better-heavy-shift-hub = Druck weg, dann nimmt die Nabe ihren Gang.
better-heavy-shift-motor = einen Atemzug früher locker treten, bis auch der Motor loslässt.
why-waited-shift = Bei { $from } wartete die Kette: Deine Beine ruhten.
better-waited-shift = locker weitertreten, solange sie wandert.
why-crossed = Die Kette lief ab { $from } schräg: { seconds }.
better-crossed = das Kettenblatt früher wechseln.
why-many-shifts = Du hast { changes } gemacht; die beste Fahrt { needed }.
better-many-shifts = über kleine Wellen im selben Gang hinwegfahren.
why-undone = Bei { $from } wurde ein Gang sofort wieder zurückgenommen.
better-undone = einem neuen Gang drei Kurbelumdrehungen Zeit geben.

## What can be done now

doing-title = Und jetzt
doing-again = Noch einmal fahren
doing-next = Weiter: { $level }
doing-watch = Von vorn ansehen
doing-print = Drucken
doing-saveRide = Fahrt speichern
doing-savePicture = Bild speichern
doing-pictureFailed = Dieser Browser konnte das Bild nicht zeichnen. Drucken geht auch.
doing-backToGroup = Zurück zur Gruppe
doing-backToBench = Zurück zur Level-Werkstatt
doing-besideRoad = Neben deiner Fahrt auf der Straße
freshPatch = Ein neuer Aufnäher gehört dir: { $lesson }.
differs = Beim Nachfahren kam diese Aufzeichnung etwas anders heraus. Das Bild kann abweichen.
closed = Der Rest öffnet sich, wenn du geraten hast.

## Whether the ride is kept, and why not

saved-saving = Die Fahrt wird aufbewahrt …
saved-saved = Diese Fahrt ist auf diesem Gerät aufbewahrt.
saved-not-saved = Diese Fahrt wurde nicht aufbewahrt.
notSaved-private-window = Diese Fahrt ist nicht aufbewahrt: Der Browser behält in diesem Fenster nichts. Speichere sie als Datei, oder öffne ein normales Fenster.
notSaved-disk-full = Diese Fahrt ist nicht aufbewahrt: Auf dem Gerät ist kein Platz mehr. Speichere sie als Datei, oder schaff Platz; das Spiel versucht es wieder.
notSaved-connection-lost = Diese Fahrt ist noch nicht aufbewahrt: Der Browser kommt nicht mehr an seinen Speicher. Speichere sie als Datei; das Spiel versucht es wieder.
notSaved-newer-version = Diese Fahrt ist nicht aufbewahrt: Hier war schon eine neuere Version des Spiels. Lade die Seite neu, um das Spiel zu aktualisieren.
notSaved-blocked = Diese Fahrt ist nicht aufbewahrt: Ein anderer Tab mit dem Spiel ist im Weg. Schließe ihn; das Spiel versucht es wieder.
notSaved-hangs = Diese Fahrt ist noch nicht aufbewahrt: Der Browser antwortet nicht. Speichere sie zur Sicherheit als Datei.
notSaved-corrupt = Diese Fahrt ist nicht aufbewahrt: Etwas, das hier gespeichert ist, lässt sich nicht lesen. Speichere sie als Datei.
notSaved-somebody-else = Diese Fahrt wurde gemeinsam mit anderen gefahren und wird hier nicht aufbewahrt. Speichere sie als Datei.
notSaved-trial = Eine Probefahrt wird nicht aufbewahrt.
notSaved-not-judged = Diese Fahrt ließ sich nicht auswerten und wird darum nicht aufbewahrt. Speichere sie als Datei.
notSaved-not-fetched = Diese Fahrt ist noch nicht aufbewahrt: Ein Teil des Spiels ließ sich nicht laden. Prüfe die Verbindung; das Spiel versucht es wieder. Speichere sie zur Sicherheit als Datei.
notSaved-localBackup = Ihre Wertung ist aufbewahrt, die Fahrt selbst nicht.

## The printed sheet

print-title = Before the Hill: eine Fahrt
print-subtitle = { $level } · { $bike } · { $rider }
print-legend = Schwarz: du. Grau: die beste Fahrt, die sich für dieses Rad und diese Person fand. Punkt: sauber geschaltet; halb: etwas ruppig; Dreieck: ruppig. Kreuz: Fuß am Boden.
print-marks = { marks-title }. { marks-total }: { $total }.
print-pitchTitle = { pitch-title }.
print-pitch = { card-needed }: { $needed }. { card-before }: { card-ofMade }. { card-worst }: { card-worstPair }.
