### La page d'un passage : avant lui, pendant une pause, les premiers essais avec les manettes, et quand quelque chose se casse.

title = En route : { $level }
failed-not-fetched = L’image du passage n’a pas pu être chargée. Vérifie la connexion, puis réessaie.
failed-no-canvas = Ce navigateur ne laisse pas le jeu dessiner d’image : il n’y a donc rien pour se guider. Autorise-le dans ses réglages (souvent sous « vie privée » ou « confidentialité »), ou ouvre le jeu dans un autre navigateur.
failed-broken = Ce passage ne peut pas démarrer : quelque chose n’y marche pas. Essaie un autre niveau, ou choisis de nouveau le vélo.
again = Réessayer
pausedHint = La route t’attend. Ta vitesse aussi.
restart = Depuis le début
leave = Arrêter de rouler
stage = Le passage
hands = Échap met en pause.
controls = Ce que font tes mains
# Under it, where there are pads.
controlsPads = Touche la case qui porte le même signe.
watching = Ton passage, encore une fois.
watchOn = Continuer à regarder
backToDebrief = Retour à ton passage
steeper = Un peu plus raide qu’avant : tu as compris.
gentler = Un peu plus doux qu’avant.

## Les premiers essais avec les manettes

step-rear-easier = plus facile
step-rear-harder = plus dur
step-ease = pieds légers
done-rear-easier =
    { $gears ->
        [hub] Le moyeu change quand tu appuies moins. Tes jambes tournent vite.
       *[sprockets] La chaîne grimpe. Tes jambes tournent vite.
    }
done-rear-harder = Des jambes plus lentes, et il faut appuyer plus.
done-ease =
    { $gears ->
        [hub] { $motor ->
            [pulls] Sans pression, un moyeu change dès que le moteur lâche. Appuie de nouveau.
           *[none] Sans pression, un moyeu change tout de suite. Appuie de nouveau.
        }
       *[sprockets] Les pieds légers laissent passer la chaîne. Appuie de nouveau.
    }
wrong-rear-easier = C’était plus facile.
wrong-rear-harder = C’était plus dur.
wrong-front-smaller = C’était un plateau plus petit.
wrong-front-bigger = C’était un plateau plus grand.
wrong-ease = C’était « pieds légers ».
wrong-press = C’était « appuyer fort ».
wrong-coast = C’était la roue libre.
wrong-brake = C’était le frein.
wrong-pause = C’était la pause.
instead = Essaie plutôt :
hold = maintiens
pad = touche
holdPad = maintiens
skip = Ignorer
say-rear-easier = Pour plus facile, appuie sur { $key }.
say-rear-harder = Pour plus dur, appuie sur { $key }.
say-ease =
    { $how ->
        [hold] Pour des pieds légers, maintiens { $key }.
       *[press] Pour des pieds légers, appuie sur { $key }.
    }

## Quelque chose s'est cassé dans le jeu

trouble-ride-title = Le passage s’est arrêté
trouble-ride = Quelque chose s’est cassé dans le jeu, alors ton passage s’est arrêté là où tu étais. Continue : trois secondes, puis les pédales tournent.
trouble-again = Cela s’est cassé encore une fois : ce passage ne peut pas continuer ici. Garde ce qui est fait, puis recharge la page.
trouble-watching = Quelque chose s’est cassé dans le jeu. Reviens, et regarde encore une fois.
trouble-kept = Ton passage est gardé sur cet appareil.
trouble-notKept = Ton passage n’a pas pu être gardé ici. Enregistre le rapport : le passage est dedans.
trouble-goOn = Continuer
trouble-keep = Garder ce qui est fait
trouble-back = Retour
trouble-page = Quelque chose s’est cassé dans le jeu. Les passages gardés le sont toujours. Si quelque chose a l’air bizarre, recharge la page.
trouble-report = Enregistrer un rapport
trouble-reportHint = Un fichier avec les versions, ce qui s’est passé et le passage. Aucun nom n’y figure, et il ne part nulle part tout seul.
trouble-reload = Recharger
trouble-close = Fermer
