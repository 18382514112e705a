/**
 * The picture of a group as other programs read it: all that the pages draw, and beside it what only the command line
 * prints, which is the lines of single rides, shifts counted along the road, and for each pitch the first shifts and
 * who had little credit. It names nobody, as the picture does (`core/group/picture/group.ts`).
 */
import type { GroupLines, GroupPicture, RoadPicture } from '../../core/group/picture/group.ts';
import { CAUGHT_BELOW_PERCENT } from '../../core/group/picture/groupPitches.ts';
import { type GroupRide, personOf } from '../../core/group/picture/groupRide.ts';
import { binned, spreadOf } from '../../core/group/picture/spread.ts';
import type { RideLine } from '../../core/group/records/rideLine.ts';

/** Shifts are counted in stretches of so many metres. */
const SHIFT_BIN_M = 5;

/** The picture of these rides, with series as plain lists. */
export function printedPicture(picture: GroupPicture, rides: readonly GroupRide[]): unknown {
  const roads = picture.roads.map((road) => printedRoad(road, rides));
  return JSON.parse(
    JSON.stringify({ ...picture, roads }, (_key, value: unknown) =>
      value instanceof Uint8Array || value instanceof Uint16Array || value instanceof Uint32Array
        ? Array.from(value)
        : value,
    ),
  ) as unknown;
}

function printedRoad(road: RoadPicture, all: readonly GroupRide[]) {
  const rides = all.filter(({ record }) => record.levelHash === road.levelHash && record.seed === road.seed);
  return {
    ...road,
    caughtPitch: road.verdict.pitch,
    pitches: road.pitches.map((pitch) => ({
      ...pitch,
      ...credited(rides, pitch.index),
      ...firstShifts(rides, pitch.index),
      referenceFirstShiftBeforeFootM:
        road.strip?.references[0]?.pitches[pitch.index]?.firstShiftBeforeFootM ?? null,
    })),
    strip: road.strip === null ? null : { ...road.strip, ...linesOf(road.strip, rides) },
  };
}

/** Different riders whose credit was low at least once, and such rides. */
function credited(rides: readonly GroupRide[], index: number) {
  const caught = rides.filter(
    ({ record }) => (record.pitches[index]?.creditPercent ?? 100) < CAUGHT_BELOW_PERCENT,
  );
  return {
    caughtRiders: new Set(caught.map(({ record }) => personOf(record))).size,
    caughtRides: caught.length,
  };
}

/** Metres before the foot of the first easier shift, of rides for which the pitch asked something; those without one beside. */
function firstShifts(rides: readonly GroupRide[], index: number) {
  const asked = rides.flatMap(({ record }) => {
    const pitch = record.pitches[index];
    return pitch === undefined || pitch.creditPercent === null ? [] : [pitch.firstShiftBeforeFootM];
  });
  const made = asked.filter((placeM) => placeM !== null);
  return { firstShiftBeforeFootM: spreadOf(made), withoutShift: asked.length - made.length };
}

/** Lines in an order that does not tell who rode, and the shifts begun in each stretch over all of them. */
function linesOf({ lengthM }: GroupLines, rides: readonly GroupRide[]) {
  const lines = rides.flatMap(({ line }) => line ?? []);
  const bins = Math.ceil(lengthM / SHIFT_BIN_M) + 1;
  const begun = (part: 'easierAtM' | 'harderAtM') =>
    binned(
      lines.flatMap((line) => [...line[part]]),
      SHIFT_BIN_M,
      bins,
    );
  return {
    lines: lines
      .map((line) => ({ line, order: orderOf(line) }))
      .toSorted((a, b) => a.order - b.order)
      .map(({ line }) => line),
    easier: begun('easierAtM'),
    harder: begun('harderAtM'),
  };
}

/** Where a line stands among others: by what it looks like, which says nothing about who rode when. */
function orderOf(line: RideLine): number {
  let key = 0;
  for (const rpm of line.cadenceRpm) key = (Math.imul(key, 31) + rpm) | 0;
  for (const gear of line.development) key = (Math.imul(key, 31) + gear) | 0;
  return key;
}
