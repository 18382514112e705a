### Ce qui est dit d'un fichier où une route est enregistrée (GPX) : pourquoi rien ne peut en être fait, ce qu'une
### personne peut décider, combien on peut se fier aux altitudes. GPX, KML, TCX, FIT, JSON, XML, PDF, UTF-8 et DOCTYPE
### sont des noms de formats. « Trace » est ce qui a été enregistré, « route » ce sur quoi on roule.

## Ce que le fichier est à la place

is-web-page-at-once = C’est une page web, pas un fichier GPX. Le téléchargement demandait peut-être de se connecter. Connecte-toi et télécharge-le à nouveau.
is-web-page = C’est une page web, pas un fichier GPX. Télécharge la sortie elle-même.
is-kml = C’est un fichier KML. Exporte la sortie en GPX, avec ses altitudes.
is-tcx = C’est un fichier TCX. Exporte plutôt la sortie en GPX.
is-json = C’est du JSON, pas un fichier GPX. Exporte la sortie en GPX.
is-pdf = C’est un document PDF, pas un fichier GPX. Exporte la sortie en GPX.
is-picture = C’est une image, pas un fichier GPX. Exporte la sortie en GPX.
is-fit = C’est un fichier FIT. Exporte plutôt la sortie en GPX.
is-binary = Ce n’est pas un fichier de texte, donc pas un fichier GPX. Exporte la sortie en GPX.
is-other = Ce n’est pas un fichier GPX : il ne commence pas par « < ». Exporte la sortie en GPX.
is-xml = C’est du XML, mais pas du GPX : il commence par <{ $root }>. Exporte la sortie en GPX.

## Pourquoi aucune route ne peut être faite

too-big = Ce fichier est trop gros pour une seule sortie. Exporte une sortie plus courte.
truncated = Le fichier s’arrête au milieu, à la ligne { $line }. Exporte-le ou copie-le de nouveau.
empty = Ce fichier est vide. Exporte-le ou copie-le à nouveau.
packed = Ce fichier est compressé d’une façon qui ne s’ouvre pas ici. Décompresse-le d’abord ; le fichier qu’il contient se termine par .gpx.
packed-damaged = Ce fichier compressé est abîmé ou protégé par un mot de passe : il ne s’ouvre pas. Décompresse-le d’abord, ou exporte-le de nouveau.
packed-without = Il n’y a pas de fichier GPX dans cette archive. Le fichier qu’elle contient doit se terminer par .gpx.
packed-several = Il y a plusieurs fichiers GPX dans cette archive. Décompresse-la et choisis l’un d’eux.
encoding = Le fichier est écrit dans un codage qui ne se lit pas ici ({ $label }). Enregistre-le en UTF-8.
not-well-formed = Le fichier est abîmé à la ligne { $line } : à cet endroit, ce n’est pas du XML bien formé. Exporte-le de nouveau.
doctype = Le fichier apporte son propre type de document (DOCTYPE), ce qui n’est jamais nécessaire et n’est pas sûr. Exporte-le de nouveau en simple GPX.
too-deep = Dans le fichier, plus de { $most } éléments sont emboîtés les uns dans les autres. Exporte-le à nouveau en GPX simple.
too-many-points = Le fichier a plus de { $most } points. Exporte une sortie plus courte.
no-such-track =
    { $trackCount ->
        [one] Il n’y a pas de trace { $track } ; le fichier n’en a qu’une.
       *[other] Il n’y a pas de trace { $track } ; le fichier en a { $trackCount }.
    }
no-readable-points =
    { $pointCount ->
        [one] Le fichier n’a qu’un point, et sa position sur le globe est illisible. Exporte-le à nouveau, avec des positions en degrés.
       *[other] Le fichier a { $pointCount } points, et aucun n’a de position lisible sur le globe. Exporte-le à nouveau, avec des positions en degrés.
    }
only-waypoints =
    { $waypointCount ->
        [one] Le fichier contient un seul point isolé (waypoint), mais ni trace ni itinéraire. Exporte la sortie elle-même.
       *[other] Le fichier contient { $waypointCount } points isolés (waypoints), mais ni trace ni itinéraire. Exporte la sortie elle-même.
    }
no-points = Le fichier ne contient ni trace ni itinéraire avec des points. Exporte la sortie elle-même.
no-length = La trace ne quitte jamais son premier point, comme celle d’une sortie en salle : elle n’a pas de longueur. Choisis une sortie sur route.
too-short = La route fait { $length } ; il faut au moins { $least } pour un niveau. Choisis une sortie plus longue.
too-long = La trace fait { $length } : aucune sortie n’est aussi longue. Exporte une seule sortie.
no-elevation = Le fichier n’a pas d’altitudes : on ne sait rien de ses côtes. Exporte-le depuis un programme qui les ajoute.
no-readable-elevation =
    { $pointCount ->
        [one] La seule altitude du fichier est illisible. Exporte-le à nouveau, en mètres comme 1420.5.
       *[other] Aucune des { $pointCount } altitudes du fichier n’est lisible. Exporte-le à nouveau, en mètres comme 1420.5.
    }
