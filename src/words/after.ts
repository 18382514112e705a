/** Words about watching again, difficulty that follows the rider, and whether a ride has been kept. */

export const afterWords = {
  watching: 'Your ride, once more.',
  backToDebrief: 'Back to your ride',
  backToGroup: 'Back to the group',
  steeper: 'A little steeper than before: you have it.',
  gentler: 'A little gentler than before.',
  title: 'Your ride',
  loading: 'One moment.',
  loadFailed: 'This page could not be loaded. Check the connection, then try again.',
  tryAgain: 'Try again',
  notSaved: {
    'private-window':
      'This ride is not kept: the browser keeps nothing in this window. Save it as a file, or open a normal window.',
    'disk-full':
      'This ride is not kept: the device has no room left. Save it as a file, or make room; the game will try again.',
    'connection-lost':
      'This ride is not kept yet: the browser lost its store. Save it as a file; the game will try again.',
    'newer-version':
      'This ride is not kept: a newer version of the game has been here. Load the page anew to update.',
    blocked:
      'This ride is not kept: another tab of the game is in the way. Close it; the game will try again.',
    hangs: 'This ride is not kept yet: the browser does not answer. Save it as a file to be safe.',
    corrupt: 'This ride is not kept: something stored here cannot be read. Save it as a file.',
    'somebody-else': 'This ride was one of two at once and is not kept here. Save it as a file.',
    trial: 'A test ride is not kept.',
    'not-judged': 'This ride could not be worked out, so it is not kept. Save it as a file.',
    'not-fetched':
      'This ride is not kept yet: a part of the game could not be fetched. Check the connection; the game will try again. Save it as a file to be safe.',
  } as Readonly<Record<string, string>>,
  smallCopy: 'Its marks are kept, the ride itself is not.',
  health: {
    'not-fetched':
      'A part of the game could not be fetched, so nothing is kept yet. Check the connection; the game tries again by itself.',
    memory: 'This window keeps nothing. Your rides are gone when you close it.',
    'small-copy': 'Only your newest marks are kept in this window, not the rides.',
    'disk-full':
      'This device has no room left, so new rides are not kept. Make room; the game will try again.',
    'recordings-lost':
      'Some rides are here with their marks only: the rides themselves are lost and cannot be watched again.',
  } as Readonly<Record<string, string>>,
} as const;
