### Die Leiter der Level, und freie Fahrten.

intro = Von oben nach unten, oder wo du magst. Jedes Level übt eine Sache.
own = Deine eigenen
ridden = Gefahren
best = Bestwert: { $total } von 100
best-not-passed = Bestwert: { $total }, noch nicht bestanden
next = Als Nächstes
length = { $length } lang
needs-derailleur = für Gänge auf Ritzeln
needs-hub = für Gänge in der Nabe, ohne Motor
needs-motor = für Räder mit Motor
needs-crank-motor = für Räder mit Mittelmotor
needs-wheel-motor = für Räder mit Nabenmotor
pitches =
    { $count ->
        [one] { $count } Rampe
       *[other] { $count } Rampen
    }
none = In dieser Kopie des Spiels sind keine Level.
patches = Aufnäher

## Free rides

free-title = Freie Fahrt
free-intro = Jede Straße, die du magst. Gleicher Name, gleiche Berge, gleiche Länge: auf jedem Gerät dieselbe Straße.
free-seed = Name der Straße
free-seedHint = Ein Wort oder eine Zahl.
free-seedEmpty = Gib der Straße einen Namen, oder nimm eine andere Straße.
free-another = Andere Straße
free-hilliness = Berge
free-hilly-0 = fast flach
free-hilly-1 = sanft
free-hilly-2 = hügelig
free-hilly-3 = steil
free-hilly-4 = sehr steil
free-length = Länge
free-facts =
    { $pitches ->
        [0] { $length }, keine Rampe, höchstens { $steepest }, insgesamt { $climbed } bergauf.
        [one] { $length }, { $pitches } Rampe, höchstens { $steepest }, insgesamt { $climbed } bergauf.
       *[other] { $length }, { $pitches } Rampen, höchstens { $steepest }, insgesamt { $climbed } bergauf.
    }
free-profile = Verlauf der Straße: { $facts }
free-ride = Diese Straße fahren
free-link = Link zu dieser Straße
free-copy = Link kopieren
free-copied = Kopiert. Wer ihn öffnet, fährt dieselbe Straße.
free-notCopied = Der Browser ließ das Kopieren nicht zu. Der Link ist markiert: Kopiere ihn von Hand.
free-bad-unreadable = Dieser Link zu einer freien Fahrt ist nicht zu lesen. Er sollte auf free-, eine Zahl, die Berge von 0 bis 100 und die Länge in Metern enden, etwa free-42-50-2000. Wähle stattdessen hier eine Straße.
free-bad-seed = Die Nummer der Straße in diesem Link ist zu groß. Wähle stattdessen hier eine Straße.
free-bad-hilliness = Die Berge in diesem Link liegen über 100. Wähle stattdessen hier eine Straße.
free-bad-length = Die Straße in diesem Link ist nicht { $shortest } bis { $longest } lang. Wähle stattdessen hier eine Straße.
