### Porter un plan aux tablettes et en rapporter les passages : codes, liens, fichiers, caméra ; et le serveur du club.

size-bytes =
    { $bytes ->
        [one] { $bytes } octet
       *[other] { $bytes } octets
    }
size-kilobytes = { $size } ko
rides =
    { $rides ->
        [one] { $rides } passage
       *[other] { $rides } passages
    }

## Les codes à l'écran

code-number = { $number } sur { $all }
code-picture =
    { $all ->
        [1] Code : { $what }
       *[other] Code { $number } sur { $all } : { $what }
    }
code-pause = Pause
code-play = Continuer
code-back = Code précédent
code-next = Code suivant
code-speed = Rythme
code-speed-slow = lent
code-speed-usual = normal
code-speed-fast = rapide
code-big = Agrandir
code-jump = Montrer le code { $number }
code-hint = Les codes se suivent. Peu importe où la caméra commence ; elle dit ce qui manque.

## Code, lien ou fichier

carry-making = Préparation…
carry-tooBig = C’est trop pour des codes. Prends le fichier.
carry-link = Lien
carry-copy = Copier le lien
carry-copied = Copié.
carry-notCopied = En http simple, ce navigateur ne copie pas. Le lien est sélectionné : copie-le au clavier ou du doigt.
carry-onlyHere = Cette page a été ouverte à l’adresse localhost, qu’aucune tablette ne peut ouvrir : il n’y a donc pas de lien. Lance le jeu avec « npm start -- --host », puis distribue de nouveau ici. Les codes et le fichier marchent tels quels.
carry-file = Enregistrer un fichier
carry-longLink = Certaines messageries coupent des liens aussi longs. Le fichier est plus sûr.
carry-site = Le lien mène à cette adresse ; l’autre appareil doit pouvoir l’ouvrir.

## Distribuer un plan

handOut-intro = Chaque tablette lit ceci une fois. Ensuite, il ne lui faut ni réseau, ni rien de cet écran.
handOut-what = le plan « { $title } »
handOut-size =
    { $codes ->
        [1] { $size } · un code
       *[other] { $size } · { $codes } codes
    }
handOut-own = Tes propres niveaux sont dedans.
handOut-scanOne = Vise le code avec l’appareil photo de la tablette et ouvre le lien, ou lis-le dans le jeu, sur la page « { $page } ».
handOut-scanMany = Sur la tablette, ouvre dans le jeu la page « { $page } » et vise les codes avec la caméra.

## La veille au soir

ready-title = À la maison, la veille au soir
ready-intro = Sur chaque tablette, tant qu’il y a du réseau. Cette liste vérifie l’appareil que tu regardes.
ready-done = fait
ready-open = à faire
ready-wrong = impossible ici
ready-unknown = ce navigateur ne le dit pas
ready-again = Vérifier de nouveau
ready-allowCamera = Autoriser la caméra
ready-keep = Demander au navigateur de tout garder
ready-secure = Page ouverte en https ou sur localhost
ready-secure-done = Cette page a été ouverte d’une façon qui permet la caméra et le jeu hors ligne.
ready-secure-wrong = Cette page a été ouverte en http simple : pas de caméra ici, pas de copie hors ligne, et l’écran s’éteint tout seul. Ouvre le jeu une fois, à la maison, à une adresse qui commence par https ; ou sur l’ordinateur qui le fournit, à l’adresse localhost.
ready-offline = Une copie hors ligne
ready-offline-done = Le jeu est sur cet appareil et s’ouvre sans réseau.
ready-offline-open = Recharge cette page et attends un instant. Le mieux est de l’ajouter à l’écran d’accueil par le menu du navigateur.
ready-offline-wrong = Sans https, ce navigateur ne garde pas de copie. Ouvre le jeu en https à la maison.
ready-camera = Caméra autorisée
ready-camera-done = La caméra peut servir.
ready-camera-open = Autorise la caméra maintenant, pour que la question ne vienne pas sur le terrain.
ready-camera-wrong = Il n’y a pas de caméra dont cette page puisse se servir. S’il y en a une, autorise-la pour cette page dans les réglages du navigateur ; sinon, prends le lien ou le fichier.
ready-keeping = Gardé pour de bon
ready-keeping-done = Le navigateur n’effacera pas de passages de lui-même.
ready-keeping-open = Le navigateur peut effacer des passages quand il manque de place. Demande-lui de ne pas le faire ; mettre le jeu sur l’écran d’accueil aide. Rends les passages le jour même.

