/**
 * What a person can choose, as one plain object: bike and rider whole, look, sound, hands and pace. Everything that is
 * chosen in the settings dialog stands once, in `CHOICES`: dialog, reading back and what a new player finds follow from
 * it. A new one needs its line here and its words in `settings.ftl`. Where settings are kept is not decided here.
 */
import { BIKES, MATCHING_RIDER, RIDERS, riderById } from '../model/presets.ts';
import { shiftsInFront } from '../model/shifters.ts';
import type { Aids, Level } from '../level/schema.ts';
import type { Bike, Rider } from '../model/types.ts';
import { type Outfit, USUAL_OUTFIT } from './outfit.ts';

/** The keys a new player finds for each action, as `KeyboardEvent.code` (the place on the keyboard, not the letter printed there). */
export const DEFAULT_KEYS = {
  'rear-easier': ['ArrowDown'],
  'rear-harder': ['ArrowUp'],
  'front-smaller': ['KeyS'],
  'front-bigger': ['KeyW'],
  ease: ['Space'],
  press: ['ArrowRight'],
  coast: ['KeyC'],
  brake: ['ArrowLeft'],
  pause: ['Escape', 'KeyP'],
};

export type KeyAction = keyof typeof DEFAULT_KEYS;
/** Actions a key can be tied to, in the order of the settings page. */
export const KEY_ACTIONS = Object.keys(DEFAULT_KEYS) as readonly KeyAction[];
export type Keys = Readonly<Record<KeyAction, readonly string[]>>;

/** The number of a gamepad's button for each action; coasting has none of its own. */
export type PadButtons = Readonly<Record<Exclude<KeyAction, 'coast'>, number>>;

/** Buttons as they lie in the hand, by the numbers of the W3C standard layout: gears on the right. */
export const USUAL_PAD_BUTTONS: PadButtons = {
  'rear-easier': 5,
  'rear-harder': 7,
  'front-smaller': 4,
  'front-bigger': 6,
  ease: 0,
  press: 2,
  brake: 1,
  pause: 9,
};

export const VOLUMES = ['machine', 'road', 'cues'] as const;

/** The help with the road ahead shows so much of it (m). */
export const ROAD_AHEAD_M = 250;

/** Help on the road, in the order of the settings page. */
export const AIDS = [
  'roadAhead',
  'nextStep',
  'cues',
  'pressureHint',
  'chainView',
  'clickTrack',
  'liveMarks',
] as const satisfies readonly (keyof Aids)[];

type AidName = (typeof AIDS)[number];

/** Sections of the settings dialog. */
export type Section = 'look' | 'sound' | 'ride' | 'ways' | 'switch';

/** One of a few names, in the order they are shown. */
const oneOf = <const Options extends readonly string[]>(
  section: Section,
  options: Options,
  usual: Options[number],
) => ({ kind: 'one-of', section, options, usual }) as const;
/** On or off, and off for a new player. */
const onOff = (section: Section) => ({ kind: 'on-off', section }) as const;
/** A number within its limits. */
const amount = (section: Section, [low, high]: readonly [number, number], step: number, usual: number) =>
  ({ kind: 'amount', section, low, high, step, usual }) as const;
type Choice = ReturnType<typeof oneOf> | ReturnType<typeof onOff> | ReturnType<typeof amount>;

