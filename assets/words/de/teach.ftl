### Stundenbilder: was die Leitung sagt und tut, Übungskarten, ein Blatt für zu Hause und eine Urkunde, auch auf Papier: je eine Seite.

intro = Was du sagst, was ihr fahrt, was ihr draußen auf dem echten Rad übt und was du austeilst.
back = Alle Stundenbilder

audiences-adults = Erwachsene Neulinge
audiences-mixed = Gemischte Gruppen
audiences-children = Kinder
# A length, as short as can be.
min = { $minutes } Min.
sheets = Zum Austeilen
cards = Übungskarten
cardsHint = Vier auf einem Blatt, zum Ausschneiden
home = Blatt für zu Hause
homeHint = Für ein Kind und seine Eltern
certificate = Urkunde
certificateHint = Was gelernt wurde, ohne Punkte
own = Deine Kopien
# Name of a file, where the title of a plan has no letters: small, without spaces.
fileName = stundenbild
# Read out for a button: a length as it stands there, and for whom.
lengthFor = { $length }, { $audience }
# The title of a plan, and of the file of a copy: for whom, and how long.
planTitle = { $audience }, { $minutes } Minuten
open = Kopie öffnen
openHint = Eine Datei, die hier gespeichert wurde
ownGone = Eine Kopie steht nur in ihrer Datei. Öffne die Datei noch einmal.
print = Drucken
change = Eine Kopie ändern
save = Als Datei speichern
done = Das Blatt zeigen
changing = Deine Kopie
changeHint = Ein Satz je Zeile. Speichere sie als Datei, bevor du diese Seite schließt.

fields-title = Titel
fields-minutes = Minuten
fields-level = Straße
rideRoad = Diese Straße fahren
toClinic = Mit einer Gruppe loslegen
road = Straße: { $road }
noRoad = Die Straße zu diesem Stundenbild ist nicht auf diesem Gerät.

parts-warmUp = Aufwärmen
parts-say = Sagen
parts-road = Im Spiel fahren
parts-question = Am Gruppenbild fragen
parts-drill = Draußen auf dem echten Rad
parts-watch = Darauf achten
parts-end = Zum Schluss

# Labels before what a drill needs and so on, on a card and in a plan.
row-needs = Nötig:
row-safe = Sicherheit:
row-watch = Darauf achten:
row-easier = Einfacher:
row-harder = Schwieriger:
# $drill: the title of a drill in a plan, before what is done.
drillInPlan = { $drill }.

problems-too-big = Diese Datei ist zu groß für ein Stundenbild. Öffne eine, die auf dieser Seite gespeichert wurde.
problems-not-json = Diese Datei ist nicht zu lesen. Öffne eine, die auf dieser Seite gespeichert wurde.
problems-not-a-session-plan = Diese Datei ist kein Stundenbild. Öffne eine, die auf dieser Seite gespeichert wurde.
problems-newer-schema = Eine neuere Version des Spiels hat dieses Stundenbild gespeichert. Aktualisiere das Spiel hier, dann öffne es noch einmal.
problems-dirty-text = In diesem Stundenbild sind Zeichen, die sich nicht anzeigen lassen. Nimm sie in einem Textprogramm heraus, dann öffne es noch einmal.

# After the cautions of cautions.ftl, on every page. Exact: somebody could be hurt.
moreCautions =
    Finger weg von einer laufenden Kette.
    Gänge in der Nabe schaltet man umgekehrt: Druck weg, oder wenn das Rad steht; danach wieder treten. Mit Rücktrittbremse drehen sich die Pedale nicht rückwärts.
    Räder mit Motor fahren kräftig an, brauchen länger zum Anhalten und sind schwer; ein angetriebenes Vorderrad rutscht auf Nässe: Fahr sanft an, und nur so, wie es das Recht an deinem Ort erlaubt. Mittelmotor: locker treten (Nabe: Druck weg), einen Atemzug warten, dann schalten.
defers = Folge dem, was dein Verband, deine Schule oder deine Übungsleitung mit Lizenz sagt; das und das Recht an deinem Ort gehen diesem Blatt vor.
practice = Alles andere auf dieser Seite ist übliche Praxis, ohne Quelle.

