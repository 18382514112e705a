### Die Level-Werkstatt, in der man eigene Straßen baut: aus dem Kopf oder aus einer Fahrt, die aufgezeichnet wurde.
### Längen, Höhen, Tempo, Steigungen und Anteile kommen fertig geschrieben, mit ihrer Einheit.

intro = Bau eine Straße zum Üben: aus dem Kopf, oder aus einer, die wirklich gefahren wurde.
opening = Die Level-Werkstatt wird eingerichtet …
openFailed = Die Level-Werkstatt ließ sich nicht laden. Lade die Seite neu und versuch es noch einmal.
named = { $doing }: { $what }
range = { $low } bis { $high }

## Die erste Seite: wie man anfängt, und was schon gemacht ist

home-make = Ein Level bauen
home-fresh = Eine neue Straße
home-freshSentence = Aus der Level-Werkstatt.
home-freshHint = Flach, Rampe, flach: Davon gehst du aus.
home-roadHint = Die Tour vom Sonntag, oder ihre härtesten { $length }.
home-file = Level-Datei öffnen
home-fileHint = Eine .json-Datei, die jemand hier gespeichert hat.
home-copy = Mit einem Level des Spiels anfangen
home-copyHint = Eine Kopie; das Level selbst bleibt.
home-choose = Level
home-copyButton = Kopieren
home-own = Deine Level
home-none = Noch keine. Was du hier speicherst, steht auch auf der Seite „Level“.
home-ride = Fahren
home-edit = Ändern
home-duplicate = Duplizieren
home-remove = Löschen
home-removed = „{ $title }“ ist gelöscht.
home-restored = „{ $title }“ ist wieder da.
home-duplicated = „{ $title }“ ist dazugekommen.
home-unsaved = „{ $title }“ liegt in der Werkstatt und ist nicht gespeichert.
home-goOn = Daran weiterbauen
home-drop = Wegwerfen
home-facts = { $length }, bis { $steepest }

## Ein Level soll geöffnet werden, während ein anderes nicht gespeichert ist

leave-title = Noch nicht gespeichert
leave-text = An „{ $title }“ gibt es Änderungen, die nicht gespeichert sind. Was soll mit ihnen geschehen?
leave-keep = Dorthin zurück
leave-drop = Änderungen verwerfen

## Speichern

keep-save = Speichern
keep-saved = Auf diesem Gerät gespeichert.
keep-unsaved = Noch nicht gespeichert.
keep-changed = Seit dem Speichern geändert.
keep-faulty = Speichern geht, sobald in Ordnung ist, was unter „{ check-title }“ steht.
keep-private-window = Nicht gespeichert: Der Browser behält in diesem Fenster nichts. Lade das Level als Datei herunter.
keep-disk-full = Nicht gespeichert: Auf dem Gerät ist kein Platz mehr. Lade das Level als Datei herunter.
keep-newer-version = Nicht gespeichert: Hier war schon eine neuere Version des Spiels. Lade die Seite neu.
keep-blocked = Nicht gespeichert: Ein anderer Tab mit dem Spiel ist im Weg. Schließe ihn und versuch es noch einmal.
keep-failed = Nicht gespeichert: Der Browser antwortet nicht. Lade das Level zur Sicherheit als Datei herunter.

## Die Straße in der Werkstatt

edit-undo = Rückgängig
edit-redo = Wiederholen
edit-list = Alle Level der Werkstatt
edit-titleField = Titel
edit-sentenceField = Ein Satz dazu
edit-profile = Die Straße von der Seite. Jeder Griff lässt sich ziehen oder mit den Pfeiltasten bewegen.
edit-facts =
    { $pitches ->
        [0] { $length }, { $climbed } bergauf, keine Rampe
        [one] { $length }, { $climbed } bergauf, { $pitches } Rampe
       *[other] { $length }, { $climbed } bergauf, { $pitches } Rampen
    }
edit-road = Straße
edit-placed = Auf der Straße
edit-addPiece = Ein Stück Straße anfügen
edit-addPlaced = Etwas auf die Straße legen
edit-earlier = Nach vorn
edit-later = Nach hinten
edit-duplicate = Duplizieren
edit-remove = Entfernen
edit-nothing = Noch nichts.
edit-wholeMetres = Ein Level besteht aus ganzen Metern. Längen in Fuß können darum ein wenig abweichen.
edit-more = Mehr zu diesem Level
edit-lesson = Was es lehrt
edit-audience = Für
edit-everyone = alle
edit-children = Kinder
edit-seed = Zahl für den Zufall
edit-seedHint = Andere Zahl, andere Straße derselben Art.
edit-passMark = Bestanden ab
edit-aids = Hilfen auf dem Bildschirm
edit-no = { $number }. { $name }

zoom-title = Welcher Teil der Straße zu sehen ist
zoom-closer = Näher
zoom-wider = Weiter weg
zoom-back = ◀ Zurück
zoom-on = Vor ▶
zoom-whole = Ganze Straße

## Stücke der Straße, und was in der Liste dazu steht

