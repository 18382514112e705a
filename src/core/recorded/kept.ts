/**
 * What is kept of a ride on a real road: rounded numbers per pitch and the month, no place, no time of day, no trace. And
 * what several rides come to, month by month.
 */
import { hashJson } from '../math/hash.ts';
import { isFields } from '../math/measure.ts';
import type { Bike } from '../model/types.ts';
import type { RoadPitch, RoadRideFigures } from './rideFigures.ts';

/** Version of what is kept. */
export const KEPT_RIDE_SCHEMA = 1;

/** A pitch as it is kept; metres and turns a minute are whole. */
export interface KeptPitch {
  readonly lengthM: number;
  /** Mean slope in whole percent. */
  readonly slopePercent: number;
  readonly firstEasierM: number | null;
  readonly plusMinusM: number | null;
  /** Share of the change done at the foot, in whole percent. */
  readonly atFootPercent: number | null;
  readonly beforeRpm: number | null;
  readonly footRpm: number | null;
  readonly lowestRpm: number | null;
  readonly best: {
    readonly firstEasierM: number | null;
    readonly atFootPercent: number | null;
    readonly lowestRpm: number | null;
  } | null;
  /** The level that was made of it, if one was. */
  readonly levelId: string | null;
}

/** A ride as it is kept. */
export interface KeptRoadRide {
  /** Fingerprint of the numbers: the same ride brought twice is one. */
  readonly id: string;
  readonly month: string | null;
  readonly chainringsTeeth: readonly number[];
  readonly sprocketsTeeth: readonly number[];
  readonly teethKnown: boolean;
  readonly lengthKm: number;
  readonly readablePercent: number;
  readonly changesPerKm: number | null;
  readonly inBandPercent: number | null;
  readonly pitches: readonly KeptPitch[];
}

/** The length of a ride as it is kept (km). */
export const keptLengthKm = ({ lengthM }: Pick<RoadRideFigures, 'lengthM'>): number =>
  Math.round(lengthM / 1000);

/** Rounds a ride to what is kept. */
export function keptRide(figures: RoadRideFigures, bike: Bike, teethKnown: boolean): KeptRoadRide {
  const { chainringsTeeth, sprocketsTeeth } = bike;
  const ride = {
    month: figures.month,
    chainringsTeeth,
    sprocketsTeeth,
    teethKnown,
    lengthKm: keptLengthKm(figures),
    readablePercent: Math.round(100 * figures.readableShare),
    changesPerKm: figures.changesPerKm === null ? null : Math.round(10 * figures.changesPerKm) / 10,
    inBandPercent: percentOf(figures.shareInBand),
    pitches: figures.pitches.map(keptPitch),
  };
  return { id: hashJson(ride), ...ride };
}

function keptPitch(pitch: RoadPitch): KeptPitch {
  const { best } = pitch;
  return {
    lengthM: 10 * Math.round((pitch.endM - pitch.footM) / 10),
    slopePercent: Math.round(100 * pitch.slopeRatio),
    firstEasierM: whole(pitch.firstEasierM),
    plusMinusM: whole(pitch.plusMinusM),
    atFootPercent: percentOf(pitch.shareAtFoot),
    beforeRpm: whole(pitch.beforeRpm),
    footRpm: whole(pitch.footRpm),
    lowestRpm: whole(pitch.lowestRpm),
    best:
      best === null
        ? null
        : {
            firstEasierM: whole(best.firstEasierM),
            atFootPercent: percentOf(best.shareAtFoot),
            lowestRpm: whole(best.lowestRpm),
          },
    levelId: null,
  };
}

function whole(value: number | null): number | null {
  // A negative zero would be another number in JSON.
  return value === null ? null : Math.round(value) + 0;
}

function percentOf(share: number | null): number | null {
  return share === null ? null : Math.round(100 * share);
}

/** A mean with what it rests on; `giveOrTake` is two standard errors, null below three values. */
export interface MeanOf {
  readonly mean: number;
  readonly giveOrTake: number | null;
  readonly count: number;
}

/** Several rides in one. */
export interface RoadMeans {
  readonly rides: number;
  readonly pitches: number;
  readonly firstEasierM: MeanOf | null;
  readonly atFootPercent: MeanOf | null;
  readonly bestFirstEasierM: MeanOf | null;
  /** How far the slowest legs on pitches lay below those before them (rpm). */
  readonly fallRpm: MeanOf | null;
  readonly changesPerKm: MeanOf | null;
  readonly inBandPercent: MeanOf | null;
}

