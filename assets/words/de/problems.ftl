### Was mit einem Level, einem Plan oder einem geteilten Link nicht stimmt, und was zu tun ist. Wörter in Anführung wie "atM" und
### englische wie flat stehen so in den Dateien und bleiben, wie sie sind.

## Shapes: what stands in a file against what should stand there

# What stands there now. $found: as it is in the file, where $is is value.
found =
    { $is ->
        [nothing] nichts
        [list] eine Liste
        [object] ein Objekt
       *[value] { $found }
    }
# What should stand there.
needed =
    { $needed ->
        [number] eine Zahl
        [int] eine ganze Zahl
        [string] Text in Anführungszeichen
        [boolean] true oder false
        [array] eine Liste in [ ]
        [object] ein Objekt in { "{ }" }
       *[other] etwas anderes
    }
schema-missing = Das fehlt. Nötig ist hier { needed }.
# $allowed: what may stand there, as one word or a list.
schema-missing-allowed =
    { $count ->
        [1] Das fehlt. Schreib { $allowed }.
       *[other] Das fehlt. Nimm eines von diesen: { $allowed }.
    }
schema-wrong-type = Hier steht { found }; nötig ist { needed }.
schema-endless = Diese Zahl ist zu groß zum Lesen. Nötig ist { needed }.
schema-not-allowed =
    { $count ->
        [1] Hier steht { found }; nötig ist { $allowed }.
       *[other] Hier steht { found }; das ist nicht bekannt. Nimm eines von diesen: { $allowed }.
    }
schema-characters-most = Dieser Text darf höchstens { $most } Zeichen haben; er hat { $has }.
schema-characters-least = Dieser Text braucht mindestens { $least } Zeichen; er hat { $has }.
schema-entries-most =
    { $most ->
        [one] Diese Liste darf höchstens { $most } Eintrag haben; sie hat { $has }.
       *[other] Diese Liste darf höchstens { $most } Einträge haben; sie hat { $has }.
    }
schema-entries-least =
    { $least ->
        [one] Diese Liste braucht mindestens { $least } Eintrag; sie hat { $has }.
       *[other] Diese Liste braucht mindestens { $least } Einträge; sie hat { $has }.
    }
# $found, $most, $least, $ratio and $percent: as numbers are written in the file.
schema-range-most = Hier steht { $found }; erlaubt ist höchstens { $most }.
schema-range-least = Hier steht { $found }; erlaubt ist mindestens { $least }.
# Behind the two before: people write gradients in percent.
slopes = Steigungen sind hier Höhe durch Strecke: { $percent } % schreibt man { $ratio }.
schema-bad-format = Hier steht { found }; das passt nicht. Nimm nur kleine Buchstaben, Ziffern und Bindestriche, zum Beispiel "two-pitches".
schema-invalid = Hier steht { found }; das passt nicht. Vergleiche mit einem mitgelieferten Level.
schema-more =
    { $count ->
        [one] Es gibt noch { $count } Fehler. Behebe erst diese hier.
       *[other] Es gibt noch { $count } Fehler. Behebe erst diese hier.
    }
# $where: near a line, at the end, or unknown.
not-json =
    { $where ->
        [line] Das ist nicht als JSON zu lesen; der Fehler liegt nahe Zeile { $line }. Prüfe Kommas, Anführungszeichen und Klammern.
        [end] Das ist nicht als JSON zu lesen; es endet zu früh. Prüfe Kommas, Anführungszeichen und Klammern.
       *[unknown] Das ist nicht als JSON zu lesen. Prüfe Kommas, Anführungszeichen und Klammern.
    }

## Levels. A stretch has wind, gravel or is hidden; a piece is a part of the road

level-too-big = Das ist viel zu lang für ein Level. Wähle eine Datei, die in der Level-Werkstatt gespeichert wurde.
level-empty = Diese Datei ist leer. Eine Level-Datei enthält ein Objekt in geschweiften Klammern { "{ … }" }.
level-not-a-level = Eine Level-Datei enthält ein Objekt in geschweiften Klammern { "{ … }" }.
level-too-deep = Darin steckt viel mehr, als ein Level hat. Bitte noch einmal darum, als Link oder als Datei.
level-newer-schema = Dieses Level stammt aus einer neueren Version (Format { $schema }); diese liest bis { $readsUpTo }. Aktualisiere das Spiel; die Datei blieb, wie sie ist.
level-unknown-key = "{ $key }" gehört hier nicht zu einem Level. Nimm es heraus oder prüfe die Schreibweise.
level-unknown-cue = Dieser Zuruf braucht "atM" und entweder einen bekannten "cue" oder einen "text" mit bis zu 76 Zeichen.
level-missing-kind = Die Art dieses Teils fehlt. Nimm flat, climb, pitch, descent, rollers, random-pitches oder recorded.
level-unknown-kind = Hier steht { found }; das ist keine Art von Teil. Nimm flat, climb, pitch, descent, rollers, random-pitches oder recorded.
level-no-weight = Mindestens eine Wertung braucht ein Gewicht über 0.
level-too-short = Die Straße ist { $length } lang; sie braucht mindestens { $least }. Verlängere ein Teil oder füge eines an.
level-too-long = Die Straße ist { $length } lang; fahren lassen sich höchstens { $most }. Kürze Teile oder nimm welche heraus.
level-gentler-than-steepest = Die sanfteste Rampe ist steiler als die steilste. Tausche die beiden Zahlen.
level-pitches-too-dense =
    { $pitchCount ->
        [one] { $pitchCount } Rampe braucht mindestens { $least } Straße; dieses Teil hat { $length }.
       *[other] { $pitchCount } Rampen brauchen mindestens { $least } Straße; dieses Teil hat { $length }.
    }
