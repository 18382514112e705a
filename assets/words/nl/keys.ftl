### Keys

rear-easier = Achter: lichter
rear-harder = Achter: zwaarder
# With one lever there is nothing to tell it from.
only-rear-easier = Lichter
only-rear-harder = Zwaarder
front-smaller = Voor: kleiner blad
front-bigger = Voor: groter blad
ease = Zacht trappen
press = Hard trappen
coast = Laten rollen
brake = Remmen
pause = Pauze
name-Space = Spatie
name-Escape = Esc
name-Enter = Enter
name-Tab = Tab
# Als het hardop wordt gezegd.
spoken-ArrowUp = pijltje omhoog
spoken-ArrowDown = pijltje omlaag
spoken-ArrowLeft = pijltje naar links
spoken-ArrowRight = pijltje naar rechts
