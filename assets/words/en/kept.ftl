### Saving, taking back and deleting what is kept on the device.

title = What is kept here
count =
    { $rides ->
        [0] No ride is kept yet. Rides and your choices stay on this device.
        [one] { $rides } ride is kept on this device, with your choices. Browsers sometimes clear what was long unused, so save a file now and then.
       *[other] { $rides } rides are kept on this device, with your choices. Browsers sometimes clear what was long unused, so save a file now and then.
    }
save = Save everything as a file
takeBack = Take a file back
remove = Delete everything here
# Names of files, without blanks and accents.
fileEverything = before-the-hill.everything
fileReport = before-the-hill.report
failed = That did not work. Load the page anew, then try again.

## Deleting

sureTitle = Delete everything?
sure =
    { $rides ->
        [one] { $rides } ride and all your choices will be gone from this device. This cannot be undone.
       *[other] { $rides } rides and all your choices will be gone from this device. This cannot be undone.
    }
keep = Keep it
saveFirst = Save a file first
removeSure = Delete it all
deleted = Everything of this game is deleted from this device.
notDeleted = Not everything could be deleted. Close other tabs of the game, then try again.

## Saving and taking back

savedAll =
    { $rides ->
        [one] Saved: { $rides } ride and your choices.
       *[other] Saved: { $rides } rides and your choices.
    }
savedPart = Saved what could be read. The browser did not give everything; try again before you delete.
notAFile = This is not a file saved by this game. Choose one that ends in .json.
tooBigFile = This file is far bigger than a copy can be. Choose the one that “Save everything” made.
takingBack = Taking the file back …
stopTaking = Stop
stopped = Stopped. { $added } taken back so far; choose the file again to go on.
newerFile = This file was saved by a newer version. Load the page anew to update; nothing was changed.
changedFile = This file was changed or damaged after it was saved. Nothing was taken from it.
changedTitle = Take it all the same?
changedSure = This file was changed or damaged after it was saved. If you know where it comes from, what can still be read can be taken back. Rides that are here stay as they are.
changedLeave = Leave it
changedTake = Take what can be read
# The file names a club's own store.
namesStore = It also names a store at { $host }. Nothing is sent there.
lookAtStore = Look at it
takenBack =
    { $already ->
        [one] { $added } taken back, { $already } was already here.
       *[other] { $added } taken back, { $already } were already here.
    }
refused =
    { $refused ->
        [one] { $refused } could not be read and was left out.
       *[other] { $refused } could not be read and were left out.
    }

health-slow =
    What is kept on this device has not been opened yet, so your own levels and your results are not shown. If this stays, load the page anew.
health-memory = This window keeps nothing. Your rides are gone when you close it.
health-small-copy = Only your newest marks are kept in this window, not the rides.
health-disk-full =
    This device has no room left, so new rides are not kept. Make room; the game will try again.
health-recordings-lost =
    Some rides are here with their marks only: the rides themselves are lost and cannot be watched again.

## A ride that broke off

unfinished-olderLegs = It was ridden before the legs of the game changed, so it cannot go on. Keep what was ridden, or let it go.
unfinished-kept = What was ridden is kept. You find it under Progress, without marks.
unfinished-notKept = It could not be kept just now. It stays here; try again.
