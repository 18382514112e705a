/**
 * Thousands of spoiled files: whatever is done to a GPX file, it becomes a road that makes a level, or a sentence.
 * Nothing crashes, nothing is infinite.
 */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { importRoad } from '../../../src/core/gpx/road.ts';
import { hardestStretch } from '../../../src/core/gpx/hardest.ts';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { recordedRide } from '../../../src/core/gpx/recorded.ts';
import { gpxText, imported, northward, trackText } from './files.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const RUNS = { numRuns: 2_000, seed: 20_261 };

const small = gpxText(
  `<wpt lat="1" lon="2"/>${trackText(
    northward(31, 10, (x) => 300 + 0.04 * x).map((point, i) => ({
      ...point,
      time: `2020-01-01T00:00:${String(i).padStart(2, '0')}Z`,
      inside: '<extensions><cad>80</cad></extensions>',
    })),
  )}`,
);

/** A road can be used to the end; a refusal is a sentence. */
function check(made: ReturnType<typeof importRoad>): void {
  if (!made.ok) {
    expect(made.problems.length).toBeGreaterThan(0);
    for (const problem of made.problems) {
      const { code } = problem;
      expect(code).toMatch(/^[a-z-]+$/);
      expect(sentenceOf(problem)).toMatch(/^\S.{10,300}[.?]$/);
    }
    return;
  }
  const { road } = made;
  const numbers = [
    road.lengthM,
    road.ascentM,
    road.steepestRatio,
    road.steepestDescentRatio,
    ...road.profile.heightsM,
  ];
  expect(numbers.every(Number.isFinite)).toBe(true);
  for (const problem of [...road.problems, ...road.questions, ...road.quality.reasons])
    expect(sentenceOf(problem)).not.toMatch(/NaN|Infinity|undefined/);
  const stretch = hardestStretch(road);
  const level = levelFromRoad(road, { ...stretch, title: 'T', sentence: 'S' });
  expect(level.ok ? [] : level.problems).toEqual([]);
  recordedRide(road, stretch);
}

const junk = fc.oneof(
  fc.string({ maxLength: 8 }),
  fc.constantFrom(
    '<',
    '>',
    '&',
    ']]>',
    '<!--',
    '<![CDATA[',
    '<!DOCTYPE x>',
    '\0',
    '\uFFFD',
    '\uD800',
    '<ele>',
    '</trkpt>',
    '"',
    '1e400',
    'NaN',
    '-',
  ),
);
const change = fc.record({ at: fc.nat(small.length), cut: fc.nat(12), put: junk });

describe('spoiled GPX files', () => {
  it('with bits of text cut out and put in end in a road or a sentence', () => {
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        const text = changes.reduce((t, { at, cut, put }) => t.slice(0, at) + put + t.slice(at + cut), small);
        check(imported(text));
      }),
      RUNS,
    );
  });

  it('with bytes changed, or cut short, end in a road or a sentence', () => {
    const bytes = new TextEncoder().encode(small);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(bytes.length), fc.nat(255)), { maxLength: 5 }),
        fc.nat(bytes.length * 3),
        (changes, end) => {
          const spoiled = bytes.slice(0, Math.max(0, end));
          for (const [at, byte] of changes) if (at < spoiled.length) spoiled[at] = byte;
          check(imported(spoiled));
        },
      ),
      RUNS,
    );
  });

  it('of nothing but noise end in a sentence', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 600 }), (bytes) => {
        const made = imported(bytes);
        expect(made.ok).toBe(false);
        check(made);
      }),
      RUNS,
    );
  });

  it('with any places, heights and times at all end in a road or a sentence', () => {
    const value = fc.oneof(
      { weight: 3, arbitrary: fc.constant(Number.NaN) },
      { weight: 7, arbitrary: fc.double({ min: -500, max: 9_000, noNaN: true }) },
    );
    const point = fc.record({
      lat: fc.oneof(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: 45.99, max: 46.01, noNaN: true }),
      ),
      lon: fc.oneof(
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: 9.99, max: 10.01, noNaN: true }),
      ),
      height: value,
      time: value,
    });
    const points = fc.array(point, { maxLength: 30 });
    const near = points.map((list) =>
      list.map((p) => ({ ...p, lat: 46 + p.lat / 900, lon: 10 + p.lon / 900 })),
    );
    fc.assert(
      fc.property(
        fc.oneof({ weight: 4, arbitrary: near }, { weight: 1, arbitrary: points }),
        fc.constantFrom('straight' as const, 'longest-part' as const, undefined),
        (list, holes) => {
          const columns = {
            latDeg: list.map((p) => p.lat),
            lonDeg: list.map((p) => p.lon),
            heightM: list.map((p) => p.height),
            timeS: list.map((p) => p.time),
            cadenceRpm: list.map(() => Number.NaN),
            powerW: list.map(() => Number.NaN),
          };
          const file = {
            tracks: [{ kind: 'track' as const, segments: [columns] }],
            waypointCount: 0,
            pointCount: list.length,
            unreadablePoints: 0,
            unreadableHeights: 0,
            month: null,
            damage: null,
          };
          check(importRoad(file, holes === undefined ? {} : { holes }));
        },
      ),
      { ...RUNS, numRuns: 500 },
    );
  });
});
