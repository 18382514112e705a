### Die Level: Titel, der Satz darunter, und die Zurufe unterwegs. Eigene Level haben ihre eigenen Wörter.

## Apples for the party (for children)

title-apples-for-the-party = Äpfel für das Fest
sentence-apples-for-the-party = Bring die Äpfel über drei kleine Berge. Dein Freund wartet.
cue-apples-for-the-party-1 = Ein Berg! Schalte leichter, bevor er anfängt.
cue-apples-for-the-party-2 = Noch ein Berg. Erst leichter, dann hinauf.
cue-apples-for-the-party-3 = Der letzte Berg. Dein Freund winkt!

## Down to the sea (for children)

title-down-to-the-sea = Hinunter ans Meer
sentence-down-to-the-sea = Zwei Berge hinauf, lange hinunter, und einer am Wasser.
cue-down-to-the-sea-1 = Vor dem Berg leichter.
cue-down-to-the-sea-2 = Noch ein Berg, dann geht es ans Meer.
cue-down-to-the-sea-3 = Ein letzter kleiner Berg am Wasser.

## Home by lamplight (for children)

title-home-by-lamplight = Im Laternenlicht nach Hause
sentence-home-by-lamplight = Fünf kleine Berge durch die Stadt. Ganz oben wohnst du.
cue-home-by-lamplight-1 = Fünf Berge bis nach Hause. Erst leichter!
cue-home-by-lamplight-2 = Und wieder hinauf.
cue-home-by-lamplight-3 = Schau nach vorn: Der nächste Berg ist nah.
cue-home-by-lamplight-4 = Fast daheim. Noch einmal leichter.
cue-home-by-lamplight-5 = Der letzte Berg. Die Tür ist offen!

## Over the roots (for children)

title-over-the-roots = Über die Wurzeln
sentence-over-the-roots = Vier Buckel im Wald. Deine Beine sollen lächeln.
cue-over-the-roots-1 = Schau auf das Gesicht. Es soll lächeln.
cue-over-the-roots-2 = Schnauft das Gesicht? Schalte leichter.
cue-over-the-roots-3 = Wird dem Gesicht schwindlig? Schalte schwerer.
cue-over-the-roots-4 = Der letzte Buckel. Leichter, bevor er anfängt!

## Snow on top (for children)

title-snow-on-top = Oben liegt Schnee
sentence-snow-on-top = Am Ende ist der Pass steil. Schau hinauf und schalte früh.
cue-snow-on-top-1 = Hinauf in den Schnee. Schalte früh leichter.
cue-snow-on-top-2 = Gang für Gang, und bald.
cue-snow-on-top-3 = Jetzt kommt der steile. Sei vorher im leichten Gang!

## Click before the hill (for children)

title-click-before-the-hill = Klick vor dem Berg
sentence-click-before-the-hill = Ein kleiner Berg kommt. Schalte leichter, bevor er anfängt!

## Three little hills (for children)

title-three-little-hills = Drei kleine Berge
sentence-three-little-hills = Schau nach vorn, sieh den nächsten Berg und sei vorher bereit.

## Feather feet (for children)

title-feather-feet = Füße wie Federn
sentence-feather-feet = Tritt kurz wie eine Feder, solange die Kette wandert.

## Stop, go, and over the hill (for children)

title-stop-go-and-over-the-hill = Halt, los und über den Berg
sentence-stop-go-and-over-the-hill = Halt im leichten Gang an der Linie. Fahr los und finde den versteckten Berg.

## Change while you wait

title-change-while-you-wait = Schalten, während du wartest
sentence-change-while-you-wait = Eine Nabe schaltet im Stand. Halt in irgendeinem Gang an, schalte beim Warten leichter, dann fahr los.
cue-change-while-you-wait-1 = Erst anhalten. Dann leichter, während du wartest.
cue-change-while-you-wait-2 = Der letzte Berg kommt ohne Halt.