## Lire codes, liens et fichiers

reader-ways = Lire avec
reader-camera = Caméra
reader-picture = Image ou fichier
reader-text = Lien ou texte
reader-start = Allumer la caméra
reader-stop = Éteindre la caméra
reader-loading = Le lecteur se charge…
reader-looking = Tiens le code de façon qu’il remplisse presque toute l’image.
reader-noReader = Le lecteur n’a pas pu être chargé. Plus de réseau ? Prends le lien ou le fichier.
reader-video = Ce que voit la caméra
camera-not-secure = La caméra ne marche que si cette page a été ouverte en https ou sur localhost. Prends une photo avec l’appareil photo de la tablette et choisis-la ici, ou prends le lien ou le fichier.
camera-refused = La caméra n’a pas été autorisée. Autorise-la pour cette page dans les réglages du navigateur, ou prends une photo, le lien ou le fichier.
camera-none = Il n’y a pas de caméra ici. Prends une photo, le lien ou le fichier.
camera-in-use = Un autre programme se sert de la caméra. Ferme-le, puis réessaie.
reader-choose = Choisir images ou fichiers
reader-chooseHint = Des photos de codes, ou un fichier enregistré par ce jeu. Plusieurs à la fois, c’est possible.
reader-noCode = Aucun code lisible dans { $name }. Prends la photo de plus près, bien en face, sans reflet.
reader-paste = Colle le lien, ou le texte d’un code ou d’un fichier
reader-take = Lire
reader-reading = Lecture des passages…
reader-stopReading = Arrêter la lecture
reader-stopped = Arrêté. Rien n’a été gardé.
reader-failed = Impossible de lire cela ici. Ferme d’autres programmes, puis choisis-le encore une fois.
reader-read =
    { $count ->
        [one] { $read } code lu sur { $count }.
       *[other] Codes lus : { $read } sur { $count }.
    }
reader-missing =
    { $count ->
        [one] Il manque le code { $numbers }.
       *[other] Il manque les codes { $numbers }.
    }
reader-cut = Le lien a été coupé en route. Copie-le en entier, ou prends le code ou le fichier.
damaged-checksum =
    { $number ->
        [0] Un code est arrivé abîmé. Lis-le encore une fois.
       *[other] Le code { $number } est arrivé abîmé. Lis-le encore une fois.
    }
damaged-newer-version =
    { $number ->
        [0] Un code vient d’une version plus récente du jeu. Recharge cette page pour mettre à jour.
       *[other] Le code { $number } vient d’une version plus récente du jeu. Recharge cette page pour mettre à jour.
    }
damaged-contradicts =
    { $number ->
        [0] Un code dit autre chose qu’avant. Montre les codes depuis le début.
       *[other] Le code { $number } dit autre chose qu’avant. Montre les codes depuis le début.
    }
damaged-too-many-messages = Trop de choses différentes ont été lues à la fois. Ouvre cette page de nouveau.
damaged-not-a-frame = Ce qui a été lu n’est pas un code de ce jeu.
unreadable-not-a-packet = Cela ne vient pas de ce jeu.
unreadable-newer-version = Cela vient d’une version plus récente du jeu. Recharge cette page pour mettre à jour.
unreadable-damaged = Tous les codes sont là, mais ensemble ils ne donnent pas ce qui a été envoyé. Montre-les encore une fois.
unreadable-nothing = Il n’y a rien dedans.
unreadable-too-big = C’est trop gros pour des passages ou un plan. Enregistre-le de nouveau sur la tablette d’où il vient, puis choisis-le ici.
reader-wrongPlan = Ce plan n’est pas utilisable :
reader-isPlan = C’est un plan, pas des passages. Ouvre-le sur la page « { $page } ».
reader-isRides = Ce sont des passages, pas un plan. Ouvre-les sur l’appareil de qui encadre, page « { $page } ».

## Une tablette rejoint

join-intro = Lis le code de qui encadre, ou ouvre le lien. Rien à taper, pas de noms.
join-found = Voici ce qui est prévu pour la séance
join-rides = Au programme
join-unknownLevel = { $level } : pas sur cet appareil
join-ownLevel = niveau fait par qui encadre
join-missing = Un niveau de ce plan n’est pas dans le jeu de cet appareil. Mets d’abord le jeu à jour : recharge cette page tant qu’il y a du réseau.
join-join = Rejoindre
join-no = Pas celui-ci
join-here = Cet appareil a déjà rejoint la séance. Ses passages restent tels quels.
join-other = Cet appareil a rejoint la séance avec une copie plus ancienne de ce plan. Les passages déjà faits restent avec cette copie.
join-go = Aller au groupe

