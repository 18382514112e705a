/**
 * Proposes the stretch of a road worth practising: where it climbs hardest. A person may choose any other.
 */
import { greatestWindow } from '../math/numbers.ts';
import type { Road } from './road.ts';
import type { RoadStretch } from './types.ts';

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
  const { from } = greatestWindow(worth.slice(0, steps), width, 1e-12);
  return { fromM: from * stepM, toM: (from + width) * stepM };
}
