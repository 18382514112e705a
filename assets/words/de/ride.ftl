### Die Seite einer Fahrt: vorher, in der Pause, die ersten Schritte mit den Hebeln, und wenn etwas kaputtgeht.

title = Fahrt: { $level }
failed-not-fetched = Das Bild der Fahrt ließ sich nicht laden. Prüfe die Verbindung und versuche es noch einmal.
failed-no-canvas = Dieser Browser lässt das Spiel kein Bild zeichnen, und ohne Bild geht keine Fahrt. Erlaube es in seinen Einstellungen (oft unter Datenschutz), oder öffne das Spiel in einem anderen Browser.
failed-broken = Diese Fahrt kann nicht beginnen: Etwas an ihr stimmt nicht. Nimm ein anderes Level, oder wähle das Rad neu.
again = Noch einmal
pausedHint = Die Straße wartet. Dein Gang auch.
restart = Von vorn
leave = Fahrt beenden
stage = Die Fahrt
hands = Esc macht Pause.
controls = Was deine Hände tun
# Under it, where there are pads.
controlsPads = Tippe auf die Taste mit demselben Zeichen.
watching = Deine Fahrt, noch einmal.
watchOn = Weiter ansehen
backToDebrief = Zurück zu deiner Fahrt
steeper = Etwas steiler als vorhin: Du kannst es.
gentler = Etwas flacher als vorhin.

## The first steps with the levers

step-rear-easier = leichter
step-rear-harder = schwerer
step-ease = locker
# What is said once it was done; in the hub gears shift another way.
done-rear-easier =
    { $gears ->
        [hub] Die Nabe schaltet, wenn du weniger drückst. Deine Beine wirbeln.
       *[sprockets] Die Kette klettert. Deine Beine wirbeln.
    }
done-rear-harder = Langsamere Beine, mehr Druck.
done-ease =
    { $gears ->
        [hub] { $motor ->
            [pulls] Ist der Druck weg, schaltet eine Nabe, sobald der Motor loslässt. Jetzt wieder treten.
           *[none] Ist der Druck weg, schaltet eine Nabe sofort. Jetzt wieder treten.
        }
       *[sprockets] Trittst du locker, kann die Kette wandern. Jetzt wieder treten.
    }
wrong-rear-easier = Das war leichter.
wrong-rear-harder = Das war schwerer.
wrong-front-smaller = Das war ein kleineres Kettenblatt.
wrong-front-bigger = Das war ein größeres Kettenblatt.
wrong-ease = Das war „locker treten“.
wrong-press = Das war „fest treten“.
wrong-coast = Das war „rollen“.
wrong-brake = Das war die Bremse.
wrong-pause = Das war Pause.
instead = Probier das hier:
# Before a key that is held down.
hold = halten
# The pad is lit and has the same sign and word.
pad = tippen
holdPad = halten
skip = Überspringen
# All of it in a sentence, said aloud. $key: how the key is called.
say-rear-easier = Für einen leichteren Gang drücke { $key }.
say-rear-harder = Für einen schwereren Gang drücke { $key }.
say-ease =
    { $how ->
        [hold] Um locker zu treten, halte { $key } gedrückt.
       *[press] Um locker zu treten, drücke { $key }.
    }

## Something in the game broke down

trouble-ride-title = Die Fahrt wurde angehalten
trouble-ride = Im Spiel ging etwas kaputt, darum wurde deine Fahrt dort angehalten, wo du warst. Mach weiter: drei Sekunden, dann drehen sich die Pedale.
trouble-again = Wieder ging etwas kaputt, darum geht diese Fahrt hier nicht weiter. Behalte das Gefahrene, dann lade die Seite neu.
trouble-watching = Im Spiel ging etwas kaputt. Geh zurück, und sieh dir die Fahrt noch einmal an.
trouble-kept = Was du gefahren bist, ist auf diesem Gerät aufbewahrt.
trouble-notKept = Was du gefahren bist, ließ sich hier nicht aufbewahren. Speichere den Bericht: Die Fahrt ist darin.
trouble-goOn = Weiter
trouble-keep = Gefahrenes behalten
trouble-back = Zurück
trouble-page = Im Spiel ging etwas kaputt. Aufbewahrte Fahrten sind noch da. Sieht etwas falsch aus, lade die Seite neu.
trouble-report = Bericht speichern
trouble-reportHint = Eine Datei mit Versionen, dem, was geschah, und der Fahrt. Kein Name steht darin, und von selbst geht sie nirgendwohin.
trouble-reload = Neu laden
trouble-close = Schließen
