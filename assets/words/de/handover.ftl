### Einen Plan zu den Tablets tragen und die Fahrten zurück: Codes, Links, Dateien, Kamera; und ein eigener Speicher des Vereins.

size-bytes =
    { $bytes ->
        [one] { $bytes } Byte
       *[other] { $bytes } Bytes
    }
size-kilobytes = { $size } kB
rides =
    { $rides ->
        [one] { $rides } Fahrt
       *[other] { $rides } Fahrten
    }

## Codes auf dem Bildschirm

code-number = { $number } von { $all }
code-picture =
    { $all ->
        [1] Code: { $what }
       *[other] Code { $number } von { $all }: { $what }
    }
code-pause = Pause
code-play = Weiter
code-back = Voriger Code
code-next = Nächster Code
code-speed = Tempo
code-speed-slow = langsam
code-speed-usual = normal
code-speed-fast = schnell
code-big = Groß
code-jump = Code { $number } zeigen
code-hint = Die Codes folgen aufeinander. Wo die Kamera anfängt, ist egal; sie sagt, was fehlt.

## Code, Link oder Datei

carry-making = Wird gepackt …
carry-tooBig = Das ist zu viel für Codes. Nimm die Datei.
carry-link = Link
carry-copy = Link kopieren
carry-copied = Kopiert.
carry-notCopied = Über einfaches http kopiert dieser Browser nicht. Der Link ist markiert: Kopiere ihn mit der Tastatur oder dem Finger.
carry-onlyHere = Diese Seite wurde unter localhost geöffnet. Das kann kein Tablet öffnen, darum gibt es keinen Link. Starte das Spiel mit „npm start -- --host“ und teile hier noch einmal aus. Codes und Datei gehen auch so.
carry-file = Als Datei speichern
carry-longLink = Manche Messenger schneiden so lange Links ab. Die Datei ist sicherer.
carry-site = Der Link führt zu dieser Adresse; das andere Gerät muss sie öffnen können.

## Einen Plan austeilen

handOut-intro = Jedes Tablet liest das einmal ein. Danach braucht es kein Netz und nichts von diesem Bildschirm.
handOut-what = der Plan „{ $title }“
handOut-size =
    { $codes ->
        [1] { $size } · ein Code
       *[other] { $size } · { $codes } Codes
    }
handOut-own = Deine eigenen Level sind dabei.
handOut-scanOne = Halte die Kamera-App des Tablets auf den Code und öffne den Link. Oder lies ihn im Spiel auf der Seite „{ $page }“ ein.
handOut-scanMany = Öffne auf dem Tablet im Spiel die Seite „{ $page }“ und halte die Kamera auf die Codes.

## Am Abend vorher

ready-title = Zu Hause, am Abend vorher
ready-intro = Auf jedem Tablet, solange es ein Netz gibt. Diese Liste prüft das Gerät, auf das du gerade schaust.
ready-done = erledigt
ready-open = noch zu tun
ready-wrong = geht hier nicht
ready-unknown = sagt dieser Browser nicht
ready-again = Noch einmal prüfen
ready-allowCamera = Kamera erlauben
ready-keep = Browser bitten, Fahrten zu behalten
ready-secure = Über https oder unter localhost geöffnet
ready-secure-done = Diese Seite ist so geöffnet, dass Kamera und Spielen ohne Netz möglich sind.
ready-secure-wrong = Diese Seite wurde über einfaches http geöffnet: keine Kamera, keine Kopie für unterwegs, und der Bildschirm wird von selbst dunkel. Öffne das Spiel einmal zu Hause unter einer Adresse, die mit https beginnt, oder auf dem Computer, der es bereitstellt, unter localhost.
ready-offline = Eine Kopie für unterwegs
ready-offline-done = Das Spiel ist auf diesem Gerät und öffnet sich ohne Netz.
ready-offline-open = Lade diese Seite noch einmal und warte einen Moment. Am besten legst du sie über das Menü des Browsers auf den Startbildschirm.
ready-offline-wrong = Ohne https behält dieser Browser keine Kopie. Öffne das Spiel zu Hause über https.
ready-camera = Kamera erlaubt
ready-camera-done = Die Kamera kann benutzt werden.
ready-camera-open = Erlaube die Kamera jetzt, damit draußen niemand gefragt wird.
ready-camera-wrong = Es gibt keine Kamera, die diese Seite benutzen darf. Wenn doch eine da ist, erlaube sie in den Einstellungen des Browsers für diese Seite; sonst nimm den Link oder die Datei.
ready-keeping = Auf Dauer behalten
ready-keeping-done = Der Browser räumt die Fahrten nicht von selbst weg.
ready-keeping-open = Der Browser räumt Fahrten vielleicht weg, wenn er Platz braucht. Bitte ihn, es zu lassen; es hilft, das Spiel auf den Startbildschirm zu legen. Gib die Fahrten noch am selben Tag zurück.

