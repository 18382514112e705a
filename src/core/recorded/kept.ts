/**
 * What is kept of a ride on a real road: rounded numbers per pitch and the month, no place, no time of day, no trace. And
 * what several rides come to, month by month.
 */
import * as z from 'zod/mini';
import { fingerprintShape, type Unchanging } from '../level/schema.ts';
import { hashJson } from '../math/hash.ts';
import { mean } from '../math/numbers.ts';
import type { Bike } from '../model/types.ts';
import type { RoadPitch, RoadRideFigures } from './rideFigures.ts';

/** Version of what is kept. */
export const KEPT_RIDE_SCHEMA = 1;

const known = z.nullable(z.number());
const teeth = z.array(z.int()).check(z.minLength(1));

/** A pitch as it is kept; metres and turns a minute are whole. */
const pitchSchema = z.object({
  lengthM: z.number(),
  /** Mean slope in whole percent. */
  slopePercent: z.number(),
  firstEasierM: known,
  plusMinusM: known,
  /** Share of the change done at the foot, in whole percent. */
  atFootPercent: known,
  beforeRpm: known,
  footRpm: known,
  lowestRpm: known,
  best: z.nullable(z.object({ firstEasierM: known, atFootPercent: known, lowestRpm: known })),
  /** The level that was made of it, if one was. */
  levelId: z.nullable(z.string()),
});

/** A ride as it is kept. */
const rideSchema = z.object({
  /** Fingerprint of the numbers: the same ride brought twice is one. */
  id: fingerprintShape,
  month: z.nullable(z.string().check(z.regex(/^\d{4}-\d\d$/))),
  chainringsTeeth: teeth,
  sprocketsTeeth: teeth,
  teethKnown: z.boolean(),
  lengthKm: z.number(),
  readablePercent: z.number(),
  changesPerKm: known,
  inBandPercent: known,
  pitches: z.array(pitchSchema),
});

export type KeptPitch = Unchanging<z.infer<typeof pitchSchema>>;
export type KeptRoadRide = Unchanging<z.infer<typeof rideSchema>>;

/** The length of a ride as it is kept (km). */
export const keptLengthKm = ({ lengthM }: Pick<RoadRideFigures, 'lengthM'>): number =>
  Math.round(lengthM / 1000);

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
export type RoadMeans = Readonly<ReturnType<typeof meansOf>>;

/** Means over all pitches of some rides; only pitches on which gears could be read count for gears. */
export function meansOf(rides: readonly KeptRoadRide[]) {
  const pitches = rides.flatMap((ride) => ride.pitches);
  const of = (values: readonly (number | null | undefined)[]): MeanOf | null =>
    meanOf(values.filter((value): value is number => typeof value === 'number'));
  return {
    rides: rides.length,
    pitches: pitches.length,
    firstEasierM: of(pitches.map((one) => one.firstEasierM)),
    atFootPercent: of(pitches.map((one) => one.atFootPercent)),
    bestFirstEasierM: of(pitches.map((one) => (one.firstEasierM === null ? null : one.best?.firstEasierM))),
    /** How far the slowest legs on pitches lay below those before them (rpm). */
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
  const middle = mean(values);
  const squares = values.reduce((sum, value) => sum + (value - middle) * (value - middle), 0);
  return { mean: middle, giveOrTake: count < 3 ? null : 2 * Math.sqrt(squares / (count - 1) / count), count };
}

/** A kept ride read back, or null where it is something else. */
export function readKeptRide(value: unknown): KeptRoadRide | null {
  const parsed = rideSchema.safeParse(value);
  return parsed.success ? parsed.data : null;
}