/** Every setting of the dialog that is a name, a switch or a number, in the order they are shown. */
export const CHOICES = {
  theme: oneOf('look', ['indoor', 'field'], 'indoor'),
  motion: oneOf('look', ['system', 'reduced', 'full'], 'system'),
  /** Whose silhouettes ride beside, from the second ride of a road on; never in check rides. */
  beside: oneOf('look', ['both', 'best', 'last', 'nobody'], 'both'),
  units: oneOf('look', ['metric', 'imperial'], 'metric'),
  muted: onOff('sound'),
  /** Music that follows the legs; by itself it is there for all who do not ride by ear. */
  music: oneOf('sound', ['auto', 'on', 'off'], 'auto'),
  /** Pace of ride time; 1 is real time. */
  paceRatio: amount('ride', [0.5, 1], 0.05, 1),
  /** The game eases while a shift is on its way and brakes at lines: two buttons are enough. */
  autoEase: onOff('ride'),
  holdMode: oneOf('ride', ['hold', 'switch'], 'hold'),
  /** The first steps with the levers have been done, or are not wanted. */
  leversKnown: onOff('ride'),
  /** Children's roads show a face for the legs, and numbers only on wish. */
  childNumbers: onOff('ride'),
  /** Children's roads say their cues in the voice of the device. */
  childVoice: onOff('ride'),
  /** Side of the gear pads. */
  hand: oneOf('ride', ['left', 'right'], 'right'),
  pads: oneOf('ride', ['auto', 'always', 'never'], 'auto'),
  /** The road is said aloud and a tone tells the cadence. */
  byEar: onOff('ways'),
  /** The cadence band is wider by `WIDER_RPM` on both sides. */
  widerBand: onOff('ways'),
  /** All pads on the side of the gear pads. */
  oneHand: onOff('ways'),
  /** Menus move on by themselves and one switch chooses. */
  scanning: onOff('switch'),
  /** Seconds each choice is offered while scanning. */
  scanS: amount('switch', [0.6, 6], 0.2, 2),
} satisfies Readonly<Record<string, Choice>>;

type Choices = typeof CHOICES;
export type ChoiceName = keyof Choices;
type ValueOf<One> = One extends { readonly options: readonly (infer Name)[] }
  ? Name
  : One extends { readonly kind: 'on-off' }
    ? boolean
    : number;
type Chosen = { readonly [Name in ChoiceName]: ValueOf<Choices[Name]> };

/** What a new player finds of them; with a record that was kept, what can be read of it. */
export function readChosen(kept: Readonly<Record<string, unknown>> = {}): Chosen {
  const read = ([name, one]: readonly [string, Choice]): string | number | boolean => {
    const value = kept[name];
    if (one.kind === 'on-off') return value === true;
    if (one.kind === 'one-of') return one.options.find((option) => option === value) ?? one.usual;
    return within(value, one.low, one.high, one.usual);
  };
  return Object.fromEntries(
    Object.entries(CHOICES).map((pair) => [pair[0], read(pair)]),
  ) as unknown as Chosen;
}

/** A number between two limits, or the usual one. */
export function within(value: unknown, low: number, high: number, usual: number): number {
  return typeof value === 'number' && value >= low && value <= high ? value : usual;
}

export interface Settings extends Chosen {
  /** Tag of the language, as its folder is called; empty where the device says. */
  readonly language: string;
  readonly bike: Bike;
  readonly rider: Rider;
  /** True once somebody chose a rider; before, the rider follows the bike. */
  readonly riderChosen: boolean;
  /** 0 to 1 each. */
  readonly volumes: Readonly<Record<(typeof VOLUMES)[number], number>>;
  readonly keys: Keys;
  /** Button numbers of a gamepad with the standard layout. */
  readonly padButtons: PadButtons;
  /** Help that is shown even where a level leaves it out; never in check rides. */
  readonly aidsOn: readonly AidName[];
  /** Colours and shapes of the rider in the picture. */
  readonly kit: Outfit;
}

/** Keys that one hand reaches, on either side of the keyboard. */
export const KEYS_FOR_ONE_HAND: Readonly<Record<'left' | 'right', Keys>> = {
  left: {
    'rear-easier': ['KeyS'],
    'rear-harder': ['KeyW'],
    'front-smaller': ['KeyA'],
    'front-bigger': ['KeyD'],
    ease: ['Space'],
    press: ['KeyE'],
    coast: ['KeyC'],
    brake: ['KeyQ'],
    pause: ['Escape'],
  },
  right: {
    'rear-easier': ['ArrowDown'],
    'rear-harder': ['ArrowUp'],
    'front-smaller': ['ArrowLeft'],
    'front-bigger': ['ArrowRight'],
    ease: ['Enter'],
    press: ['KeyP'],
    coast: ['KeyO'],
    brake: ['KeyL'],
    pause: ['Backspace', 'Escape'],
  },
};

