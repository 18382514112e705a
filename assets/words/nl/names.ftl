### Namen die na de eerste pagina komen: wat een level leert, en fietsers.

## Wat een level leert

lesson-levers = De twee hendels
lesson-cadence = Cadans
lesson-easing = Zacht trappen bij het schakelen
lesson-look-ahead = Vooruitkijken
lesson-rolling = Schakelen met de weg mee
lesson-chain-line = Een rechte ketting
lesson-ring-change = Wisselen van kettingblad
lesson-ride-over = Wanneer je niet schakelt
lesson-hidden = Wat je niet kunt zien
lesson-stop-gear = De versnelling om weg te rijden
lesson-wind-and-gravel = Wind en grind
lesson-everything = Alles bij elkaar
lesson-check = Toetsrit
lesson-free = Vrije rit
# What stands under the name of such a ride.
sentence-check = Een weg die je niet kent, zonder hulp.
sentence-free = Een weg zoals jij hem wilt: zo lang en zo heuvelachtig als je wilt.

## Wat op het lapje staat waar de naam van de les geen kinderwoord is

patch-levers = Lichter en zwaarder
patch-cadence = Benen die vlot ronddraaien

## Fietsers

rider-child-9 = Kind van een jaar of negen
rider-adult-new = Net begonnen
rider-adult-weekly = Fietst elke week
rider-adult-strong = Sterk
rider-own = Eigen getallen
