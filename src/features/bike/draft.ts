/**
 * What a person has typed about a bike, exactly as typed, and what it means: a bike, or what is wrong in which field.
 * Nothing typed is ever changed or thrown away here.
 */
import { type BikeProblem, readChainrings, readSprockets, readTyre } from '../../core/model/bikeInput.ts';
import type { HubKind } from '../../core/model/hubKinds.ts';
import { FALLS_S } from '../../core/model/motor.ts';
import type { Bike, Motor, ShifterKind } from '../../core/model/types.ts';
import { words } from '../../words/words.ts';

const say = words('bike');

/** Everything in the form. */
export interface BikeDraft {
  readonly rings: string;
  /** How the sprockets are told. Both ways keep what was typed in them. */
  readonly way: 'range' | 'each';
  readonly range: string;
  readonly count: string;
  readonly each: readonly string[];
  /** The range `each` was last filled from; while it is the same, `each` is not filled again. */
  readonly filledFrom: string;
  readonly tyre: string;
  readonly crank: string;
  readonly mass: string;
  readonly shifter: ShifterKind;
  readonly refusesCrossed: boolean;
  /** Where the gears at the rear are: on sprockets, or in a hub of some kind behind one sprocket. */
  readonly gearing: 'sprockets' | HubKind;
  readonly hubSprocket: string;
  readonly backPedalBrake: boolean;
  /** Where a motor sits, how much it helps, what is in its battery, and whether the brakes switch it off. */
  readonly motor: 'none' | Motor['place'];
  readonly help: string;
  readonly battery: string;
  readonly brakeSwitches: boolean;
}

/** One change to what has been typed. */
export type EditDraft = (draft: BikeDraft) => BikeDraft;

type FieldName = 'rings' | 'sprockets' | 'tyre' | 'crank' | 'mass' | 'battery';

/** What a draft means. */
export interface DraftReading {
  /** The bike, or null while something is wrong. */
  readonly bike: Bike | null;
  readonly problems: Readonly<Partial<Record<FieldName, string>>>;
  /** The sprockets as they are understood, or null. */
  readonly sprocketsTeeth: readonly number[] | null;
}

export const MOST_SPROCKETS = 13;
/** What a field for the one sprocket before a hub begins with (common practice). */
const USUAL_HUB_SPROCKET = '19';
const CRANK_MM = [90, 200] as const;
const MASS_KG = [5, 40] as const;
const BATTERY_WH = [0, 999] as const;
/** What the fields of a motor begin with (common practice). */
const USUAL_MOTOR = { helpRatio: 1, batteryWh: 500, brakeSwitches: false };

/** The draft of a bike. */
export function draftOf(bike: Bike): BikeDraft {
  const { sprocketsTeeth: teeth } = bike;
  const motor = bike.motor ?? USUAL_MOTOR;
  const range = teeth.length > 1 ? `${teeth[0]}-${teeth.at(-1)}` : String(teeth[0] ?? '');
  const count = String(teeth.length);
  const asRange = readSprockets(range, teeth.length);
  const usual = asRange.ok && asRange.value.join() === teeth.join();
  return {
    rings: bike.chainringsTeeth.toReversed().join('/'),
    way: usual ? 'range' : 'each',
    range,
    count,
    each: teeth.map(String),
    filledFrom: `${range}:${count}`,
    tyre: `${bike.tyreWidthMm}-${bike.beadSeatMm}`,
    crank: String(bike.crankLengthMm),
    mass: String(bike.massKg),
    shifter: bike.shifter,
    refusesCrossed: bike.refusesCrossed,
    gearing: bike.hub ?? 'sprockets',
    hubSprocket: bike.hub === undefined ? USUAL_HUB_SPROCKET : String(teeth[0] ?? ''),
    backPedalBrake: bike.backPedalBrake === true,
    motor: bike.motor?.place ?? 'none',
    help: String(motor.helpRatio),
    battery: String(motor.batteryWh),
    brakeSwitches: motor.brakeSwitches === true,
  };
}

/** The other way to tell sprockets; a list nobody has touched follows the range. */
export function withWay(draft: BikeDraft, way: BikeDraft['way']): BikeDraft {
  const filledFrom = `${draft.range}:${draft.count}`;
  if (way === 'range' || filledFrom === draft.filledFrom) return { ...draft, way };
  const reading = readSprockets(draft.range, readWhole(draft.count) ?? 0);
  return reading.ok ? { ...draft, way, each: reading.value.map(String), filledFrom } : { ...draft, way };
}

/** Why what was typed is no part of a bike, as a sentence. */
export function bikeSentence({ code, values }: BikeProblem): string {
  return say.coded(`problem-${code}`, values);
}

/** Reads a draft; `base` gives what the form does not ask for. */
export function readDraft(draft: BikeDraft, base: Bike): DraftReading {
  const rings = readChainrings(draft.rings);
  const sprockets = readSprocketFields(draft);
  const tyre = readTyre(draft.tyre);
  const crankLengthMm = readNumber(draft.crank, CRANK_MM);
  const massKg = readNumber(draft.mass, MASS_KG);
  const batteryWh = draft.motor === 'none' ? 0 : readNumber(draft.battery, BATTERY_WH);
  const problems = {
    ...(rings.ok ? {} : { rings: bikeSentence(rings) }),
    ...(sprockets.ok ? {} : { sprockets: sprockets.sentence }),
    ...(tyre.ok ? {} : { tyre: bikeSentence(tyre) }),
    ...(crankLengthMm === null ? { crank: say('crank-wrong') } : {}),
    ...(massKg === null ? { mass: say('mass-wrong') } : {}),
    ...(batteryWh === null ? { battery: say('battery-wrong') } : {}),
  };
  const sprocketsTeeth = sprockets.ok ? sprockets.value : null;
  if (!rings.ok || sprocketsTeeth === null || !tyre.ok) return { bike: null, problems, sprocketsTeeth };
  if (crankLengthMm === null || massKg === null || batteryWh === null)
    return { bike: null, problems, sprocketsTeeth };
  const { shifter, refusesCrossed, gearing, backPedalBrake } = draft;
  const told = { chainringsTeeth: rings.value, sprocketsTeeth, ...tyre.value, crankLengthMm, massKg };
  const hub = gearing === 'sprockets' ? {} : { hub: gearing, ...(backPedalBrake ? { backPedalBrake } : {}) };
  const motor = motorOf(draft, batteryWh);
  const bike = bikeOf(base, { ...told, shifter, refusesCrossed, ...hub, ...motor });
  return { bike, problems, sprocketsTeeth };
}

