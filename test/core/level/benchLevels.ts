/** Levels for the tests of the level bench, and chance that makes edits. No expectation lives here. */
import * as fc from 'fast-check';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { OWN_LEVEL } from '../../../src/core/level/own.ts';
import type { LevelEdit, LevelPiece, PlacedList } from '../../../src/core/level/edit.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { gpxText, northward, roadOf, trackText } from '../gpx/files.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

/** A level of these parts; it must parse. */
export function levelOf(parts: Record<string, unknown>): Level {
  const made = parseLevel({
    schema: 1,
    id: 'bench',
    title: 'Bench',
    sentence: 'Try it.',
    ...OWN_LEVEL,
    seed: 3,
    pieces: [{ kind: 'flat', lengthM: 400 }],
    ...parts,
  });
  if (!made.ok)
    throw new Error(made.problems.map((problem) => `${problem.path} ${sentenceOf(problem)}`).join(' '));
  return made.level;
}

/** A level cut from a made-up ride. */
export function recordedLevel(title = 'Sunday'): Level {
  const points = northward(301, 10, (x) => 300 + 14 * Math.sin(x / 160));
  const made = levelFromRoad(roadOf(gpxText(trackText(points))), {
    fromM: 0,
    toM: 2_000,
    title,
    sentence: 'Up.',
  });
  if (!made.ok) throw new Error('the made-up ride gives a level');
  return made.level;
}

const pieces: fc.Arbitrary<LevelPiece> = fc.oneof(
  fc.record({ kind: fc.constant('flat' as const), lengthM: fc.integer({ min: 1, max: 900 }) }),
  fc.record({
    kind: fc.constantFrom('climb' as const, 'pitch' as const, 'descent' as const),
    lengthM: fc.integer({ min: 1, max: 900 }),
    slopeRatio: fc.double({ min: 0, max: 0.2, noNaN: true }),
  }),
);
const index = fc.integer({ min: -1, max: 5 });
const place = fc.integer({ min: 0, max: 3_000 });
const stretch = { fromM: place, toM: place };
const placed: fc.Arbitrary<LevelEdit> = fc
  .oneof(
    fc.record({ list: fc.constant('stopLinesM' as const), entry: place }),
    fc.record({
      list: fc.constant('winds' as const),
      entry: fc.record({ ...stretch, windMps: fc.integer({ min: -9, max: 9 }) }),
    }),
    fc.record({
      list: fc.constant('surfaces' as const),
      entry: fc.record({ ...stretch, surface: fc.constant('gravel' as const) }),
    }),
    fc.record({
      list: fc.constant('hidden' as const),
      entry: fc.record({ ...stretch, sightM: fc.integer({ min: 5, max: 99 }) }),
    }),
    fc.record({
      list: fc.constant('cues' as const),
      entry: fc.record({ atM: place, cue: fc.constant('look-far' as const) }),
    }),
  )
  .chain((entry) =>
    fc.oneof(
      fc.constant({ kind: 'add-entry' as const, ...entry } as LevelEdit),
      index.map((at) => ({ kind: 'change-entry' as const, index: at, ...entry }) as LevelEdit),
    ),
  );

/** Any edit, also such as point beyond a list. */
export const edits: fc.Arbitrary<LevelEdit> = fc.oneof(
  fc.record({
    kind: fc.constant('set' as const),
    values: fc.record({ title: fc.string(), seed: fc.nat(9), passMark: fc.nat(100) }, { requiredKeys: [] }),
  }),
  fc.record({
    kind: fc.constantFrom('add-piece' as const, 'change-piece' as const),
    index,
    piece: pieces,
    follow: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('remove-piece' as const), index, follow: fc.boolean() }),
  fc.record({ kind: fc.constant('move-piece' as const), from: index, to: index }),
  placed,
  fc.record({
    kind: fc.constant('remove-entry' as const),
    list: fc.constantFrom<PlacedList>('stopLinesM', 'winds', 'surfaces', 'hidden', 'cues'),
    index,
  }),
);
