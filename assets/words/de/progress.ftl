### Die Seite Fortschritt: Vergleichsfahrten und was sie zeigen können, die Wertung aller Fahrten, und was ohne Wertung aufbewahrt ist.

title = Fortschritt
intro = Vergleichsfahrten zeigen, ob etwas gelernt ist. Übungsfahrten zeigen, wo zu üben ist.
road = Auf der Straße: was aufgezeichnete Fahrten zeigen
empty = Hier ist noch keine Fahrt aufbewahrt. Fahr zuerst; danach steht deine Wertung hier.
older =
    { $rides ->
        [1] Eine Fahrt wurde gefahren, bevor sich die Beine im Spiel änderten. Sie behält ihre Wertung; nachfahren oder mit neueren vergleichen lässt sie sich nicht.
        [one] { $rides } Fahrt wurde gefahren, bevor sich die Beine im Spiel änderten. Sie behält ihre Wertung; nachfahren oder mit neueren vergleichen lässt sie sich nicht.
       *[other] { $rides } Fahrten wurden gefahren, bevor sich die Beine im Spiel änderten. Sie behalten ihre Wertung; nachfahren oder mit neueren vergleichen lassen sie sich nicht.
    }

## Check rides

check-title = Vergleichsfahrten
check-what = Eine Vergleichsfahrt geht über eine Straße, die du nicht kennst, ohne jede Hilfe. Fahr eine, bevor du übst, und eine an einem anderen Tag. Bis zu drei je Tag werden zusammengenommen: Je mehr es sind, desto kleinere Änderungen zeigen sich.
check-minutes = Mit deinem Rad dauert sie etwa { $everyone } min, die für Kinder etwa { $children } min.
check-own-hub = Eine Nabenschaltung zeigt sich auch an Haltelinien: Deine Straße hat zwei.
check-own-crank-motor = Ein Mittelmotor zieht mit an der Kette: An zwei Hügeln deiner Straße schaltest du, während er zieht.
check-own-wheel-motor = Bei Tempo hilft der Motor nicht mehr: Gerade dann kommen zwei Hügel deiner Straße.
check-ride-everyone = Vergleichsfahrt fahren
check-ride-children = Vergleichsfahrt für Kinder
check-group = Rad und Straße
check-groupOf =
    { $road ->
        [children] { $bike }, Vergleichsfahrt für Kinder
        [hub] { $bike }, Haltelinien für Nabenschaltungen
        [hub-children] { $bike }, Haltelinien für Kinder mit Nabenschaltung
        [crank-motor] { $bike }, Hügel, die steiler werden, für Mittelmotoren
        [wheel-motor] { $bike }, schnelle Hügel für Nabenmotoren
       *[everyone] { $bike }
    }
change =
    { $way ->
        [up] { $points } mehr
        [down] { $points } weniger
       *[same] gleich
    }
days =
    { $days ->
        [one] einen Tag
       *[other] { $days } Tage
    }
finding-need-first = Noch keine Vergleichsfahrt.
finding-need-second = Deine erste Vergleichsfahrt kam auf { $first } von 100. Übe, dann fahr noch eine, am besten an einem anderen Tag.
finding-same-day =
    { $certain ->
        [yes] Von { $first } auf { $latest } an einem Tag: { change }, mehr, als der Zufall allein gewöhnlich ausmacht. Ob es bleibt, zeigt ein anderer Tag.
       *[no] Von { $first } auf { $latest } an einem Tag: { change }. So ein Unterschied kann allein Zufall sein. Fahr noch eine an einem anderen Tag.
    }
finding-retest =
    { $certain ->
        [better] Von { $first } auf { $latest }, { days } später, ohne Hilfe: { change }, plus oder minus { $chance }. Das ist gelernt, in diesem Spiel.
        [worse] Von { $first } auf { $latest }, { days } später, ohne Hilfe: { change }, plus oder minus { $chance }. Müde oder aus der Übung? Fahr noch eine.
       *[no] Von { $first } auf { $latest }, { days } später, ohne Hilfe: { change }, plus oder minus { $chance }. Vom Zufall ist das nicht zu unterscheiden.
    }
role-first = erste
role-same-day = selber Tag
role-retest = anderer Tag
check-chance = Weniger als { $points } Punkte Abstand zur ersten: Das kann allein Zufall sein.
check-sides =
    { $which ->
        [all] Zusammengenommen: { $before } vom ersten Tag und { $after } vom letzten.
       *[few] Zusammengenommen: { $before } vom ersten Tag und { $after } vom letzten. Je { $most } würden kleinere Änderungen zeigen.
    }
check-desc =
    { $rides ->
        [1] Eine Vergleichsfahrt: { $first } von 100.
       *[other] { $rides } Vergleichsfahrten in der Reihenfolge, in der sie gefahren wurden. Die erste kam auf { $first } von 100, die letzte auf { $latest }.
    }
check-table = Vergleichsfahrten in Zahlen

## What this can show

limits-title = Was das zeigen kann, und was nicht
limits =
    Übungsfahrten haben Hilfen und Straßen, die du kennenlernst. Ihre Wertung kann steigen, ohne dass du lernst, und fallen, während du etwas Schweres übst. Darum werden sie hier nicht verglichen.
    Vergleichsfahrten sind gleich schwer und immer neu. Eine allein sagt wenig: Vergleiche die erste mit einer an einem anderen Tag, auf demselben Rad.
    All das handelt von diesem Spiel. Noch hat niemand gezeigt, dass eine bessere Wertung hier besseres Schalten auf der Straße bedeutet.

## Marks of all rides, as small charts

marks-title = Wertung aller Fahrten
marks-hint = Älteste links. Um zu finden, was zu üben ist, nicht um Fortschritt zu beweisen.
marks-which = Fahrten auf
marks-all = allen Leveln
mark-cadence = Trittfrequenz
mark-foresight = Vorausschau
mark-easing = Lockerer Tritt
mark-chainLine = Kettenlinie
mark-economy = Sparsamkeit
mark-total = Alles zusammen
marks-latest = zuletzt
marks-none = noch nichts zu werten
kind-ride = Übung
kind-check = Vergleichsfahrt
kind-clinic = in der Gruppe
marks-desc =
    { $rides ->
        [1] { $name }: eine Fahrt, { $first } von 100.
       *[other] { $name }: { $rides } Fahrten, von { $first } auf { $latest } von 100.
    }
marks-shown = Die letzten { $shown } von { $all } Fahrten.
marks-table = Dasselbe in Zahlen
table-date = Datum
table-level = Level
table-kind = Art
table-role = Welche
table-total = Gesamt
table-passed = Bestanden
table-yes = ja
table-no = nein

## Rides that are kept without marks

unmarked-title = Ohne Wertung aufbewahrt
standing-to-mark = { $date }: noch nicht gewertet; das Spiel versucht es beim nächsten Öffnen wieder
standing-unfinished = { $date }: vor dem Ziel abgebrochen, darum ohne Wertung
standing-older = { $date }: gefahren, bevor sich die Beine im Spiel änderten; nachfahren und werten geht nicht mehr