function motorOf({ motor: place, help, brakeSwitches }: BikeDraft, batteryWh: number): Pick<Bike, 'motor'> {
  if (place === 'none') return {};
  const switches = brakeSwitches ? { brakeSwitches } : {};
  return { motor: { place, helpRatio: Number(help), batteryWh, ...switches, fallsS: FALLS_S } };
}

type SprocketFields =
  | { readonly ok: true; readonly value: readonly number[] }
  | { readonly ok: false; readonly sentence: string };

function readSprocketFields(draft: BikeDraft): SprocketFields {
  if (draft.gearing !== 'sprockets') {
    const one = readSprockets(draft.hubSprocket, 1);
    if (one.ok && one.value.length === 1) return one;
    return { ok: false, sentence: one.ok ? say('hubSprocket-wrong') : bikeSentence(one) };
  }
  const empty = draft.each.findIndex((teeth) => teeth.trim() === '');
  if (draft.way === 'each' && empty >= 0)
    return { ok: false, sentence: say('emptySprocket', { place: empty + 1 }) };
  const reading =
    draft.way === 'range'
      ? readSprockets(draft.range, readWhole(draft.count) ?? 0)
      : readSprockets(draft.each.join(' '), draft.each.length);
  return reading.ok ? reading : { ok: false, sentence: bikeSentence(reading) };
}

function readWhole(text: string): number | null {
  return /^\s*\d{1,2}\s*$/.test(text) ? Number(text) : null;
}

/** A number with a decimal point or comma between two limits, or null. */
export function readNumber(text: string, [low, high]: readonly [low: number, high: number]): number | null {
  if (!/^\s*\d{1,3}([.,]\d{1,2})?\s*$/.test(text)) return null;
  const value = Number(text.trim().replace(',', '.'));
  return value >= low && value <= high ? value : null;
}

/** What the form asks for. */
type ToldBike = Pick<
  Bike,
  | 'chainringsTeeth'
  | 'sprocketsTeeth'
  | 'tyreWidthMm'
  | 'beadSeatMm'
  | 'crankLengthMm'
  | 'massKg'
  | 'shifter'
  | 'refusesCrossed'
  | 'hub'
  | 'backPedalBrake'
  | 'motor'
>;

/** Id of a bike that is not one of the bundled ones. */
const OWN_BIKE_ID = 'own';

/** Distance of neighbouring sprockets by how many there are (mm; common practice, no source). */
const SPROCKET_PITCH_MM: Readonly<Record<number, number>> = {
  8: 4.8,
  9: 4.34,
  10: 3.95,
  11: 3.74,
  12: 3.6,
  13: 3.5,
};
const WIDE_PITCH_MM = 5;
const FRONT_CHAIN_LINE_MM: Readonly<Record<number, number>> = { 1: 46, 2: 43.5, 3: 47.5 };

/**
 * A bike from what a person knows of it. What nobody measures at home (where rings and sprockets stand, how heavy
 * the wheels turn) follows from the counts and the tyre; the rest stays as on the bike the form began with.
 */
function bikeOf(base: Bike, told: ToldBike): Bike {
  const rings = told.chainringsTeeth.length;
  const sprockets = told.sprocketsTeeth.length;
  // Mass at the rim and its radius both grow with the wheel: inertia goes with the third power.
  const wheel = told.beadSeatMm / base.beadSeatMm;
  return {
    ...withoutMeasured(base, told),
    ...told,
    id: OWN_BIKE_ID,
    // Only electronic shifters can refuse.
    refusesCrossed: told.shifter === 'electronic' && told.refusesCrossed,
    frontChainLineMm:
      rings === base.chainringsTeeth.length
        ? base.frontChainLineMm
        : (FRONT_CHAIN_LINE_MM[rings] ?? base.frontChainLineMm),
    sprocketPitchMm:
      sprockets === base.sprocketsTeeth.length
        ? base.sprocketPitchMm
        : (SPROCKET_PITCH_MM[sprockets] ?? WIDE_PITCH_MM),
    wheelInertiaKgM2: base.wheelInertiaKgM2 * wheel * wheel * wheel,
  };
}

/** What is not told anew: a measured circumference belongs to the tyre it was measured on. */
function withoutMeasured(base: Bike, told: ToldBike): Bike {
  // What the hub is, its brake and a motor stand in what was told.
  const { measuredCircumferenceM, ...rest } = base;
  delete (rest as { hub?: unknown }).hub;
  delete (rest as { backPedalBrake?: unknown }).backPedalBrake;
  delete (rest as { motor?: unknown }).motor;
  const sameTyre = told.tyreWidthMm === base.tyreWidthMm && told.beadSeatMm === base.beadSeatMm;
  return sameTyre && measuredCircumferenceM !== undefined ? { ...rest, measuredCircumferenceM } : rest;
}