/** Means over all pitches of some rides; only pitches on which gears could be read count for gears. */
export function meansOf(rides: readonly KeptRoadRide[]): RoadMeans {
  const pitches = rides.flatMap((ride) => ride.pitches);
  const of = (values: readonly (number | null | undefined)[]): MeanOf | null =>
    meanOf(values.filter((value): value is number => typeof value === 'number'));
  return {
    rides: rides.length,
    pitches: pitches.length,
    firstEasierM: of(pitches.map((one) => one.firstEasierM)),
    atFootPercent: of(pitches.map((one) => one.atFootPercent)),
    bestFirstEasierM: of(pitches.map((one) => (one.firstEasierM === null ? null : one.best?.firstEasierM))),
    fallRpm: of(
      pitches.map(({ beforeRpm, lowestRpm }) =>
        beforeRpm === null || lowestRpm === null ? null : beforeRpm - lowestRpm,
      ),
    ),
    changesPerKm: of(rides.map((ride) => ride.changesPerKm)),
    inBandPercent: of(rides.map((ride) => ride.inBandPercent)),
  };
}

/** Rides month by month, earliest first; those without a month come last, under null. */
export function byMonth(
  rides: readonly KeptRoadRide[],
): { readonly month: string | null; readonly means: RoadMeans }[] {
  const months = [...new Set(rides.map(({ month }) => month))].toSorted((a, b) =>
    a === b ? 0 : a === null ? 1 : b === null ? -1 : a < b ? -1 : 1,
  );
  return months.map((month) => ({ month, means: meansOf(rides.filter((ride) => ride.month === month)) }));
}

function meanOf(values: readonly number[]): MeanOf | null {
  const count = values.length;
  if (count === 0) return null;
  const mean = values.reduce((a, b) => a + b, 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
  return { mean, giveOrTake: count < 3 ? null : 2 * Math.sqrt(squares / (count - 1) / count), count };
}

/** A kept ride read back, or null where it is something else. Whole numbers or null, nothing besides. */
export function readKeptRide(value: unknown): KeptRoadRide | null {
  if (!isFields(value) || !Array.isArray(value['pitches'])) return null;
  const { id, month, teethKnown } = value;
  const pitches = value['pitches'].map(readPitch);
  const teeth = [value['chainringsTeeth'], value['sprocketsTeeth']].map(readTeeth);
  const [chainringsTeeth, sprocketsTeeth] = teeth;
  const changesPerKm = numberOrNull(value['changesPerKm']);
  const inBandPercent = numberOrNull(value['inBandPercent']);
  const numbers = [value['lengthKm'], value['readablePercent']].every((one) => Number.isFinite(one));
  if (
    typeof id !== 'string' ||
    !(month === null || (typeof month === 'string' && /^\d{4}-\d\d$/.test(month))) ||
    typeof teethKnown !== 'boolean' ||
    chainringsTeeth === null ||
    chainringsTeeth === undefined ||
    sprocketsTeeth === null ||
    sprocketsTeeth === undefined ||
    !numbers ||
    changesPerKm === undefined ||
    inBandPercent === undefined ||
    pitches.includes(null)
  )
    return null;
  return {
    id,
    month,
    chainringsTeeth,
    sprocketsTeeth,
    teethKnown,
    lengthKm: value['lengthKm'] as number,
    readablePercent: value['readablePercent'] as number,
    changesPerKm,
    inBandPercent,
    pitches: pitches as KeptPitch[],
  };
}

function readPitch(value: unknown): KeptPitch | null {
  if (!isFields(value)) return null;
  const number = (name: string): number | null | undefined => numberOrNull(value[name]);
  const [lengthM, slopePercent] = [number('lengthM'), number('slopePercent')];
  const best = value['best'] === null ? null : readBest(value['best']);
  const levelId = typeof value['levelId'] === 'string' ? value['levelId'] : null;
  const rest = {
    firstEasierM: number('firstEasierM'),
    plusMinusM: number('plusMinusM'),
    atFootPercent: number('atFootPercent'),
    beforeRpm: number('beforeRpm'),
    footRpm: number('footRpm'),
    lowestRpm: number('lowestRpm'),
  };
  if (typeof lengthM !== 'number' || typeof slopePercent !== 'number' || best === undefined) return null;
  if (Object.values(rest).includes(undefined)) return null;
  return {
    lengthM,
    slopePercent,
    ...(rest as Omit<KeptPitch, 'lengthM' | 'slopePercent' | 'best' | 'levelId'>),
    best,
    levelId,
  };
}

function readBest(value: unknown): NonNullable<KeptPitch['best']> | undefined {
  if (!isFields(value)) return undefined;
  const firstEasierM = numberOrNull(value['firstEasierM']);
  const atFootPercent = numberOrNull(value['atFootPercent']);
  const lowestRpm = numberOrNull(value['lowestRpm']);
  return firstEasierM === undefined || atFootPercent === undefined || lowestRpm === undefined
    ? undefined
    : { firstEasierM, atFootPercent, lowestRpm };
}

function readTeeth(value: unknown): readonly number[] | null {
  return Array.isArray(value) && value.length > 0 && value.every((one) => Number.isInteger(one))
    ? (value as readonly number[])
    : null;
}

/** The value, or undefined where it is neither. */
function numberOrNull(value: unknown): number | null | undefined {
  return value === null || (typeof value === 'number' && Number.isFinite(value)) ? value : undefined;
}
