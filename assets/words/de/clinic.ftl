### Gruppen: Pläne, das Gerät weitergeben, das Gruppenbild, der Bericht. $name ist ein Tier wie „Roter Fuchs“ oder ein
### Name, den sich jemand ausgesucht hat.

number =
    { $count ->
        [1] ein
        [2] zwei
        [3] drei
        [4] vier
        [5] fünf
        [6] sechs
        [7] sieben
        [8] acht
        [9] neun
        [10] zehn
       *[other] { $count }
    }
numberFirst =
    { $count ->
        [1] Ein
        [2] Zwei
        [3] Drei
        [4] Vier
        [5] Fünf
        [6] Sechs
        [7] Sieben
        [8] Acht
        [9] Neun
        [10] Zehn
       *[other] { $count }
    }

title = Gruppe
intro = Eine Gruppe, eine Straße und etwas zum Reden. Keine Namen, keine Konten: Tiere genügen.
back = Gruppe
opening = Die Stunden auf diesem Gerät werden geöffnet …
elsewhere = Es ging in einem anderen Tab dieses Browsers weiter. Lass immer nur einen Tab offen, so bleiben die Fahrten erhalten.
goOnHere = Hier weitermachen
openFailed = Die Seite für Gruppen ließ sich nicht laden. Lade sie neu und versuch es noch einmal.

## Die erste Seite: eine Stunde fortsetzen oder einen Plan wählen

home-goOn = Weiter: { $plan }
home-next = Jetzt: { $name } · { $ridden } von { $all } gefahren
home-waiting = { $ridden } von { $all } gefahren
home-ready = Fertige Pläne
home-saved = Deine Pläne
home-own = Einen Plan machen
home-teach = Stundenbilder
home-teachHint = Was du sagst, Übungen für draußen, Blätter zum Drucken
home-join = Bei einer Stunde mitmachen
home-joinHint = Einen Plan von einem anderen Gerät nehmen
home-store = Ein eigener Speicher des Vereins
home-storeHint = Aus, solange du keine Adresse angibst
home-ownHint = Level, Versuche, Hilfen, Reihenfolge
home-sessions = Stunden auf diesem Gerät
home-session =
    { $date } · { $riders ->
        [one] { $riders } Person
       *[other] { $riders } Personen
    } · { $rides ->
        [one] { $rides } Fahrt
       *[other] { $rides } Fahrten
    }
home-open-round = Weitergeben: { $plan }
home-open-picture = Gruppenbild: { $plan }
home-open-report = Bericht: { $plan }
home-change = Eine Kopie ändern
home-forget = Plan löschen
home-forgetKeep = Behalten
home-forgetSure = Endgültig löschen
home-children = Für Kinder
home-everyone = Für alle
home-missing = Ein Level dieses Plans ist nicht auf diesem Gerät.

## Ein Plan in einer Zeile

facts =
    { $count ->
        [1] je ein Versuch · { $bike }
       *[other] je { number } Versuche · { $bike }
    }
facts-ownBike = das Rad, das hier eingestellt ist

## Wer fährt

go-title = Wer fährt?
go-intro = Sag, wie viele; alle bekommen ein Tier. Tippe eines an, um es zu tauschen. Wer später kommt, kann jederzeit dazu.
go-count = Personen
go-fewer = Eine Person weniger
go-more = Eine Person mehr
go-swap = { $name }: gegen ein anderes tauschen
go-onlyHandOut = Hier fährt niemand: den Plan nur an Tablets austeilen
go-start = Los
go-startHint =
    { $riders ->
        [one] { $plan } · { $riders } Person, der Reihe nach
       *[other] { $plan } · { $riders } Personen, der Reihe nach
    }

## Wie lange ein Plan dauert

minutes-who =
    { $riders ->
        [one] { $riders } Person
       *[other] { $riders } Personen
    }, { $count ->
        [1] je eine Fahrt
       *[other] je { number } Fahrten
    }
minutes-about =
    { $minutes ->
        [1] etwa eine Minute
       *[other] etwa { $minutes } Minuten
    }
minutes-whoAbout = { minutes-who }: { minutes-about }
minutes-tooLong = Länger als { $most } Minuten auf einem Gerät. Kürzer geht es so:
minutes-attempts =
    { $count ->
        [1] Je ein Versuch
       *[other] Je { number } Versuche
    }: { minutes-about }
minutes-road = Nur „{ $road }“: { minutes-about }
minutes-devices = { numberFirst } Tablets: { minutes-about }
minutes-two = Zu zweit oder zu mehreren an einem Tablet
minutes-left =
    { $minutes ->
        [1] noch etwa eine Minute
       *[other] noch etwa { $minutes } Minuten
    }
