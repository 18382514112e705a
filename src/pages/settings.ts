/**
 * What a person can choose, as one plain object: bike and rider whole, look, sound, hands and pace. Where it is
 * kept is not decided here; what the keys do is known to the input room and handed in.
 */
import { BIKES, MATCHING_RIDER, RIDERS, riderById } from '../core/model/presets.ts';
import type { Aids } from '../core/level/schema.ts';
import type { Bike, Rider } from '../core/model/types.ts';

/** Actions a key can be tied to, in the order of the settings page. */
export const KEY_ACTIONS = [
  'rear-easier',
  'rear-harder',
  'front-smaller',
  'front-bigger',
  'ease',
  'press',
  'coast',
  'brake',
  'pause',
] as const;

export type KeyAction = (typeof KEY_ACTIONS)[number];
/** `KeyboardEvent.code`s of each action. */
export type Keys = Readonly<Record<KeyAction, readonly string[]>>;
export type VolumeName = 'machine' | 'road' | 'cues';
export const VOLUMES = ['machine', 'road', 'cues'] as const satisfies readonly VolumeName[];

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

export type AidName = (typeof AIDS)[number];

/** All choices. */
export interface Settings {
  readonly bike: Bike;
  readonly rider: Rider;
  /** True once somebody chose a rider; before, the rider follows the bike. */
  readonly riderChosen: boolean;
  readonly theme: 'indoor' | 'field';
  readonly units: 'metric' | 'imperial';
  /** 0 to 1 each. */
  readonly volumes: Readonly<Record<VolumeName, number>>;
  readonly muted: boolean;
  /** Pace of ride time, 0.5 to 1. */
  readonly paceRatio: number;
  readonly holdMode: 'hold' | 'switch';
  /** The game eases while a shift is on its way and brakes at lines: two buttons are enough. */
  readonly autoEase: boolean;
  readonly motion: 'system' | 'reduced' | 'full';
  /** Side of the gear pads. */
  readonly hand: 'right' | 'left';
  readonly pads: 'auto' | 'always' | 'never';
  readonly keys: Keys;
  /** Help that is shown even where a level leaves it out; never in check rides. */
  readonly aidsOn: readonly AidName[];
}

/** Slowest pace a ride can have. */
export const SLOWEST_PACE_RATIO = 0.5;

/** Regions whose road signs count in miles. */
const MILES_IN = ['GB', 'LR', 'MM', 'US'];

/** Units people of a language tag such as `en-US` read on their roads; metric where the tag names none. */
export function unitsOf(locale: string): Settings['units'] {
  try {
    const { region } = new Intl.Locale(locale);
    return region !== undefined && MILES_IN.includes(region) ? 'imperial' : 'metric';
  } catch {
    return 'metric';
  }
}

/** What a new player finds. */
export function defaultSettings(keys: Keys, units: Settings['units'] = 'metric'): Settings {
  const bike = BIKES.find((one) => one.id === 'trekking-3x8') ?? (BIKES[0] as Bike);
  return {
    bike,
    rider: riderFor(bike),
    riderChosen: false,
    theme: 'indoor',
    units,
    volumes: { machine: 0.8, road: 0.6, cues: 0.7 },
    muted: false,
    paceRatio: 1,
    holdMode: 'hold',
    autoEase: false,
    motion: 'system',
    hand: 'right',
    pads: 'auto',
    keys,
    aidsOn: [],
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
