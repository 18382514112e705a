/**
 * Which road stands behind `#ride/…`: a bundled level (made steeper or gentler by how the last rides went), an
 * own level as it is, a level that is being tried, or a check ride. Pure; the same address and results give the same road.
 */
import type { KeptResult } from '../core/coach/results.ts';
import {
  type CheckedApart,
  checkLevel,
  freeLevel,
  nextDifficultyStep,
  levelAtStep,
} from '../core/level/generate.ts';
import type { Level } from '../core/level/schema.ts';
import { playing, type Settings } from '../core/settings/settings.ts';
import { decodeFreeRide, isFreeRide } from '../core/level/freeRide.ts';

/** A road to ride, and how much harder (positive) or gentler it is than the level as it was drawn. */
interface RideRoad {
  readonly level: Level;
  readonly difficultyStep: number;
}

interface KnownRoads {
  readonly levels: readonly Level[];
  readonly ownLevels?: readonly Level[];
  readonly trial?: Level | null;
  readonly results: readonly KeptResult[];
}

/** What a ride is ridden with: on a turn of a group its plan says who rides on what, a road for play asks for what a child has. */
export function settingsOfRide(
  settings: Settings,
  { level, group }: { readonly level: Level; readonly group: Pick<Settings, 'bike' | 'rider'> | null },
): Settings {
  if (group !== null) return { ...settings, bike: group.bike, rider: group.rider };
  return level.carries === undefined ? settings : playing(settings);
}

/** Address of the level that is being tried from the level bench. */
export const TRIAL = 'trial';

const CHECK = /^check-(everyone|children)-(?:(hub|crank-motor|wheel-motor)-)?(\d{1,10})$/;

/** The road of an address, or null where there is none. */
export function rideRoad(known: KnownRoads, rest: string): RideRoad | null {
  const check = CHECK.exec(rest);
  if (check !== null) {
    const [, audience, needs, seed] = check as unknown as [string, Level['audience'], CheckedApart?, string?];
    return { level: checkLevel(Number(seed) >>> 0, audience, 'alone', needs), difficultyStep: 0 };
  }
  if (isFreeRide(rest)) {
    const free = decodeFreeRide(rest);
    return free.ok ? { level: freeLevel(free.wish), difficultyStep: 0 } : null;
  }
  if (rest === TRIAL) {
    const { trial = null } = known;
    return trial === null ? null : { level: trial, difficultyStep: 0 };
  }
  // An own road is ridden as it was drawn: a group is going to ride it just so.
  const own = known.ownLevels?.find((one) => one.id === rest);
  if (own !== undefined) return { level: own, difficultyStep: 0 };
  const level = known.levels.find((one) => one.id === rest);
  if (level === undefined) return null;
  // Play stays as it is, however it went.
  if (level.carries !== undefined) return { level, difficultyStep: 0 };
  const difficultyStep = difficultyStepAfter(level, known.results);
  return { level: levelAtStep(level, difficultyStep, level.seed + difficultyStep), difficultyStep };
}

/** Address of a check ride on a road nobody has seen. */
export function checkAddress(audience: Level['audience'], seed: number, needs?: CheckedApart): string {
  return ['check', audience, ...(needs === undefined ? [] : [needs]), seed >>> 0].join('-');
}

/** Walks through all rides of a level in the order they were ridden. */
export function difficultyStepAfter(level: Level, results: readonly KeptResult[]): number {
  const totals = results
    .filter((result) => result.levelId === level.id && result.kind === 'ride')
    .toSorted((a, b) => a.atMs - b.atMs)
    .map((result) => result.total);
  return totals.reduce(
    (difficultyStep, _, i) =>
      nextDifficultyStep(difficultyStep, totals.slice(Math.max(0, i - 1), i + 1), level.passMark),
    0,
  );
}
