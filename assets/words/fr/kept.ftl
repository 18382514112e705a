### Enregistrer, reprendre et effacer ce qui est gardé sur l'appareil.

title = Ce qui est gardé ici
count =
    { $rides ->
        [0] Aucun passage n’est encore gardé. Les passages et tes choix restent sur cet appareil.
        [one] { $rides } passage est gardé sur cet appareil, avec tes choix. Les navigateurs effacent parfois ce qui n’a pas servi depuis longtemps : enregistre un fichier de temps en temps.
       *[other] { $rides } passages sont gardés sur cet appareil, avec tes choix. Les navigateurs effacent parfois ce qui n’a pas servi depuis longtemps : enregistre un fichier de temps en temps.
    }
save = Tout enregistrer dans un fichier
takeBack = Reprendre un fichier
remove = Tout effacer ici
# Names of files, without blanks and accents.
fileEverything = before-the-hill.tout
fileReport = before-the-hill.rapport
failed = Cela n’a pas marché. Recharge la page, puis réessaie.

## Effacer

sureTitle = Tout effacer ?
sure =
    { $rides ->
        [one] { $rides } passage et tous tes choix disparaîtront de cet appareil. C’est définitif.
       *[other] { $rides } passages et tous tes choix disparaîtront de cet appareil. C’est définitif.
    }
keep = Garder
saveFirst = D’abord enregistrer un fichier
removeSure = Tout effacer
deleted = Tout ce qui vient de ce jeu est effacé de cet appareil.
notDeleted = Tout n’a pas pu être effacé. Ferme les autres onglets du jeu, puis réessaie.

## Enregistrer et reprendre

savedAll =
    { $rides ->
        [one] Enregistré : { $rides } passage et tes choix.
       *[other] Enregistré : { $rides } passages et tes choix.
    }
savedPart = Ce qui pouvait être lu est enregistré. Le navigateur n’a pas tout donné ; réessaie avant d’effacer.
notAFile = Ce fichier ne vient pas de ce jeu. Choisis-en un qui se termine par .json.
tooBigFile = Ce fichier est bien plus gros qu’une copie ne peut l’être. Choisis celui que « Tout enregistrer » a fait.
takingBack = Le fichier est en cours de reprise…
stopTaking = Arrêter
stopped = Arrêté. Repris jusqu’ici : { $added } ; choisis de nouveau le fichier pour continuer.
newerFile = Ce fichier vient d’une version plus récente. Recharge la page pour mettre à jour ; rien n’a été changé.
changedFile = Ce fichier a été changé ou abîmé après son enregistrement. Rien n’en a été repris.
changedTitle = Le reprendre quand même ?
changedSure = Ce fichier a été changé ou abîmé après son enregistrement. Si tu sais d’où il vient, ce qui est encore lisible peut être repris. Les passages qui sont ici restent tels quels.
changedLeave = Le laisser
changedTake = Reprendre ce qui est lisible
namesStore = Il indique aussi un serveur du club, { $host }. Rien n’y est envoyé.
lookAtStore = Le regarder
takenBack = Repris : { $added }. Déjà là : { $already }.
refused = Illisibles et laissés de côté : { $refused }.

health-slow =
    Ce qui est gardé sur cet appareil n’est pas encore ouvert : tes propres niveaux et tes résultats ne sont pas affichés. Si cela dure, recharge la page.
health-memory = Cette fenêtre ne garde rien. Tes passages disparaissent quand tu la fermes.
health-small-copy = Seules tes dernières notes sont gardées dans cette fenêtre, pas les passages.
health-disk-full =
    Cet appareil n’a plus de place : les nouveaux passages ne sont pas gardés. Libère de la place ; le jeu réessaiera.
health-recordings-lost =
    De certains passages, il ne reste que les notes : les passages eux-mêmes sont perdus et ne peuvent plus être revus.

## Un passage interrompu

unfinished-olderLegs = Depuis ce passage, les jambes du jeu ont changé : il ne peut pas continuer. Garde ce qui est fait, ou efface-le.
unfinished-kept = Ce qui est fait est gardé. Tu le trouves dans Progrès, sans notes.
unfinished-notKept = Impossible de le garder pour le moment. Il reste ici ; réessaie.
