### Opslaan, terughalen en wissen van wat op het apparaat bewaard is.

title = Wat hier bewaard is
count =
    { $rides ->
        [0] Er is nog geen rit bewaard. Ritten en je keuzes blijven op dit apparaat.
        [one] Op dit apparaat is { $rides } rit bewaard, met je keuzes. Browsers ruimen soms op wat lang niet is gebruikt; sla dus af en toe een bestand op.
       *[other] Op dit apparaat zijn { $rides } ritten bewaard, met je keuzes. Browsers ruimen soms op wat lang niet is gebruikt; sla dus af en toe een bestand op.
    }
save = Sla alles op als bestand
takeBack = Haal een bestand terug
remove = Wis hier alles
# Names of files, without blanks and accents.
fileEverything = before-the-hill.alles
fileReport = before-the-hill.verslag
failed = Dat is niet gelukt. Laad de pagina opnieuw en probeer het nog eens.

## Wissen

sureTitle = Alles wissen?
sure =
    { $rides ->
        [one] { $rides } rit en al je keuzes verdwijnen van dit apparaat. Dit kan niet ongedaan worden gemaakt.
       *[other] { $rides } ritten en al je keuzes verdwijnen van dit apparaat. Dit kan niet ongedaan worden gemaakt.
    }
keep = Bewaar het
saveFirst = Sla eerst een bestand op
removeSure = Wis alles
deleted = Alles van dit spel is van dit apparaat gewist.
notDeleted = Niet alles kon worden gewist. Sluit andere tabbladen van het spel en probeer het opnieuw.

## Opslaan en terughalen

savedAll =
    { $rides ->
        [one] Opgeslagen: { $rides } rit en je keuzes.
       *[other] Opgeslagen: { $rides } ritten en je keuzes.
    }
savedPart = Opgeslagen wat gelezen kon worden. De browser gaf niet alles; probeer het opnieuw voordat je wist.
notAFile = Dit is geen bestand dat door dit spel is opgeslagen. Kies er een dat eindigt op .json.
tooBigFile = Dit bestand is veel groter dan een kopie kan zijn. Kies het bestand dat met “Sla alles op” is gemaakt.
takingBack = Het bestand wordt teruggehaald …
stopTaking = Stoppen
stopped = Gestopt. Tot nu toe { $added } teruggehaald; kies het bestand opnieuw om verder te gaan.
newerFile = Dit bestand is door een nieuwere versie opgeslagen. Laad de pagina opnieuw om bij te werken; er is niets veranderd.
changedFile = Dit bestand is na het opslaan veranderd of beschadigd. Er is niets uit overgenomen.
changedTitle = Toch terughalen?
changedSure = Dit bestand is na het opslaan veranderd of beschadigd. Weet je waar het vandaan komt, dan kan worden teruggehaald wat nog te lezen is. Ritten die hier zijn, blijven zoals ze zijn.
changedLeave = Laat maar
changedTake = Neem wat te lezen is
# Het bestand noemt een eigen opslag van een club.
namesStore = Het noemt ook een opslag op { $host }. Daar wordt niets naartoe gestuurd.
lookAtStore = Bekijken
takenBack = { $added } teruggehaald, { $already } al aanwezig.
refused = Niet te lezen en weggelaten: { $refused }.

health-slow =
    Wat op dit apparaat bewaard is, is nog niet geopend. Daarom zie je je eigen levels en resultaten niet. Blijft dit zo staan, laad de pagina dan opnieuw.
health-memory = Dit venster bewaart niets. Je ritten zijn weg zodra je het sluit.
health-small-copy = In dit venster worden alleen je nieuwste punten bewaard, niet de ritten.
health-disk-full =
    Dit apparaat heeft geen ruimte meer, dus nieuwe ritten worden niet bewaard. Maak ruimte; het spel probeert het dan opnieuw.
health-recordings-lost =
    Van sommige ritten zijn hier alleen de punten over: de ritten zelf zijn weg en kun je niet meer terugkijken.

## Een rit die werd afgebroken

unfinished-olderLegs = Deze rit is gereden voordat de benen in het spel veranderden en kan niet verder. Bewaar wat je reed, of gooi het weg.
unfinished-kept = Wat er gereden is, is bewaard. Je vindt het onder Voortgang, zonder punten.
unfinished-notKept = Het kon nu niet worden bewaard. Het blijft hier staan; probeer het opnieuw.
