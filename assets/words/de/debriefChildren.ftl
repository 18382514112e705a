### Die Auswertung für Kinder von etwa zehn. Was hier fehlt, wird wie zu Erwachsenen gesagt (debrief.ftl, gleiche Namen).
### Kein Satz hat mehr als zwölf Wörter; kurze, leichte Wörter, warm und nie ein Vorwurf.

## Parts that several sentences have

# Ohne Artikel, für Sätze mit „am“.
pitch =
    { $pitches ->
        [1] Berg
       *[other] Berg { $pitch }
    }
pitch-begins =
    { $pitches ->
        [1] Der Berg
       *[other] Berg { $pitch }
    }
pitch-title =
    { $pitches ->
        [1] Der Berg
       *[other] Berg { $pitch }
    }
near =
    { $side ->
        [at] genau am Anfang vom Berg
        [after] { $metres } nach dem Anfang vom Berg
       *[before] { $metres } vor dem Berg
    }
aim =
    { $side ->
        [at] genau am Anfang
        [after] genau am Anfang
       *[before] etwa { $metres } vor dem Berg
    }
gears =
    { $gears ->
        [1] einen Gang
        [2] zwei Gänge
        [3] drei Gänge
        [4] vier Gänge
        [5] fünf Gänge
        [6] sechs Gänge
        [7] sieben Gänge
        [8] acht Gänge
        [9] neun Gänge
        [10] zehn Gänge
       *[other] { $gears } Gänge
    }
made-gears =
    { $made ->
        [0] keinen Gang
        [1] einen Gang
        [2] zwei Gänge
        [3] drei Gänge
        [4] vier Gänge
        [5] fünf Gänge
        [6] sechs Gänge
        [7] sieben Gänge
        [8] acht Gänge
        [9] neun Gänge
        [10] zehn Gänge
       *[other] { $made } Gänge
    }
seconds =
    { $seconds ->
        [1] eine Sekunde
        [2] zwei Sekunden
        [3] drei Sekunden
        [4] vier Sekunden
        [5] fünf Sekunden
        [6] sechs Sekunden
        [7] sieben Sekunden
        [8] acht Sekunden
        [9] neun Sekunden
        [10] zehn Sekunden
       *[other] { $seconds } Sekunden
    }
# Wie oft.
heavy-shifts =
    { $heavy ->
        [1] einmal
        [2] zweimal
        [3] dreimal
        [4] viermal
        [5] fünfmal
        [6] sechsmal
        [7] siebenmal
        [8] achtmal
        [9] neunmal
        [10] zehnmal
       *[other] { $heavy }-mal
    }
timing =
    { $timing ->
        [too-early] zu früh
        [too-late] zu spät
       *[about-right] genau richtig
    }
mark =
    { $mark ->
        [cadence] Tempo der Beine
        [foresight] Rechtzeitig bereit
        [easing] Locker schalten
        [chainLine] Gerade Kette
       *[economy] Ruhige Hände
    }

## The question before anything is explained, and its answer

guess-title = Rate mal
guess-question = Wann hast du am { pitch } geschaltet?
guess-openQuestion = Wann hast du an deinem schwersten Berg geschaltet?
guess-why = Gar nicht geschaltet, wo es nötig war? Das ist zu spät. Dann schauen wir deine Fahrt an.
guess-skip = Zeig es mir einfach
guess-working = Wir suchen die beste Fahrt …
guess-notMarked = Deine Wertung ließ sich gerade nicht ausrechnen. Eine aufbewahrte Fahrt bekommt sie nächstes Mal.
guess-matched = Ja! Es war { timing }.
guess-differed =
    { $guess ->
        [too-early] Du hast „zu früh“ gesagt. Es war { timing }.
        [too-late] Du hast „zu spät“ gesagt. Es war { timing }.
       *[about-right] Du hast „genau richtig“ gesagt. Es war { timing }.
    }
guess-matchedKind = Gut beobachtet!
guess-differedKind = Beim Fahren merkt man das schwer.
guess-noPitch = Auf dieser Straße war kein steiler Berg.
guess-where =
    { $own ->
        [never] Du hast nicht geschaltet.
        [at] Du hast genau am Anfang vom Berg geschaltet.
        [after] Du hast { $ownMetres } nach dem Anfang vom Berg geschaltet.
       *[before] Du hast { $ownMetres } vor dem Berg geschaltet.
    } { $best ->
        [never] Die beste Fahrt hat nicht geschaltet.
        [at] Die beste Fahrt hat genau am Anfang geschaltet.
        [after] Die beste Fahrt hat { $bestMetres } nach dem Anfang geschaltet.
       *[before] Die beste Fahrt hat { $bestMetres } vor dem Berg geschaltet.
    }
guess-stepsBefore =
    { $made ->
        [0] Du hast nicht rechtzeitig geschaltet. Die beste Fahrt schaltete { needed-gears } leichter.
       *[other] Du hast rechtzeitig { made-gears } leichter geschaltet. Die beste Fahrt schaltete { needed-gears } leichter.
    }