## Codes, Links und Dateien lesen

reader-ways = Lesen mit
reader-camera = Kamera
reader-picture = Bild oder Datei
reader-text = Link oder Text
reader-start = Kamera einschalten
reader-stop = Kamera ausschalten
reader-loading = Der Code-Leser wird geladen …
reader-looking = Halte den Code so, dass er das Bild fast ausfüllt.
reader-noReader = Der Code-Leser ließ sich nicht laden. Ist das Netz weg? Nimm den Link oder die Datei.
reader-video = Was die Kamera sieht
camera-not-secure = Die Kamera geht nur, wenn diese Seite über https oder unter localhost geöffnet wurde. Mach mit der Kamera-App des Tablets ein Bild und wähle es hier, oder nimm den Link oder die Datei.
camera-refused = Die Kamera wurde nicht erlaubt. Erlaube sie in den Einstellungen des Browsers für diese Seite, oder nimm ein Bild, den Link oder die Datei.
camera-none = Hier gibt es keine Kamera. Nimm ein Bild, den Link oder die Datei.
camera-in-use = Ein anderes Programm benutzt die Kamera. Schließe es und versuch es dann noch einmal.
reader-choose = Bilder oder Dateien wählen
reader-chooseHint = Bilder von Codes oder eine Datei, die dieses Spiel gespeichert hat. Es dürfen mehrere auf einmal sein.
reader-noCode = In { $name } war kein Code zu lesen. Mach das Bild aus der Nähe, gerade von vorn und ohne Spiegelung.
reader-paste = Link oder Text eines Codes oder einer Datei einfügen
reader-take = Lesen
reader-reading = Die Fahrten werden gelesen …
reader-stopReading = Lesen abbrechen
reader-stopped = Abgebrochen. Nichts davon wurde übernommen.
reader-failed = Das ließ sich hier nicht lesen. Schließe andere Programme und wähle es noch einmal.
reader-read =
    { $count ->
        [one] { $read } von { $count } Code gelesen.
       *[other] { $read } von { $count } Codes gelesen.
    }
reader-missing =
    { $count ->
        [one] Code { $numbers } fehlt.
       *[other] Die Codes { $numbers } fehlen.
    }
reader-cut = Der Link wurde unterwegs abgeschnitten. Kopiere ihn ganz, oder nimm den Code oder die Datei.
damaged-checksum =
    { $number ->
        [0] Ein Code kam beschädigt an. Lies ihn noch einmal.
       *[other] Code { $number } kam beschädigt an. Lies ihn noch einmal.
    }
damaged-newer-version =
    { $number ->
        [0] Ein Code stammt aus einer neueren Version des Spiels. Lade diese Seite neu, dann ist sie auf dem neuesten Stand.
       *[other] Code { $number } stammt aus einer neueren Version des Spiels. Lade diese Seite neu, dann ist sie auf dem neuesten Stand.
    }
damaged-contradicts =
    { $number ->
        [0] Ein Code sagt etwas anderes als vorher. Zeige die Codes noch einmal von vorn.
       *[other] Code { $number } sagt etwas anderes als vorher. Zeige die Codes noch einmal von vorn.
    }
