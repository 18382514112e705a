/**
 * Heights in feet that say nothing of it: a road three times as steep as it was. Such a road is suspected and asked
 * about, never changed unasked.
 */
import type { HeightUnit } from './choose.ts';
import type { Trail } from './trail.ts';
import { timedPoints } from './lists.ts';
import { type RoadQuestion, roadNote } from './types.ts';
import { M_PER_FOOT } from './values.ts';

/** Hardly a road is this steep (rise over run) on so much of its length. Ours; in feet a road of 5 % is. */
const STEEP_RATIO = 0.2;
const STEEP_SHARE = 0.15;
/** Nobody climbs so fast (m/h) for so long (s): the best climbers reach some 1,800 (from memory, no source). */
const FASTEST_CLIMB_MPH = 2_200;
const CLIMB_S = 300;

/** What a road is suspected by: its smoothed curves, and when its points were passed. */
interface Ridden {
  readonly profile: {
    readonly stepM: number;
    readonly heightsM: readonly number[];
    readonly slopesRatio: readonly number[];
  };
  readonly recorded: { readonly atM: readonly number[]; readonly timeS: readonly number[] };
}

export function inMetres(trail: Trail, unit: HeightUnit = 'metres'): Trail {
  return unit === 'metres' ? trail : { ...trail, heightM: trail.heightM.map((feet) => feet * M_PER_FOOT) };
}

/** The question whether the heights are feet, where metres are hard to believe. */
export function feetQuestion(road: Ridden): RoadQuestion[] {
  const { slopesRatio } = road.profile;
  const share = slopesRatio.filter((slope) => Math.abs(slope) > STEEP_RATIO).length / slopesRatio.length;
  const climbMph = fastestClimbMph(road);
  if (share < STEEP_SHARE && climbMph < FASTEST_CLIMB_MPH) return [];
  const values = share < STEEP_SHARE ? { climbMph } : { share, steepRatio: STEEP_RATIO };
  return [{ ...roadNote('heights', 'perhaps-feet', values), options: ['metres', 'feet'], taken: 'metres' }];
}

/** The fastest climb that lasted (m/h); 0 where no times tell. */
function fastestClimbMph({ profile, recorded }: Ridden): number {
  const { stepM, heightsM } = profile;
  const timed = timedPoints(recorded.timeS) ?? [];
  const heightAt = (i: number): number =>
    heightsM[Math.min(heightsM.length - 1, Math.round((recorded.atM[i] ?? 0) / stepM))] ?? 0;
  let best = 0;
  let k = 0;
  for (const i of timed) {
    const untilS = (recorded.timeS[i] as number) + CLIMB_S;
    while (k < timed.length && (recorded.timeS[timed[k] as number] as number) < untilS) k += 1;
    const end = timed[k];
    if (end === undefined) break;
    const hours = ((recorded.timeS[end] as number) - (recorded.timeS[i] as number)) / 3_600;
    best = Math.max(best, (heightAt(end) - heightAt(i)) / hours);
  }
  return best;
}