needed-gears =
    { $needed ->
        [0] keinen Gang
        [1] einen Gang
        [2] zwei Gänge
        [3] drei Gänge
        [4] vier Gänge
        [5] fünf Gänge
        [6] sechs Gänge
        [7] sieben Gänge
        [8] acht Gänge
        [9] neun Gänge
        [10] zehn Gänge
       *[other] { $needed } Gänge
    }
guess-slowest = Deine Beine wurden am Berg zu langsam.

## What became of the ride

end-passed = Du hast es geschafft!
end-not-yet = Gut probiert. Der Berg wartet auf dich.
end-ridden = Du bist die ganze Straße gefahren.
end-explain = Schau deine Fahrt an

## Three sentences: what went well, one thing to try, what to ride next

well-title = Das war gut
well-finished = Du bist bis ans Ende gefahren.
well-cadence = Deine Beine kreisten in gutem Tempo.
well-foresight = Du hattest vor dem Berg den richtigen Gang.
well-easing = Du hast beim Schalten locker getreten.
well-chainLine = Deine Kette lief schön gerade.
well-economy = Du hast nie unnötig geschaltet.

change-title = Probier das
advice = Schalte { ready-gears } leichter, { aim }.
ready-gears =
    { $ready ->
        [1] einen Gang
        [2] zwei Gänge
        [3] drei Gänge
        [4] vier Gänge
        [5] fünf Gänge
        [6] sechs Gänge
        [7] sieben Gänge
        [8] acht Gänge
        [9] neun Gänge
        [10] zehn Gänge
       *[other] { $ready } Gänge
    }
change-late-pitch =
    { $how ->
        [slightly] Am { pitch } hast du etwas zu lange gewartet. { advice }
       *[clearly] Am { pitch } hast du zu lange gewartet. { advice }
    }
change-stayed = Am { pitch } bist du im schweren Gang geblieben. { advice }
change-early-pitch =
    { $how ->
        [slightly] Am { pitch } hast du etwas zu früh geschaltet. Warte und schalte { aim }.
       *[clearly] Am { pitch } hast du zu früh geschaltet. Warte und schalte { aim }.
    }
change-few-steps =
    { $which ->
        [few] Am { pitch } hast du { made-gears } leichter geschaltet. Du brauchst { $gears ->
            [1] einen
            [2] zwei
            [3] drei
            [4] vier
            [5] fünf
            [6] sechs
            [7] sieben
            [8] acht
            [9] neun
            [10] zehn
           *[other] { $gears }
        }.
       *[hard] Am { pitch } war dein Gang zu schwer. Schalte einen Gang leichter.
    }
change-wrong-way = Am { pitch } hast du schwerer geschaltet, nicht leichter. { advice }
change-pushed = Am { pitch } hast du sehr fest getreten. { advice }
change-foot-down = Am { pitch } war der Gang zu schwer. { advice }
change-ease =
    { $heavy ->
        [0] Tritt beim Schalten ein bisschen lockerer.
       *[other] Du hast { heavy-shifts } beim Schalten fest getreten. Erst locker treten, dann schalten.
    }
change-ease-hub =
    { $heavy ->
        [0] Hör beim Schalten kurz auf zu treten.
       *[other] Du hast { heavy-shifts } beim Schalten weitergetreten. Nicht treten, schalten, wieder treten.
    }
change-ease-motor =
    { $heavy ->
        [0] Warte, bis der Motor loslässt, dann schalte.
       *[other] Der Motor hat { heavy-shifts } beim Schalten noch gezogen. Locker treten, warten, schalten.
    }
change-ease-motor-hub =
    { $heavy ->
        [0] Warte, bis der Motor loslässt, dann schalte.
       *[other] Der Motor hat { heavy-shifts } beim Schalten noch gezogen. Nicht treten, warten, schalten.
    }
change-stood-still = Deine Beine standen beim Schalten still. Dreh sie locker weiter.
change-coasted = Ab { $place } ruhten deine Beine { seconds } lang. Lass sie kreisen.
change-coasted-hub = Ab { $place } ruhten deine Beine { seconds } lang. Tritt nach dem Schalten weiter.
change-slow-legs = Deine Beine waren langsam, vor allem ab { $place } ({ seconds }). Nimm einen leichteren Gang.
change-fast-legs = Deine Beine waren schnell, vor allem ab { $place } ({ seconds }). Nimm einen schwereren Gang.
change-crossed = Die Kette lief ab { $place } schräg, { seconds } lang. Nimm vorne das andere Blatt.
change-fidget =
    { $changes ->
        [one] Du hast { $changes }-mal geschaltet. { $needed ->
            [0] Es ging auch ohne
           *[other] { $needed }-mal reicht
        }. Warte etwas länger.
       *[other] Du hast { $changes }-mal geschaltet. { $needed ->
            [0] Es ging auch ohne
           *[other] { $needed }-mal reicht
        }. Warte etwas länger.
    }
change-dawdle = Du bist sehr langsam gefahren. Lass die Beine kreisen und fahr weiter.
change-nothing = Gar nichts. Mach es genau so noch einmal!