backwards = Le tronçon finit avant de commencer. Choisis où il commence et où il finit.
unreadable = Le fichier n’a pas pu être lu. A-t-il été déplacé ou changé entre-temps ? Choisis-le de nouveau.
no-reader = La partie qui lit les fichiers ne répond pas. Recharge la page, puis choisis de nouveau le fichier.
no-road = La route n’est plus ici. Choisis de nouveau le fichier.

## Ce qu'une personne décide

several-tracks =
    { $how ->
        [joined] Le fichier contient { $trackCount } traces. Elles ont été mises bout à bout. Est-ce bien la route ?
       *[one] Le fichier contient { $trackCount } traces. La trace { $track } a été prise. Est-ce bien la route ?
    }
holes =
    { $holeCount ->
        [one] La trace a un trou ; il fait { $longest }, à { $at } du départ. Il a été franchi en ligne droite. Garder cela, ou ne prendre que la plus longue partie sans trou ?
       *[other] La trace a { $holeCount } trous ; le plus long fait { $longest }, à { $at } du départ. Ils ont été franchis en ligne droite. Garder cela, ou ne prendre que la plus longue partie sans trou ?
    }
perhaps-feet-steep = { $share } de cette route aurait une pente de plus de { $steep }. Les altitudes du fichier sont peut-être en pieds. En quoi sont-elles ?
perhaps-feet-fast = À vélo, cela ferait { $climb } de montée en une heure : aucune jambe n’en est capable. Les altitudes du fichier sont peut-être en pieds. En quoi sont-elles ?

## Ce qui a été fait

salvaged =
    { $pointCount ->
        [one] Le fichier est abîmé à la ligne { $line }. Ce qui pouvait être lu a été gardé : { $pointCount } point. Regarde si la route est entière.
       *[other] Le fichier est abîmé à la ligne { $line }. Ce qui pouvait être lu a été gardé : { $pointCount } points. Regarde si la route est entière.
    }
stops =
    { $long ->
        [seconds] Les pauses ont été enlevées, pour que la dispersion des positions ne devienne pas une route : { $count } ({ $time } s en tout).
        [minutes] Les pauses ont été enlevées, pour que la dispersion des positions ne devienne pas une route : { $count } ({ $time } min en tout).
       *[unknown] Les pauses ont été enlevées, pour que la dispersion des positions ne devienne pas une route : { $count }.
    }
zero-elevations = Altitudes d’exactement 0, alors que la route est loin de là, laissées de côté : { $pointCount }.
impossible-points =
    { $pointCount ->
        [one] { $pointCount } point a été laissé de côté : personne ne peut y être passé.
       *[other] { $pointCount } points ont été laissés de côté : personne ne peut y être passé.
    }
unreadable-points = Points sans position lisible, laissés de côté : { $pointCount }.
unreadable-elevations = Altitudes qui n’en sont pas, laissées de côté : { $pointCount }.
unwritten-elevations = Points sans altitude, placés sur une ligne droite entre leurs voisins : { $pointCount }.
elevation-spikes = Pics d’altitude isolés, laissés de côté : { $pointCount }.
time-backwards = Par endroits, les heures reculent : rien n’est donc comparé avec elles. La route elle-même n’en a pas besoin.
cadence-halved = Les jambes auraient tourné à { $rpm } tr/min la moitié du temps : le capteur a compté chaque pied. La cadence a été divisée par deux.
cadence-stuck = La cadence est partout de { $rpm } tr/min : elle n’a pas été mesurée. Elle a été laissée de côté.
capped = Sur { $length }, la pente de la route dépasse { $limit } (jusqu’à { $steepest }) ; un niveau la limite à { $limit }.

## Combien on peut se fier aux altitudes

sparse = Les points sont à { $step } les uns des autres : trop peu pour les côtes entre eux.
rounded-places = Les positions sont écrites par pas de { $step } : la route en sort plus longue et moins raide qu’elle ne l’est.
elevation-missing = Les altitudes manquent sur { $share } de la route ; des lignes droites les remplacent.
holes-share = { $share } de la route est faite de trous franchis en ligne droite.
bridged = Sur { $share } de la route, les altitudes font des sauts qu’aucune route ne fait ; ils ont été comblés.
jumps =
    { $jumpCount ->
        [one] Les altitudes font un saut qu’aucune route ne fait, comme si l’appareil avait été réglé de nouveau ; la route continue à l’altitude où elle arrivait.
       *[other] Les altitudes font { $jumpCount } sauts qu’aucune route ne fait, comme si l’appareil avait été réglé de nouveau ; la route continue à l’altitude où elle arrivait.
    }
noisy = D’un point à l’autre, les altitudes varient au hasard de { $noise } ; l’erreur sur les pentes peut être de { $points } (points de pourcentage), bien qu’elles soient moyennées sur { $width }.
spikes = { $share } des altitudes sont des pics isolés ; ils ont été laissés de côté.
whole-metres = Les altitudes sont en mètres entiers : les petites bosses sont floues.
all-equal = Toutes les altitudes sont égales. Soit la route est plate comme l’eau, soit elles n’ont jamais été mesurées.
