/** Words about rides that broke off, and about things that go wrong. */

const length = (seconds: number): string => {
  const whole = Math.floor(seconds);
  const minutes = Math.floor(whole / 60);
  if (minutes === 0) return whole === 1 ? '1 second' : `${whole} seconds`;
  return `${minutes} min ${whole % 60} s`;
};

export const unfinishedWords = {
  title: (level: string): string => `Your ride broke off: ${level}`,
  turnTitle: (level: string): string => `A turn of the group broke off: ${level}`,
  what: (riddenS: number): string => `${length(riddenS)} of it are kept.`,
  goOn: 'Go on from here',
  olderLegs:
    'It was ridden before the legs of the game changed, so it cannot go on. Keep what was ridden, or let it go.',
  keep: 'Keep what was ridden',
  letGo: 'Let it go',
  kept: 'What was ridden is kept. You find it under Progress, without marks.',
  notKept: 'It could not be kept just now. It stays here; try again.',
} as const;

export const troubleWords = {
  rideTitle: 'The ride stopped',
  ride: 'Something in the game broke down, so your ride was stopped where you were. Go on: three seconds, then the pedals turn.',
  again:
    'It broke down again, so this ride cannot go on here. Keep what was ridden, then load the page anew.',
  watching: 'Something in the game broke down. Go back, and watch it once more.',
  kept: 'What you rode is kept on this device.',
  notKept: 'What you rode could not be kept here. Save the report: the ride is in it.',
  goOn: 'Go on',
  back: 'Back',
  page: 'Something in the game broke down. Rides that were kept are still kept. If anything looks wrong, load the page anew.',
  report: 'Save a report',
  reportHint:
    'A file with versions, what happened and the ride. No name is in it, and it goes nowhere by itself.',
  reload: 'Load anew',
  close: 'Close',
} as const;
