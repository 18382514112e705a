/** Sentences of the ladder of levels. */
export const levelsWords = {
  intro: 'From top to bottom, or wherever you like. Each one teaches one thing.',
  own: 'Your own',
  ridden: 'Ridden',
  best: (total: string): string => `Best: ${total} of 100`,
  notPassed: ', not passed yet',
  next: 'Next',
  length: (length: string): string => `${length} long`,
  needs: {
    derailleur: 'for gears on sprockets',
    hub: 'for gears in the hub',
    motor: 'for a motor',
    'crank-motor': 'for a motor at the crank',
  },
  pitches: (count: number): string => (count === 1 ? '1 pitch' : `${count} pitches`),
  none: 'No levels were found in this copy of the game.',
  patches: 'Patches',
};