sources-adults =
    Höchstens 12 Personen je Übungsleitung, zwei oder drei Termine von ein bis zwei Stunden; Neulinge einzeln oder zu zweit je Übungsleitung (AustCycle, Australien, 2012).
    Ein Kurs für Erwachsene hat 9 Stunden, 5 davon auf dem Rad (Kurs aus den USA, docslib.org 11303719).
    Mit Kettenschaltung: schalten, bevor es nötig ist, und weitertreten (Special Olympics, coaching guide, Shifting gears).
sources-mixed =
    Höchstens 12 Personen je Übungsleitung, zwei oder drei Termine von ein bis zwei Stunden (AustCycle, Australien, 2012).
    England, Stufe 1, abseits des Verkehrs: 9 bis 12 Personen zwei Stunden, 5 bis 8 anderthalb, 2 bis 4 eine, je Übungsleitung (delivery guide 8.3.1).
    Mit Kettenschaltung: schalten, bevor es nötig ist, und weitertreten (Special Olympics, coaching guide, Shifting gears).
sources-children =
    „Die Gänge richtig benutzen (wenn das Rad welche hat)“ gehört zur Stufe 1, abseits des Verkehrs (UK cycle training standard, 2005).
    England, Stufe 1: 9 bis 12 Kinder zwei Stunden, 5 bis 8 anderthalb, 2 bis 4 eine, je Übungsleitung (delivery guide 8.3.1).
    Ab 8 Jahren, in der Praxis 15 je Übungsleitung, drei Stunden (Stufe 1, Neuseeland). Etwa 9 Jahre, mit Bremsen und Gängen (Stufe 1, Schottland, Elternheft 2014).

homeSheet-title = Für zu Hause
homeSheet-child = Für dich
homeSheet-childLines =
    Heute habe ich geübt: Klick vor dem Berg.
    Zeig deiner Familie, welcher Hebel es leichter macht.
    Such drei Berge bei dir in der Nähe. Wo würdest du klicken?
    Hör hin: Ist dein Klick leise oder laut?
homeSheet-draw = Mal einen Berg und ein Kreuz, wo du klickst.
homeSheet-parents = Für Eltern
homeSheet-parentLines =
    Seht vor jeder Fahrt nach Bremsen, Reifen, Sattel und Helm. Ein Gang, der springt oder kratzt, ist Sache der Fachwerkstatt.
    Fahrt zuerst zusammen an einem ruhigen, ebenen, abgesperrten Ort. Immer ist eine erwachsene Person dabei, die aufpasst.
    Fragt „Was kommt?“ statt „Schalt jetzt!“. Das Kind findet die Stelle.
    Zehn Minuten genügen. Hört auf, solange es Spaß macht, und wenn etwas wehtut.
    Eine Kette, die ab ist, legt eine erwachsene Person wieder auf; das Rad steht dabei still.
# Before a line to write on, as are the two of the certificate.
homeSheet-name = Name, wenn du magst:

certificateSheet-title = Urkunde
# Follows a line with a name.
certificateSheet-says = hat auf dem Fahrrad geübt und gezeigt:
certificateSheet-learnt =
    Ich sehe den Berg an, bevor er kommt.
    Ich klicke vor dem Berg, nicht erst am Berg.
    Ich trete locker, solange die Kette wandert.
    Ich halte in dem Gang an, in dem ich losfahre.
    Ich kann beim Fahren sagen, was kommt.
certificateSheet-tick = Die Leitung hakt ab, was zu sehen war. Der Rest kommt beim nächsten Mal.
certificateSheet-date = Tag und Ort:
certificateSheet-coach = Leitung:

## Drills on the real bike, called across a yard: a title, what is done (each line a sentence), and what stands behind the labels

card-cone-title = Klick am Hütchen
card-cone-doing =
    Ein Hütchen steht zehn Meter vor dem Hang oder vor einem Kreidestrich.
    Fahr gemütlich darauf zu, den Blick auf den Hang.
    Am Hütchen: locker treten, einen Klick leichter, weiterfahren.