minutes-noneLeft = alles gefahren
minutes-leftBehind =
    { $behind ->
        [one] { minutes-left }, { $behind } Minute später als geplant
       *[other] { minutes-left }, { $behind } Minuten später als geplant
    }

## Ein eigener Plan

form-title = Dein Plan
form-name = Titel
form-nameHint = zum Beispiel: Dienstag, erste Berge
form-rides = Was gefahren wird
form-ridesHint = In der Reihenfolge, in der du sie wählst.
form-ownLevels = Deine eigenen Level
form-attempts = Versuche für jede Person
form-attemptsFewer = Ein Versuch weniger
form-attemptsMore = Ein Versuch mehr
form-seed = Die Straße

form-seeds-same = jedes Mal dieselbe
form-seeds-fresh = bei jedem Versuch eine andere der gleichen Art
form-bike = Rad
form-ownBike = Das, das auf diesem Gerät eingestellt ist
form-rider = Wer fährt
form-byBike = Wer zum Rad passt
form-byFeel = Alle wählen nach Gefühl
form-aids = Hilfen während der Fahrt

form-aidsNames-as-level = wie im Level
form-aidsNames-none = keine
form-aidsNames-all = alle
form-shows = Die Gruppe sieht

form-showsNames-own-marks = nur die eigene Wertung
form-showsNames-group-picture = das Gruppenbild
form-showsNames-table = auch eine Tabelle
form-order = Reihenfolge

form-orders-rotate = reihum
form-orders-free = wer mag
form-save = Plan aufbewahren
form-saveAndGo = Aufbewahren und wählen, wer fährt
form-problems = Noch nicht:
form-noRide = Wähle mindestens eine Sache, die gefahren wird.
form-noTitle = Gib dem Plan einen Titel.

## Eine Stunde

tabs-round = Weitergeben
tabs-picture = Gruppenbild
tabs-report = Bericht
tabs-tablets = Tablets
tabs-label = Stunde

## Mehrere Geräte in einer Stunde

tablets-intro = Mit mehreren Geräten fährt jedes für sich. Nichts davon braucht ein Netz.

tablets-out-title = Den Plan austeilen
tablets-out-hint = Andere Geräte nehmen ihn per Code, Link oder Datei.

tablets-back-title = Die Fahrten zurückgeben
tablets-back-hint = Was auf diesem Gerät gefahren wurde, für die Leitung.

tablets-collect-title = Die Fahrten einsammeln
tablets-collect-hint = Was zurückkam, woher, und was noch fehlt.

## Ein Gerät weitergeben

round-next = Als Nächstes
round-turn = Versuch { $attempt } von { $all }
round-start = Start
round-startFor = Die Fahrt starten: { $name }
round-skip = Jetzt überspringen
round-later = Kommt später wieder
round-remove = Entfernen
round-removeWho = Entfernen: { $name }
round-laterWho = Kommt später wieder: { $name }
round-back = Ist wieder da
round-backWho = Wieder da: { $name }
round-chooseWho = Fährt als Nächstes: { $name }
round-give = Es fuhr jemand anders
round-giveTitle = Wer ist gefahren?
round-giveSays = Die Fahrt zählt dann für diese Person. Wer hier stand, bleibt an der Reihe.
round-giveKeep = Es war richtig
round-add = Jemanden dazunehmen
round-addPlus = + Jemanden dazunehmen
round-undo = Die letzte Fahrt zurücknehmen
round-undoWho = Die letzte Fahrt zählt dann nicht ({ $name }). Sie kann noch einmal gefahren werden.
round-keep = Behalten
round-line = In der Reihe
round-nobodyInLine = Niemand.
round-away = Kommt später wieder
round-gone = Nach Hause gegangen ({ $riders })
round-left =
    { $rides ->
        [one] noch { $rides } Fahrt
       *[other] noch { $rides } Fahrten
    }
