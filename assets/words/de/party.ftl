### Das Fest am Ende einer Straße zum Spielen. Kein Satz hat mehr als zwölf Wörter.

title = Fest!
# $apples (Number): 1 to 7.
carried =
    { $apples ->
        [1] Du hast einen Apfel gebracht.
        [2] Du hast zwei Äpfel gebracht.
        [3] Du hast drei Äpfel gebracht.
        [4] Du hast vier Äpfel gebracht.
        [5] Du hast fünf Äpfel gebracht.
        [6] Du hast sechs Äpfel gebracht.
        [7] Du hast sieben Äpfel gebracht.
       *[other] Du hast { $apples } Äpfel gebracht.
    }
all = Du hast alle Äpfel gebracht, jeden einzelnen!
# They hopped out of the basket on the way. $apples (Number): 1 to 7.
found =
    { $apples ->
        [1] Ein Apfel ist herausgehüpft. Der Igel bringt ihn mit.
        [2] Zwei Äpfel sind herausgehüpft. Der Igel bringt sie mit.
        [3] Drei Äpfel sind herausgehüpft. Der Igel bringt sie mit.
        [4] Vier Äpfel sind herausgehüpft. Der Igel bringt sie mit.
        [5] Fünf Äpfel sind herausgehüpft. Der Igel bringt sie mit.
        [6] Sechs Äpfel sind herausgehüpft. Der Igel bringt sie mit.
        [7] Sieben Äpfel sind herausgehüpft. Der Igel bringt sie mit.
       *[other] { $apples } Äpfel sind herausgehüpft. Der Igel bringt sie mit.
    }
shared = Jetzt essen alle.
# $lesson: what a level teaches, like "Cadence".
learnt = Das hast du gelernt: { $lesson }.
# Without a single change of gear.
noClick = Diesmal hast du nicht geschaltet. Schalte, dann gehört dir ein Aufnäher.

## What to do another time: what made most apples hop

tip-jolts = Nächstes Mal: Schalte mit lockerem Tritt, bevor es steil wird.
tip-grinding = Nächstes Mal: Schnauft das Gesicht? Schalte leichter, und früher.
tip-whirring = Nächstes Mal: Wird dem Gesicht schwindlig? Schalte schwerer.
tip-none = Ganz sanft gefahren! Der Igel stibitzt trotzdem einen großen Happen.

## Buttons

again = Noch einmal
# $level: the title of a level.
next = Weiter: { $level }
takeOver = Tauschen: Jetzt fährt jemand anders
roads = Alle Straßen
grownUps = Für Erwachsene: die Fahrt im Detail

# Read aloud in place of the picture.
picture = Ein Tisch mit Äpfeln. Freund, Hund und Igel sind auf dem Fest.
