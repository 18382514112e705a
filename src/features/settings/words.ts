/** Words of the settings dialog. */
import { type ChoiceName, type ChoiceOf, type Settings, WIDER_RPM } from '../../core/settings/settings.ts';

/** What each setting is called. */
const labels: Readonly<Record<ChoiceName, string>> = {
  theme: 'Theme',
  motion: 'Movement on the screen',
  beside: 'Silhouettes of other rides, from the second ride of a road on',
  units: 'Units',
  muted: 'No sound',
  music: 'Music that follows your legs',
  paceRatio: 'How fast the ride goes',
  autoEase: 'Two buttons are enough: the game has soft feet during a shift and brakes at lines',
  holdMode: 'Soft feet, push, coast and brake',
  leversKnown: 'I know what the levers do: ride without the first steps',
  childNumbers: 'Numbers on the roads for children, too',
  childVoice: 'Roads for children say their sentences aloud',
  hand: 'Gear pads on the',
  pads: 'Pads on the screen',
  byEar: 'By ear: the road is said aloud, a low or high tone tells slow or fast legs',
  widerBand: `A wider band: ${WIDER_RPM} turns more on both sides`,
  oneHand: 'All pads on one side, for one hand',
  scanning: 'One switch in menus: choices light up in turn, Space or Enter takes one',
  scanS: 'Each choice for',
};

/** What can be chosen, where it is one of a few. */
const options: { readonly [Name in ChoiceOf<'one-of'>]: Readonly<Record<Settings[Name], string>> } = {
  theme: { indoor: 'Coloured paper, for indoors', field: 'White, for bright sun' },
  motion: { system: 'As this device says', reduced: 'Less', full: 'All of it' },
  beside: {
    both: 'The best ride and my last',
    best: 'The best ride',
    last: 'My last ride',
    nobody: 'Nobody',
  },
  music: { auto: 'Except by ear', on: 'Always', off: 'Never' },
  units: { metric: 'km/h and metres', imperial: 'mph and feet' },
  holdMode: { hold: 'Hold', switch: 'Push on, push off' },
  hand: { left: 'left', right: 'right' },
  pads: { auto: 'On touch screens', always: 'Always', never: 'Never' },
};

/** English. */
export const settingsWords = {
  title: 'Settings',
  labels,
  options,
  seconds: (seconds: string): string => `${seconds} s`,
  look: 'Look',
  sound: 'Sound',
  volumes: { machine: 'Chain and gears', road: 'Tyres and wind', cues: 'Signals' },
  ride: 'Ride',
  help: 'Help on the road',
  helpHint: 'Levels show less of it as you learn. Ticked help is always there, but not in check rides.',
  aids: {
    roadAhead: 'The next 250 metres',
    nextStep: 'What to do next',
    cues: 'Short sentences on the way',
    pressureHint: 'How hard the legs push',
    chainView: 'The chain from above',
    clickTrack: 'Clicks at your cadence',
    liveMarks: 'Marks so far',
  },
  ways: 'Other ways to play',
  keysFor: { left: 'Keys for the left hand', right: 'Keys for the right hand' },
  pad: {
    title: 'Gamepad',
    hint: 'Choose an action, then push the button you want for it.',
    push: 'Push a button …',
    button: (number: number): string => `button ${number}`,
  },
  keys: 'Keys',
  keysHint: 'Choose an action, then push the key you want for it.',
  pushKey: 'Push a key …',
  changeKey: (action: string, key: string): string => `${action}: ${key}. Change the key`,
};
