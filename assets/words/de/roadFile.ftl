### Was zu einer Datei mit einer aufgezeichneten Straße (GPX) gesagt wird: warum keine daraus wird, was ein Mensch
### entscheiden kann, wie weit man ihren Höhen trauen darf. Längen, Höhen und Anteile kommen mit Einheit.

## Was die Datei stattdessen ist

is-web-page-at-once = Das ist eine Webseite, keine GPX-Datei. Vielleicht wollte der Download eine Anmeldung. Melde dich an und lade die Datei noch einmal herunter.
is-web-page = Das ist eine Webseite, keine GPX-Datei. Lade die Fahrt selbst herunter.
is-kml = Das ist eine KML-Datei. Exportiere die Fahrt als GPX, mit ihren Höhen.
is-tcx = Das ist eine TCX-Datei. Exportiere die Fahrt stattdessen als GPX.
is-json = Das ist JSON, keine GPX-Datei. Exportiere die Fahrt als GPX.
is-pdf = Das ist ein PDF-Dokument, keine GPX-Datei. Exportiere die Fahrt als GPX.
is-picture = Das ist ein Bild, keine GPX-Datei. Exportiere die Fahrt als GPX.
is-fit = Das ist eine FIT-Datei. Exportiere die Fahrt stattdessen als GPX.
is-binary = Das ist keine Textdatei, also keine GPX-Datei. Exportiere die Fahrt als GPX.
is-other = Das ist keine GPX-Datei; sie beginnt nicht mit „<“. Exportiere die Fahrt als GPX.
is-xml = Das ist XML, aber kein GPX: Es beginnt mit <{ $root }>. Exportiere die Fahrt als GPX.

## Warum keine Straße daraus wird

too-big = Diese Datei ist zu groß für eine einzelne Fahrt. Exportiere eine kürzere.
truncated = Die Datei bricht mittendrin ab, in Zeile { $line }. Exportiere oder kopiere sie noch einmal.
empty = Diese Datei ist leer. Exportiere oder kopiere sie noch einmal.
packed = Diese Datei ist so gepackt, dass sie hier nicht geöffnet werden kann. Entpacke sie erst; die Datei darin endet auf .gpx.
packed-damaged = Diese gepackte Datei ist beschädigt oder mit einem Passwort gesperrt und kann nicht geöffnet werden. Entpacke sie erst oder exportiere sie noch einmal.
packed-without = In diesem Archiv ist keine GPX-Datei. Die Datei darin muss auf .gpx enden.
packed-several = In diesem Archiv sind mehrere GPX-Dateien. Entpacke es und wähle eine davon.
encoding = Die Datei hat eine Zeichenkodierung, die hier nicht gelesen werden kann ({ $label }). Speichere sie als UTF-8.
not-well-formed = Die Datei ist in Zeile { $line } beschädigt: Dort ist sie kein wohlgeformtes XML. Exportiere sie noch einmal.
doctype = Die Datei bringt einen eigenen Dokumenttyp mit (DOCTYPE); das ist nie nötig und nicht sicher. Exportiere sie noch einmal als reines GPX.
too-deep = Die Datei hat mehr als { $most } Elemente ineinander. Exportiere sie noch einmal als reines GPX.
too-many-points = Die Datei hat mehr als { $most } Punkte. Exportiere eine kürzere Fahrt.
no-such-track =
    { $trackCount ->
        [one] Track { $track } gibt es nicht; die Datei hat nur einen.
       *[other] Track { $track } gibt es nicht; die Datei hat { $trackCount }.
    }
no-readable-points =
    { $pointCount ->
        [one] Die Datei hat einen Punkt, und der hat keinen lesbaren Ort auf der Erde. Exportiere die Datei noch einmal, mit Orten in Grad.
       *[other] Keiner der { $pointCount } Punkte hat einen lesbaren Ort auf der Erde. Exportiere die Datei noch einmal, mit Orten in Grad.
    }
only-waypoints =
    { $waypointCount ->
        [one] Die Datei enthält einen einzelnen Ort (Wegpunkt), aber keinen Track und keine Route. Exportiere die Fahrt selbst.
       *[other] Die Datei enthält { $waypointCount } einzelne Orte (Wegpunkte), aber keinen Track und keine Route. Exportiere die Fahrt selbst.
    }
no-points = Die Datei enthält keinen Track und keine Route mit Punkten. Exportiere die Fahrt selbst.
no-length = Der Track verlässt seinen ersten Ort nie, wie bei einer Fahrt im Zimmer, also hat er keine Länge. Wähle eine Fahrt auf der Straße.
too-short = Die Straße ist { $length } lang; ein Level braucht mindestens { $least }. Wähle eine längere Fahrt.
too-long = Der Track ist { $length } lang, so lang ist keine Fahrt. Exportiere eine einzelne Fahrt.
no-elevation = Die Datei hat keine Höhen, also weiß man nichts von ihren Bergen. Exportiere sie aus einem Programm, das sie hinzufügt.
no-readable-elevation =
    { $pointCount ->
        [one] Die einzige Höhe in der Datei ist nicht lesbar. Exportiere die Datei noch einmal, in Metern wie 1420.5.
       *[other] Keine der { $pointCount } Höhen in der Datei ist lesbar. Exportiere die Datei noch einmal, in Metern wie 1420.5.
    }