next-title = Deine nächste Fahrt
next-again = Fahr diese Straße noch einmal. Denk nur an das, was du probierst.
next-onwards = Weiter mit „{ $level }“.
next-onwardsNone = Such dir eine Straße aus.
next-easier-level = Fahr erst eine leichtere Straße. Dann komm wieder.

## A card for each hill

cards-title = Berg für Berg
card-needed = So viele Gänge schaltet die beste Fahrt
card-before = Deine vor dem Berg
card-worst = Langsamste Beine am Berg
card-bestDoes = Hier schaltet die beste Fahrt { gears } leichter. Sie beginnt { near }.
card-bestStays = Die beste Fahrt schaltet hier nicht.
card-asksNothing = Es geht auch ohne Schalten.
card-footDown = Hier musste dein Fuß auf den Boden.
card-timing =
    { $timing ->
        [too-early] Zu früh
        [too-late] Zu spät
       *[about-right] Genau richtig
    }
card-tendency =
    { $timing ->
        [too-early] Etwas früh
        [too-late] Etwas spät
       *[about-right] Genau richtig
    }
card-watch = Diesen Berg ansehen
card-picture = Wo beide Fahrten am { pitch } schalteten
card-table = Schalten an diesem Berg

## The marks

asks-cadence = Deine Beine kreisen in gutem Tempo.
asks-foresight = Der Gang passt schon vor dem Berg.
asks-easing = Du trittst beim Schalten locker.
asks-chainLine = Die Kette läuft gerade.
asks-economy = Du schaltest nur, wenn es nötig ist.
noMark-cadence = Du hast nicht lange genug getreten.
noMark-foresight = Für dich war kein steiler Berg dabei.
noMark-easing = Du hast gar nicht geschaltet.
noMark-chainLine = Hier gab es nichts zu sehen.
noMark-economy = Es gab nichts zu zählen.
hold-weakest = „{ mark }“ ist noch niedrig. Darum bekommst du höchstens { $most }.
hold-pace = Du bist langsam gefahren. Darum bleiben dir nur { $share }.
hold-tooSlow = Du bist so langsam gefahren, dass es nicht zählt.
hold-lessonMissing = Du brauchst { $atLeast } bei „{ mark }“, um es zu schaffen.
hold-markMissing = Du brauchst auch { $atLeast } bei „{ mark }“.
level-strong = super
level-good = gut
level-onTheWay = wird schon
level-start = hier anfangen
perfect = Hier ist alles gut.
small = Hier ist fast alles gut.
leftAlone = Du hast keinen Hebel gedrückt. Auf dieser Straße musst du schalten.

## Why a mark is what it is (why-…), and what would have changed it (better-…: goes on after "Better:")

why-below-band = Ab { $from } waren deine Beine { seconds } lang langsam.
better-below-band = leichter schalten, wenn die Beine langsam werden.
why-above-band = Ab { $from } waren deine Beine { seconds } lang schnell.
better-above-band = schwerer schalten, wenn es bergab geht.
why-coasted = Ab { $from } ruhten deine Beine { seconds } lang.
better-coasted = die Beine weiter kreisen lassen.
better-coasted-hub = nach dem Schalten weitertreten.
why-overloaded-pitch = { pitch-begins } war schwer für deine Beine.
better-overloaded-pitch = schalten, bevor der Berg anfängt.
why-early-pitch = Am { pitch } warst du zu früh bereit.
better-early-pitch = mit dem Schalten ein bisschen warten.
why-foot-down-pitch = Am { pitch } war dein Fuß auf dem Boden.
better-foot-down-pitch = leichter schalten, bevor es steil wird.
why-heavy-shift = Beim Schalten bei { $from } hast du fest getreten.
better-heavy-shift = locker treten, dann schalten.
better-heavy-shift-hub = nicht treten, schalten, wieder treten.
better-heavy-shift-motor = auch warten, bis der Motor loslässt.
why-waited-shift = Die Kette musste bei { $from } warten. Deine Beine standen still.
better-waited-shift = die Beine beim Schalten locker weiterdrehen.
why-crossed = Die Kette lief ab { $from } schräg, { seconds } lang.
better-crossed = vorne das andere Blatt nehmen.
why-many-shifts =
    { $changes ->
        [one] Du hast { $changes } Gang gewechselt. { $needed ->
            [0] Es ging auch ohne
           *[other] Du brauchst nur { $needed }
        }.
       *[other] Du hast { $changes } Gänge gewechselt. { $needed ->
            [0] Es ging auch ohne
           *[other] Du brauchst nur { $needed }
        }.
    }
better-many-shifts = über kleine Wellen einfach drüberfahren.
why-undone = Du hast bei { $from } geschaltet und gleich wieder zurück.
better-undone = jedem neuen Gang etwas Zeit geben.

closed = Rate zuerst. Dann siehst du den Rest.

print-pitchTitle = { pitch-title }.
print-pitch =
    { $made ->
        [0] So viele Gänge brauchst du: { $needed }. Deine vor dem Berg: keine. Langsamste Beine: { $own } U/min (beste Fahrt { $best }).
       *[other] So viele Gänge brauchst du: { $needed }. Deine vor dem Berg: { $before } von { $made }. Langsamste Beine: { $own } U/min (beste Fahrt { $best }).
    }