damaged-too-many-messages = Es wurde zu viel Verschiedenes auf einmal gelesen. Öffne diese Seite neu.
damaged-not-a-frame = Es wurde etwas gelesen, das kein Code dieses Spiels ist.
unreadable-not-a-packet = Das gehört nicht zu diesem Spiel.
unreadable-newer-version = Das stammt aus einer neueren Version des Spiels. Lade diese Seite neu, dann ist sie auf dem neuesten Stand.
unreadable-damaged = Alle Codes sind da, aber zusammen sind sie nicht, was gesendet wurde. Zeige sie noch einmal.
unreadable-nothing = Da ist nichts drin.
unreadable-too-big = Das ist zu groß für Fahrten oder einen Plan. Speichere es noch einmal auf dem Tablet, von dem es kommt, und wähle es dann hier.
reader-wrongPlan = Dieser Plan lässt sich nicht verwenden:
reader-isPlan = Das ist ein Plan, das sind keine Fahrten. Öffne ihn unter „{ $page }“.
reader-isRides = Das sind Fahrten, das ist kein Plan. Öffne sie auf dem Gerät der Leitung unter „{ $page }“.

## Ein Tablet macht mit

join-intro = Lies den Code der Leitung ein oder öffne den Link. Kein Tippen, keine Namen.
join-found = Das hat die Leitung geplant
join-rides = Was gefahren wird
join-unknownLevel = { $level }: nicht auf diesem Gerät
join-ownLevel = eigenes Level der Leitung
join-missing = Ein Level dieses Plans fehlt im Spiel auf diesem Gerät. Aktualisiere zuerst das Spiel: Lade diese Seite neu, solange es ein Netz gibt.
join-join = Mitmachen
join-no = Nicht dieser
join-here = Dieses Gerät macht schon mit. Seine Fahrten bleiben, wie sie sind.
join-other = Dieses Gerät macht mit einer älteren Fassung dieses Plans mit. Bisherige Fahrten bleiben bei dieser Fassung.
join-go = Zur Gruppe

## Ein Tablet gibt zurück

handBack-intro = Zeige die Codes der Kamera der Leitung. Zweimal ist wie einmal; gelöscht wird hier nichts.
handBack-tablet = Dieses Tablet: { $tablet }
handBack-none = In dieser Gruppe ist hier noch keine Fahrt gefahren worden.
handBack-marksOnly = Codes und Link enthalten die Wertungen. Die Datei enthält die ganzen Fahrten, damit die Leitung sie ansehen und noch einmal werten kann.

## Die Leitung sammelt ein

collect-intro = Halte die Kamera auf die Codes jedes Tablets, oder nimm seinen Link oder seine Datei. Reihenfolge und Wiederholungen spielen keine Rolle.
collect-tablets = Was von wem gekommen ist
collect-nobody = Noch ist nichts gekommen.
collect-noSession = Auf diesem Gerät gibt es keine Stunde, zu der diese Fahrten gehören. Öffne sie auf dem Gerät der Leitung.
column-tablet = Tablet
column-here = Hier
column-missing = Fehlt
column-since = Fehlt seit
column-heard = Zuletzt gehört
missing-nothing = nichts
missing-rides =
    { $count ->
        [one] Fahrt { $numbers } ({ $count } fehlt)
       *[other] Fahrten { $numbers } ({ $count } fehlen)
    }
ago-now = gerade eben
ago-minutes = { $minutes } min
ago-hours = { $hours } h
ago-neverSaid = Lücke in der Zählung
ago-never = nie
took =
    { $fresh ->
        [0] { $known ->
            [one] Nichts Neues: { $known } Fahrt war schon hier.
           *[other] Nichts Neues: { $known } Fahrten waren schon hier.
        }
        [one] { $known ->
            [0] { $fresh } Fahrt übernommen.
            [one] { $fresh } Fahrt übernommen, { $known } war schon hier.
           *[other] { $fresh } Fahrt übernommen, { $known } waren schon hier.
        }
       *[other] { $known ->
            [0] { $fresh } Fahrten übernommen.
            [one] { $fresh } Fahrten übernommen, { $known } war schon hier.
           *[other] { $fresh } Fahrten übernommen, { $known } waren schon hier.
        }
    }
