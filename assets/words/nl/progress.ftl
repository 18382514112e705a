### De pagina Voortgang: toetsritten en wat ze kunnen laten zien, punten van alle ritten, en wat zonder punten is bewaard.

title = Voortgang
intro = Toetsritten zeggen of er iets geleerd is. Oefenritten zeggen waar je kunt oefenen.
road = Op de weg: wat opgenomen ritten laten zien
empty = Hier is nog geen rit bewaard. Rijd eerst; daarna staan hier je punten.
# $rides (Number): vanaf 1. De benen van het spel: hoe het uitrekent wat een fietser kan.
older =
    { $rides ->
        [1] Eén rit is gereden voordat de benen van het spel veranderden. Hij houdt de punten die hij kreeg; hij kan niet opnieuw worden gereden of met nieuwere worden vergeleken.
       *[other] { $rides } ritten zijn gereden voordat de benen van het spel veranderden. Ze houden de punten die ze kregen; ze kunnen niet opnieuw worden gereden of met nieuwere worden vergeleken.
    }

## Toetsritten

check-title = Toetsritten
check-what = Een toetsrit gaat over een weg die je niet kent, zonder enige hulp. Rijd er een voordat je oefent en een op een andere dag. Van elke dag worden er hooguit drie samengenomen: hoe meer, hoe kleiner de verandering die je kunt zien.
check-minutes = Met jouw fiets duurt hij ongeveer { $everyone } min, die voor kinderen ongeveer { $children } min.
check-own-hub = Een naafversnelling toets je ook bij stopstrepen: jouw weg heeft er twee.
check-own-crank-motor = Een middenmotor trekt mee aan de ketting: op twee heuvels van jouw weg schakel je terwijl hij trekt.
check-own-wheel-motor = Met vaart helpt de motor niet meer: juist dan komen twee heuvels van jouw weg.
check-ride-everyone = Rijd een toetsrit
check-ride-children = Toetsrit voor kinderen
check-group = Fiets en weg
# $bike: de naam van een fiets.
check-groupOf =
    { $road ->
        [children] { $bike }, toetsrit voor kinderen
        [hub] { $bike }, stopstrepen voor naafversnellingen
        [hub-children] { $bike }, stopstrepen voor kinderen met naafversnelling
        [crank-motor] { $bike }, heuvels die steiler worden, voor een middenmotor
        [wheel-motor] { $bike }, snelle heuvels voor een wielmotor
       *[everyone] { $bike }
    }
# Hoeveel het veranderde, binnen de zinnen hieronder. $points (Number): van 100, vanaf 0.
change =
    { $way ->
        [up] { $points } erbij
        [down] { $points } eraf
       *[same] evenveel
    }
days =
    { $days ->
        [one] een dag
       *[other] { $days } dagen
    }
# $first, $latest (Number): totalen van 100.
finding-need-first = Nog geen toetsrit.
finding-need-second = Je eerste toetsrit kwam op { $first } van 100. Oefen, en rijd er dan nog een, het liefst op een andere dag.
# $certain: of het meer is dan toeval oplevert.
finding-same-day =
    { $certain ->
        [yes] Van { $first } naar { $latest } op één dag: { change }, meer dan toeval alleen meestal oplevert. Of het blijft, zie je op een andere dag.
       *[no] Van { $first } naar { $latest } op één dag: { change }. Zo’n verschil kan ook toeval zijn. Rijd er op een andere dag nog een.
    }
# $chance (Number): zoveel punten erbij of eraf kan toeval zijn.
finding-retest =
    { $certain ->
        [better] Van { $first } naar { $latest }, { days } later, zonder hulp: { change }, met een speling van { $chance }. Dat is leren, binnen dit spel.
        [worse] Van { $first } naar { $latest }, { days } later, zonder hulp: { change }, met een speling van { $chance }. Moe, of uit vorm? Rijd er nog een.
       *[no] Van { $first } naar { $latest }, { days } later, zonder hulp: { change }, met een speling van { $chance }. Dat is niet van toeval te onderscheiden.
    }
role-first = eerste
role-same-day = zelfde dag
role-retest = andere dag
# Naast het vlak in de grafiek dat hiermee wordt uitgelegd.
check-chance = Minder dan { $points } punten verschil met de eerste: dat kan puur toeval zijn.
# $before, $after (Number): ritten van de eerste en van de laatste dag, vanaf 1. $most (Number): zoveel tellen er mee.
check-sides =
    { $which ->
        [all] Samengenomen: { $before } ritten van de eerste dag en { $after } van de laatste.
       *[few] Samengenomen: { $before } van de eerste dag en { $after } van de laatste. Met { $most } van elke dag zou je een kleinere verandering zien.
    }
# Voorgelezen in plaats van de grafiek. $rides (Number): vanaf 1.
check-desc =
    { $rides ->
        [1] Eén toetsrit: { $first } van 100.
       *[other] { $rides } toetsritten in de volgorde waarin ze gereden zijn. De eerste kwam op { $first } van 100, de laatste op { $latest }.
    }
check-table = Toetsritten in getallen

## Wat dit kan laten zien

limits-title = Wat dit kan laten zien, en wat niet
limits =
    Oefenritten hebben hulp, en wegen die je leert kennen. De punten kunnen stijgen zonder dat je leert, en dalen terwijl je iets moeilijks oefent. Daarom worden ze hier niet vergeleken.
    Toetsritten zijn even moeilijk en altijd nieuw. Eén alleen zegt weinig: vergelijk de eerste met een op een andere dag, op dezelfde fiets.
    Dit gaat allemaal over dit spel. Niemand heeft aangetoond dat je met betere punten hier op de weg beter schakelt.

## Punten van alle ritten, als kleine grafieken

marks-title = Punten van alle ritten
marks-hint = De oudste links. Om te vinden wat je kunt oefenen, niet om vooruitgang te bewijzen.
# Vóór de keuze van een level.
marks-which = Ritten van
marks-all = alle levels
mark-cadence = Cadans
mark-foresight = Vooruitzien
mark-easing = Zacht trappen
mark-chainLine = Kettinglijn
mark-economy = Zuinig schakelen
mark-total = Alles samen
# Vóór het getal van de laatste rit.
marks-latest = laatste
marks-none = nog niets te zeggen
kind-ride = oefenrit
kind-check = toetsrit
kind-clinic = in een clinic
# Voorgelezen in plaats van een grafiek. $name: van het onderdeel. $rides (Number): vanaf 1. $first, $latest (Number): van 100.
marks-desc =
    { $rides ->
        [1] { $name }: één rit, { $first } van 100.
       *[other] { $name }: { $rides } ritten, van { $first } naar { $latest } van 100.
    }
marks-shown = De laatste { $shown } van { $all } ritten.
marks-table = Hetzelfde in getallen
table-date = Datum
table-level = Level
table-kind = Soort
table-role = Welke
table-total = Totaal
table-passed = Gehaald
table-yes = ja
table-no = nee

## Ritten die zonder punten zijn bewaard

unmarked-title = Zonder punten bewaard
# Staat na de titel van het level en een komma. $date: wanneer er gereden is.
standing-to-mark = { $date }: heeft nog geen punten; het spel probeert het opnieuw als je het opent
standing-unfinished = { $date }: afgebroken vóór de finish, dus zonder punten
standing-older = { $date }: gereden voordat de benen van het spel veranderden, dus niet meer opnieuw te rijden en van punten te voorzien
