### Une page dont le script n'est pas arrivé, ou n'a pas le droit de démarrer.

onItsWay = Le jeu arrive.
stuck =
    Si ce texte reste, une partie du jeu n’est pas passée. Regarde si le réseau est là : un Wi-Fi public demande parfois de s’identifier d’abord sur sa propre page. Un vieux navigateur a peut-être besoin d’une mise à jour.
again = Recharger la page
safe = Tes passages restent gardés sur cet appareil.
noScript =
    Ce navigateur n’exécute pas de scripts (JavaScript) sur cette page, et le jeu en est fait. Autorise-les ici, puis recharge la page.
framed =
    Une autre page affiche Before the Hill à l’intérieur d’elle-même. Le jeu ne démarre que sur sa propre page, pour que personne ne puisse rien poser sur ses boutons.
alone = L’ouvrir seul
