/**
 * Proposes the stretch of a road worth practising: where it climbs hardest. A person may choose any other.
 */
import type { Road } from './road.ts';

/** A stretch of a road (m from its start). */
export interface RoadStretch {
  readonly fromM: number;
  readonly toM: number;
}

/** So much of a road is proposed (m). */
export const HARDEST_M = 2_000;

/**
 * The stretch of the wanted length (or the whole road, if it is shorter) with the largest sum of squared climbing
 * slopes: that puts a steep pitch before a long drag of the same ascent. Stretches with holes come last.
 */
export function hardestStretch(road: Pick<Road, 'profile' | 'holes'>, wantedM = HARDEST_M): RoadStretch {
  const { stepM, slopesRatio } = road.profile;
  const steps = slopesRatio.length - 1;
  const width = Math.max(1, Math.min(steps, Math.round(wantedM / stepM)));
  const inHole = (index: number): boolean =>
    road.holes.some((hole) => index * stepM > hole.fromM && index * stepM < hole.toM);
  const worth = slopesRatio.map((slope, i) => (inHole(i) ? -1 : Math.max(0, slope) * Math.max(0, slope)));
  let sum = 0;
  for (let i = 0; i < width; i += 1) sum += worth[i] as number;
  let best = { sum, from: 0 };
  for (let from = 1; from + width <= steps; from += 1) {
    sum += (worth[from + width - 1] as number) - (worth[from - 1] as number);
    if (sum > best.sum + 1e-12) best = { sum, from };
  }
  return { fromM: best.from * stepM, toM: (best.from + width) * stepM };
}
