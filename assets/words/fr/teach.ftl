### Plans de séance : ce que dit et fait l’encadrant, fiches d’exercice, une feuille pour la maison et un diplôme, aussi sur papier : une page chacun.

intro = Quoi dire, où rouler, quoi faire dehors sur le vrai vélo, et quoi distribuer.
back = Tous les plans

audiences-adults = Adultes débutants
audiences-mixed = Groupes mixtes
audiences-children = Enfants
# A length, as short as can be.
min = { $minutes } min
sheets = À distribuer
cards = Fiches d’exercice
cardsHint = Quatre par page, à découper
home = Pour la maison
homeHint = Pour un enfant et ses parents
certificate = Diplôme
certificateHint = Ce qui est appris, sans points
own = Tes copies
# Name of a file, where the title of a plan has no letters: small, without spaces.
fileName = plan-de-seance
# Read out for a button: a length as it stands there, and for whom.
lengthFor = { $length }, { $audience }
# The title of a plan, and of the file of a copy: for whom, and how long.
planTitle = { $audience }, { $minutes } minutes
open = Ouvrir une copie
openHint = Un fichier enregistré ici auparavant
ownGone = Une copie n’existe que dans son fichier. Ouvre-le de nouveau.
print = Imprimer
change = Modifier une copie
save = Enregistrer
done = Montrer la feuille
changing = Ta copie
changeHint = Une phrase par ligne. Enregistre-la dans un fichier avant de fermer cette page.

fields-title = Titre
fields-minutes = Minutes
fields-level = Route
rideRoad = Rouler sur cette route
toClinic = Commencer en groupe
road = Route : { $road }
noRoad = La route de ce plan n’est pas sur cet appareil.

parts-warmUp = Échauffement
parts-say = À dire
parts-road = Rouler dans le jeu
parts-question = Questions devant l’image du groupe
parts-drill = Dehors, sur le vrai vélo
parts-watch = À surveiller
parts-end = À la fin

# Labels before what a drill needs and so on, on a card and in a plan.
row-needs = Il faut :
row-safe = Sécurité :
row-watch = À surveiller :
row-easier = Plus simple :
row-harder = Plus difficile :
# $drill: the title of a drill in a plan, before what is done.
drillInPlan = { $drill }.

problems-too-big = Ce fichier est trop gros pour un plan de séance. Ouvres-en un qui a été enregistré sur cette page.
problems-not-json = Ce fichier est illisible. Ouvres-en un qui a été enregistré sur cette page.
problems-not-a-session-plan = Ce fichier n’est pas un plan de séance. Ouvres-en un qui a été enregistré sur cette page.
problems-newer-schema = Une version plus récente du jeu a enregistré ce plan. Mets celle-ci à jour, puis ouvre-le de nouveau.
problems-dirty-text = Ce plan contient des caractères qui ne peuvent pas être affichés. Enlève-les dans un éditeur de texte, puis ouvre-le de nouveau.

# After the cautions of cautions.ftl, on every page. Exact: somebody could be hurt.
moreCautions =
    Garde les doigts loin d’une chaîne qui bouge.
    Les vitesses dans le moyeu se changent à l’inverse : pression relâchée, ou à l’arrêt ; puis on appuie de nouveau. Avec un frein à rétropédalage, les pédales ne tournent pas en arrière.
    Un vélo à assistance électrique démarre fort, met plus de temps à s’arrêter et est lourd ; une roue avant entraînée glisse sur sol mouillé : doucement, et seulement comme la loi de l’endroit le permet. Moteur de pédalier : pieds légers (moyeu : pression relâchée), le temps d’un souffle, puis change.
defers = Suis ce que disent ta fédération, ton école ou ton moniteur diplômé ; cela et la loi de l’endroit où tu roules passent avant cette feuille.
practice = Tout le reste de cette page est d’usage courant, sans source.

sources-adults =
    Au plus 12 cyclistes par moniteur, deux ou trois séances d’une à deux heures ; débutants : un ou deux par moniteur (AustCycle, Australie, 2012).
    Un cours pour adultes dure 9 heures, dont 5 sur le vélo (cours des États-Unis, docslib.org 11303719).
    Avec des dérailleurs, changer avant que ce soit nécessaire et continuer à pédaler (Special Olympics, coaching guide, Shifting gears).
sources-mixed =
    Au plus 12 cyclistes par moniteur, deux ou trois séances d’une à deux heures (AustCycle, Australie, 2012).
    Angleterre, niveau 1, hors circulation : 9 à 12 cyclistes deux heures, 5 à 8 une heure et demie, 2 à 4 une heure, par moniteur (delivery guide 8.3.1).
    Avec des dérailleurs, changer avant que ce soit nécessaire et continuer à pédaler (Special Olympics, coaching guide, Shifting gears).