## Une tablette rend

handBack-intro = Montre les codes à la caméra de qui encadre. Deux fois ne compte pas plus qu’une ; rien n’est effacé ici.
handBack-tablet = Cette tablette : { $tablet }
handBack-none = Aucun passage n’a encore été fait ici dans ce groupe.
handBack-marksOnly = Codes et lien portent les notes. Le fichier porte les passages entiers, pour que l’on puisse les revoir et les noter de nouveau.

## Réunir les passages

collect-intro = Vise les codes de chaque tablette avec la caméra, ou prends son lien ou son fichier. L’ordre et les répétitions ne comptent pas.
collect-tablets = Qui a rendu quoi
collect-nobody = Rien n’est encore venu.
collect-noSession = Aucune séance de cet appareil ne va avec ces passages. Ouvre-les sur l’appareil de qui encadre.
column-tablet = Tablette
column-here = Ici
column-missing = Manque
column-since = Manque depuis
column-heard = Dernier signe
missing-nothing = rien
missing-rides =
    { $count ->
        [one] passage { $numbers } ({ $count } manque)
       *[other] passages { $numbers } ({ $count } manquent)
    }
ago-now = à l’instant
ago-minutes = { $minutes } min
ago-hours = { $hours } h
ago-neverSaid = un trou dans ses numéros
ago-never = jamais
took =
    { $fresh ->
        [0] { $known ->
            [one] Rien de nouveau : { $known } passage était déjà là.
           *[other] Rien de nouveau : { $known } passages étaient déjà là.
        }
        [one] { $known ->
            [0] { $fresh } passage reçu.
            [one] { $fresh } passage reçu, { $known } était déjà là.
           *[other] { $fresh } passage reçu, { $known } étaient déjà là.
        }
       *[other] { $known ->
            [0] { $fresh } passages reçus.
            [one] { $fresh } passages reçus, { $known } était déjà là.
           *[other] { $fresh } passages reçus, { $known } étaient déjà là.
        }
    }
took-damaged =
    { $pieces ->
        [one] { $pieces } partie était abîmée.
       *[other] { $pieces } parties étaient abîmées.
    }
took-otherPlan =
    { $rides ->
        [one] { $rides } passage d’un autre plan a été laissé de côté.
       *[other] { $rides } passages d’un autre plan ont été laissés de côté.
    }
collect-notKept = Ce qui est venu n’a pas pu être gardé sur cet appareil. Enregistre un fichier avant de fermer cette page.
checked =
    { $rides ->
        [one] { $rides } passage rejoué sur cet appareil ; les notes sont justes.
       *[other] { $rides } passages rejoués sur cet appareil ; les notes sont justes.
    }
otherVersion =
    { $rides ->
        [one] { $rides } passage vient d’une autre version du jeu : ses notes sont montrées telles quelles, mais il ne peut être ni rejoué ni comparé aux autres.
       *[other] { $rides } passages viennent d’une autre version du jeu : leurs notes sont montrées telles quelles, mais ils ne peuvent être ni rejoués ni comparés aux autres.
    }
unknownLevel =
    { $rides ->
        [one] { $rides } passage est sur un niveau qui n’est pas ici : ses notes sont montrées telles quelles, mais il ne peut pas être rejoué ici.
       *[other] { $rides } passages sont sur des niveaux qui ne sont pas ici : leurs notes sont montrées telles quelles, mais ils ne peuvent pas être rejoués ici.
    }
marksOnly =
    { $rides ->
        [one] { $rides } passage n’est venu qu’en notes ; le fichier d’une tablette a le passage entier.
       *[other] { $rides } passages ne sont venus qu’en notes ; le fichier d’une tablette a les passages entiers.
    }
withdrawn =
    { $rides ->
        [one] { $rides } passage a été retiré par sa propre tablette.
       *[other] { $rides } passages ont été retirés par leur propre tablette.
    }
checking = Encore à rejouer : { $rides }.

## Ce qui est venu et ne compte pas