round-riding = Unterwegs war: { $name }
round-ridingSays = Die Fahrt kam nicht zu Ende, also zählt sie nicht.
round-rideAgain = Noch einmal fahren
round-notNow = Jetzt nicht
round-marking = Die Fahrt wird gewertet …
round-notMarked = Die Fahrt konnte jetzt nicht gewertet werden. Sie ist aufbewahrt: Lade die Seite neu, dann wird es noch einmal versucht. Wer noch einmal fährt, ersetzt sie.
round-debrief = Ganze Auswertung
round-ridden = Gefahren: { $name }
round-total = Gesamt
round-nextRider = Jetzt dran
round-goOn = Weiter
round-nobody = Noch ist niemand da
round-nobodySays = Nimm jemanden dazu, dann geht es los.
round-waiting = Warten auf alle, die wiederkommen
round-done = Alle sind gefahren
round-doneSays = Zeit, es gemeinsam anzuschauen.
round-toPicture = Zum Gruppenbild
round-feel = Wie fährst du?
round-noLevel = Das Level dieser Fahrt ist nicht auf diesem Gerät.
round-notKept = Das konnte auf dem Gerät nicht aufbewahrt werden. Weitermachen geht, aber ein Neuladen würde es verlieren.
round-fullRound = Mehr Personen passen nicht in eine Runde.
round-taken = Dieser Name ist vergeben.
round-addTitle = Wer ist da?
round-addOwn = Oder ein Name deiner Wahl
round-addOwnHint = Kein echter. Höchstens 20 Zeichen.
round-addThis = Dazunehmen
round-others = Andere Tiere

## Eine Zeile zu einer Fahrt, die vorbei ist

remark-none = Keine Rampe verlangte einen anderen Gang.
remark-fine =
    { $count ->
        [1] An der Rampe warst du rechtzeitig bereit.
       *[other] An allen { number } Rampen warst du rechtzeitig bereit.
    }
remark-early = Rampe { $pitch }: zu früh, { $distance } vor dem Fuß. Warte ein wenig.
remark-lateAfter = Rampe { $pitch }: zu spät, { $distance } hinter dem Fuß. Schalte vorher.
remark-lateBefore = Rampe { $pitch }: spät, nur { $distance } vor dem Fuß. Schalte früher.
remark-notFinished = Rampe { $pitch }: Am Fuß war das Schalten noch nicht fertig. Klicke vorher weiter.
remark-never = Rampe { $pitch }: Es wurde nicht leichter geschaltet.
remark-earlyNoPlace = Rampe { $pitch }: zu früh. Warte ein wenig.
remark-gear = Rampe { $pitch }: rechtzeitig geschaltet, aber nicht in den richtigen Gang.

## Das Gruppenbild

picture-working = Das Gruppenbild wird ausgezählt …
picture-failed = Das Bild konnte nicht ausgezählt werden. Lade die Seite neu und öffne es noch einmal.
picture-none = Noch keine Fahrt. Das Bild wächst mit jeder Fahrt.
picture-closed = In diesem Plan sehen alle nur ihre eigene Wertung.
picture-apart =
    { $rides ->
        [one] { $rides } Fahrt kam nicht so heraus, wie die Wertung sagt, und zählt hier nicht.
       *[other] { $rides } Fahrten kamen nicht so heraus, wie die Wertung sagt, und zählen hier nicht.
    }
picture-otherVersion =
    { $rides ->
        [one] { $rides } Fahrt kam aus einer anderen Version des Spiels: Die Wertung zählt, wie sie kam, aber hier kann sie nicht nachgefahren werden.
       *[other] { $rides } Fahrten kamen aus einer anderen Version des Spiels: Die Wertungen zählen, wie sie kamen, aber hier können sie nicht nachgefahren werden.
    }
picture-open = Der Gruppe trotzdem zeigen
picture-road = Straße
picture-roadName =
    { $rides ->
        [one] { $road } ({ $rides } Fahrt)
       *[other] { $road } ({ $rides } Fahrten)
    }

picture-boards-where = Die Straße entlang
picture-boards-caught = Rampe für Rampe
picture-boards-timing = Wann
picture-boards-change = Zuerst und zuletzt
picture-boards-table = Tabelle
picture-label = Was gezeigt wird
picture-talk = Mit Kindern reden
picture-show = Antwort zeigen
picture-hide = Noch einmal fragen
picture-guess = Erst raten, dann schauen.
picture-rides =
    { $rides ->
        [one] { $rides } Fahrt
       *[other] { $rides } Fahrten
    } von { $riders ->
        [one] { $riders } Person
       *[other] { $riders } Personen
    }, ohne Namen
picture-caught = Rampe { $pitch } hat { $count } von { $all } überrascht

picture-wrong-late = Rampe { $pitch }: { $count } von { $all } zu spät
picture-wrong-early = Rampe { $pitch }: { $count } von { $all } zu früh
# $both (Number): riders who were too early at one attempt and too late at another.
picture-wrong-mixed =
    { $both ->
        [0] { $all ->
            [one] Rampe { $pitch }: von { $all } Person { $early } zu früh und { $late } zu spät
           *[other] Rampe { $pitch }: von { $all } Personen { $early } zu früh und { $late } zu spät
        }
       *[other] { $all ->
            [one] Rampe { $pitch }: mal zu früh, mal zu spät
           *[other] Rampe { $pitch }: von { $all } Personen { $early } zu früh und { $late } zu spät, davon { $both } beides
        }
    }
