### Ce qui ne va pas dans un niveau, un plan ou un lien partagé, et quoi faire. Les mots entre guillemets comme "atM" et les mots
### anglais comme flat sont ainsi dans les fichiers et restent tels quels.

## Shapes: what stands in a file against what should stand there

# What stands there now. $found: as it is in the file, where $is is value.
found =
    { $is ->
        [nothing] rien
        [list] une liste
        [object] un objet
       *[value] { $found }
    }
# What should stand there.
needed =
    { $needed ->
        [number] un nombre
        [int] un nombre entier
        [string] du texte entre guillemets
        [boolean] true ou false
        [array] une liste entre [ ]
        [object] un objet entre { "{ }" }
       *[other] autre chose
    }
schema-missing = Ceci manque. Ajoute { needed }.
# $allowed: what may stand there, as one word or a list.
schema-missing-allowed =
    { $count ->
        [1] Ceci manque. Écris { $allowed }.
       *[other] Ceci manque. Choisis parmi : { $allowed }.
    }
schema-wrong-type = On lit ici : { found }. Il faut { needed }.
schema-endless = Ce nombre est trop grand pour être lu. Il faut { needed }.
schema-not-allowed =
    { $count ->
        [1] On lit ici : { found }. Il faut { $allowed }.
       *[other] On lit ici : { found }. Ce n’est pas connu ; choisis parmi : { $allowed }.
    }
schema-characters-most =
    { $most ->
        [one] Ce texte peut avoir au plus { $most } caractère ; il en a { $has }.
       *[other] Ce texte peut avoir au plus { $most } caractères ; il en a { $has }.
    }
schema-characters-least =
    { $least ->
        [one] Ce texte doit avoir au moins { $least } caractère ; il en a { $has }.
       *[other] Ce texte doit avoir au moins { $least } caractères ; il en a { $has }.
    }
schema-entries-most =
    { $most ->
        [one] Cette liste peut avoir au plus { $most } élément ; elle en a { $has }.
       *[other] Cette liste peut avoir au plus { $most } éléments ; elle en a { $has }.
    }
schema-entries-least =
    { $least ->
        [one] Cette liste doit avoir au moins { $least } élément ; elle en a { $has }.
       *[other] Cette liste doit avoir au moins { $least } éléments ; elle en a { $has }.
    }
# $found, $most, $least, $ratio and $percent: as numbers are written in the file.
schema-range-most = On lit ici : { $found }. C’est hors limites ; il faut au plus { $most }.
schema-range-least = On lit ici : { $found }. C’est hors limites ; il faut au moins { $least }.
# Behind the two before: people write gradients in percent.
slopes = Ici, une pente est la hauteur divisée par la distance : { $percent } % s’écrit { $ratio }.
schema-bad-format = On lit ici : { found }. Cela ne convient pas ; n’utilise que des minuscules, des chiffres et des tirets, par exemple "two-pitches".
schema-invalid = On lit ici : { found }. Cela ne convient pas ; compare avec un niveau fourni.
schema-more =
    { $count ->
        [one] Il y a encore { $count } problème. Corrige d’abord ceux-ci.
       *[other] Il y a encore { $count } problèmes. Corrige d’abord ceux-ci.
    }
# $where: near a line, at the end, or unknown.
not-json =
    { $where ->
        [line] Ceci n’est pas lisible comme JSON ; la faute est près de la ligne { $line }. Vérifie les virgules, les guillemets et les crochets.
        [end] Ceci n’est pas lisible comme JSON ; cela finit trop tôt. Vérifie les virgules, les guillemets et les crochets.
       *[unknown] Ceci n’est pas lisible comme JSON. Vérifie les virgules, les guillemets et les crochets.
    }

## Levels. A stretch has wind, gravel or is hidden; a piece is a part of the road

level-too-big = C’est bien trop long pour un niveau. Choisis un fichier enregistré à l’atelier.
level-empty = Ce fichier est vide. Un fichier de niveau contient un objet entre accolades { "{ … }" }.
level-not-a-level = Un fichier de niveau contient un objet entre accolades { "{ … }" }.
level-too-deep = Il y a là bien plus que dans un niveau. Redemande-le, par lien ou par fichier.
level-newer-schema = Ce niveau a été fait par une version plus récente (format { $schema }) ; celle-ci lit jusqu’à { $readsUpTo }. Mets le jeu à jour ; le fichier n’a pas été touché.
level-unknown-key = "{ $key }" ne fait pas partie d’un niveau ici. Enlève-le ou vérifie son orthographe.
level-unknown-cue = Cette consigne demande "atM", et soit un "cue" connu, soit un "text" de 76 caractères au plus.
level-missing-kind = Le type de ce morceau manque. Choisis flat, climb, pitch, descent, rollers, random-pitches ou recorded.
level-unknown-kind = On lit ici : { found }. Ce n’est pas un type de morceau ; choisis flat, climb, pitch, descent, rollers, random-pitches ou recorded.
level-no-weight = Au moins une note doit avoir un poids supérieur à 0.
level-too-short = La route fait { $length } ; il faut au moins { $least }. Allonge un morceau ou ajoutes-en un.
level-too-long = La route fait { $length } ; on peut rouler au plus { $most }. Raccourcis ou enlève des morceaux.
level-gentler-than-steepest = Le raidillon le plus doux est plus raide que le plus raide. Échange les deux nombres.
level-pitches-too-dense =
    { $pitchCount ->
        [one] { $pitchCount } raidillon demande au moins { $least } de route ; ce morceau fait { $length }.
       *[other] { $pitchCount } raidillons demandent au moins { $least } de route ; ce morceau fait { $length }.
    }