damaged-title = Parties abîmées ({ $count })
damaged-hint = Elles ne comptent pas. Fais montrer de nouveau les passages de la tablette ; une bonne copie les remplace.
damaged-piece =
    { $from ->
        [nobody] { $seq ->
            [0] D’une tablette inconnue
           *[other] D’une tablette inconnue, passage { $seq }
        }
       *[tablet] { $seq ->
            [0] Tablette { $tablet }
           *[other] Tablette { $tablet }, passage { $seq }
        }
    }
piece-not-json = coupé ou changé en route
piece-not-a-record = ce n’est pas un passage entier
piece-newer-version = fait par une version plus récente ; mets le jeu à jour ici
piece-dirty-text = un nom avec des caractères cachés
piece-checksum = changé en route
piece-recording = les notes sont bonnes, l’enregistrement est abîmé
piece-file-head = la première ligne de son fichier est abîmée
piece-too-long = bien plus long que tout passage
apart-title = Mis de côté ({ $count })
apart-hint = Ces passages sont gardés, mais ne comptent pas : rejoués, ils ne donnent pas ce qu’ils annoncent.
apart-ride = Tablette { $tablet }, passage { $seq }, { $name }
apart-totals = annoncé { $said }, trouvé { $found }
apart-no-recording = notes seulement
apart-unknown-level = son niveau n’est pas ici
apart-other-level = son niveau a été changé
apart-other-setup = son enregistrement est celui d’un autre passage
apart-changed-bike = un vélo du jeu avec d’autres chiffres
apart-changed-rider = un cycliste du jeu avec d’autres chiffres
apart-impossible-setup = un vélo ou un cycliste qui ne peut pas exister
apart-too-long = plus long qu’un passage ne peut l’être
apart-not-finished = il n’est jamais arrivé au bout
apart-other-version = fait avec une autre version du jeu
apart-not-same-ride = rejoué, c’est un autre passage
apart-other-marks = rejoué, il a d’autres notes
conflict-title = Contradictions ({ $count })
conflict-same-id = Deux passages différents sous un même identifiant ; les deux sont gardés, aucun ne compte.
conflict-same-seq = Deux passages sous un même numéro d’une tablette ; les deux sont gardés, aucun ne compte.

## Le serveur du club

store-title = Un serveur de ton club
store-intro = Tout marche sans lui. Avec lui, les tablettes se retrouvent d’elles-mêmes : sur un ordinateur de la salle (« npm run club »), ou dans une base CouchDB que le club héberge ou loue. Rien n’est envoyé nulle part avant que quelqu’un soit d’accord ici, sur cet appareil.
store-take-title = Lire ou coller les réglages
store-take-hint = L’ordinateur qui sert de serveur les montre en code, comme chaque appareil qui s’en sert. L’appareil photo de la tablette ouvre aussi le code.
store-take-paste = Ou le lien des réglages
store-take-none = Ce ne sont pas les réglages entiers d’un serveur. Lis le code encore une fois, ou copie tout le lien.
store-give = Montrer les réglages à un autre appareil
store-give-title = Réglages du serveur
store-give-hint = Un code pour toutes les tablettes et tous les encadrants. Qui l’a peut lire tous les passages et en ajouter : montre-le à qui en a le droit, et n’en fais pas de photo.
store-give-onlyHere = Cette page a été ouverte à l’adresse localhost, qu’aucune tablette ne peut ouvrir. Lance-la avec « npm run club », ou ouvre-la à l’adresse des tablettes.
store-give-hide = Cacher les réglages
store-details = Adresse, base, nom et mot de passe
store-instead = Il prendrait la place de { $host }.
store-fetch = Actualiser
store-url = Adresse
store-urlHint = par exemple https://rides.our-club.example
store-database = Base de données
store-name = Nom
store-password = Mot de passe
store-passwordHint = Reste sur cet appareil, lisible par qui s’en sert. Prends un nom qui n’a aucun autre droit.
store-plainHttp = Cette page ne peut parler qu’aux adresses https, à l’ordinateur d’où elle vient et à cet ordinateur-ci : en http simple, d’autres pourraient lire en route le nom, le mot de passe et les passages. Prends https.
store-plainHere = En http simple, tous ceux qui sont sur ce réseau peuvent lire. Fais-le sur un réseau à toi, ou lance le serveur en https.
store-mixed = Cette page a été ouverte en https : le navigateur ne parlera pas à un serveur en http. Prends https.
store-badAddress = Une adresse commence par https:// et ne contient ni nom ni mot de passe ; une base s’écrit en minuscules et en chiffres.
store-consent = Si tu es d’accord
store-consent-sends =
    { $typed ->
        [no] Après chaque passage d’une séance en groupe, cet appareil envoie à cette adresse : les surnoms, le numéro de cette tablette, et les passages avec leurs notes. Il va chercher ce que d’autres tablettes y ont mis.
       *[yes] Après chaque passage d’une séance en groupe, cet appareil envoie à { $host } : les surnoms, le numéro de cette tablette, et les passages avec leurs notes. Il va chercher ce que d’autres tablettes y ont mis.
    }
