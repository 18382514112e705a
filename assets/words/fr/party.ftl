### La fête au bout d'une route pour jouer. Aucune phrase n'a plus de douze mots.

title = C’est la fête !
carried =
    { $apples ->
        [1] Tu as apporté une pomme.
        [2] Tu as apporté deux pommes.
        [3] Tu as apporté trois pommes.
        [4] Tu as apporté quatre pommes.
        [5] Tu as apporté cinq pommes.
        [6] Tu as apporté six pommes.
        [7] Tu as apporté sept pommes.
       *[other] Tu as apporté { $apples } pommes.
    }
all = Tu as apporté toutes les pommes !
found =
    { $apples ->
        [1] Une pomme a sauté du panier. Le hérisson la rapporte.
        [2] Deux pommes ont sauté du panier. Le hérisson les rapporte.
        [3] Trois pommes ont sauté du panier. Le hérisson les rapporte.
        [4] Quatre pommes ont sauté du panier. Le hérisson les rapporte.
        [5] Cinq pommes ont sauté du panier. Le hérisson les rapporte.
        [6] Six pommes ont sauté du panier. Le hérisson les rapporte.
        [7] Sept pommes ont sauté du panier. Le hérisson les rapporte.
       *[other] { $apples } pommes ont sauté du panier. Le hérisson les rapporte.
    }
shared = Maintenant, tout le monde mange.
learnt = Tu as appris : { $lesson }.
noClick = Cette fois, tu n’as pas changé de vitesse. Change, et tu gagnes un écusson.

## Quoi faire la prochaine fois

tip-jolts = La prochaine fois : change avant que ça monte, pieds légers.
tip-grinding = La prochaine fois : le visage souffle ? Passe plus facile, et plus tôt.
tip-whirring = La prochaine fois : ça mouline ? Passe plus dur.
tip-none = Tout en douceur ! Le hérisson croque quand même une grosse bouchée.

## Boutons

again = Encore une fois
next = Ensuite : { $level }
takeOver = Changez de place : à l’autre de rouler
roads = Toutes les routes
grownUps = Pour les adultes : le passage en détail

picture = Une table avec des pommes. L’ami, le chien et le hérisson font la fête.
