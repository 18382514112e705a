### La page des enfants. Aucune phrase n'a plus de douze mots.

title = Pour les enfants
intro = Porte les pommes en haut des côtes. Ton ami t’attend.
roads = Choisis une route
done = Fait
how =
    Une côte arrive ? Passe plus facile avant qu’elle commence.
    Ça descend ? Passe plus dur quand tes jambes moulinent.
    Regarde le visage. Garde-lui le sourire.
    Les clics brusques font sauter les pommes. Le hérisson adore ça.
howTitle = Comment on joue
learnt = Ce que tu sais déjà
nothingYet = Ton premier écusson t’attend au bout d’une route.
together = Vous êtes deux ? Changez de place au portillon.
wishes = Si tu veux
voice = Dis-le à voix haute
numbers = Montre les chiffres
beside = Dehors, roule avec un adulte, et jamais sans lui sur la route.
more = Toutes les autres routes
