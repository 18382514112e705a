### Keys

rear-easier = Arrière : plus facile
rear-harder = Arrière : plus dur
# With one lever there is nothing to tell it from.
only-rear-easier = Plus facile
only-rear-harder = Plus dur
front-smaller = Avant : plateau plus petit
front-bigger = Avant : plateau plus grand
ease = Pieds légers
press = Appuyer fort
coast = Roue libre
brake = Freiner
pause = Pause
name-Space = Espace
name-Escape = Échap
name-Enter = Entrée
name-Tab = Tab
spoken-ArrowUp = flèche vers le haut
spoken-ArrowDown = flèche vers le bas
spoken-ArrowLeft = flèche gauche
spoken-ArrowRight = flèche droite