level-recorded-too-steep = Hier ist die aufgezeichnete Straße steiler als { $limit }. Glätte zuerst die Höhen.
level-backwards = Dieses Stück endet, bevor es beginnt. "toM" muss größer sein als "fromM".
level-beyond-end =
    { $part ->
        [cue] Dieser Zuruf liegt hinter dem Ende der Straße; sie ist { $length } lang.
       *[stretch] Dieses Stück endet hinter dem Ende der Straße; sie ist { $length } lang.
    }
# $other: its place in the file, like winds[1].
level-overlap = Dieses Stück überschneidet sich mit { $other }. Lass das eine enden, wo das andere beginnt.
level-stop-too-near =
    { $near ->
        [beyond-end] Die Haltlinie bei { $at } liegt hinter dem Ende der Straße; sie ist { $length } lang.
        [end] Die Haltlinie bei { $at } braucht noch { $least } Straße hinter sich; die Straße endet bei { $length }.
        [start] Die Haltlinie bei { $at } braucht { $least } Straße zwischen sich und dem Start.
       *[line] Die Haltlinie bei { $at } braucht { $least } Straße zwischen sich und der Haltlinie bei { $last }.
    }

## Levels that may be ridden, but will surprise. $gear is like 34 × 34

level-cannot-climb = Wer hier fährt, muss von { $from } bis { $to } schieben (bis zu { $slope }), auch im leichtesten Gang ({ $gear }): etwa { $walkS } s zu Fuß.
# These two stand behind the one before. $metres: how far a turn of the pedals carries.
takes-gear = Zum Fahren wäre ein Gang von { $metres } je Kurbelumdrehung nötig.
takes-power = Kein Gang hilft; zum Fahren wären mehr als { $watts } W nötig.
level-cannot-hold-cadence = Auf der Steigung von { $slope } bei { $at } sind im leichtesten Gang ({ $gear }) keine { $heldRpm } U/min zu halten; es bleiben { $cadenceRpm } U/min.
level-stop-uphill = Die Haltlinie bei { $at } liegt in { $slope } Steigung: Dort wieder anzufahren ist ein Kampf.
level-stop-downhill = Die Haltlinie bei { $at } liegt in { $slope } Gefälle: Beim Anfahren lernt man dort nichts.
level-hidden-long = Die Straße bleibt { $length } lang verdeckt, bei { $sight } Sicht: Das ist blind fahren, nicht vorausschauen.
level-hidden-pitch = Die Rampe mit { $steepest } bei { $foot } sieht man erst { $sight } vorher; so schnell kann niemand schalten.
level-seed-unused = In diesem Level ist die Straße bei jeder Fahrt dieselbe, so zeigt sich nicht, was gelernt wurde. Füge Wellen oder zufällige Rampen an.
# $seed: another seed of chance.
level-seed-moves-stop = Mit einer anderen Zahl für den Zufall ({ $seed }) kommt diese Haltlinie in { $slope } zu liegen.

## Plans of group sessions

plan-too-big = Das ist viel zu lang für einen Plan. Bitte die Leitung noch einmal darum.
plan-not-a-plan = Eine Plan-Datei enthält ein Objekt in geschweiften Klammern { "{ … }" }.
plan-too-deep = Darin steckt viel mehr, als ein Plan hat. Bitte die Leitung noch einmal darum.
plan-newer-schema = Dieser Plan stammt aus einer neueren Version (Format { $schema }); diese liest bis { $readsUpTo }. Aktualisiere das Spiel; die Datei blieb, wie sie ist.
plan-unknown-key = "{ $key }" gehört nicht zu einem Plan. Nimm es heraus oder prüfe die Schreibweise.
plan-unknown-kind = Eine Fahrt in einem Plan hat die Art bundled, own oder check.
plan-bad-format = Nimm nur kleine Buchstaben, Ziffern und Bindestriche, zum Beispiel "first-evening".
plan-invalid = Das passt hier nicht. Vergleiche mit einem fertigen Plan.
plan-dirty-text = Der Titel hat unsichtbare Zeichen, oder Leerzeichen am Anfang oder Ende. Gib ihn noch einmal ein.
# $first: one or two words; $others: a list.
plan-unknown-bike = Dieses Rad gibt es nicht. Nimm { $first } oder eines von diesen: { $others }.
plan-unknown-rider = Diese Person gibt es nicht. Nimm { $first } oder eine von diesen: { $others }.
plan-unknown-level = Ein Level "{ $levelId }" gibt es hier nicht. Wähle ein anderes, oder leg das Level selbst in den Plan.

## Shared links

link-too-big = Was geteilt wurde, ist zu groß für ein Level.
link-not-packed = Was geteilt wurde, ist kein Level. Teile es noch einmal aus der Level-Werkstatt.
link-not-shared = Das ist kein geteiltes Level. Kopiere den ganzen Link, vom ersten bis zum letzten Zeichen.
link-newer-version = Dieses Level wurde aus einer neueren Version geteilt (Format { $version }); diese liest bis { $readsUpTo }. Aktualisiere das Spiel.
link-damaged = Das geteilte Level ist unvollständig oder wurde unterwegs verändert. Kopiere den ganzen Link noch einmal.
link-unknown-packing = Das geteilte Level ist auf eine Art gepackt, die hier nicht bekannt ist. Aktualisiere das Spiel.