picture-right = Bei keiner Rampe wurde zu früh oder zu spät geschaltet
picture-ready =
    Gruppe bereit { $groupSide ->
        [after] { $group } hinter dem Fuß
       *[before] { $group } vor dem Fuß
    }, beste Fahrt { $bestSide ->
        [after] { $best } hinter dem Fuß
       *[before] { $best } vor dem Fuß
    }.
picture-neverReady =
    { $bestSide ->
        [after] Die meisten waren nie bereit dafür, die beste Fahrt { $best } hinter dem Fuß.
       *[before] Die meisten waren nie bereit dafür, die beste Fahrt { $best } vor dem Fuß.
    }
picture-noPitch = Diese Straße hat keine Rampe, die einen anderen Gang verlangt
picture-noLines = Diese Fahrten kamen ohne ihre Linien; nur die Wertungen können gezeigt werden.
picture-ownRoads = Alle fuhren eine eigene Straße, deshalb gibt es keine gemeinsame Linie.

picture-tracks-development = Gang
picture-tracks-cadenceRpm = Trittfrequenz

picture-legend-best = beste Fahrt bereit
picture-legend-middle = Gruppe bereit
# Of the lines for gear and cadence.
picture-legend-lines = Gruppe: die Mitte und die Hälfte darum
picture-legend-bestLine = beste Fahrt
picture-stripDesc =
    { $rides ->
        [one] { $rides } Fahrt über { $length } Straße: zu jeder Rampe, wo die Gruppe und die beste Fahrt ihren Gang bereit hatten, und wie viele zu früh, etwa richtig und zu spät waren.
       *[other] { $rides } Fahrten über { $length } Straße: zu jeder Rampe, wo die Gruppe und die beste Fahrt ihren Gang bereit hatten, und wie viele zu früh, etwa richtig und zu spät waren.
    }
picture-barOf-tooEarly = zu früh: { $count } von { $all }
picture-barOf-aboutRight = etwa richtig: { $count } von { $all }
picture-barOf-tooLate = zu spät: { $count } von { $all }
picture-pitch = Rampe { $pitch }
picture-caughtShort = { $count } von { $all } überrascht
picture-dots = Ein Punkt ist eine Person; ein gefüllter heißt: mindestens einmal überrascht.
picture-never = nie

picture-timing-tooEarly = zu früh
picture-timing-aboutRight = etwa richtig
picture-timing-tooLate = zu spät
picture-shares-late = { $one } zu spät, { $other } etwa richtig
picture-shares-early = { $one } zu früh, { $other } etwa richtig
picture-shares-mixed = { $one } zu früh, { $other } zu spät
picture-timingCount = { $count } von { $all } Mal über eine Rampe
picture-change =
    { $worse ->
        [0] { $who ->
            [riders] { $all ->
                [one] { $better } von { $all } Person deutlich besser
               *[other] { $better } von { $all } Personen deutlich besser
            }
           *[pairs] { $all ->
                [one] { $better } von { $all } Paar von Fahrten deutlich besser
               *[other] { $better } von { $all } Paaren von Fahrten deutlich besser
            }
        }
       *[other] { $who ->
            [riders] { $all ->
                [one] { $better } von { $all } Person deutlich besser, { $worse } deutlich schlechter
               *[other] { $better } von { $all } Personen deutlich besser, { $worse } deutlich schlechter
            }
           *[pairs] { $all ->
                [one] { $better } von { $all } Paar von Fahrten deutlich besser, { $worse } deutlich schlechter
               *[other] { $better } von { $all } Paaren von Fahrten deutlich besser, { $worse } deutlich schlechter
            }
        }
    }
picture-changeSame = Niemand hat sich stärker verändert, als der Zufall erklärt
picture-changeNone = Noch ist niemand etwas zweimal gefahren
picture-changeSays = { $better } deutlich besser, { $worse } deutlich schlechter, { $same } im Rahmen des Zufalls (weniger als { $chance } Punkte).
picture-first = Erster Versuch
picture-last = Letzter Versuch
picture-bins = { $low } bis { $high } Punkte: { $count }

## Was Kinder gefragt werden, und Antworten

picture-question-where = Wann haben wir für den Berg geschaltet?
picture-question-caught = Welcher Berg hat die meisten von uns überrascht?
picture-question-timing = Waren wir zu früh, richtig oder zu spät?
picture-question-change = Sind wir mit Üben besser geworden?
picture-question-table = Wie ist es gelaufen?

