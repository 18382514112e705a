/**
 * The list of sounds: what each is called, which volume it obeys, how long a loop lasts and what shows
 * the same thing to the eye. Plain data without the sound library, so that a page or a test may read it.
 */

/** The three volumes a player can set. */
export type Channel = 'machine' | 'road' | 'cues';

/** Volumes from 0 (silent) to 1 (full). */
export type Volumes = Readonly<Record<Channel, number>>;

/** A loop; `periodMs` is a multiple of 10, so it is a whole number of samples at 44.1 and 48 kHz. */
interface LoopSound {
  readonly channel: Channel;
  readonly periodMs: number;
}

/** Sounds that go on; the mix decides how loud and how fast. */
export const LOOPS = {
  'tyre-roll': { channel: 'road', periodMs: 2600 },
  wind: { channel: 'road', periodMs: 3600 },
  gravel: { channel: 'road', periodMs: 2400 },
  'drivetrain-hum': { channel: 'machine', periodMs: 2000 },
  'freewheel-slow': { channel: 'machine', periodMs: 1500 },
  'freewheel-medium': { channel: 'machine', periodMs: 1000 },
  'freewheel-fast': { channel: 'machine', periodMs: 800 },
  'shift-grind': { channel: 'machine', periodMs: 1600 },
  'chain-rub': { channel: 'machine', periodMs: 1600 },
  brake: { channel: 'machine', periodMs: 2000 },
} as const satisfies Record<string, LoopSound>;

/** Sounds that happen once. */
export const SHOTS = {
  'shift-click': { channel: 'machine' },
  'front-clunk': { channel: 'machine' },
  'shift-crunch': { channel: 'machine' },
  'shift-stop': { channel: 'machine' },
  'chain-drop': { channel: 'machine' },
  'chain-back': { channel: 'machine' },
  'foot-down': { channel: 'road' },
  finish: { channel: 'cues' },
  'cue-tick': { channel: 'cues' },
  'ui-tap': { channel: 'cues' },
} as const satisfies Record<string, { readonly channel: Channel }>;

export type LoopName = keyof typeof LOOPS;
export type ShotName = keyof typeof SHOTS;
export type SoundName = LoopName | ShotName;

/** Loop names in the order of the table. */
export const LOOP_NAMES = Object.keys(LOOPS) as readonly LoopName[];
export const SHOT_NAMES = Object.keys(SHOTS) as readonly ShotName[];

/**
 * A loop's file holds its period with this much more of the same on either side (ms). Playing starts
 * inside, so what a decoder adds or cuts at a file's ends is never heard.
 */
export const LOOP_LEAD_MS = 100;

/**
 * Beats a second in the three freewheel loops at rate 1. Three, because speeding up a single loop over
 * the whole range from walking pace to a descent would turn its tick into a chirp.
 */
export const FREEWHEEL_TICKS_PER_S = {
  'freewheel-slow': 8,
  'freewheel-medium': 20,
  'freewheel-fast': 50,
} as const satisfies Partial<Record<LoopName, number>>;

/** Crank speed at which the hum and the rub were made (rpm). */
export const HUM_CADENCE_RPM = 90;
export const RUB_CADENCE_RPM = 75;

/** Codes of what the eye is shown where the ear hears a sound; readings first, then captions. */
export type TwinCode =
  | 'speed'
  | 'wind'
  | 'surface'
  | 'cadence'
  | 'coasting'
  | 'shift-hung'
  | 'chain-rub'
  | 'braking'
  | 'shift-clean'
  | 'shift-front'
  | 'shift-heavy'
  | 'shift-refused'
  | 'chain-dropped'
  | 'chain-restored'
  | 'foot-down'
  | 'finished'
  | 'cadence-beat'
  | 'button-pressed';

/** The visible twin of every sound: nothing is told to the ear alone. */
export const soundTwins: Readonly<Record<SoundName, TwinCode>> = {
  'tyre-roll': 'speed',
  wind: 'wind',
  gravel: 'surface',
  'drivetrain-hum': 'cadence',
  'freewheel-slow': 'coasting',
  'freewheel-medium': 'coasting',
  'freewheel-fast': 'coasting',
  'shift-grind': 'shift-hung',
  'chain-rub': 'chain-rub',
  brake: 'braking',
  'shift-click': 'shift-clean',
  'front-clunk': 'shift-front',
  'shift-crunch': 'shift-heavy',
  'shift-stop': 'shift-refused',
  'chain-drop': 'chain-dropped',
  'chain-back': 'chain-restored',
  'foot-down': 'foot-down',
  finish: 'finished',
  'cue-tick': 'cadence-beat',
  'ui-tap': 'button-pressed',
};