card-cone-needs = Zwei Hütchen, Kreide, 40 m ruhiger, ebener Platz mit sanftem Hang oder Strich.
card-cone-safe = Einzeln fahren, alle in einer Richtung, sechs Fahrradlängen Abstand. Niemand wartet im Auslauf.
card-cone-watch = Kommt der Klick am Hütchen, und ist er vor dem Hang fertig? Bleiben die Köpfe oben?
card-cone-easier = Erst ohne Klick: am Hütchen „jetzt“ sagen.
card-cone-harder = Hütchen weg. Alle wählen die Stelle selbst und sagen „jetzt“.
card-soft-feet-title = Locker und leise vorbei
card-soft-feet-doing =
    Fahr gemütlich an der Übungsleitung vorbei.
    Ein Klick mit lockerem Tritt, kurz vor ihr.
    Hör hin: Ein leiser Klick ist ein guter.
card-soft-feet-needs = 40 m ruhiger, ebener Platz und ein Rad, dessen Schaltung vorher geprüft wurde.
card-soft-feet-safe = Die Übungsleitung steht an der Seite und nie in der Spur. Keine Finger in der Nähe einer Kette.
card-soft-feet-watch = Bleiben die Beine stehen? Sie sollen locker weitertreten. Bei einer Nabenschaltung ruhen sie; mit Mittelmotor warten sie einen Atemzug.
card-soft-feet-easier = Nur locker treten, ohne Klick.
card-soft-feet-harder = Zwei Klicks nacheinander, dazwischen eine Kurbelumdrehung.
card-starting-gear-title = Anhalten im Anfahrgang
card-starting-gear-doing =
    Fahr auf die Haltlinie zu.
    Klick leichter, bevor du bremst, solange die Beine noch drehen (Nabenschaltung: anhalten, dann klicken).
    Halt an, ein Fuß am Boden, Bremsen gezogen. Fahr in diesem Gang wieder an.
card-starting-gear-needs = Kreide für eine Linie, 30 m ruhiger, ebener Platz. Alle probieren zuerst die Bremsen.
card-starting-gear-safe = Einzeln fahren. Die nächste Person fährt los, wenn die vorige weg ist. Motor: kleinste Unterstützung, sanft.
card-starting-gear-watch = Ist der Gang drin, bevor das Rad steht? Geht der erste Tritt leicht, ohne Wackeln?
card-starting-gear-easier = Irgendwo anhalten; die Leitung ruft „Klick“.
card-starting-gear-harder = Ohne Linie: anhalten, sobald die Leitung die Hand hebt.
card-talk-title = Reden und fahren
card-talk-doing =
    Fahr eine Runde und sag laut, was kommt: „flach“, „Berg“, „Halt“.
    Sag „Klick“, wenn du dafür schaltest.
    Wer dahinter fährt, hört nur zu und erzählt es danach.
card-talk-needs = Eine ruhige, abgesperrte Runde mit einem Anstieg oder einem Strich, der dafür steht.
card-talk-safe = Drei Fahrradlängen Abstand. Niemand überholt. Niemand dreht sich zum Reden um.
card-talk-watch = Wird der Berg vor dem Klick gesagt, und kommt der Klick vor dem Berg?
card-talk-easier = Die Leitung sagt, was kommt.
card-talk-harder = Ansagen ohne Klick; klicken, wo es richtig ist, ohne etwas zu sagen.

## The plans: what a coach says and does, each line a sentence. What is said to children has at most twelve words.
## Those who lead are spoken to shortly; under “Say” stands what they call to the group.

road-20 = Zwei fahren sie auf dem großen Bildschirm, nacheinander. Die anderen rufen „jetzt“, wo sie klicken würden.
road-45 = Alle fahren sie einmal, an zwei Geräten mit bis zu acht Personen. Wer wartet, ruft „jetzt“.
road-60 = Alle fahren sie ein- oder zweimal, an zwei Geräten mit bis zu acht Personen. Wer wartet, ruft „jetzt“.

