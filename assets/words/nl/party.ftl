### Het feest aan het eind van een weg om te spelen. Geen zin heeft meer dan twaalf woorden.

title = Feest!
# $apples (Number): 1 tot 7.
carried =
    { $apples ->
        [1] Je bracht één appel mee.
        [2] Je bracht twee appels mee.
        [3] Je bracht drie appels mee.
        [4] Je bracht vier appels mee.
        [5] Je bracht vijf appels mee.
        [6] Je bracht zes appels mee.
        [7] Je bracht zeven appels mee.
       *[other] Je bracht { $apples } appels mee.
    }
all = Je bracht alle appels mee!
# Ze sprongen onderweg uit de mand. $apples (Number): 1 tot 7.
found =
    { $apples ->
        [1] Eén appel sprong eruit. De egel brengt hem mee.
        [2] Twee appels sprongen eruit. De egel brengt ze mee.
        [3] Drie appels sprongen eruit. De egel brengt ze mee.
        [4] Vier appels sprongen eruit. De egel brengt ze mee.
        [5] Vijf appels sprongen eruit. De egel brengt ze mee.
        [6] Zes appels sprongen eruit. De egel brengt ze mee.
        [7] Zeven appels sprongen eruit. De egel brengt ze mee.
       *[other] { $apples } appels sprongen eruit. De egel brengt ze mee.
    }
shared = Nu eet iedereen mee.
# $lesson: wat een level leert, zoals “Cadans”.
learnt = Dit kun je nu: { $lesson }.
# Without a single change of gear.
noClick = Deze keer heb je niet geschakeld. Schakel, en je krijgt een lapje.

## Wat je een andere keer kunt doen: wat de meeste appels liet springen

tip-jolts = Volgende keer: klik voordat het steil wordt, en trap zacht.
tip-grinding = Volgende keer: puft het gezicht? Schakel lichter, en eerder.
tip-whirring = Volgende keer: tolt het gezicht? Schakel zwaarder.
tip-none = Zo soepel! De egel pikt toch stiekem een flinke hap.

## Knoppen

again = Nog een keer
# $level: de titel van een level.
next = Hierna: { $level }
takeOver = Wissel: nu rijdt je vriendje
roads = Alle wegen
grownUps = Voor grote mensen: de rit precies

# Voorgelezen in plaats van het plaatje.
picture = Een tafel met appels. Vriendje, hond en egel zijn op het feest.
