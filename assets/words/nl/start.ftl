### De startpagina: de grote knop, de wegen naar al het andere, en een rit die werd afgebroken.

ride = Rijden
rideAgain = Rij verder
byEar = Op gehoor rijden
byEye = Op zicht rijden
picture = Een fietser komt aan bij de voet van een heuvel.
newer = Er is een nieuwere versie.
loadNewer = Gebruik die

## Waar je vanaf hier heen kunt, telkens met een regel eronder

hint-children = Korte heuvels en een mand appels
levels = Alle levels
hint-levels = { $done } van { $all } gereden
bike = Mijn fiets
# Onder “Mijn fiets”: de naam en de versnellingen.
hint-bike = { $name }, { $gears }
hint-about = en veiligheid, en privacy
hint-progress = Toetsritten, ritten op de weg en wat er bewaard is
hint-gearcheck = Kom ik met andere tandwielen die heuvel op?
hint-two = Naast elkaar, tegenover elkaar of in een estafette
hint-clinic = Een groep op één apparaat of meer, zonder namen
hint-teach = Een uur met een groep, met oefeningen voor buiten
hint-bench = Bouw een weg, of neem er een mee die je reed

## Een rit die werd afgebroken

unfinished-title = Je rit werd afgebroken: { $level }
unfinished-turn = Een beurt van de groep werd afgebroken: { $level }
unfinished-length =
    { $minutes ->
        [0]
            { $seconds ->
                [one] Er is { $seconds } seconde van bewaard.
               *[other] Er zijn { $seconds } seconden van bewaard.
            }
       *[other] Er is { $minutes } min { $seconds } s van bewaard.
    }
unfinished-goOn = Vanaf hier verder
unfinished-keep = Bewaar wat er gereden is
unfinished-letGo = Weggooien