piece-flat = Flach
piece-climb = Anstieg
piece-pitch = Rampe
piece-descent = Abfahrt
piece-rollers = Wellen
piece-random-pitches = Rampen nach Zufall
piece-recorded = Aufgezeichnete Straße
facts-sloped = { $length }, { $slope }
facts-rollers = { $length }, ≤ { $slope }
facts-random-pitches = { $length }, { $count } × ≤ { $slope }

## Was auf der Straße liegt

place-stopLinesM = Haltlinie
place-winds = Wind
place-surfaces = Belag
place-hidden = Verdecktes Stück
place-cues = Zuruf
surface-gravel = Schotter
surface-grass = Gras
surface-cobbles = Kopfsteinpflaster
wind =
    { $way ->
        [head] Gegenwind { $speed }
       *[tail] Rückenwind { $speed }
    }
wind-mps = { $value } m/s
placed-stretch = { $stretch }, { $what }
hidden-sight = { place-hidden }, Sicht { $sight }
placed-sight = Sicht { $sight }
placed-cue = { $at }: { $cue }
ownCue = Eigene Worte
cueText = Was er sagt

## Felder

field-lengthM = Länge
field-slope = Steigung
field-waveM = Von Kuppe zu Kuppe, etwa
field-steepest = Am steilsten
field-gentlest = Sanfteste Rampe
field-pitchCount = Rampen
field-beforeEach = Straße vor jeder (0: Zufall)
field-fromM = Von
field-toM = Bis
field-atM = Bei
field-windMps = Wind von vorn (minus: von hinten)
field-sightM = Sicht

## Was falsch ist, und was überraschen kann

check-title = Hier hinsehen
check-good = Nichts, was dieser Person auf diesem Rad Sorgen machen muss.
check-working = Es wird nachgesehen …
check-goThere = Dorthin
check-trim = Abschneiden
check-cannotRide = Bevor man es fahren kann:
check-surprising = Erlaubt, kann aber überraschen:

## Die beste Fahrt dort

reference-title = Wie es sich anfühlen würde
reference-intro = Die beste Fahrt, die hier möglich ist.
reference-bike = Rad
reference-rider = Person
reference-asRidden = Mit der Leistung der Aufzeichnung ({ $watts } W)
reference-working = Die beste Fahrt wird geplant: { $share }
reference-ask = Beste Fahrt planen
reference-long = Die Straße ist lang; das Planen dauert eine Weile.
reference-failed = Die beste Fahrt ließ sich nicht planen.
reference-waits = Erst muss die Straße in Ordnung sein.
reference-time = Zeit
reference-lowest = Langsamste Tritte
reference-lowestAt = { $rpm } pro Minute, bei { $at }
reference-shifts = Schaltvorgänge
reference-worst = Härteste Rampe
reference-worstIs = { $steepest } bei { $at }: Die Beine fallen auf { $rpm } Tritte pro Minute
reference-noPitch = keine kurze Rampe; am steilsten bei { $at }, { $steepest }
reference-asksNothing = Keine Rampe verlangt hier einen leichteren Gang: Die Beine halten den Gang, mit dem sie kommen, oder es ist schon der leichteste. Mit diesem Rad und dieser Person bleibt die Vorausschau ohne Wertung.
reference-level = keine, die Straße ist eben
reference-feet = Fuß am Boden
reference-cadenceLane = Trittfrequenz (U/min)
reference-speedLane = Tempo
reference-scale = { $low } – { $high }
reference-lane = { $what }: { $range }
reference-best = die beste Fahrt
reference-ridden = was gefahren wurde
reference-legend = Zeichen an der Straße: ▲ leichter schalten, ▼ schwerer schalten.
reference-shift =
    { $direction ->
        [easier] leichter bei { $at }: { $gear }
       *[harder] schwerer bei { $at }: { $gear }
    }
reference-list = Alle Schaltvorgänge als Liste

## Neben dem, was gefahren wurde

compare-title = Neben der echten Fahrt
compare-times = Du hast von { $from } bis { $to } { $rode } gebraucht, mit Pausen; die beste Fahrt braucht { $best }.
# $watts: told from the recorded ride. $theirs: of the rider of the best ride.
compare-power =
    { $how ->
        [same] Die Anstiege zeigen: Du bist mit etwa { $watts } W gefahren, als wäre kein Wind gewesen. Die beste Fahrt hat dieselbe Leistung.
        [other] Die Anstiege zeigen: Du bist mit etwa { $watts } W gefahren, als wäre kein Wind gewesen. Die beste Fahrt hat { $theirs } W: Ein Teil des Unterschieds ist Leistung, nicht Schalten.
        [helped] Mit einem Motor zeigen die Anstiege nicht, was deine Beine gaben und was er tat. Die beste Fahrt hat { $theirs } W und die Unterstützung, die am Rad eingestellt ist.
       *[unknown] Es ging zu wenig bergauf, um deine Leistung zu erkennen. Die beste Fahrt hat { $theirs } W: Ein Teil des Unterschieds kann Leistung sein, nicht Schalten.
    }
