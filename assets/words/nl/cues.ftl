### Wat er onderweg wordt gezegd: de aanwijzingen van levels. Op een fiets met versnellingen in de naaf gaan sommige dingen andersom.

hill-ahead = Daar komt een heuvel.
ease-then-shift =
    { $gears ->
        [hub] { $motor ->
            [pulls] Haal de druk eraf, wacht een tel, schakel dan.
           *[none] Haal de druk eraf, schakel dan.
        }
       *[sprockets] { $motor ->
            [pulls] Trap zacht, wacht een tel, schakel dan.
           *[none] Trap zacht, schakel dan.
        }
    }
two-easier-now = Nu twee lichter.
one-at-a-time = Eén versnelling tegelijk.
rest-on-the-way-up =
    { $gears ->
        [hub] { $motor ->
            [pulls] De rest tijdens de klim: telkens druk eraf en een tel wachten.
           *[none] De rest tijdens de klim: telkens druk eraf.
        }
       *[sprockets] { $motor ->
            [pulls] De rest tijdens de klim: wacht telkens tot de motor loslaat.
           *[none] De rest tijdens de klim, en trap telkens zacht.
        }
    }
harder-again = Over de top: weer zwaarder.
hold-rhythm = Laat je benen in één tempo draaien.
ride-over = Kort bultje: blijf in je versnelling en rijd eroverheen.
small-ring =
    { $gears ->
        [hub] Nu een lichtere versnelling, op het vlakke.
       *[sprockets] Nu een kleiner kettingblad, op het vlakke.
    }
big-ring =
    { $gears ->
        [hub] Een zwaardere versnelling, er is ruimte voor.
       *[sprockets] Groter kettingblad, er is ruimte voor.
    }
straight-chain = Houd de ketting recht.
stop-ahead = Daar komt een stopstreep.
easy-before-stop =
    { $gears ->
        [hub] Stop, schakel dan lichter: een naaf schakelt terwijl je wacht.
       *[sprockets] Schakel lichter voordat je stopt: in die versnelling rijd je weg.
    }
wind-ahead = Tegenwind op komst. Dat is een heuvel die je niet ziet.
gravel-ahead = Grind op komst. Dat remt als een heuvel.
look-far = Kijk ver vooruit.
last-pitch = Het laatste klimmetje.
easier-lever = De rechterhendel: lichter.
harder-lever = De rechterhendel: zwaarder.
