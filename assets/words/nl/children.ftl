### De kinderpagina. Geen zin heeft meer dan twaalf woorden.

title = Voor kinderen
intro = Breng de appels over de heuvels. Je vriendje wacht op je.
roads = Kies een weg
done = Gereden
how =
    Komt er een heuvel? Schakel lichter voordat hij begint.
    Rol je naar beneden? Schakel zwaarder als je benen heel snel draaien.
    Let op het gezicht. Zorg dat het blijft lachen.
    Ruwe klikken, trage benen en tollende benen laten de appels springen. De egel smult ervan.
howTitle = Zo gaat het
learnt = Wat je al kunt
nothingYet = Schakel onderweg, dan wacht aan het eind je eerste lapje.
together = Zijn jullie met z’n tweeën? Wissel bij de poort.
wishes = Als je wilt
voice = Zeg het hardop
numbers = Toon getallen
beside = Rijd buiten met een volwassene, en nooit alleen op de weg.
more = Alle andere wegen
