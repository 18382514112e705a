/** Words of the settings for those who play otherwise. */

/** English. */
export const waysWords = {
  title: 'Other ways to play',
  byEar: 'By ear: the road is said aloud, a low or high tone tells slow or fast legs',
  widerBand: (rpm: number): string => `A wider band: ${rpm} turns more on both sides`,
  oneHand: 'All pads on one side, for one hand',
  keysFor: { left: 'Keys for the left hand', right: 'Keys for the right hand' },
  scanning: 'One switch in menus: choices light up in turn, Space or Enter takes one',
  scanS: 'Each choice for',
  seconds: (seconds: string): string => `${seconds} s`,
};

/** English. */
export const padWords = {
  title: 'Gamepad',
  hint: 'Choose an action, then push the button you want for it.',
  push: 'Push a button …',
  button: (number: number): string => `button ${number}`,
};
