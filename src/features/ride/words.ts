/** Sentences of the page of a ride. */
export const rideWords = {
  title: (level: string): string => `Riding: ${level}`,
  failed: {
    'not-fetched': 'The picture of the ride could not be loaded. Check the connection, then try again.',
    'no-canvas':
      'This browser does not let the game draw a picture, so there is nothing to ride by. Allow it in its settings (often under privacy), or open the game in another browser.',
    broken:
      'This ride cannot be started: something about it does not work. Try another level, or choose the bike anew.',
  },
  again: 'Try again',
  pausedHint: 'The road waits. So does your gear.',
  restart: 'From the start',
  leave: 'Stop riding',
  stage: 'The ride',
  hands: 'Escape pauses.',
  controls: 'What your hands do',
  watching: 'Your ride, once more.',
  backToDebrief: 'Back to your ride',
  steeper: 'A little steeper than before: you have it.',
  gentler: 'A little gentler than before.',
};
