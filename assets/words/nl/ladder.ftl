### De meegeleverde levels: titels, de regel eronder, en wat er onderweg wordt gezegd. Eigen levels hebben hun eigen woorden.

## Appels voor het feest (voor kinderen)

title-apples-for-the-party = Appels voor het feest
sentence-apples-for-the-party = Breng de appels over drie heuveltjes. Je vriendje wacht.
cue-apples-for-the-party-1 = Een heuvel! Schakel lichter voordat hij begint.
cue-apples-for-the-party-2 = Nog een heuvel. Eerst lichter, dan omhoog.
cue-apples-for-the-party-3 = De laatste heuvel. Je vriendje zwaait!

## Omlaag naar zee (voor kinderen)

title-down-to-the-sea = Omlaag naar zee
sentence-down-to-the-sea = Twee heuvels op, lang naar beneden rollen, en eentje bij het water.
cue-down-to-the-sea-1 = Lichter, nog vóór de heuvel.
cue-down-to-the-sea-2 = Nog één heuvel, dan omlaag naar zee.
cue-down-to-the-sea-3 = Een laatste heuveltje bij het water.

## Naar huis bij lamplicht (voor kinderen)

title-home-by-lamplight = Naar huis bij lamplicht
sentence-home-by-lamplight = Vijf heuveltjes door de stad. Thuis is bovenop.
cue-home-by-lamplight-1 = Nog vijf heuvels naar huis. Eerst lichter!
cue-home-by-lamplight-2 = En weer omhoog.
cue-home-by-lamplight-3 = Kijk vooruit: de volgende heuvel is dichtbij.
cue-home-by-lamplight-4 = Bijna thuis. Nog een keer lichter.
cue-home-by-lamplight-5 = De laatste heuvel. De deur staat open!

## Over de wortels (voor kinderen)

title-over-the-roots = Over de wortels
sentence-over-the-roots = Vier hobbels in het bos. Houd je benen blij.
cue-over-the-roots-1 = Let op het gezicht. Zorg dat het blijft lachen.
cue-over-the-roots-2 = Puft het gezicht? Schakel lichter.
cue-over-the-roots-3 = Tolt het gezicht? Schakel zwaarder.
cue-over-the-roots-4 = De laatste hobbel. Lichter voordat hij begint!

## Sneeuw op de top (voor kinderen)

title-snow-on-top = Sneeuw op de top
sentence-snow-on-top = De bergpas is steil aan het eind. Kijk omhoog en klik vroeg.
cue-snow-on-top-1 = Omhoog de sneeuw in. Schakel vroeg lichter.
cue-snow-on-top-2 = Eén klik per keer, en gauw.
cue-snow-on-top-3 = Nu de steile heuvel. Schakel lichter voordat hij begint!

## Klik vóór de heuvel (voor kinderen)

title-click-before-the-hill = Klik vóór de heuvel
sentence-click-before-the-hill = Daar komt een heuveltje. Schakel lichter voordat het begint!

## Drie heuveltjes (voor kinderen)

title-three-little-hills = Drie heuveltjes
sentence-three-little-hills = Kijk vooruit, zie de volgende heuvel, en wees eerder klaar dan hij.

## Voeten als veertjes (voor kinderen)

title-feather-feet = Voeten als veertjes
sentence-feather-feet = Trap even zo zacht als een veertje terwijl de ketting verspringt.

## Stop, start, en over de heuvel (voor kinderen)

title-stop-go-and-over-the-hill = Stop, start, en over de heuvel
sentence-stop-go-and-over-the-hill = Stop in een lichte versnelling bij de streep. Rijd weg en vind de verstopte heuvel.

## Wissel terwijl je wacht

title-change-while-you-wait = Schakel terwijl je wacht
sentence-change-while-you-wait = Een naaf schakelt als je stilstaat. Stop in welke versnelling ook, ga lichter terwijl je wacht, en rijd weg.
cue-change-while-you-wait-1 = Stop eerst. Ga dan lichter, terwijl je wacht.
cue-change-while-you-wait-2 = De laatste heuvel komt zonder stop.