## Look who is there

title-look-who-is-there = Schau, wer da ist
sentence-look-who-is-there = Schafe, ein Traktor, noch mehr Schafe: Gesellschaft zieht den Blick an. Der Berg kommt trotzdem.
cue-look-who-is-there-1 = Grüß, wen du magst. Schau zuerst auf die Straße.

## Two levers

title-two-levers = Zwei Hebel
sentence-two-levers = Finde heraus, was leichter und schwerer tun, auf einer Straße, die verzeiht.

## Hold your rhythm

title-hold-your-rhythm = Halt deinen Rhythmus
sentence-hold-your-rhythm = Bergauf und bergab kreisen deine Beine im gleichen Takt.

## One pitch, announced

title-one-pitch-announced = Eine Rampe, angesagt
sentence-one-pitch-announced = Du siehst sie kommen: Sei in einem leichten Gang, bevor sich die Straße aufstellt.

## Rolling road

title-rolling-road = Wellige Straße
sentence-rolling-road = Wellen aus Straße, eine nach der anderen. Schalte mit ihnen, nicht nach ihnen.

## Soft feet

title-soft-feet = Locker treten
sentence-soft-feet = Nimm für einen Moment das Gewicht von den Pedalen, dann schalte.

## Ready to go again

title-ready-to-go = Bereit zum Anfahren
sentence-ready-to-go = In dem Gang, in dem du anhältst, fährst du an. Beide Linien liegen vor einem Berg.

## Straight chain

title-straight-chain = Gerade Kette
sentence-straight-chain = Wähle das Kettenblatt, mit dem die Kette gerade läuft, lange bevor sie sich beklagt.

## Wind and gravel

title-wind-and-gravel = Wind und Schotter
sentence-wind-and-gravel = Wind und loser Boden bremsen wie ein Berg, nur zeichnet sie niemand.

## Round the bend

title-round-the-bend = Um die Kurve
sentence-round-the-bend = Hecken verbergen, was kommt. Langsame Kurven und eine schmale Straße verraten es.

## Leave the lever alone

title-ride-over = Lass den Hebel in Ruhe
sentence-ride-over = Manche Wellen sind so kurz, dass dich der Schwung hinüberträgt. Zwei sind es nicht.

## A ring, and back a little

title-ring-and-back = Blatt vorne, Ausgleich hinten
sentence-ring-and-back = Wechsle vorne das Kettenblatt und gleiche es hinten etwas aus: ein einziger runder Übergang.

## Stops, wind and a secret

title-stops-wind-and-a-secret = Halt, Wind und ein Geheimnis
sentence-stops-wind-and-a-secret = Zwei Haltlinien, Gegenwind und eine Rampe, die sich hinter einer Hecke versteckt.

## Only you and the road

title-only-you-and-the-road = Nur du und die Straße
sentence-only-you-and-the-road = Alles auf einmal und gar keine Hilfe. Schauen, vorausdenken, fahren.

## Let the motor breathe

title-let-the-motor-breathe = Lass den Motor Luft holen
sentence-let-the-motor-breathe = Auch dein Motor zieht an der Kette. Locker treten, einen Atemzug warten, bis er loslässt, dann schalten.
cue-let-the-motor-breathe-1 = Berg voraus. Locker treten, einen Atemzug warten, dann schalten.
cue-let-the-motor-breathe-2 = Der letzte. Warte erst, bis der Motor loslässt.

## Without help above 25

title-without-help-above-25 = Ohne Motor über { $speed }
sentence-without-help-above-25 = Über { $speed } schweigt dein Motor, und das Rad ist schwer. Schalte vor dem Berg leichter, dann hilft der Motor wieder.
cue-without-help-above-25-1 = Bergab über { $speed }: Jetzt hilft der Motor nicht.
cue-without-help-above-25-2 = Nur deine Beine, bis der Berg dich bremst.