picture-answer-caught =
    { $all ->
        [1] Berg { $hill } hat uns überrascht
       *[other] Berg { $hill } hat { $count } von uns { $all } überrascht
    }
picture-answer-nobody = Kein Berg hat uns überrascht. Gut geschaltet!
picture-answer-noHill = Kein Berg wollte hier einen Klick von uns

picture-answer-where-late =
    { $all ->
        [1] Berg { $hill }: zu spät geklickt
       *[other] { $count ->
            [one] Berg { $hill }: { $count } von uns { $all } klickte zu spät
           *[other] Berg { $hill }: { $count } von uns { $all } klickten zu spät
        }
    }
picture-answer-where-early =
    { $all ->
        [1] Berg { $hill }: zu früh geklickt
       *[other] { $count ->
            [one] Berg { $hill }: { $count } von uns { $all } klickte zu früh
           *[other] Berg { $hill }: { $count } von uns { $all } klickten zu früh
        }
    }
picture-answer-where-mixed =
    { $all ->
        [1] Berg { $hill }: zu früh oder zu spät geklickt
       *[other] { $count ->
            [one] Berg { $hill }: { $count } von uns { $all } war zu früh oder zu spät
           *[other] Berg { $hill }: { $count } von uns { $all } waren zu früh oder zu spät
        }
    }
picture-answer-always = Jedes Mal richtig. Gut geschaltet!

picture-answer-often-late = Öfter zu spät als richtig
picture-answer-often-early = Öfter zu früh als richtig
picture-answer-often-mixed = Manchmal zu früh, manchmal zu spät

picture-answer-sometimes-late = Meist richtig, manchmal zu spät
picture-answer-sometimes-early = Meist richtig, manchmal zu früh
picture-answer-sometimes-mixed = Meist richtig, manchmal zu früh, manchmal zu spät
picture-answer-better =
    { $who ->
        [riders] { $all ->
            [1] { $better ->
                [0] Noch nicht deutlich besser
               *[other] Deutlich besser
            }
           *[other] Deutlich besser: { $better } von uns { $all }
        }
       *[pairs] { $better } von { $all } Mal wurden wir deutlich besser
    }
picture-answer-hill = Berg { $hill }

picture-table-rider = Wer
picture-table-ride = Fahrt
picture-table-rideNumber = Fahrt { $ride }
picture-table-attempt = Versuch
picture-table-total = Gesamt
picture-table-pitches = Rampen (%)
picture-table-none = –

## Der Bericht

report-title = Bericht
report-intro = Eine Seite für jede Straße, schwarz auf weiß, und Dateien für eine Tabellenkalkulation oder ein anderes Programm.
report-names = Mit Tieren und Spitznamen
report-namesHint = Ohne sie stehen auf der Seite keine Namen. In Dateien stehen Spitznamen immer.
report-fileName = stunde
report-print = Drucken
report-csv = Als CSV speichern
report-json = Als JSON speichern
report-remove = Die Stunde löschen
report-sureTitle = Die Stunde löschen?
report-sure =
    { $rides ->
        [one] { $rides } Fahrt und die Runde verschwinden von diesem Gerät. Das lässt sich nicht rückgängig machen.
       *[other] { $rides } Fahrten und die Runde verschwinden von diesem Gerät. Das lässt sich nicht rückgängig machen.
    }
report-keep = Behalten
report-saveFirst = Erst speichern
report-removeSure = Löschen
report-sheet = Vorschau
report-rides =
    { $rides ->
        [one] { $rides } Fahrt
       *[other] { $rides } Fahrten
    }, { $riders ->
        [one] { $riders } Person
       *[other] { $riders } Personen
    }
report-table = Rampen
report-pitch = Rampe
report-caught = Überrascht (Personen)
report-timing = Früh / richtig / spät (Fahrten)
report-group = Gruppe bereit
report-best = Beste Fahrt bereit
report-ready = Bereit: Der Gang für die Rampe ist drin und der letzte Schaltvorgang fertig.
report-sentence = { $sentence }.
report-before = { $distance } vor dem Fuß
report-after = { $distance } hinter dem Fuß
report-attempts = Erster und letzter Versuch: { picture-changeSays }
report-all = Gesamtwertungen, Versuch für Versuch
report-footer = Die Wertung kommt aus einem Modell des Fahrens. Sie sagt etwas über den Moment des Schaltens auf diesen Straßen, nichts über den Wert eines Menschen.
