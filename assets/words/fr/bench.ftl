### L'atelier de niveaux : on y fait ses propres routes, à partir de rien ou d'une sortie enregistrée. Longueurs,
### hauteurs, vitesses, pentes et parts arrivent déjà écrites, avec leur unité.

intro = Fais une route pour t’entraîner : de tête, ou à partir d’une route vraiment parcourue.
opening = L’atelier se prépare…
openFailed = L’atelier n’a pas pu être chargé. Recharge la page, puis réessaie.
named = { $doing } : { $what }
range = { $low } à { $high }

## La première page

home-make = Faire un niveau
home-fresh = Une nouvelle route
home-freshSentence = Fait à l’atelier de niveaux.
home-freshHint = Plat, raidillon, plat : change-la à partir de là.
home-roadHint = La sortie de dimanche, ou ses { $length } les plus durs.
home-file = Ouvrir un fichier
home-fileHint = Un fichier .json que quelqu’un a enregistré ici.
home-copy = Partir d’un niveau du jeu
home-copyHint = Une copie ; le niveau lui-même reste.
home-choose = Niveau
home-copyButton = Le copier
home-own = Tes niveaux
home-none = Aucun pour l’instant. Ce que tu enregistres ici se trouve aussi sur la page « Niveaux ».
home-ride = Rouler
home-edit = Modifier
home-duplicate = Dupliquer
home-remove = Effacer
home-removed = « { $title } » est effacé.
home-restored = « { $title } » est de retour.
home-duplicated = « { $title } » a été ajouté.
home-unsaved = « { $title } » est à l’atelier et n’est pas enregistré.
home-goOn = Continuer
home-drop = L’abandonner
home-facts = { $length }, jusqu’à { $steepest }

## Un niveau doit s'ouvrir alors qu'un autre n'est pas enregistré

leave-title = Pas encore enregistré
leave-text = « { $title } » a des changements qui ne sont pas enregistrés. Qu’en faire ?
leave-keep = Y retourner
leave-drop = Les abandonner

## Enregistrer

keep-save = Enregistrer
keep-saved = Enregistré sur cet appareil.
keep-unsaved = Pas encore enregistré.
keep-changed = Changé depuis l’enregistrement.
keep-faulty = On pourra l’enregistrer quand les points sous « { check-title } » seront réglés.
keep-private-window = Pas enregistré : le navigateur ne garde rien dans cette fenêtre. Télécharge-le dans un fichier.
keep-disk-full = Pas enregistré : l’appareil n’a plus de place. Télécharge-le dans un fichier.
keep-newer-version = Pas enregistré : une version plus récente du jeu est passée par ici. Recharge la page.
keep-blocked = Pas enregistré : un autre onglet du jeu l’empêche. Ferme-le et réessaie.
keep-failed = Pas enregistré : le navigateur ne répond pas. Par prudence, télécharge-le dans un fichier.

## La route à l'atelier

edit-undo = Annuler
edit-redo = Refaire
edit-list = Tous les niveaux de l’atelier
edit-titleField = Titre
edit-sentenceField = Une phrase à son sujet
edit-profile = La route vue de côté. Chaque poignée se fait glisser, ou se déplace avec les flèches.
edit-facts =
    { $pitches ->
        [0] { $length }, { $climbed } de montée, aucun raidillon
        [one] { $length }, { $climbed } de montée, { $pitches } raidillon
       *[other] { $length }, { $climbed } de montée, { $pitches } raidillons
    }
edit-road = Route
edit-placed = Sur la route
edit-addPiece = Ajouter un morceau de route
edit-addPlaced = Ajouter quelque chose sur la route
edit-earlier = Plus tôt
edit-later = Plus tard
edit-duplicate = Dupliquer
edit-remove = Enlever
edit-nothing = Rien pour l’instant.
edit-wholeMetres = Un niveau est gardé en mètres entiers : les longueurs en pieds peuvent changer un peu.
edit-more = Plus sur ce niveau
edit-lesson = Ce qu’il enseigne
edit-audience = Pour
edit-everyone = tout le monde
edit-children = les enfants
edit-seed = Nombre du hasard
edit-seedHint = Un autre nombre, une autre route du même genre.
edit-passMark = Note pour réussir
edit-aids = Aides à l’écran
edit-no = { $number }. { $name }

zoom-title = Quelle partie de la route est montrée
zoom-closer = Plus près
zoom-wider = Plus large
zoom-back = ◀ Reculer
zoom-on = Avancer ▶
zoom-whole = Toute la route

## Morceaux de route