compare-withCadence = Zwischen { $from } und { $to } bist du hier mit { $rode } Tritten pro Minute gefahren; die beste Fahrt ist dort im Gang { $gear }, mit { $cadence }.
compare-withSpeed = Zwischen { $from } und { $to } bist du { $rode } gefahren; die beste Fahrt ist dort im Gang { $gear }, mit { $speed }.
compare-noCadence = Die Datei enthält keine Trittfrequenz, darum lässt sich nur das Tempo vergleichen.
compare-notKept = Tempo und Trittfrequenz dieser Fahrt werden nur hier gezeigt. Sie gehören nicht zum Level.
compare-keep = Auf diesem Gerät behalten
compare-kept = Auf diesem Gerät behalten, neben dem Level. In einen Link oder eine Datei kommen sie nie.
compare-forget = Löschen
compare-saveFirst = Speichere zuerst das Level.
compare-waits = Kommt, sobald die beste Fahrt geplant ist.

## Eine Probefahrt

try-title = Probefahrt
try-from = Beginn bei
try-start = Beginn der Probefahrt
try-ride = Ab da fahren
try-hint = Auf deinem eigenen Rad. Probefahrten werden nicht aufbewahrt.

## Weitergeben

share-title = Weitergeben
share-intro = Link, Code und Datei enthalten das Level selbst: seine Straße, seinen Titel und seinen Satz. Sonst nichts.
share-link = Link
share-copy = Link kopieren
share-copied = Kopiert.
share-copyFailed = Der Browser ließ das Kopieren nicht zu. Markiere den Link und kopiere ihn von Hand.
share-code = Der Link als Code für eine Kamera
share-tooLong = Diese Straße ist zu lang für einen Code. Nimm den Link oder die Datei.
share-file = Als Datei herunterladen

## Das Level als Text

json-title = Als Text
json-intro = Dasselbe Level als JSON. Was du hier änderst, ändert die Straße, und umgekehrt.
json-field = Das Level als JSON
json-good = Das ist das Level in der Werkstatt.
json-bad = Noch nicht übernommen:
json-line = Zeile { $line }

## Ein Level, das als Link oder Datei kam

opened-title = Ein Level für dich
opened-intro = Es ist noch nicht gespeichert. Sieh es dir erst an.
opened-keep = Behalten
opened-ride = Fahren, ohne es zu behalten
opened-leave = Lieber nicht
opened-badTitle = Das lässt sich nicht öffnen
opened-already = Genau diese Straße hast du schon: „{ $title }“.
opened-keepCopy = Noch eine Kopie behalten
opened-climbed = Bergauf
opened-fingerprint = Fingerabdruck der Straße
opened-reading = Wird ausgepackt …
opened-no = Dieser Browser kann den Link nicht auspacken. Bitte um die Datei.

## Eine Straße aus einer aufgezeichneten Fahrt

road-title = Eine Straße aus einer GPX-Datei
road-intro = Die Datei wird hier gelesen, in deinem Browser, und geht nirgendwohin. Ein Level enthält nur Höhen und Entfernungen.
road-choose = GPX-Datei wählen
road-drop = oder irgendwo auf diese Seite ziehen. Sie darf gepackt sein (.gz oder .zip).
road-reading = Wird gelesen: { $share }
road-cancel = Abbrechen
road-cancelled = Abgebrochen. Nichts wurde behalten.
road-refused = Aus dieser Datei wird keine Straße
road-facts = { $length }, { $climbed } bergauf, bis { $steepest }, aus { $points } Punkten.
road-quality = Wie weit man ihren Höhen trauen kann
road-grades-good = Gut: Sie passen zueinander.
road-grades-fair = Mittel: mit Vorsicht zu verwenden.
road-grades-poor = Schlecht: Die Berge sind vielleicht nicht da, wo sie scheinen.
road-notes = Was berichtigt wurde
road-questions = Zu entscheiden
road-options-join = alle, aneinandergehängt
road-options-straight = geradlinig überbrücken
road-options-longest-part = nur das längste Stück ohne Lücke
road-options-metres = Meter
road-options-feet = Fuß
road-track = nur Nummer { $track }
road-stretch = Welches Stück?
road-profile = Die aufgezeichnete Straße von der Seite, mit dem gewählten Stück
road-hardest = Die härtesten { $length }
road-whole = Die ganze Straße
road-longest = Die ersten { $length }
road-chosen = Das Level: { $length }, { $climbed } bergauf, bis { $steepest }.
road-flatter = Aufgezeichnet ist die Straße steiler: { $climbed } bergauf, bis { $steepest }. Ein Level geht bis { $limit }, darum steigen seine steilen Stücke weniger.
road-titleField = Titel des Levels
road-titleHint = Deiner; aus der Datei wird nichts übernommen.
road-sentence = Eine Straße, die wirklich gefahren wurde.
road-make = Als Level speichern
road-needsTitle = Gib dem Level einen Titel.
road-timed = In der Datei steht, wie schnell gefahren wurde. In der Werkstatt kannst du das vergleichen.
road-working = Einen Moment …
