/** A road that several ride one after the other: where the gates stand at which they change, and the leg of each. */
import type { Course } from '../course/types.ts';
import { courseOfLevel } from './build.ts';
import { levelBetween } from './cut.ts';
import { type Level, SHORTEST_LEVEL_M, STOP_SPACING_M } from './schema.ts';

/** More riders than these wait too long for their leg. */
const MOST_RIDERS = 6;
/** So much road for each, so that gates have some room to stand where it is flat (m). */
const ROAD_EACH_M = 1.2 * SHORTEST_LEVEL_M;
/** Ground that should be gentle where somebody rolls off: before the gate and behind it (m). */
const BEFORE_GATE_M = 10;
const BEHIND_GATE_M = 40;
/** A gate stands a quarter of a leg aside rather than on ground one point (0.01) steeper. */
const ASIDE_RATIO = 0.04;

/** How many can ride a relay on this road, each with a pitch of their own; fewer than two where there is none for two. */
export function mostRelayRiders({ lengthM, pitches }: Course): number {
  return Math.min(MOST_RIDERS, pitches.length, Math.floor(lengthM / ROAD_EACH_M));
}

/**
 * Where riders change (m from the start), one place fewer than riders. Each leg has its share of the pitches; gates stand
 * on gentle ground and leave room before lines.
 * @throws Error where the road has too little for so many
 */
export function relayGates(course: Course, riders: number): readonly number[] {
  if (riders > mostRelayRiders(course)) throw new Error('no road for so many riders');
  const gates: number[] = [];
  for (let before = 1; before < riders; before += 1) {
    const [earliestM, latestM] = betweenPitches(course, before / riders);
    const wishedM = (earliestM + latestM) / 2;
    const lastM = course.lengthM - (riders - before) * SHORTEST_LEVEL_M;
    let bestM = (gates.at(-1) ?? 0) + SHORTEST_LEVEL_M;
    let least = Number.POSITIVE_INFINITY;
    for (let atM = bestM; atM <= lastM; atM += 1) {
      const aside = (ASIDE_RATIO * Math.abs(atM - wishedM) * riders) / course.lengthM;
      const isWrong = atM < earliestM || atM > latestM || hasLine(course, atM);
      const cost = steepest(course, atM) + aside + (isWrong ? 1 : 0);
      if (cost >= least) continue;
      least = cost;
      bestM = atM;
    }
    gates.push(bestM);
  }
  return gates;
}

/** A leg for each rider, as a level of its own. */
export function relayLegs(level: Level, riders: number): readonly Level[] {
  const course = courseOfLevel(level);
  const ends = [0, ...relayGates(course, riders), course.lengthM];
  return ends.slice(1).map((endM, i) => levelBetween(level, ends[i] ?? 0, endM));
}

/** The road between the last pitch of one and the first of the next (m). */
function betweenPitches({ lengthM, pitches }: Course, share: number): readonly [number, number] {
  const next = Math.round(share * pitches.length);
  return [pitches[next - 1]?.endM ?? 0, pitches[next]?.footM ?? lengthM];
}

function steepest({ slopeRatio }: Course, atM: number): number {
  let most = 0;
  for (let m = atM - BEFORE_GATE_M; m <= atM + BEHIND_GATE_M; m += 1)
    most = Math.max(most, Math.abs(slopeRatio[m] ?? 0));
  return most;
}

function hasLine({ stopLinesM }: Course, atM: number): boolean {
  return stopLinesM.some((lineM) => Math.abs(lineM - atM) < STOP_SPACING_M);
}
