### Een pagina waarvan het script niet is aangekomen of niet mag starten. De build schrijft deze zinnen in de pagina zelf:
### ze kloppen zolang het spel nog onderweg is, en ook als het nooit komt.

onItsWay = Het spel is naar je onderweg.
stuck =
    Blijft dit hier staan, dan is een deel niet doorgekomen. Kijk of er netwerk is: een openbare wifi wil soms eerst dat je je op een eigen pagina aanmeldt. Een oude browser heeft misschien een update nodig.
again = Laad de pagina opnieuw
safe = Wat je gereden hebt, blijft op dit apparaat bewaard.
noScript =
    Deze browser voert op deze pagina geen scripts (JavaScript) uit, en daar bestaat het spel uit. Sta ze hier toe en laad de pagina dan opnieuw.
framed =
    Een andere pagina toont Before the Hill binnen zichzelf. Het spel start alleen op een eigen pagina, zodat niemand iets over de knoppen heen kan leggen.
alone = Open het op een eigen pagina