store-consent-more =
    Qui s’occupe de ce serveur peut tout lire. Rien d’autre n’est envoyé, et personne d’autre n’est interrogé.
    Demande d’abord à ton club ; avec des enfants, aussi à ceux qui décident pour eux. Prends des surnoms qui ne font reconnaître personne.
    Tu peux arrêter à tout moment. Ce qui a été envoyé y reste jusqu’à ce que le club l’efface.
store-agree =
    { $typed ->
        [no] D’accord : envoyer à cette adresse
       *[yes] D’accord : envoyer à { $host }
    }
store-forget = Oublier cette adresse
store-offered-file = Un fichier repris indique { $host }. Rien n’y a été envoyé. Accepte seulement si tu sais que c’est celui de ton club.
store-offered-code = Voici les réglages d’un serveur, { $host }. Rien n’y a été envoyé.
store-offered-before = Une adresse d’avant est gardée ici : { $host }. Rien n’y est envoyé avant que quelqu’un redonne son accord ici.
store-goesTo = Les passages vont à { $host }
store-what = Ce qui est envoyé
store-whatIs = Les surnoms, le numéro de cette tablette, et les passages des séances en groupe avec leurs notes
store-where = Vers où
store-soFar = Jusqu’ici
store-agreed = Accord donné ici
store-sent =
    { $rides ->
        [0] Rien n’y est encore parti.
        [one] { $rides } passage y est parti, le dernier le { $moment }.
       *[other] { $rides } passages y sont partis, le dernier le { $moment }.
    }
store-line = Les passages de ce groupe vont à { $host }, avec les surnoms, les notes et le numéro de cette tablette.
store-look = Regarder
store-stop = Arrêter l’envoi
store-stopHint = Ce qui a été envoyé y reste jusqu’à ce que le club l’efface. Les passages de cet appareil restent tels quels.
store-test = Demander s’il répond
store-testing = Demande en cours…
store-works = Le serveur répond et te laisse entrer.
store-off = Rien n’est envoyé.
store-notAsked = Aucune séance n’a joint le serveur depuis que cette page est ouverte.
store-nothing = Rien n’attend d’être envoyé au serveur.
store-done =
    { $rides ->
        [one] Le seul passage et tous les bilans sont sur le serveur.
       *[other] Les { $rides } passages et les bilans sont tous sur le serveur.
    }
store-sending = Envoi au serveur : encore { $left }.
store-again = Prochain essai dans { $seconds } s.
store-safe =
    { $left ->
        [0] Tous les passages de cet appareil y sont, et ils sont à l’abri sur cet appareil aussi.
        [one] Encore { $left } ; il est à l’abri sur cet appareil.
       *[other] Encore { $left } ; ils sont à l’abri sur cet appareil.
    }
store-unreachable = Le serveur ne répond pas : pas de réseau, serveur éteint, ou cette page n’est pas de celles qu’il admet.
store-busy = Le serveur n’a pas le temps en ce moment.
store-disk-full = Le disque du serveur est plein. Dis-le à qui s’en occupe.
store-wrong-password = Le serveur n’accepte pas ce nom et ce mot de passe.
store-not-allowed = Ce nom n’a pas le droit d’écrire dans cette base.
store-no-database = Cette base n’existe pas. Il faut d’abord la créer.
store-bad-address = Il y a une erreur dans l’adresse ou dans le nom de la base.
store-not-a-store = Quelque chose répond, mais ce n’est pas un tel serveur.
store-endless = Le serveur donne plus qu’on ne peut prendre à la fois. Ce qui est venu est gardé ; le reste est demandé dans un instant.
store-some-refused = Le serveur n’a pas voulu de certains passages. Ils sont à l’abri sur cet appareil ; rends-les par fichier.
