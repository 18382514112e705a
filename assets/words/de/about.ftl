### Wie man spielt, warum es sich wie Radfahren anfühlt, Datenschutz, Vorsicht, und woher die Zahlen kommen.

title = So geht’s
keys = Was deine Hände tun
tryLevers = Die Hebel ausprobieren
playTitle = Kurz gesagt
# Each line is a sentence of its own.
play =
    Treten geht von selbst. Deine Hände schalten, deine Augen schauen voraus.
    Die rechte Hand bedient das Schaltwerk: leichter oder schwerer. Die linke Hand bedient die Kettenblätter.
    Schalte vor dem Berg, Gang für Gang, und tritt locker, solange die Kette wandert.
    Bei Gängen in der Nabe ist es umgekehrt: Druck weg oder stehen bleiben, schalten, dann weitertreten.
    Auch ein Mittelmotor zieht an der Kette: locker treten, einen Atemzug warten, bis er loslässt, dann schalten. Über { $speed } hilft er nicht.
    Der Gang in Zahlen ist der, auf dem der Hebel steht; eine gepunktete Linie darunter heißt, dass die Kette noch unterwegs ist.
    Lass die Beine in einem Tempo kreisen, das dir liegt. Über eine kleine Welle kannst du einfach hinwegfahren.
modelTitle = Warum es sich wie Radfahren anfühlt
model =
    Gewicht, Steigung, Wind, Rollwiderstand und Reibung der Kette werden 120-mal in der Sekunde nach veröffentlichten Formeln berechnet. Nichts bleibt dem Zufall überlassen: Die gleichen Tastendrücke ergeben die gleiche Fahrt.
privacyTitle = Datenschutz
privacy =
    Dieses Spiel fragt nicht, wer du bist. Es hat kein Konto und keinen Zähler, und es spricht mit keinem anderen Computer. Was du tust, bleibt auf diesem Gerät.
careTitle = Vorsicht
# Each line is a sentence of its own.
care =
    Ein Spiel lehrt den richtigen Moment, nicht den Straßenverkehr.
    Übe zuerst an einem ruhigen, ebenen, abgesperrten Ort. Augen auf die Straße, nicht auf die Kette.
    Bremsen, Helm und das Recht an deinem Ort gehen vor.
    Kinder fahren unter Aufsicht von Erwachsenen.
    Ein Rad mit Motor fährt kräftiger an, als man denkt, braucht länger zum Anhalten und ist schwer zu schieben. Alter, Helm und Geschwindigkeit regelt das Recht an deinem Ort.
    Schmerzen in Knien oder Brust heißen: anhalten und ärztlichen Rat holen.
    Welche Ritzel, Kettenblätter und Ketten man tauschen kann, begrenzen Umwerfer und Schaltwerk: Frag eine Fachwerkstatt und lies die Unterlagen des Herstellers.
    Finger weg von einer laufenden Kette.
    Folge dem, was dein Verband, deine Schule oder deine Übungsleitung mit Lizenz sagt.
creditsTitle = Woher die Zahlen kommen
# Each line is a sentence of its own.
credits =
    Fahren in der Ebene, bergauf und gegen den Wind: J. C. Martin und andere, Validation of a mathematical model for road cycling power, Journal of Applied Biomechanics 14, 1998.
    Gänge in der Nabe: die Willis-Gleichung der Planetengetriebe und veröffentlichte Übersetzungen; wie viel sie verlieren, ist umstritten und hier gewählt.
    Motoren: EN 15194:2017, Elektromotorisch unterstützte Räder; wie spät sie einsetzen und loslassen, ist gewählt.
    Verluste in der Kette: J. B. Spicer und andere, Effects of frictional loss on bicycle chain drive efficiency, Journal of Mechanical Design 123, 2001.
    Reifengrößen: ISO 5775. Kontrast, Größe und Bedienung mit Tasten: WCAG 2.2.
    Bilder, Töne, Texte und Straßen sind für dieses Spiel gemacht. Es steht auf offenen Bibliotheken: Phaser, Preact, fflate, howler.js, idb, saxes, Zod.
honest =
    Noch hat niemand gezeigt, dass ein Spiel draußen zu besserem Schalten führt. Dieses hier misst, was du in ihm lernst, und behauptet nicht mehr.
