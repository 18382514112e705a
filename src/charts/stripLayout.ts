/**
 * Where the four tracks of the strip lie and what their scales are. Numbers only; drawing is next door.
 */
import type { Machine } from '../core/model/types.ts';
import type { RideTrace, TraceSample } from '../core/ride/trace.ts';

/** A track's place on the paper (px). */
export interface Track {
  readonly top: number;
  readonly bottom: number;
}

/** A stretch of road. */
export interface Domain {
  readonly fromM: number;
  readonly toM: number;
}

export interface StripLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** Labels stand above their tracks instead of beside them. */
  readonly narrow: boolean;
  readonly road: Track;
  readonly gear: Track;
  /** Middle of the two lanes of shifts: towards harder above, towards easier below. */
  readonly harderY: number;
  readonly easierY: number;
  readonly cadence: Track;
  readonly pressure: Track;
  readonly axisY: number;
}

/** Narrower than this a phone is held upright (px). */
export const NARROW_PX = 620;
const LABELS_PX = 122;
const EDGE_PX = 10;

/** The paper for a width. */
export function stripLayout(width: number): StripLayout {
  const narrow = width < NARROW_PX;
  const label = narrow ? 22 : 0;
  let at = 8;
  const take = (px: number, gap: number): Track => {
    const top = at + label;
    at = top + px + gap;
    return { top, bottom: top + px };
  };
  const road = take(92, 18);
  const gear = take(76, 10);
  const harderY = at + 6;
  const easierY = at + 20;
  at += 38;
  const cadence = take(108, 20);
  const pressure = take(48, 8);
  return {
    width,
    height: at + 22,
    left: narrow ? EDGE_PX : LABELS_PX,
    right: width - EDGE_PX,
    narrow,
    road,
    gear,
    harderY,
    easierY,
    cadence,
    pressure,
    axisY: at,
  };
}

/** From values to places on the paper. */
export interface StripScales {
  readonly x: (distanceM: number) => number;
  readonly gearY: (developmentM: number) => number;
  readonly cadenceY: (cadenceRpm: number) => number;
  readonly pressureY: (pressureRatio: number) => number;
}

/** Scales that hold both rides; equal factors between gears are equal steps on the paper. */
export function stripScales(
  layout: StripLayout,
  domain: Domain,
  machine: Machine,
  rides: readonly RideTrace[],
): StripScales {
  const { left, right, gear, cadence, pressure } = layout;
  const rpm = { low: machine.rider.cadenceLowRpm, high: machine.rider.cadenceHighRpm };
  const development = { low: Number.POSITIVE_INFINITY, high: 0 };
  let hardest = 1.1;
  for (const { samples } of rides) {
    for (const sample of samples) {
      if (development.low > sample.developmentM) development.low = sample.developmentM;
      if (development.high < sample.developmentM) development.high = sample.developmentM;
      if (hardest < sample.pressureRatio) hardest = sample.pressureRatio;
      if (showsCadence(sample)) {
        rpm.low = Math.min(rpm.low, sample.cadenceRpm);
        rpm.high = Math.max(rpm.high, sample.cadenceRpm);
      }
    }
  }
  const gearLow = Math.log(development.low * 0.93);
  const gearHigh = Math.log(development.high * 1.07);
  const rpmLow = Math.max(20, rpm.low - 6);
  const rpmHigh = Math.min(150, rpm.high + 6);
  const into = (track: Track, share: number): number =>
    track.bottom - Math.min(1, Math.max(0, share)) * (track.bottom - track.top);
  const perM = (right - left) / (domain.toM - domain.fromM);
  return {
    x: (distanceM) => left + (distanceM - domain.fromM) * perM,
    gearY: (developmentM) => into(gear, (Math.log(developmentM) - gearLow) / (gearHigh - gearLow)),
    cadenceY: (cadenceRpm) => into(cadence, (cadenceRpm - rpmLow) / (rpmHigh - rpmLow)),
    pressureY: (pressureRatio) => into(pressure, pressureRatio / hardest),
  };
}

/** A cadence is only worth drawing while feet push. */
export function showsCadence(sample: TraceSample): boolean {
  return sample.pedalling && !sample.held;
}

/** Samples within a stretch, and one on either side so that curves run to the edges. */
export function samplesWithin(samples: readonly TraceSample[], domain: Domain): readonly TraceSample[] {
  const from = samples.findIndex((sample) => sample.distanceM >= domain.fromM);
  if (from < 0) return [];
  const beyond = samples.findIndex((sample) => sample.distanceM > domain.toM);
  return samples.slice(Math.max(0, from - 1), beyond < 0 ? undefined : beyond + 1);
}

/** The smallest of 1, 2, 5, 10, 20, 50 … that is not below a wanted step. */
export function roundStep(wanted: number): number {
  for (let ten = 1; ; ten *= 10) {
    const found = [1, 2, 5].find((one) => !(one * ten < wanted));
    if (found !== undefined) return found * ten;
  }
}

/** Places for numbers along the road (m): about one every 90 px, at round numbers of the unit (m). */
export function roadTicks(domain: Domain, widthPx: number, unitM: number): number[] {
  const step = roundStep((domain.toM - domain.fromM) / Math.max(2, widthPx / 90) / unitM);
  const first = Math.ceil(domain.fromM / unitM / step);
  const count = Math.floor(domain.toM / unitM / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * step * unitM);
}
