### De pagina van fiets en fietser: de fietsen om uit te kiezen, een eigen fiets, de fietser, de tiktest, kleuren.

intro = Neem de fiets die het meest op de jouwe lijkt. Hij rijdt zoals zijn versnellingen, wielen en gewicht zeggen.
bikes = Fiets
ownHint = Je eigen aantallen tanden en banden
done = Rijd op deze fiets
motorTitle = Voordat je met een motor rijdt

## Feiten op de kaart van een fiets, naast elkaar, na het aantal versnellingen

fact-motor-crank = middenmotor
fact-motor-wheel = wielmotor
fact-backPedal = terugtraprem
# Waarmee de hendels werken.
fact-mechanical = kabel
fact-electronic = elektronisch
# $tyre (String): de maat op de zijkant, zoals “28-622”.
fact-tyre = band { $tyre }

# Wat een tekening van alle versnellingen toont, voorgelezen. $rings (String): tanden van de kettingbladen, zoals “26 / 36 / 48”.
# $ringCount: hoeveel kettingbladen. $sprockets (String): tanden van de tandwielen; $rear: versnellingen op tandwielen, of in een naaf.
drawing =
    { $rear ->
        [hub] { $ringCount ->
            [one] Kettingblad { $rings }, versnellingen in de naaf achter een tandwiel van { $sprockets }.
           *[other] Kettingbladen { $rings }, versnellingen in de naaf achter een tandwiel van { $sprockets }.
        }
       *[sprockets] { $ringCount ->
            [one] Kettingblad { $rings }. Tandwielen { $sprockets }.
           *[other] Kettingbladen { $rings }. Tandwielen { $sprockets }.
        }
    }

## Een eigen fiets. Getallen na “bijvoorbeeld” typ je zo, dus ze blijven zoals ze zijn

own-title = Eigen fiets
own-intro = Tel de tanden, of lees de getallen die erin geslagen zijn.
rings = Kettingbladen
rings-hint = Bijvoorbeeld 50/34, of 32.
gearing = Versnellingen achter
gearing-sprockets = Tandwielen en een derailleur
gearing-three = Naaf met 3 versnellingen
gearing-three-wide = Naaf met 3 versnellingen, grotere stappen
gearing-five = Naaf met 5 versnellingen
gearing-five-wide = Naaf met 5 versnellingen, grotere stappen
gearing-seven = Naaf met 7 versnellingen
gearing-eight = Naaf met 8 versnellingen, kleine stappen
gearing-eight-wide = Naaf met 8 versnellingen, grote stappen
gearing-fourteen = Naaf met 14 versnellingen
hubSprocket = Tandwiel op de naaf
hubSprocket-hint = Het aantal tanden, zoals 19.
hubSprocket-wrong = Een naaf heeft één tandwiel. Schrijf het aantal tanden op, bijvoorbeeld 19.
backPedalBrake = Remt als ik terugtrap
hubRule = Een naaf schakelt als er geen druk op staat: haal de druk eraf, of sta stil.
motor = Motor
motor-none = Geen motor
motor-crank = Middenmotor
motor-wheel = Wielmotor
help = Ondersteuning
# Het vermogen van de motor per deel van dat van de fietser: 0, 0.5, 1 of 2.
help-much =
    { $ratio ->
        [0] Uit
        [0.5] Half zoveel als jij
        [1] Evenveel als jij
       *[other] Twee keer zoveel als jij
    }
