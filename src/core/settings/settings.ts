/**
 * What a person can choose, as one plain object: bike and rider whole, look, sound, hands and pace. Where it is
 * kept is not decided here; what the keys do is known to the input room and handed in.
 */
import { BIKES, MATCHING_RIDER, RIDERS, riderById } from '../model/presets.ts';
import type { Aids } from '../level/schema.ts';
import type { Bike, Rider } from '../model/types.ts';
import { type Kit, USUAL_KIT } from './kit.ts';

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
  /** All pads on the side of the gear pads. */
  readonly oneHand: boolean;
  /** The road is said aloud and a tone tells the cadence. */
  readonly byEar: boolean;
  /** The cadence band is wider by `WIDER_RPM` on both sides. */
  readonly widerBand: boolean;
  /** Menus move on by themselves and one switch chooses. */
  readonly scanning: boolean;
  /** Seconds each choice is offered while scanning. */
  readonly scanS: number;
  readonly keys: Keys;
  /** Button numbers of a gamepad with the standard layout. */
  readonly padButtons: PadButtons;
  /** Help that is shown even where a level leaves it out; never in check rides. */
  readonly aidsOn: readonly AidName[];
  /** Colours and shapes of the rider in the picture. */
  readonly kit: Kit;
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
export function riderOnRoad({ rider, widerBand }: Pick<Settings, 'rider' | 'widerBand'>): Rider {
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

/** Seconds a choice is offered while scanning, at least and at most. */
export const QUICKEST_SCAN_S = 0.6;
export const SLOWEST_SCAN_S = 6;

/** Slowest pace a ride can have. */
export const SLOWEST_PACE_RATIO = 0.5;

/** What a new player finds. */
export function defaultSettings(
  keys: Keys,
  { units = 'metric', theme = 'indoor' }: Partial<Pick<Settings, 'units' | 'theme'>> = {},
): Settings {
  const bike = BIKES.find((one) => one.id === 'trekking-3x8') ?? (BIKES[0] as Bike);
  return {
    bike,
    rider: riderFor(bike),
    riderChosen: false,
    theme,
    units,
    volumes: { machine: 0.8, road: 0.6, cues: 0.7 },
    muted: false,
    paceRatio: 1,
    holdMode: 'hold',
    autoEase: false,
    motion: 'system',
    hand: 'right',
    pads: 'auto',
    oneHand: false,
    byEar: false,
    widerBand: false,
    scanning: false,
    scanS: 2,
    keys,
    padButtons: USUAL_PAD_BUTTONS,
    aidsOn: [],
    kit: USUAL_KIT,
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
