### La page des enfants. Aucune phrase n'a plus de douze mots.

title = Pour les enfants
intro = Porte les pommes en haut des côtes. Ton ami t’attend.
roads = Choisis une route
done = Faite
how =
    Une côte arrive ? Passe plus facile avant qu’elle commence.
    Ça descend ? Passe plus dur quand tes jambes moulinent.
    Regarde le visage. Il doit garder le sourire.
    Clic brusque, jambes trop lentes ou trop rapides : les pommes sautent. Le hérisson adore ça.
howTitle = Comment on joue
learnt = Ce que tu sais déjà
nothingYet = Change de vitesse en route : ton premier écusson t’attend au bout.
together = Vous êtes deux ? Changez de place au portillon.
wishes = Si tu veux
voice = Lire à voix haute
numbers = Montrer les chiffres
beside = Dehors, roule avec un adulte, et jamais sans lui sur la route.
more = Toutes les autres routes