## Kijk wie daar is

title-look-who-is-there = Kijk wie daar is
sentence-look-who-is-there = Schapen, een tractor, nog meer schapen: gezelschap trekt je blik. De heuvel komt toch.
cue-look-who-is-there-1 = Groet wie je wilt. Kijk eerst even naar de weg.

## Twee hendels

title-two-levers = Twee hendels
sentence-two-levers = Ontdek wat lichter en zwaarder doen, op een weg die veel vergeeft.

## Houd je ritme

title-hold-your-rhythm = Houd je ritme
sentence-hold-your-rhythm = Heuvelop en heuvelaf blijven je benen in hetzelfde tempo draaien.

## Eén klimmetje, aangekondigd

title-one-pitch-announced = Eén klimmetje, aangekondigd
sentence-one-pitch-announced = Je ziet het komen: zit in een lichte versnelling voordat de weg zich opricht.

## Golvende weg

title-rolling-road = Golvende weg
sentence-rolling-road = Golven in de weg, de ene na de andere. Schakel met ze mee, niet achter ze aan.

## Zacht trappen

title-soft-feet = Zacht trappen
sentence-soft-feet = Haal even het gewicht van de pedalen, schakel dan.

## Klaar om weg te rijden

title-ready-to-go = Klaar om weg te rijden
sentence-ready-to-go = De versnelling waarin je stopt, is die waarin je wegrijdt. Beide strepen liggen vóór een heuvel.

## Rechte ketting

title-straight-chain = Rechte ketting
sentence-straight-chain = Kies het kettingblad waarmee de ketting recht loopt, lang voordat de ketting klaagt.

## Wind en grind

title-wind-and-gravel = Wind en grind
sentence-wind-and-gravel = Wind en losse grond remmen je als een heuvel, alleen tekent niemand ze.

## De bocht om

title-round-the-bend = De bocht om
sentence-round-the-bend = Heggen verbergen wat er komt. Trage bochten en een smaller wordende weg zijn tekens.

## Laat de hendel met rust

title-ride-over = Laat de hendel met rust
sentence-ride-over = Sommige bultjes zijn zo kort dat je er met je vaart overheen komt. Twee niet.

## Een blad, en een beetje terug

title-ring-and-back = Blad voor, bijschakelen achter
sentence-ring-and-back = Wissel voor van kettingblad en schakel achter iets bij: één vloeiende stap.

## Stops, wind en een geheim

title-stops-wind-and-a-secret = Stops, wind en een geheim
sentence-stops-wind-and-a-secret = Twee stopstrepen, tegenwind en een klimmetje dat zich achter een heg verstopt.

## Alleen jij en de weg

title-only-you-and-the-road = Alleen jij en de weg
sentence-only-you-and-the-road = Alles tegelijk en helemaal geen hulp. Kijk, denk vooruit, rijd.

## Geef de motor een tel

title-let-the-motor-breathe = Geef de motor een tel
sentence-let-the-motor-breathe = Ook je motor trekt aan de ketting. Trap zacht, wacht een tel tot hij loslaat, schakel dan.
cue-let-the-motor-breathe-1 = Daar komt een heuvel. Trap zacht, wacht een tel, schakel dan.
cue-let-the-motor-breathe-2 = De laatste. Wacht eerst tot de motor loslaat.

## Zonder hulp boven 25

title-without-help-above-25 = Zonder motor boven { $speed }
sentence-without-help-above-25 = Boven { $speed } zwijgt je motor en is de fiets zwaar. Ga lichter vóór de heuvel, dan helpt de motor weer.
cue-without-help-above-25-1 = Bergaf boven { $speed }: nu geeft de motor niets.
cue-without-help-above-25-2 = Alleen je benen, tot de heuvel je afremt.
