### Speichern, Zurückholen und Löschen dessen, was auf dem Gerät aufbewahrt ist.

title = Was hier aufbewahrt ist
count =
    { $rides ->
        [0] Noch ist keine Fahrt aufbewahrt. Fahrten und deine Einstellungen bleiben auf diesem Gerät.
        [one] { $rides } Fahrt ist auf diesem Gerät aufbewahrt, dazu deine Einstellungen. Browser räumen manchmal weg, was lange unbenutzt war; speichere darum ab und zu eine Datei.
       *[other] { $rides } Fahrten sind auf diesem Gerät aufbewahrt, dazu deine Einstellungen. Browser räumen manchmal weg, was lange unbenutzt war; speichere darum ab und zu eine Datei.
    }
save = Alles als Datei speichern
takeBack = Eine Datei zurückholen
remove = Hier alles löschen
# Names of files, without blanks and accents.
fileEverything = before-the-hill.alles
fileReport = before-the-hill.bericht
failed = Das hat nicht geklappt. Lade die Seite neu, dann versuch es noch einmal.

## Deleting

sureTitle = Alles löschen?
sure =
    { $rides ->
        [one] { $rides } Fahrt und alle deine Einstellungen verschwinden von diesem Gerät. Das lässt sich nicht rückgängig machen.
       *[other] { $rides } Fahrten und alle deine Einstellungen verschwinden von diesem Gerät. Das lässt sich nicht rückgängig machen.
    }
keep = Behalten
saveFirst = Erst speichern
removeSure = Alles löschen
deleted = Alles von diesem Spiel ist auf diesem Gerät gelöscht.
notDeleted = Nicht alles ließ sich löschen. Schließe andere Tabs mit dem Spiel, dann versuch es noch einmal.

## Saving and taking back

savedAll =
    { $rides ->
        [one] Gespeichert: { $rides } Fahrt und deine Einstellungen.
       *[other] Gespeichert: { $rides } Fahrten und deine Einstellungen.
    }
savedPart = Gespeichert ist, was zu lesen war. Der Browser gab nicht alles her; versuch es noch einmal, bevor du löschst.
notAFile = Diese Datei hat das Spiel nicht gespeichert. Wähle eine, die auf .json endet.
tooBigFile = Diese Datei ist viel größer, als eine Kopie sein kann. Wähle die, die „Alles als Datei speichern“ gemacht hat.
takingBack = Die Datei wird zurückgeholt …
stopTaking = Anhalten
stopped = Angehalten. Bisher zurückgeholt: { $added }; wähle die Datei noch einmal, dann geht es weiter.
newerFile = Diese Datei stammt aus einer neueren Version. Lade die Seite neu, um das Spiel zu aktualisieren; geändert wurde nichts.
changedFile = Diese Datei wurde nach dem Speichern geändert oder beschädigt. Es wurde nichts daraus genommen.
changedTitle = Trotzdem nehmen?
changedSure = Diese Datei wurde nach dem Speichern geändert oder beschädigt. Weißt du, woher sie kommt, kannst du zurückholen, was noch zu lesen ist. Fahrten, die hier sind, bleiben, wie sie sind.
changedLeave = Lieber nicht
changedTake = Lesbares zurückholen
# The file names a club's own store.
namesStore = Sie nennt auch einen Speicher des Vereins bei { $host }. Dorthin wird nichts gesendet.
lookAtStore = Ansehen
takenBack = Zurückgeholt: { $added }; schon hier: { $already }.
refused = Nicht lesbar und darum ausgelassen: { $refused }.

health-slow =
    Was auf diesem Gerät liegt, ist noch nicht geöffnet. Darum fehlen deine eigenen Level und deine Ergebnisse. Bleibt das so, lade die Seite neu.
health-memory = Dieses Fenster bewahrt nichts auf. Deine Fahrten sind weg, wenn du es schließt.
health-small-copy = In diesem Fenster bleibt nur deine jüngste Wertung, nicht die Fahrten selbst.
health-disk-full =
    Auf diesem Gerät ist kein Platz mehr, neue Fahrten werden nicht aufbewahrt. Schaff Platz; das Spiel versucht es dann wieder.
health-recordings-lost =
    Von manchen Fahrten ist nur die Wertung da: Die Fahrten selbst sind verloren und lassen sich nicht noch einmal ansehen.

## A ride that broke off

unfinished-olderLegs = Seit dieser Fahrt haben sich die Beine im Spiel geändert, darum geht sie nicht weiter. Behalte das Gefahrene, oder verwirf es.
unfinished-kept = Das Gefahrene ist aufbewahrt. Du findest es unter Fortschritt, ohne Wertung.
unfinished-notKept = Es ließ sich gerade nicht aufbewahren. Es bleibt hier; versuch es noch einmal.
