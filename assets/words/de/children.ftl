### Die Seite für Kinder. Kein Satz hat mehr als zwölf Wörter.

title = Für Kinder
intro = Bring die Äpfel über die Berge. Dein Freund wartet schon.
roads = Such dir eine Straße aus
done = Gefahren
how =
    Kommt ein Berg? Schalte leichter, bevor er anfängt.
    Geht es bergab? Schalte schwerer, wenn deine Beine wirbeln.
    Schau auf das Gesicht. Es soll lächeln.
    Die Äpfel hüpfen, wenn du ruppig schaltest, langsam trittst oder wirbelst. Das freut den Igel.
howTitle = So geht es
learnt = Das kannst du schon
nothingYet = Schalte unterwegs: Am Ende der Straße wartet dein erster Aufnäher.
together = Seid ihr zu zweit? Dann tauscht am Tor.
wishes = Wenn du magst
voice = Laut vorlesen
numbers = Zahlen zeigen
beside = Draußen fährst du mit Erwachsenen, nie allein auf einer Straße.
more = Alle anderen Straßen