took-damaged =
    { $pieces ->
        [one] { $pieces } Stück war beschädigt.
       *[other] { $pieces } Stücke waren beschädigt.
    }
took-otherPlan =
    { $rides ->
        [one] { $rides } Fahrt eines anderen Plans wurde weggelassen.
       *[other] { $rides } Fahrten eines anderen Plans wurden weggelassen.
    }
collect-notKept = Was kam, ließ sich auf diesem Gerät nicht behalten. Speichere es als Datei, bevor du diese Seite schließt.
checked =
    { $rides ->
        [one] { $rides } Fahrt auf diesem Gerät noch einmal gefahren; die Wertung stimmt.
       *[other] { $rides } Fahrten auf diesem Gerät noch einmal gefahren; die Wertungen stimmen.
    }
otherVersion =
    { $rides ->
        [one] { $rides } Fahrt stammt aus einer anderen Version des Spiels: Die Wertung steht da, wie sie kam; die Fahrt lässt sich aber nicht noch einmal fahren oder mit den anderen vergleichen.
       *[other] { $rides } Fahrten stammen aus einer anderen Version des Spiels: Die Wertungen stehen da, wie sie kamen; die Fahrten lassen sich aber nicht noch einmal fahren oder mit den anderen vergleichen.
    }
unknownLevel =
    { $rides ->
        [one] { $rides } Fahrt führt über ein Level, das nicht hier ist: Die Wertung steht da, wie sie kam; die Fahrt lässt sich hier aber nicht noch einmal fahren.
       *[other] { $rides } Fahrten führen über Level, die nicht hier sind: Die Wertungen stehen da, wie sie kamen; die Fahrten lassen sich hier aber nicht noch einmal fahren.
    }
marksOnly =
    { $rides ->
        [one] { $rides } Fahrt kam nur als Wertung; die Datei eines Tablets hat die ganze Fahrt.
       *[other] { $rides } Fahrten kamen nur als Wertungen; die Datei eines Tablets hat die ganzen Fahrten.
    }
withdrawn =
    { $rides ->
        [one] { $rides } Fahrt hat das eigene Tablet zurückgenommen.
       *[other] { $rides } Fahrten hat das eigene Tablet zurückgenommen.
    }
checking = Wird noch einmal gefahren: noch { $rides }.

## Was kam und nicht zählt

damaged-title = Beschädigte Stücke ({ $count })
damaged-hint = Sie zählen nicht. Lass das Tablet seine Fahrten noch einmal zeigen; eine heile Kopie nimmt ihren Platz ein.
damaged-piece =
    { $from ->
        [nobody] { $seq ->
            [0] Von einem unbekannten Tablet
           *[other] Von einem unbekannten Tablet, Fahrt { $seq }
        }
       *[tablet] { $seq ->
            [0] Tablet { $tablet }
           *[other] Tablet { $tablet }, Fahrt { $seq }
        }
    }
piece-not-json = unterwegs abgeschnitten oder verändert
piece-not-a-record = keine ganze Fahrt
piece-newer-version = aus einer neueren Version; aktualisiere hier das Spiel
piece-dirty-text = ein Name mit versteckten Zeichen
piece-checksum = unterwegs verändert
piece-recording = die Wertung ist in Ordnung, die Aufzeichnung beschädigt
piece-file-head = die erste Zeile der Datei ist beschädigt
piece-too-long = viel länger als jede Fahrt
apart-title = Beiseitegelegt ({ $count })
apart-hint = Diese Fahrten sind aufbewahrt, zählen aber nicht: Noch einmal gefahren, kommt etwas anderes heraus, als sie sagen.
apart-ride = Tablet { $tablet }, Fahrt { $seq }, { $name }
apart-totals = sagt { $said }, gefunden { $found }
apart-no-recording = nur Wertungen
apart-unknown-level = das Level ist nicht hier
apart-other-level = das Level wurde verändert
apart-other-setup = die Aufzeichnung gehört zu einer anderen Fahrt
apart-changed-bike = ein mitgeliefertes Rad mit anderen Zahlen
apart-changed-rider = eine mitgelieferte Person mit anderen Zahlen
apart-impossible-setup = ein Rad oder eine Person, die es nicht geben kann
apart-too-long = länger, als eine Fahrt sein kann
apart-not-finished = sie kam nie zu ihrem Ende
apart-other-version = auf einer anderen Version des Spiels gefahren
apart-not-same-ride = noch einmal gefahren, ist es eine andere Fahrt
apart-other-marks = noch einmal gefahren, hat sie andere Wertungen
conflict-title = Widersprüche ({ $count })
conflict-same-id = Zwei verschiedene Fahrten unter einer Kennung; beide sind aufbewahrt, keine zählt.
conflict-same-seq = Zwei Fahrten unter einer Nummer eines Tablets; beide sind aufbewahrt, keine zählt.