piece-flat = Plat
piece-climb = Montée
piece-pitch = Raidillon
piece-descent = Descente
piece-rollers = Bosses
piece-random-pitches = Raidillons au hasard
piece-recorded = Route enregistrée
facts-sloped = { $length }, { $slope }
facts-rollers = { $length }, ≤ { $slope }
facts-random-pitches = { $length }, { $count } × ≤ { $slope }

## Ce qu'il y a sur la route

place-stopLinesM = Ligne d’arrêt
place-winds = Vent
place-surfaces = Revêtement
place-hidden = Tronçon caché
place-cues = Consigne
surface-gravel = gravier
surface-grass = herbe
surface-cobbles = pavés
wind =
    { $way ->
        [head] vent de face { $speed }
       *[tail] vent dans le dos { $speed }
    }
wind-mps = { $value } m/s
placed-stretch = { $stretch }, { $what }
hidden-sight = { place-hidden }, visibilité { $sight }
placed-sight = visibilité { $sight }
placed-cue = { $at } : { $cue }
ownCue = Tes propres mots
cueText = Ce qu’elle dit

## Champs

field-lengthM = Longueur
field-slope = Pente
field-waveM = D’un sommet à l’autre, environ
field-steepest = Le plus raide
field-gentlest = Raidillon le plus doux
field-pitchCount = Raidillons
field-beforeEach = Route avant chacun (0 : au hasard)
field-fromM = De
field-toM = À
field-atM = À
field-windMps = Vent de face (moins : dans le dos)
field-sightM = Visibilité

## Ce qui ne va pas, ce qui peut surprendre

check-title = À regarder
check-good = Rien d’inquiétant pour qui roule ici sur ce vélo.
check-working = On regarde…
check-goThere = Y aller
check-trim = Le couper
check-cannotRide = Avant de pouvoir rouler :
check-surprising = Permis, mais peut surprendre :

## Le meilleur passage

reference-title = Ce qu’on sentirait
reference-intro = Le meilleur passage possible ici.
reference-bike = Vélo
reference-rider = Cycliste
reference-asRidden = Avec la puissance de l’enregistrement ({ $watts } W)
reference-working = Calcul du meilleur passage : { $share }
reference-ask = Calculer le meilleur passage
reference-long = La route est longue ; le calcul prend un moment.
reference-failed = Le meilleur passage n’a pas pu être calculé.
reference-waits = Il faut d’abord corriger la route.
reference-time = Temps
reference-lowest = Cadence la plus basse
reference-lowestAt = { $rpm } tr/min, à { $at }
reference-shifts = Changements
reference-worst = Raidillon le plus dur
reference-worstIs = { $steepest } à { $at } : les jambes tombent à { $rpm } tr/min
reference-noPitch = pas de raidillon court ; le plus raide à { $at }, { $steepest }
reference-asksNothing = Aucun raidillon ne demande ici une vitesse plus facile : les jambes tiennent celle avec laquelle elles arrivent, ou c’est déjà la plus facile. Avec ce vélo et ce cycliste, l’anticipation n’est pas notée.
reference-level = aucun, la route est plate
reference-feet = Pied à terre
reference-cadenceLane = Cadence (tr/min)
reference-speedLane = Allure
reference-scale = { $low } – { $high }
reference-lane = { $what } : { $range }
reference-best = le meilleur passage
reference-ridden = ta sortie
reference-legend = Marques sur la route : ▲ passer plus facile, ▼ passer plus dur.
reference-shift =
    { $direction ->
        [easier] plus facile à { $at } : { $gear }
       *[harder] plus dur à { $at } : { $gear }
    }
reference-list = Tous les changements en liste

## À côté de ce qui a été roulé

compare-title = À côté de ta sortie
compare-times = Tu as mis { $rode } de { $from } à { $to }, pauses comprises ; le meilleur passage prend { $best }.
# $watts: told from the recorded ride. $theirs: of the rider of the best ride.
compare-power =
    { $how ->
        [same] D’après les côtes, tu as roulé à environ { $watts } W, comme s’il n’y avait pas eu de vent. Le meilleur passage a la même puissance.
        [other] D’après les côtes, tu as roulé à environ { $watts } W, comme s’il n’y avait pas eu de vent. Le meilleur passage a { $theirs } W : une part de l’écart vient de la puissance, pas du choix des vitesses.
        [helped] Avec un moteur, les côtes ne disent pas ce que tes jambes ont donné et ce qu’il a fait. Le meilleur passage a { $theirs } W et l’assistance réglée pour le vélo.
       *[unknown] Il y avait trop peu de montée pour connaître ta puissance. Le meilleur passage a { $theirs } W : une part de l’écart peut venir de la puissance, pas du choix des vitesses.
    }
