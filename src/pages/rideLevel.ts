/**
 * Which road stands behind `#ride/…`: a bundled or own level (made steeper or gentler by how the last rides
 * went), a check ride, or a free ride. Pure; the same address and results give the same road.
 */
import { checkLevel, freeLevel, nextNotch, notchedLevel } from '../core/level/generate.ts';
import type { Level } from '../core/level/schema.ts';
import type { KeptResult } from './afterRide.ts';
import { decodeFreeRide, isFreeRide } from './freeride/link.ts';

/** A road to ride, and how much harder (positive) or gentler it is than the level as it was drawn. */
export interface RideRoad {
  readonly level: Level;
  readonly notch: number;
}

/** What is looked into. */
export interface KnownRoads {
  readonly levels: readonly Level[];
  readonly results: readonly KeptResult[];
}

const CHECK = /^check-(everyone|children)-(\d{1,10})$/;

/** The road of an address, or null where there is none. */
export function rideRoad(known: KnownRoads, rest: string): RideRoad | null {
  const check = CHECK.exec(rest);
  if (check !== null)
    return {
      level: checkLevel(Number(check[2]) >>> 0, check[1] === 'children' ? 'children' : 'everyone'),
      notch: 0,
    };
  if (isFreeRide(rest)) {
    const free = decodeFreeRide(rest);
    return free.ok ? { level: freeLevel(free.wish), notch: 0 } : null;
  }
  const level = known.levels.find((one) => one.id === rest);
  if (level === undefined) return null;
  const notch = notchAfter(level, known.results);
  return { level: notchedLevel(level, notch, level.seed + notch), notch };
}

/** Address of a check ride on a road nobody has seen. */
export function checkAddress(audience: Level['audience'], seed: number): string {
  return `check-${audience}-${seed >>> 0}`;
}

/** Walks through all rides of a level in the order they were ridden. */
export function notchAfter(level: Level, results: readonly KeptResult[]): number {
  const totals = results
    .filter((result) => result.levelId === level.id && result.kind === 'ride')
    .toSorted((a, b) => a.atMs - b.atMs)
    .map((result) => result.total);
  return totals.reduce(
    (notch, _, i) => nextNotch(notch, totals.slice(Math.max(0, i - 1), i + 1), level.passMark),
    0,
  );
}