backwards = Das Stück endet, bevor es beginnt. Wähle, wo es anfängt und wo es aufhört.
unreadable = Die Datei konnte nicht gelesen werden. Wurde sie inzwischen verschoben oder geändert? Wähle sie noch einmal.
no-reader = Der Teil, der Dateien liest, antwortet nicht. Lade die Seite neu und wähle dann die Datei noch einmal.
no-road = Die Straße ist nicht mehr da. Wähle die Datei noch einmal.

## Was ein Mensch entscheidet

several-tracks =
    { $how ->
        [joined] Die Datei enthält { $trackCount } Tracks. Sie wurden aneinandergehängt. Ist das die Straße?
       *[one] Die Datei enthält { $trackCount } Tracks. Track { $track } wurde genommen. Ist das die Straße?
    }
holes =
    { $holeCount ->
        [one] Der Track hat eine Lücke; sie ist { $longest } lang, { $at } nach dem Start. Sie wurde geradlinig überbrückt. Soll das so bleiben, oder nur das längste Stück ohne Lücke?
       *[other] Der Track hat { $holeCount } Lücken; die längste ist { $longest } lang, { $at } nach dem Start. Alle wurden geradlinig überbrückt. Soll das so bleiben, oder nur das längste Stück ohne Lücke?
    }
perhaps-feet-steep = { $share } dieser Straße wären steiler als { $steep }. Vielleicht stehen die Höhen der Datei in Fuß. In welcher Einheit stehen sie?
perhaps-feet-fast = Auf dieser Fahrt wäre es { $climb } in der Stunde bergauf gegangen, das schaffen keine Beine. Vielleicht stehen die Höhen der Datei in Fuß. In welcher Einheit stehen sie?

## Was getan wurde

salvaged =
    { $pointCount ->
        [one] Die Datei ist in Zeile { $line } beschädigt. Was lesbar war, wurde behalten: { $pointCount } Punkt. Sieh nach, ob die Straße ganz da ist.
       *[other] Die Datei ist in Zeile { $line } beschädigt. Was lesbar war, wurde behalten: { $pointCount } Punkte. Sieh nach, ob die Straße ganz da ist.
    }
stops =
    { $long ->
        [seconds] Pausen wurden herausgenommen, damit das Streuen der Positionen keine Straße wird: { $count } (zusammen { $time } s).
        [minutes] Pausen wurden herausgenommen, damit das Streuen der Positionen keine Straße wird: { $count } (zusammen { $time } min).
       *[unknown] Pausen wurden herausgenommen, damit das Streuen der Positionen keine Straße wird: { $count }.
    }
zero-elevations = Höhen von genau 0, wo die Straße ganz woanders liegt, wurden weggelassen: { $pointCount }.
impossible-points =
    { $pointCount ->
        [one] { $pointCount } Punkt wurde weggelassen: Dort kann niemand gewesen sein.
       *[other] { $pointCount } Punkte wurden weggelassen: Dort kann niemand gewesen sein.
    }
unreadable-points = Punkte ohne lesbaren Ort wurden weggelassen: { $pointCount }.
unreadable-elevations = Höhen, die keine sind, wurden weggelassen: { $pointCount }.
unwritten-elevations = Punkte ohne Höhe liegen auf einer geraden Linie zwischen ihren Nachbarn: { $pointCount }.
elevation-spikes = Einzelne Ausreißer der Höhe wurden weggelassen: { $pointCount }.
time-backwards = Die Zeiten laufen stellenweise rückwärts, also wird nichts mit ihnen verglichen. Die Straße selbst braucht sie nicht.
cadence-halved = Die Beine hätten in der halben Fahrt mit { $rpm } U/min gedreht: Der Sensor hat jeden Fuß gezählt. Die Trittfrequenz wurde halbiert.
cadence-stuck = Die Trittfrequenz ist durchweg { $rpm } U/min, wurde also nicht gemessen; sie wurde weggelassen.
capped = { $length } der Straße sind steiler als { $limit } (bis { $steepest }); ein Level begrenzt sie auf { $limit }.

## Wie weit man den Höhen trauen darf

sparse = Die Punkte liegen { $step } auseinander: zu wenige für Berge dazwischen.
rounded-places = Die Orte sind in Schritten von { $step } geschrieben, darum wird die Straße länger und flacher, als sie ist.
elevation-missing = Auf { $share } der Straße fehlen die Höhen; dort stehen gerade Linien.
holes-share = { $share } der Straße sind Lücken, die geradlinig überbrückt wurden.
bridged = Auf { $share } der Straße springen die Höhen, wie es keine Straße tut; das wurde überbrückt.
jumps =
    { $jumpCount ->
        [one] Die Höhen springen einmal wie keine Straße, als wäre das Gerät neu gestellt worden; die Straße geht auf der Höhe weiter, auf der sie kam.
       *[other] Die Höhen springen { $jumpCount } Mal wie keine Straße, als wäre das Gerät neu gestellt worden; die Straße geht auf der Höhe weiter, auf der sie kam.
    }
noisy = Die Höhen schwanken von Punkt zu Punkt um { $noise }; Steigungen können um { $points } Prozentpunkte falsch sein, obwohl über { $width } gemittelt wurde.
spikes = { $share } der Höhen sind einzelne Ausreißer; sie wurden weggelassen.
whole-metres = Die Höhen sind ganze Meter, kleine Anstiege verschwimmen deshalb.
all-equal = Alle Höhen sind gleich. Entweder ist die Straße eben wie Wasser, oder sie wurden nie gemessen.