compare-withCadence = Entre { $from } et { $to }, tu as roulé à { $rode } tr/min ; le meilleur passage y est sur { $gear }, à { $cadence }.
compare-withSpeed = Entre { $from } et { $to }, tu as roulé à { $rode } ; le meilleur passage y est sur { $gear }, à { $speed }.
compare-noCadence = Le fichier ne contient pas de cadence : seules les allures peuvent être comparées.
compare-notKept = L’allure et la cadence de cette sortie ne sont montrées qu’ici. Elles ne font pas partie du niveau.
compare-keep = Les garder sur cet appareil
compare-kept = Gardées sur cet appareil, à côté du niveau. Elles ne vont jamais dans un lien ni dans un fichier.
compare-forget = Les effacer
compare-saveFirst = Enregistre d’abord le niveau.
compare-waits = Arrive dès que le meilleur passage est calculé.

## Un tour d'essai

try-title = Tour d’essai
try-from = Partir à
try-start = Départ du tour d’essai
try-ride = Rouler d’ici
try-hint = Sur ton propre vélo. Les tours d’essai ne sont pas gardés.

## Partager

share-title = Partager
share-intro = Lien, code et fichier portent le niveau lui-même : sa route, son titre et sa phrase. Rien d’autre.
share-link = Lien
share-copy = Copier le lien
share-copied = Copié.
share-copyFailed = Le navigateur n’a pas permis la copie. Sélectionne le lien et copie-le à la main.
share-code = Le lien sous forme de code pour un appareil photo
share-tooLong = Cette route est trop longue pour un code. Prends le lien ou le fichier.
share-file = Télécharger

## Le niveau en texte

json-title = En texte
json-intro = Le même niveau en JSON. Ce que tu changes ici change la route, et inversement.
json-field = Le niveau en JSON
json-good = C’est le niveau à l’atelier.
json-bad = Pas encore repris :
json-line = Ligne { $line }

## Un niveau arrivé par lien ou fichier

opened-title = Un niveau pour toi
opened-intro = Il n’est pas encore gardé. Regarde-le d’abord.
opened-keep = Le garder
opened-ride = Rouler sans le garder
opened-leave = Le laisser
opened-badTitle = Impossible d’ouvrir ceci
opened-already = Tu as déjà exactement cette route : « { $title } ».
opened-keepCopy = Garder une autre copie
opened-climbed = Montée
opened-fingerprint = Empreinte de la route
opened-reading = Décompression…
opened-no = Ce navigateur ne peut pas décompresser le lien. Demande plutôt le fichier.

## Une route tirée d'une sortie enregistrée

road-title = Une route tirée d’un fichier GPX
road-intro = Le fichier est lu ici, dans ton navigateur, et ne part nulle part. Un niveau ne contient que des hauteurs et des distances.
road-choose = Choisir un fichier GPX
road-drop = ou dépose-le n’importe où sur cette page. Il peut être compressé (.gz ou .zip).
road-reading = Lecture : { $share }
road-cancel = Arrêter
road-cancelled = Arrêté. Rien n’a été gardé.
road-refused = Impossible de tirer une route de ce fichier
road-facts = { $length }, { $climbed } de montée, jusqu’à { $steepest }, avec { $points } points.
road-quality = Jusqu’où se fier à ses hauteurs
road-grades-good = Bien : elles s’accordent entre elles.
road-grades-fair = Moyen : à prendre avec prudence.
road-grades-poor = Mauvais : les côtes ne sont peut-être pas là où elles semblent.
road-notes = Ce qui a été corrigé
road-questions = À décider
road-options-join = toutes, bout à bout
road-options-straight = les franchir en ligne droite
road-options-longest-part = ne prendre que la plus longue partie sans trou
road-options-metres = mètres
road-options-feet = pieds
road-track = seulement la trace { $track }
road-stretch = Quel tronçon ?
road-profile = La route enregistrée vue de côté, avec le tronçon choisi
road-hardest = Les { $length } les plus durs
road-whole = Toute la route
road-longest = Les premiers { $length }
road-chosen = Le niveau : { $length }, { $climbed } de montée, jusqu’à { $steepest }.
road-flatter = La route enregistrée était plus raide : { $climbed } de montée, jusqu’à { $steepest }. Un niveau va jusqu’à { $limit } : ses parties raides montent moins.
road-titleField = Titre du niveau
road-titleHint = À toi de le donner ; rien n’est pris dans le fichier.
road-sentence = Une route vraiment parcourue.
road-make = Enregistrer comme niveau
road-needsTitle = Donne-lui un titre.
road-timed = Le fichier dit à quelle allure la route a été parcourue. Tu peux comparer cela à l’atelier.
road-working = Un instant…