sources-children =
    « Bien se servir de ses vitesses (si le vélo en a) » fait partie du niveau 1, hors circulation (UK cycle training standard, 2005).
    Angleterre, niveau 1 : 9 à 12 enfants deux heures, 5 à 8 une heure et demie, 2 à 4 une heure, par moniteur (delivery guide 8.3.1).
    Dès 8 ans, 15 par moniteur en pratique, trois heures (niveau 1, Nouvelle-Zélande). Vers 9 ans, avec freins et vitesses (niveau 1, Écosse, guide des parents 2014).

homeSheet-title = Pour la maison
homeSheet-child = Pour toi
homeSheet-childLines =
    Aujourd’hui, j’ai travaillé le clic avant la côte.
    Montre à ta famille quelle manette rend le pédalage plus facile.
    Trouve trois côtes près de chez toi. Où ferais-tu clic ?
    Écoute : ton clic, il est doux ou bruyant ?
homeSheet-draw = Dessine une côte, et une croix où tu fais clic.
homeSheet-parents = Pour les parents
homeSheet-parentLines =
    Avant chaque sortie, vérifiez freins, pneus, selle et casque. Une vitesse qui saute ou qui gratte, c’est l’affaire d’un mécanicien.
    Roulez d’abord ensemble dans un endroit calme, plat et fermé à la circulation. Un adulte responsable est toujours là.
    Demandez « Qu’est-ce qui arrive ? » plutôt que « Change maintenant ! ». C’est l’enfant qui trouve l’endroit.
    Dix minutes suffisent. Arrêtez tant que c’est amusant, et dès que quelque chose fait mal.
    Une chaîne qui a sauté est remise par un adulte, vélo à l’arrêt.
# Before a line to write on, as are the two of the certificate.
homeSheet-name = Nom, si tu veux :

certificateSheet-title = Diplôme
# Follows a line with a name.
certificateSheet-says = a fait des exercices à vélo, et a montré :
certificateSheet-learnt =
    Je regarde la côte avant qu’elle arrive.
    Je fais clic avant la côte, pas dedans.
    J’ai les pieds légers quand la chaîne bouge.
    Je m’arrête sur la vitesse qui me fait repartir.
    Je sais dire en roulant ce qui arrive.
certificateSheet-tick = L’encadrant coche ce qu’il a vu. Le reste viendra la prochaine fois.
certificateSheet-date = Jour et lieu :
certificateSheet-coach = Encadrant :

## Drills on the real bike, called across a yard: a title, what is done (each line a sentence), and what stands behind the labels

card-cone-title = Clic au cône
card-cone-doing =
    Un cône est posé dix mètres avant la pente, ou avant un trait de craie.
    Roule vers lui tranquillement, les yeux sur la pente.
    Au cône : pieds légers, un clic plus facile, continue.
card-cone-needs = Deux cônes, de la craie, 40 m de terrain calme et plat avec une pente douce ou un trait.
card-cone-safe = Un cycliste à la fois, tous dans le même sens, six longueurs de vélo d’écart. Personne n’attend dans la zone d’arrêt.
card-cone-watch = Le clic se fait-il au cône, et est-il fini avant la pente ? Les têtes restent-elles levées ?
card-cone-easier = Sans clic d’abord : dis « là » au cône.
card-cone-harder = Enlève le cône. Chacun choisit l’endroit et dit « là ».
card-soft-feet-title = Pieds légers devant l’encadrant
card-soft-feet-doing =
    Passe tranquillement devant l’encadrant.
    Un clic, pieds légers, juste avant l’encadrant.
    Écoute : un bon clic ne fait pas de bruit.
card-soft-feet-needs = 40 m de terrain calme et plat, et un vélo aux vitesses vérifiées avant.
card-soft-feet-safe = L’encadrant se tient sur le côté, jamais dans la trajectoire. Pas de doigts près d’une chaîne.
card-soft-feet-watch = Les jambes s’arrêtent-elles ? Elles doivent appuyer légèrement et continuer à tourner. Avec un moyeu, elles se reposent ; avec un moteur de pédalier, elles attendent le temps d’un souffle.
card-soft-feet-easier = Seulement les pieds légers, sans clic.
card-soft-feet-harder = Deux clics à la suite, avec un tour de pédales entre les deux.
card-starting-gear-title = S’arrêter sur la vitesse du départ
card-starting-gear-doing =
    Roule vers la ligne d’arrêt.
    Clic plus facile avant de freiner, tant que les jambes tournent (moyeu : arrête-toi, puis clic).
    Arrête-toi, un pied à terre, freins serrés. Repars sur cette vitesse.
card-starting-gear-needs = De la craie pour une ligne, 30 m de terrain calme et plat. Chacun essaie d’abord ses freins.
card-starting-gear-safe = Un cycliste à la fois. Le suivant part quand le précédent s’est éloigné. Moteur : assistance la plus faible, doucement.
card-starting-gear-watch = La vitesse est-elle passée avant que la roue s’arrête ? Le premier coup de pédale est-il facile, sans zigzag ?
card-starting-gear-easier = Arrêt n’importe où ; l’encadrant annonce le clic.
card-starting-gear-harder = Sans ligne : on s’arrête quand l’encadrant lève la main.
card-talk-title = Parler et rouler
card-talk-doing =
    Fais un tour et dis tout haut ce qui arrive : « plat », « côte », « arrêt ».
    Dis « clic » quand tu changes pour cela.
    Qui roule derrière écoute seulement, et raconte après.