/** How much wider the band can be made, on both sides (rpm). */
export const WIDER_RPM = 8;

/** The rider of these settings, with the band that was asked for. */
function riderOnRoad({ rider, widerBand }: Pick<Settings, 'rider' | 'widerBand'>): Rider {
  if (!widerBand) return rider;
  return {
    ...rider,
    cadenceLowRpm: rider.cadenceLowRpm - WIDER_RPM,
    cadenceHighRpm: rider.cadenceHighRpm + WIDER_RPM,
  };
}

/** What a ride begins with. */
export function onRoad(settings: Settings): Pick<Settings, 'bike' | 'rider' | 'autoEase'> {
  return { bike: settings.bike, rider: riderOnRoad(settings), autoEase: settings.autoEase };
}

/** Gives an action a button and takes it from the one that had it, which gets the old one. */
export function withPadButton(buttons: PadButtons, action: keyof PadButtons, button: number): PadButtons {
  const holder = (Object.keys(buttons) as (keyof PadButtons)[]).find((one) => buttons[one] === button);
  const old = buttons[action];
  return { ...buttons, ...(holder === undefined ? {} : { [holder]: old }), [action]: button };
}

/** What a new player finds. */
export function defaultSettings(
  keys: Keys,
  given: Partial<Pick<Settings, 'units' | 'theme'>> = {},
): Settings {
  const bike = BIKES.find((one) => one.id === 'trekking-3x8') ?? (BIKES[0] as Bike);
  return {
    ...readChosen(),
    ...given,
    language: '',
    bike,
    rider: riderFor(bike),
    riderChosen: false,
    volumes: { machine: 0.8, road: 0.6, cues: 0.7 },
    keys,
    padButtons: USUAL_PAD_BUTTONS,
    aidsOn: [],
    kit: USUAL_OUTFIT,
  };
}

/** The rider that goes with a bike until somebody chooses one. */
export function riderFor(bike: Bike): Rider {
  return riderById(MATCHING_RIDER[bike.id] ?? '') ?? (RIDERS[1] as Rider);
}

/** Settings with another bike; the rider follows as long as nobody has chosen one. */
export function withBike(settings: Settings, bike: Bike): Settings {
  return { ...settings, bike, rider: settings.riderChosen ? settings.rider : riderFor(bike) };
}

/** What children's play roads are ridden with: a child's own bike and rider, or the smallest there is; the game eases by itself, so that two pads are enough. */
export function playing(settings: Settings): Settings {
  const [bike = settings.bike] = BIKES;
  const own = isChild(settings.rider) && settings.bike.chainringsTeeth.length === 1;
  return { ...settings, autoEase: true, ...(own ? {} : { bike, rider: riderFor(bike) }) };
}

/** Whether the gears and the pause are all the hands have on a road: it is one for play, and nothing else needs them. */
export function hasFewPads(
  { carries }: Pick<Level, 'carries'>,
  { autoEase, bike }: Pick<Settings, 'autoEase' | 'bike'>,
): boolean {
  return carries !== undefined && autoEase && !shiftsInFront(bike);
}

/** Whether the rider is a child, for whom the children's levels come first and the picture is drawn smaller. */
export function isChild(rider: Rider): boolean {
  return rider.massKg < 45;
}

/** Ties a key to an action and takes it away from every other; an action never stays without a key. */
export function withKey(keys: Keys, action: KeyAction, code: string): Keys {
  const holder = KEY_ACTIONS.find((one) => keys[one].includes(code));
  if (holder === action) return keys;
  if (holder === undefined) return { ...keys, [action]: [code] };
  const left = keys[holder].filter((one) => one !== code);
  return { ...keys, [action]: [code], [holder]: left.length > 0 ? left : keys[action] };
}