battery = In de accu
battery-hint = In wattuur, als een rit begint, zoals 500.
battery-wrong = Schrijf op hoeveel wattuur er in de accu zit, van 0 tot 999, bijvoorbeeld 500.
brakeSwitches = De remhendels schakelen hem uit
way = Tandwielen
way-range = Van kleinste tot grootste
way-each = Eén voor één
range = Bereik van de cassette
range-hint = Bijvoorbeeld 11-32.
count = Hoeveel tandwielen
# $teeth (String): een rij zoals “11 13 15”.
completed = Opgevat als { $teeth }. Niet de jouwe? Schrijf ze één voor één op.
sprocketTeeth = Tanden van elk tandwiel
# $place: het hoeveelste in de rij tandwielen.
sprocket = Tandwiel { $place }
add = Voeg een tandwiel toe
remove = Haal tandwiel { $place } weg
emptySprocket = Tandwiel { $place } is leeg. Schrijf het aantal tanden op, of haal het weg.
tyre = Band
tyre-hint = De maat op de zijkant, zoals 28-622.
crank = Cranklengte
crank-hint = In mm, in de binnenkant geslagen, zoals 170.
crank-wrong = Schrijf de cranklengte in mm op, van 90 tot 200, bijvoorbeeld 170.
mass = Gewicht van de fiets
mass-hint = In kg. Een schatting is goed genoeg.
mass-wrong = Schrijf het gewicht in kg op, van 5 tot 40, bijvoorbeeld 14 of 9,5.
shifters = Hendels
shifters-mechanical = Kabel
shifters-electronic = Elektronisch
refuses = Weigert versnellingen met een schuine ketting
lastGood = Getekend is de laatste fiets die mogelijk was.
warning-capacity = Zo moet de achterderailleur { $capacityTeeth } tanden ketting opvangen; gewone vangen er hooguit { $usualTeeth } op. Vraag een fietsenmaker en lees de documenten van de fabrikant.
warning-big-step = Van { $fromTeeth } naar { $toTeeth } tanden is een grote stap voor een voorderailleur. Vraag een fietsenmaker en lees de documenten van de fabrikant.

## Waarom wat er getypt is, geen deel van een fiets is

problem-rings-unreadable = Schrijf de tanden van de kettingbladen op, bijvoorbeeld 50/34 of 32.
problem-too-many-rings = { $count } kettingbladen zijn er meer dan een fiets heeft. Schrijf één tot drie getallen op, zoals 48/36/26.
problem-ring-size = Een kettingblad met { $teeth } tanden wordt niet gemaakt. Gewone hebben er { $leastTeeth } tot { $mostTeeth }; tel opnieuw, of zoek het getal dat erin geslagen is.
problem-rings-order = De kettingbladen staan niet op volgorde. Schrijf ze van groot naar klein of van klein naar groot, elk maar één keer.
problem-sprockets-unreadable = Schrijf de tanden van de tandwielen op, bijvoorbeeld 11-32, of elk apart: 11 13 15 18 21 24 28 32.
problem-sprocket-size = Een tandwiel met { $teeth } tanden wordt niet gemaakt. Gewone hebben er { $leastTeeth } tot { $mostTeeth }; tel opnieuw, of zoek het getal dat erin geslagen is.
problem-too-many-sprockets = { $count } tandwielen zijn er meer dan een cassette heeft. Schrijf er hooguit { $most } op.
problem-sprocket-twice = Eén getal staat er twee keer. Alle tandwielen van een cassette zijn verschillend.
problem-sprockets-order = De tandwielen staan niet op volgorde. Schrijf ze van klein naar groot op.
problem-sprocket-count = Zeg hoeveel tandwielen er zijn, van { $least } tot { $most }.
problem-too-narrow = { $count } tandwielen passen niet tussen { $leastTeeth } en { $mostTeeth } tanden. Schrijf ze elk apart op, of minder.
problem-tyre-unreadable = Schrijf de ISO-maat van de zijkant van de band op, bijvoorbeeld 28-622 of 47-406.
problem-tyre-size = { $tyreWidthMm }-{ $beadSeatMm } is geen fietsband. Het eerste getal is de breedte (18 tot 125 mm), het tweede de velg (200 tot 700 mm).

## De fietser

