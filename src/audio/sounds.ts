/**
 * The list of sounds: what each is called, which volume it obeys, how long a loop lasts and what shows
 * the same thing to the eye. Plain data without the sound library, so that a page or a test may read it.
 */

/** The three volumes a player can set. */
export type Channel = 'machine' | 'road' | 'cues';

/** Volumes from 0 (silent) to 1 (full). */
export type Volumes = Readonly<Record<Channel, number>>;

/** `seen` is what shows the same thing to the eye: nothing is told to the ear alone. */
interface Sound {
  readonly channel: Channel;
  readonly seen: string;
}

/** A loop; `periodMs` is a multiple of 10, so it is a whole number of samples at 44.1 and 48 kHz. */
interface LoopSound extends Sound {
  readonly periodMs: number;
}

/** Sounds that go on; the mix decides how loud and how fast. */
export const LOOPS = {
  'tyre-roll': { channel: 'road', seen: 'speed', periodMs: 2600 },
  wind: { channel: 'road', seen: 'wind', periodMs: 3600 },
  gravel: { channel: 'road', seen: 'surface', periodMs: 2400 },
  'drivetrain-hum': { channel: 'machine', seen: 'cadence', periodMs: 2000 },
  'freewheel-slow': { channel: 'machine', seen: 'coasting', periodMs: 1500 },
  'freewheel-medium': { channel: 'machine', seen: 'coasting', periodMs: 1000 },
  'freewheel-fast': { channel: 'machine', seen: 'coasting', periodMs: 800 },
  'shift-grind': { channel: 'machine', seen: 'shift-hung', periodMs: 1600 },
  'chain-rub': { channel: 'machine', seen: 'chain-rub', periodMs: 1600 },
  brake: { channel: 'machine', seen: 'braking', periodMs: 2000 },
} as const satisfies Record<string, LoopSound>;

/** Sounds that happen once. */
export const SHOTS = {
  'shift-click': { channel: 'machine', seen: 'shift-clean' },
  'front-clunk': { channel: 'machine', seen: 'shift-front' },
  'shift-crunch': { channel: 'machine', seen: 'shift-heavy' },
  'shift-stop': { channel: 'machine', seen: 'shift-refused' },
  'chain-drop': { channel: 'machine', seen: 'chain-dropped' },
  'chain-back': { channel: 'machine', seen: 'chain-restored' },
  'foot-down': { channel: 'road', seen: 'foot-down' },
  finish: { channel: 'cues', seen: 'finished' },
  'cue-tick': { channel: 'cues', seen: 'cadence-beat' },
} as const satisfies Record<string, Sound>;

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