level-recorded-too-steep = Ici, la route enregistrée dépasse { $limit } de pente. Lisse d’abord les altitudes.
level-backwards = Ce tronçon finit avant de commencer. "toM" doit être plus grand que "fromM".
level-beyond-end =
    { $part ->
        [cue] Cette consigne est au-delà de la route, qui fait { $length }.
       *[stretch] Ce tronçon finit au-delà de la route, qui fait { $length }.
    }
# $other: its place in the file, like winds[1].
level-overlap = Ce tronçon en recouvre un autre, { $other }. Que l’un finisse où l’autre commence.
level-stop-too-near =
    { $near ->
        [beyond-end] La ligne d’arrêt à { $at } est au-delà de la route, qui fait { $length }.
        [end] La ligne d’arrêt à { $at } demande { $least } de route derrière elle ; la route finit à { $length }.
        [start] La ligne d’arrêt à { $at } demande { $least } de route entre elle et le départ.
       *[line] La ligne d’arrêt à { $at } demande { $least } de route entre elle et la ligne d’arrêt à { $last }.
    }

## Levels that may be ridden, but will surprise. $gear is like 34 × 34

level-cannot-climb = Ici, il faut marcher de { $from } à { $to } (jusqu’à { $slope }), même avec la vitesse la plus facile ({ $gear }) : environ { $walkS } s à pied.
# These two stand behind the one before. $metres: how far a turn of the pedals carries.
takes-gear = Pour rouler, il faudrait une vitesse de { $metres } par tour de pédales.
takes-power = Aucune vitesse n’y suffit ; pour rouler, il faudrait plus de { $watts } W.
level-cannot-hold-cadence = Sur les { $slope } à { $at }, impossible de tenir { $heldRpm } tr/min avec la vitesse la plus facile ({ $gear }) ; il en reste { $cadenceRpm }.
level-stop-uphill = La ligne d’arrêt à { $at } est dans une montée à { $slope } : y repartir est très dur.
level-stop-downhill = La ligne d’arrêt à { $at } est dans une descente à { $slope } : on n’apprend rien en y repartant.
level-hidden-long = La route reste cachée sur { $length } avec { $sight } de visibilité : c’est rouler à l’aveugle, pas regarder loin devant.
level-hidden-pitch = Le raidillon de { $steepest } à { $foot } ne se voit que { $sight } avant ; personne ne peut changer à temps.
level-seed-unused = Chaque passage de ce niveau trouve la même route : il ne peut pas montrer ce qui a été appris. Ajoute des bosses ou des raidillons au hasard.
# $seed: another seed of chance.
level-seed-moves-stop = Avec un autre nombre du hasard ({ $seed }), cette ligne d’arrêt se retrouve dans une pente à { $slope }.

## Plans of group sessions

plan-too-big = C’est bien trop long pour un plan. Redemande-le à l’encadrant.
plan-not-a-plan = Un fichier de plan contient un objet entre accolades { "{ … }" }.
plan-too-deep = Il y a là bien plus que dans un plan. Redemande-le à l’encadrant.
plan-newer-schema = Ce plan a été fait par une version plus récente (format { $schema }) ; celle-ci lit jusqu’à { $readsUpTo }. Mets le jeu à jour ; le fichier n’a pas été touché.
plan-unknown-key = "{ $key }" ne fait pas partie d’un plan. Enlève-le ou vérifie son orthographe.
plan-unknown-kind = Un passage d’un plan est du type bundled, own ou check.
plan-bad-format = N’utilise que des minuscules, des chiffres et des tirets, par exemple "first-evening".
plan-invalid = Cela ne convient pas ici. Compare avec un plan tout prêt.
plan-dirty-text = Le titre a des caractères invisibles, ou des espaces au début ou à la fin. Tape-le de nouveau.
# $first: one or two words; $others: a list.
plan-unknown-bike = Ce vélo n’existe pas. Choisis { $first }, ou l’un de ceux-ci : { $others }.
plan-unknown-rider = Ce cycliste n’existe pas. Choisis { $first }, ou l’un de ceux-ci : { $others }.
plan-unknown-level = Il n’y a pas de niveau "{ $levelId }" ici. Choisis-en un autre, ou mets le niveau lui-même dans le plan.

## Shared links

link-too-big = Ce qui a été partagé est trop gros pour un niveau.
link-not-packed = Ce qui a été partagé n’est pas un niveau. Partage-le de nouveau depuis l’atelier de niveaux.
link-not-shared = Ce n’est pas un niveau partagé. Copie le lien entier, du premier au dernier caractère.
link-newer-version = Ce niveau a été partagé par une version plus récente (format { $version }) ; celle-ci lit jusqu’à { $readsUpTo }. Mets le jeu à jour.
link-damaged = Le niveau partagé est incomplet ou a été changé en route. Copie de nouveau le lien entier.
link-unknown-packing = Le niveau partagé est compressé d’une façon inconnue ici. Mets le jeu à jour.