## Ein eigener Speicher des Vereins

store-title = Ein Speicher deines Vereins
store-intro = Alles geht auch ohne. Mit einem finden die Tablets von selbst zusammen: auf einem Computer in der Halle („npm run club“) oder in einer CouchDB-Datenbank, die der Verein betreibt oder mietet. Nichts wird irgendwohin gesendet, bevor jemand hier, auf diesem Gerät, zustimmt.
store-take-title = Einstellungen einlesen oder einfügen
store-take-hint = Der Computer mit dem Speicher zeigt sie als Code, und jedes Gerät, das ihn benutzt, auch. Die Kamera-App des Tablets öffnet den Code ebenfalls.
store-take-paste = Oder der Link mit den Einstellungen
store-take-none = Das sind keine ganzen Einstellungen eines Speichers. Lies den Code noch einmal, oder kopiere den ganzen Link.
store-give = Einstellungen einem anderen Gerät zeigen
store-give-title = Einstellungen des Speichers
store-give-hint = Ein Code für alle Tablets und alle, die leiten. Wer ihn hat, kann alle Fahrten lesen und welche hinzufügen: Zeige ihn nur denen, die das dürfen, und mach kein Foto davon.
store-give-onlyHere = Diese Seite wurde unter localhost geöffnet. Das kann kein Tablet öffnen. Starte das Spiel mit „npm run club“, oder öffne es unter der Adresse, die die Tablets benutzen.
store-give-hide = Einstellungen verbergen
store-details = Adresse, Datenbank, Name und Passwort
store-instead = Er käme an die Stelle von { $host }.
store-fetch = Jetzt holen
store-url = Adresse
store-urlHint = zum Beispiel https://rides.our-club.example
store-database = Datenbank
store-name = Name
store-password = Passwort
store-passwordHint = Bleibt auf diesem Gerät, lesbar für alle, die es benutzen. Nimm einen Namen, der sonst nichts darf.
store-plainHttp = Diese Seite darf nur mit https-Adressen sprechen, mit dem Computer, von dem sie kam, und mit diesem Computer selbst: Über einfaches http könnten andere unterwegs Name, Passwort und Fahrten lesen. Nimm https.
store-plainHere = Über einfaches http können alle in diesem Netz mitlesen. Nimm dafür ein eigenes Netz, oder starte den Speicher mit https.
store-mixed = Diese Seite wurde über https geöffnet, darum spricht der Browser nicht über http mit einem Speicher. Nimm https.
store-badAddress = Eine Adresse beginnt mit https:// und enthält weder Name noch Passwort; der Name einer Datenbank besteht aus kleinen Buchstaben und Ziffern.
store-consent = Wenn du zustimmst
store-consent-sends =
    { $typed ->
        [no] Nach jeder Fahrt einer Gruppenstunde sendet dieses Gerät an die Adresse: die Spitznamen, die Nummer dieses Tablets und die Fahrten mit ihren Wertungen. Es holt, was andere Tablets dort abgelegt haben.
       *[yes] Nach jeder Fahrt einer Gruppenstunde sendet dieses Gerät an { $host }: die Spitznamen, die Nummer dieses Tablets und die Fahrten mit ihren Wertungen. Es holt, was andere Tablets dort abgelegt haben.
    }