card-talk-needs = Un circuit calme, fermé à la circulation, avec une bosse ou un trait qui en tient lieu.
card-talk-safe = Trois longueurs de vélo entre les cyclistes. On ne double pas. On ne se retourne pas pour parler.
card-talk-watch = La côte est-elle dite avant le clic, et le clic fait avant la côte ?
card-talk-easier = L’encadrant dit ce qui arrive.
card-talk-harder = Le dire sans clic ; faire clic au bon endroit, en silence.

## The plans: what a coach says and does, each line a sentence. What is said to children has at most twelve words.
## Those who lead are spoken to shortly; under “Say” stands what they call to the group.

road-20 = Deux cyclistes y roulent sur le grand écran, l’un après l’autre. Les autres crient « là » où ils feraient clic.
road-45 = Chacun y roule une fois, sur deux appareils, avec huit cyclistes au plus. Ceux qui attendent crient « là ».
road-60 = Chacun y roule une ou deux fois, sur deux appareils, avec huit cyclistes au plus. Ceux qui attendent crient « là ».

longer-adults = À l’arrêt, roue arrière levée, chacun montre la manette pour passer plus facile ; doigts loin de la chaîne.
lines-adults-warmUp =
    Vérifier les vélos : les freins mordent, les pneus sont durs, selle et guidon tiennent, les casques sont bien mis.
    Deux tours tranquilles ; au deuxième, un clic plus dur, puis un clic plus facile.
lines-adults-say =
    Changez avant la côte, tant que les pédales tournent facilement.
    Pieds légers pendant un tour de pédales, le temps que la chaîne bouge.
    Un clic, sentez-le, puis le suivant.
lines-adults-question =
    À quel raidillon la plupart ont-ils changé trop tard, et que pouvait-on voir avant ?
    Où feriez-vous clic maintenant ? Montrez-le sur la route.
lines-adults-drill = Dans un endroit calme, plat et fermé à la circulation, tous dans le même sens. Les fiches disent comment l’installer et rester en sécurité.
lines-adults-watch =
    Des jambes qui s’arrêtent avant le clic, des clics déjà dans la pente, des yeux sur la chaîne.
    Quelqu’un peine : deux crans plus facile, et le même tour encore. Une douleur : on s’arrête.
lines-adults-end =
    Chacun dit une chose qu’il fera avant la prochaine côte.
    La prochaine fois : le même tour, avec le clic un peu plus tôt ou plus tard.

longer-mixed = Par deux, une personne débutante avec une expérimentée ; celle-ci pose des questions et n’explique pas.
lines-mixed-warmUp =
    Vérifier les vélos à deux : freins, pneus, selle, guidon, casques.
    Deux tours tranquilles à deux, à trois longueurs de vélo ; changez qui roule devant.
lines-mixed-say =
    Levez les yeux : la prochaine côte vous dit quelle vitesse passer.
    Finissez vos clics avant la côte ; le dernier, pieds légers.
    Vite ou lentement, peu importe aujourd’hui : ce qui compte, c’est tôt et sans bruit.
lines-mixed-question =
    Avant le raidillon, qu’a fait le meilleur passage que la plupart d’entre nous n’ont pas fait ?
    Les plus expérimentés ont-ils changé plus tôt, ou seulement moins souvent ?
lines-mixed-drill = À deux dans un endroit calme et fermé à la circulation. Qui roule derrière dit ensuite où le clic est venu.
lines-mixed-watch =
    Des cyclistes expérimentés font la course : une seule vitesse pour tout le tour.
    Des débutants copient celui de devant : leurs propres jambes disent quand.
lines-mixed-end =
    Chaque paire raconte une chose entendue ou vue chez l’autre.
    La prochaine fois : les paires dans l’autre ordre.

longer-children = Chacun sonne, freine et fait clic une fois, à l’arrêt à côté de l’encadrant.
lines-children-warmUp =
    Un adulte responsable vérifie chaque vélo : freins, pneus, selle, casque. Qui n’a pas de vitesses fait les exercices sans le clic.
    Deux tours à la queue leu leu, lentement, à une longueur de vélo.
lines-children-say =
    Clic avant la côte, pas dedans.
    Pieds légers quand la chaîne bouge.
    Regardez la côte, pas la chaîne.
lines-children-question =
    Quelle côte a piégé le plus de monde ?
    Où ferons-nous clic la prochaine fois ?
lines-children-drill = Un enfant à la fois, dans un endroit calme et fermé à la circulation, avec un adulte responsable. Les fiches disent comment.
lines-children-watch =
    Des pieds qui s’arrêtent, des têtes baissées, des enfants qui attendent dans le passage.
    Félicite le clic, pas la rapidité. On ne compare personne à personne.
lines-children-end =
    Que feras-tu avant la prochaine côte ?
    Montre à quelqu’un chez toi comment ton vélo fait clic.
    Distribuer la feuille pour la maison.