rider = Fietser
rider-way = Hoe goed ken je jezelf?
rider-way-feel = Op gevoel
rider-way-numbers = In getallen
rider-about-child-9 = Licht, met vlotte benen voor heuveltjes.
rider-about-adult-new = Raakt op een brug buiten adem.
rider-about-adult-weekly = Houdt van heuvels die ophouden.
rider-about-adult-strong = Zoekt de heuvel op.
rider-mass = Gewicht van de fietser
rider-mass-hint = In kg, met kleren aan.
rider-mass-wrong = Schrijf het gewicht in kg op, van 15 tot 200, bijvoorbeeld 68.
rider-power = Vast vermogen
rider-power-hint = In watt, wat je een uur volhoudt terwijl je kunt praten.
rider-power-wrong = Schrijf het vermogen in watt op, van 20 tot 450, bijvoorbeeld 130.
rider-low = Traagste cadans die je prettig vindt
rider-low-hint = Hoe vaak je pedalen per minuut rondgaan.
rider-low-wrong = Schrijf omwentelingen per minuut op, van 40 tot 120, bijvoorbeeld 70.
rider-high = Snelste cadans die je prettig vindt
rider-high-hint = Hoe vaak je pedalen per minuut rondgaan.
rider-high-wrong = Schrijf omwentelingen per minuut op, van 45 tot 130, bijvoorbeeld 90.
rider-narrow = De snelste moet minstens 5 boven de traagste liggen.

## De tiktest: met één tik per omwenteling wordt de cadans gevonden

tap = Tiktest
tap-intro = Draai je pedalen zoals je het prettig vindt, of denk eraan. Tik telkens één keer als dezelfde voet onder is, 20 seconden lang. Met de spatiebalk kan het ook.
# Op de knop.
tap-first = Tik
tap-firstHint = De tijd begint bij je eerste tik.
# Wat er nog over is van de tijd.
tap-left = { $seconds } s
tap-count =
    { $count ->
        [one] { $count } tik
       *[other] { $count } tikken
    }
tap-stop = Stop
tap-again = Tik opnieuw
# $rpm: de gevonden cadans. $low en $high: de grenzen van het bereik eromheen.
tap-found = Je draait ongeveer { $rpm } keer per minuut rond. Je bereik is nu { $low } tot { $high }.
# Missers die zijn opgemerkt en niet meetellen. $missed: omwentelingen zonder tik. $doubled: tikken zonder omwenteling. Nooit allebei 0.
tap-slips =
    { $missed ->
        [0] { $doubled ->
            [one] Eén tik te veel: rechtgezet.
           *[other] { $doubled } tikken te veel: rechtgezet.
        }
        [one] { $doubled ->
            [0] Eén omwenteling zonder tik: rechtgezet.
            [one] Eén omwenteling zonder tik en één tik te veel: rechtgezet.
           *[other] Eén omwenteling zonder tik en { $doubled } tikken te veel: rechtgezet.
        }
       *[other] { $doubled ->
            [0] { $missed } omwentelingen zonder tik: rechtgezet.
            [one] { $missed } omwentelingen zonder tik en één tik te veel: rechtgezet.
           *[other] { $missed } omwentelingen zonder tik en { $doubled } tikken te veel: rechtgezet.
        }
    }
tap-undo = Bereik zoals het was
tap-undone = Je bereik is weer zoals het was.
tap-too-few = Te weinig tikken om er iets over te zeggen. Tik één keer per omwenteling tot de tijd om is.
tap-too-short = Te kort om er iets over te zeggen. Ga door tot de tijd om is.
tap-too-slow = Dat is trager dan fietsen. Tik bij elke omwenteling, niet om de andere.
tap-too-fast = Dat is sneller dan fietsen. Tik met één voet mee, één keer per hele omwenteling.
tap-unsteady = De tikken kwamen ongelijk. Zoek eerst een vast ritme en begin dan.
# Staat na de zin die zegt waarom.
tap-unchanged = Je bereik is niet veranderd.

## De kleuren en vormen van de fietser

kit = Jouw kleuren
kit-intro = Hoe de fietser er in beeld uitziet. Niemand wordt er sneller van.
jersey = Shirt
jersey-orange = oranje
jersey-berry = bessenrood
jersey-blue = blauw
jersey-green = groen
jersey-violet = paars
jersey-sun = zonnegeel
pattern = Patroon
pattern-plain = effen
pattern-band = één streep
pattern-dots = stippen
helmet = Helm
helmet-holes = met gaten
helmet-star = met een ster
helmet-crest = met een kam
frame = Frame
frame-usual = standaard
frame-red = rood
frame-blue = blauw
frame-green = groen
frame-plum = pruimpaars