longer-adults = Alle zeigen im Stand den Hebel, der es leichter macht; das Hinterrad ist angehoben, niemand hat die Finger nahe der Kette.
lines-adults-warmUp =
    Räder prüfen: Bremsen greifen, Reifen sind hart, Sattel und Lenker halten, Helme sitzen.
    Zwei lockere Runden; in der zweiten einen Klick schwerer und wieder einen Klick leichter.
lines-adults-say =
    Schaltet vor dem Berg, solange sich die Pedale noch leicht drehen.
    Tretet eine Umdrehung lang locker, während die Kette wandert.
    Ein Klick, spüren, dann der nächste.
lines-adults-question =
    An welcher Rampe waren die meisten von uns zu spät, und was hätten wir vorher sehen können?
    Wo würdet ihr jetzt klicken? Zeigt auf die Straße.
lines-adults-drill = An einem ruhigen, ebenen, abgesperrten Ort, alle in einer Richtung. Wie man aufbaut und für Sicherheit sorgt, steht auf den Karten.
lines-adults-watch =
    Beine, die vor dem Klick stehen bleiben; Klicks, die erst am Hang kommen; Blicke auf die Kette.
    Wer sich abmüht: zwei Gänge leichter und dieselbe Runde noch einmal. Schmerz heißt anhalten.
lines-adults-end =
    Alle nennen eine Sache, die sie vor dem nächsten Berg tun werden.
    Nächstes Mal: dieselbe Runde, der Klick etwas früher oder etwas später.

longer-mixed = Paare aus einer neuen und einer erfahrenen Person; die erfahrene fragt und erklärt nicht.
lines-mixed-warmUp =
    Räder zu zweit prüfen: Bremsen, Reifen, Sattel, Lenker, Helme.
    Zwei lockere Runden zu zweit, drei Fahrradlängen Abstand; wechseln, wer vorne fährt.
lines-mixed-say =
    Schaut nach vorn: Der nächste Berg sagt euch, welcher Gang passt.
    Seid vor dem Berg fertig mit Klicken; beim letzten Klick tretet locker.
    Schnell oder langsam ist heute egal, früh und leise zählt.
lines-mixed-question =
    Was hat die beste Fahrt vor der Rampe getan, was die meisten von uns nicht getan haben?
    Haben die Erfahrenen früher geschaltet, oder nur seltener?
lines-mixed-drill = Zu zweit an einem ruhigen, abgesperrten Ort. Wer hinten fährt, sagt danach, wo der Klick kam.
lines-mixed-watch =
    Erfahrene, die Rennen fahren: Gib ihnen einen einzigen Gang für die ganze Runde.
    Neulinge, die nachmachen, was vor ihnen geschieht: Die eigenen Beine sagen, wann.
lines-mixed-end =
    Jedes Paar erzählt eine Sache, die es beim anderen gehört oder gesehen hat.
    Nächstes Mal: die Paare andersherum.

longer-children = Alle klingeln, bremsen und klicken einmal, im Stand neben der Übungsleitung.
lines-children-warmUp =
    Eine erwachsene Person, die aufpasst, prüft jedes Rad: Bremsen, Reifen, Sattel, Helm. Wer keine Gänge hat, übt ohne den Klick.
    Zwei Runden im Gänsemarsch, langsam, eine Fahrradlänge Abstand.
lines-children-say =
    Klickt vor dem Berg, nicht erst am Berg.
    Tretet locker, solange die Kette wandert.
    Schaut auf den Berg, nicht auf die Kette.
lines-children-question =
    Welcher Berg hat die meisten von uns überrascht?
    Wo klicken wir beim nächsten Mal?
lines-children-drill = Ein Kind nach dem anderen, an einem ruhigen, abgesperrten Ort, unter Aufsicht von Erwachsenen. Wie es geht, steht auf den Karten.
lines-children-watch =
    Füße, die stehen bleiben; Köpfe, die nach unten sehen; Kinder, die im Weg warten.
    Lob den Klick, nicht das Tempo. Niemand wird mit anderen verglichen.
lines-children-end =
    Was machst du vor dem nächsten Berg?
    Zeig jemandem zu Hause, wie dein Rad klickt.
    Das Blatt für zu Hause austeilen.
