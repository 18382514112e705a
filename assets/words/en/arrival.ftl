### A page whose script has not come or may not start. The build writes these into the page itself, in English: they are
### true while the game is still on its way as well as when it never comes.

onItsWay = The game is on its way to you.
stuck =
    If this stays here, a part of it did not get through. Look whether the network is there: a public Wi-Fi may first want you to sign in on a page of its own. An old browser may need an update.
again = Load the page again
safe = What you have ridden stays kept on this device.
noScript =
    This browser does not run scripts (JavaScript) on this page, and the game is made of them. Please allow them here, then load the page again.
framed =
    Another page shows Before the Hill inside itself. The game only starts on a page of its own, so that nobody can lay anything over its buttons.
alone = Open it on its own
