### Zurufe unterwegs: was Level sagen. Mit Gängen in der Nabe ist manches umgekehrt.

hill-ahead = Berg voraus.
ease-then-shift =
    { $gears ->
        [hub] { $motor ->
            [pulls] Druck weg, einen Atemzug warten, dann schalten.
           *[none] Druck weg, dann schalten.
        }
       *[sprockets] { $motor ->
            [pulls] Locker treten, einen Atemzug warten, dann schalten.
           *[none] Locker treten, dann schalten.
        }
    }
two-easier-now = Jetzt zwei Gänge leichter.
one-at-a-time = Ein Gang nach dem anderen.
rest-on-the-way-up =
    { $gears ->
        [hub] { $motor ->
            [pulls] Den Rest bergauf: jedes Mal Druck weg und einen Atemzug warten.
           *[none] Den Rest bergauf: jedes Mal Druck weg.
        }
       *[sprockets] { $motor ->
            [pulls] Den Rest bergauf: jedes Mal warten, bis der Motor loslässt.
           *[none] Den Rest bergauf, jedes Mal locker treten.
        }
    }
harder-again = Oben drüber: wieder schwerer.
hold-rhythm = Lass die Beine gleichmäßig kreisen.
ride-over = Kleine Welle: Bleib in deinem Gang und fahr drüber.
small-ring =
    { $gears ->
        [hub] Jetzt ein leichterer Gang, noch im Flachen.
       *[sprockets] Jetzt das kleinere Kettenblatt, noch im Flachen.
    }
big-ring =
    { $gears ->
        [hub] Ein schwererer Gang, dafür ist Platz.
       *[sprockets] Das größere Kettenblatt, dafür ist Platz.
    }
straight-chain = Halt die Kette gerade.
stop-ahead = Haltlinie voraus.
easy-before-stop =
    { $gears ->
        [hub] Anhalten, dann leichter schalten: Eine Nabe schaltet, während du wartest.
       *[sprockets] Schalte leichter, bevor du anhältst: In diesem Gang fährst du an.
    }
wind-ahead = Gegenwind voraus. Er ist ein Berg, den man nicht sieht.
gravel-ahead = Schotter voraus. Er bremst wie ein Berg.
look-far = Schau weit voraus.
last-pitch = Die letzte Rampe.
easier-lever = Rechter Hebel: leichter.
harder-lever = Rechter Hebel: schwerer.