store-consent-more =
    Wer diesen Speicher betreut, kann das alles lesen. Sonst wird nichts gesendet und niemand gefragt.
    Frag zuerst deinen Verein, bei Kindern auch die, die für sie entscheiden. Nimm Spitznamen, an denen niemand zu erkennen ist.
    Du kannst jederzeit aufhören. Was gesendet wurde, bleibt dort, bis der Verein es löscht.
store-agree =
    { $typed ->
        [no] Ich stimme zu: an diese Adresse senden
       *[yes] Ich stimme zu: an { $host } senden
    }
store-forget = Diese Adresse vergessen
store-offered-file = Eine zurückgeholte Datei nennt { $host }. Dorthin wurde nichts gesendet. Stimme nur zu, wenn du weißt, dass es die Adresse deines Vereins ist.
store-offered-code = Das sind die Einstellungen eines Speichers bei { $host }. Dorthin wurde nichts gesendet.
store-offered-before = Von früher ist hier eine Adresse aufbewahrt: { $host }. Dorthin wird nichts gesendet, bis hier jemand noch einmal zustimmt.
store-goesTo = Fahrten gehen an { $host }
store-what = Was gesendet wird
store-whatIs = Spitznamen, die Nummer dieses Tablets und Fahrten aus Gruppenstunden mit ihren Wertungen
store-where = Wohin
store-soFar = Bisher
store-agreed = Hier zugestimmt
store-sent =
    { $rides ->
        [0] Dorthin ist noch nichts gegangen.
        [one] { $rides } Fahrt ging dorthin, zuletzt am { $moment }.
       *[other] { $rides } Fahrten gingen dorthin, zuletzt am { $moment }.
    }
store-line = Fahrten dieser Gruppe gehen an { $host }, mit Spitznamen, Wertungen und der Nummer dieses Tablets.
store-look = Ansehen
store-stop = Senden beenden
store-stopHint = Was gesendet wurde, bleibt dort, bis der Verein es löscht. Fahrten auf diesem Gerät bleiben, wie sie sind.
store-test = Fragen, ob er antwortet
store-testing = Fragt …
store-works = Der Speicher antwortet und lässt dich hinein.
store-off = Nichts wird gesendet.
store-notAsked = Seit diese Seite geöffnet wurde, hat noch keine Stunde den Speicher erreicht.
store-nothing = Nichts wartet auf den Speicher.
store-done =
    { $rides ->
        [one] Die einzige Fahrt und alle Berichte sind im Speicher.
       *[other] Alle { $rides } Fahrten und Berichte sind im Speicher.
    }
store-sending = Wird an den Speicher gesendet: noch { $left }.
store-again = Nächster Versuch in { $seconds } s.
store-safe =
    { $left ->
        [0] Alle Fahrten dieses Geräts sind dort und auch auf diesem Gerät sicher.
        [one] Noch { $left } zu senden; sie ist auf diesem Gerät sicher.
       *[other] Noch { $left } zu senden; sie sind auf diesem Gerät sicher.
    }
store-unreachable = Der Speicher antwortet nicht: kein Netz, ausgeschaltet, oder diese Seite gehört nicht zu denen, die er zulässt.
store-busy = Der Speicher hat gerade keine Zeit.
store-disk-full = Der Datenträger des Speichers ist voll. Sag es denen, die ihn betreuen.
store-wrong-password = Der Speicher nimmt diesen Namen und dieses Passwort nicht an.
store-not-allowed = Dieser Name darf nicht in diese Datenbank schreiben.
store-no-database = Diese Datenbank gibt es nicht. Sie muss erst angelegt werden.
store-bad-address = Die Adresse oder der Name der Datenbank kann nicht stimmen.
store-not-a-store = Dort antwortet etwas, aber es ist kein solcher Speicher.
store-endless = Der Speicher gibt mehr, als auf einmal aufzunehmen ist. Was kam, ist aufbewahrt; nach dem Rest wird gleich gefragt.
store-some-refused = Einige Fahrten wollte der Speicher nicht nehmen. Sie sind auf diesem Gerät sicher; gib sie als Datei weiter.
