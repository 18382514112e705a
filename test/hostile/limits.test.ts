/**
 * Walks the table of limits: through every door go as much as is allowed, which is let in, and one more, which is
 * refused with a sentence or a code that the pages have a sentence for. A limit without a case is an error of types.
 */
import { parseSessionPlanText, type SessionPlan, sessionPlanText } from '../../src/core/group/sessionPlan.ts';
import { sessionPlan as planOf } from '../../src/features/teach/plans.ts';
import { describe, expect, it } from 'vitest';
import { parseLevel, parseLevelText, type ParseResult } from '../../src/core/level/parse.ts';
import type { Problem } from '../../src/core/level/problems.ts';
import { parsePlan, parsePlanText, type ParsePlanResult } from '../../src/core/group/plan.ts';
import { type Limit, LIMITS } from '../../src/core/math/limits.ts';
import type { Door } from '../house/limitsTable.ts';
import { tooMuch } from '../../src/core/math/measure.ts';
import { parseRecording } from '../../src/core/ride/recording.ts';
import { EMPTY_BOX, takeFrame, toFrames } from '../../src/core/transfer/frames.ts';
import { levelFromBytes, levelToBytes, unpackText } from '../../src/core/transfer/share.ts';
import { NOTHING_READ, readText } from '../../src/features/handover/reading.ts';
import { readStoreLink, storeLink } from '../../src/features/handover/storeCode.ts';
import { recordingSentence } from '../../src/cli/common/print.ts';
import { sentenceOf } from '../../src/words/problems.ts';
import { words } from '../../src/words/words.ts';
import { openStorage } from '../../src/storage/index.ts';
import { codeOf, gpxText, northward, trackText } from '../core/gpx/files.ts';
import { planWith, recordingOf } from '../core/group/rides.ts';
import { levelById } from '../core/ride/worlds.ts';

const handover = words('handover');

/** Sends so much through a door: null where it was let in, else what a person is told (or its code). */
type Send = (count: number) => string | null | Promise<string | null>;
/** Why a limit is not walked here. */
type Elsewhere = `not walked: ${string}`;
type Walked = Exclude<Door, 'store'>;
type Cases = { readonly [D in Walked]: { readonly [L in keyof (typeof LIMITS)[D]]: Send | Elsewhere } };

const level = levelById('one-pitch-announced');
const recording = recordingOf(level, 0.5, 1);
const own = { kind: 'own' as const, level };

/** The sentence of a problem with one of these codes; null where there is none, whatever else is wrong. */
function told(problems: readonly Problem[], ...codes: readonly string[]): string | null {
  const problem = problems.find(({ code }) => codes.includes(code));
  return problem === undefined ? null : sentenceOf(problem);
}
const problemsOf = (result: ParseResult | ParsePlanResult): readonly Problem[] =>
  result.ok ? [] : result.problems;

function nest(count: number): unknown {
  let value: unknown = 1;
  for (let i = 0; i < count; i += 1) value = [value];
  return value;
}

/** Something with so many entries, itself included: filled up with a part nobody knows. */
function filled(value: object, count: number): unknown {
  let has = 1;
  while (tooMuch(value, { deep: 99, entries: has }) !== null) has += 1;
  return { ...value, filling: Array.from({ length: count - has - 1 }, () => 0) };
}

const unknownKeys = (count: number) =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [`k${i}`, 1]));

async function toldOfText(text: string): Promise<string | null> {
  const [arrival] = (await readText(NOTHING_READ, text)).arrivals;
  return arrival?.kind === 'unreadable' && arrival.code === 'too-big' ? handover('unreadable-too-big') : null;
}

async function toldOfCopy(value: object): Promise<string | null> {
  const storage = await openStorage({ indexedDB: () => null, localStorage: () => null });
  const { refused } = await storage.importAll(value, { evenIfChanged: true });
  return refused.find(({ code }) => code === 'too-much' || code === 'corrupt')?.code ?? null;
}

const STORE = { url: 'https://rides.club.example', database: 'rides', name: 'club', password: 'x' };
const toldOfStore = (text: string): string | null =>
  readStoreLink(text, '') === null ? handover('store-take-none') : null;

const sessionPlan = planOf('adults-45') as SessionPlan;
const withWarmUp = (lines: readonly string[]): string =>
  sessionPlanText({ ...sessionPlan, parts: { ...sessionPlan.parts, warmUp: { minutes: 5, lines } } });
const toldOfSession = (text: string): string | null => {
  const read = parseSessionPlanText(text);
  return read.ok ? null : words('teach')(`problems-${read.code}`);
};

const cases: Cases = {
  level: {
    bytes: (count) => told(problemsOf(parseLevelText(JSON.stringify(level).padEnd(count))), 'too-big'),
    deep: (count) => told(problemsOf(parseLevel({ ...level, cues: nest(count - 1) })), 'too-deep'),
    entries: (count) => told(problemsOf(parseLevel(filled(level, count))), 'too-much'),
    pieces: (count) =>
      told(
        problemsOf(
          parseLevel({
            ...level,
            stopLinesM: [],
            pieces: Array.from({ length: count }, () => ({ kind: 'flat', lengthM: 50 })),
          }),
        ),
        'too-big',
      ),
    heights: (count) =>
      told(
        problemsOf(
          parseLevel({
            ...level,
            pieces: [{ kind: 'recorded', stepM: 1, heightsM: Array.from({ length: count }, () => 5) }],
          }),
        ),
        'too-big',
      ),
    problems: (count) => told(problemsOf(parseLevel({ ...level, ...unknownKeys(count) })), 'more'),
  },
  link: {
    characters: (count) => toldOfText('#join/B1'.padEnd(count, '0')),
    levelCharacters: (count) => {
      const opened = unpackText('A'.repeat(count));
      return opened.ok ? null : told(opened.problems, 'too-big');
    },
    unpackedBytes: (count) => {
      const bytes = new Uint8Array(count).fill(0x20);
      bytes.set(levelToBytes(level));
      return told(problemsOf(levelFromBytes(bytes)), 'too-big');
    },
    storeCharacters: (count) => toldOfStore(storeLink(STORE, '', '').padStart(count)),
    storePart: (count) => toldOfStore(storeLink({ ...STORE, password: 'x'.repeat(count) }, '', '')),
  },
  code: {
    characters: (count) => {
      const whole = (toFrames(new Uint8Array(2_000)) ?? [])[0] ?? '';
      const [damaged] = takeFrame(EMPTY_BOX, whole.padEnd(count, '0')).damaged;
      return damaged === undefined
        ? null
        : handover.coded(`damaged-${damaged.code}`, { number: damaged.number ?? 0 });
    },
    frames: (count) =>
      toFrames(new Uint8Array((count * (800 - 24 - 8) * 2) / 3)) === null ? 'no codes' : null,
    messages: (count) => {
      const frames = Array.from({ length: count }, (_, i) => (toFrames(Uint8Array.of(i, 1)) ?? [])[0] ?? '');
      const [damaged] = frames.reduce(takeFrame, EMPTY_BOX).damaged;
      return damaged === undefined
        ? null
        : handover.coded(`damaged-${damaged.code}`, { number: damaged.number ?? 0 });
    },
    damaged: 'not walked: it only bounds what is remembered',
    unpackedBytes: 'not walked: what is no packet is damaged at any size',
  },
  sessionPlan: {
    characters: (count) => toldOfSession(sessionPlanText(sessionPlan).padEnd(count)),
    deep: 'not walked: what lies deeper than ours is no session plan at any depth',
    lines: (count) => toldOfSession(withWarmUp(Array.from({ length: count }, (_, i) => `Line ${i}`))),
    lineCharacters: (count) => toldOfSession(withWarmUp(['x'.repeat(count)])),
  },
  gpx: {
    bytes: 'not walked: its characters run out first',
    characters: 'not walked: takes too long for every run',
    points: 'not walked: takes too long for every run',
    deep: (count) => {
      // The road itself is the first of the elements.
      const text = gpxText(
        `${'<a>'.repeat(count - 1)}${'</a>'.repeat(count - 1)}${trackText(northward(9, 10, () => 1))}`,
      );
      return codeOf(text) === 'too-deep' ? 'too-deep' : null;
    },
    value: 'not walked: a longer value only counts as none',
  },
  ride: {
    seconds: (count) => toldOfRide({ ...recording, ticks: Math.ceil(count * 120) }),
    commands: (count) =>
      toldOfRide({ ...recording, commands: Array.from({ length: count }, () => recording.commands[0]) }),
    checkpoints: (count) =>
      toldOfRide({ ...recording, checkpoints: Array.from({ length: count }, () => '0'.repeat(16)) }),
  },
  copy: {
    bytes: 'not walked: the page looks at the size of the file',
    records: (count) =>
      toldOfCopy({ schema: 1, rides: [], results: Array.from({ length: count }, () => null) }).then((code) =>
        code === 'too-much' ? code : null,
      ),
    deep: 'not walked: test/storage/deep.test.ts does',
  },
  plan: {
    characters: (count) =>
      told(problemsOf(parsePlanText(JSON.stringify(planWith()).padEnd(count))), 'too-big'),
    deep: (count) => told(problemsOf(parsePlan({ ...planWith(), title: nest(count - 1) })), 'too-deep'),
    entries: (count) => told(problemsOf(parsePlan(filled(planWith(), count))), 'too-much'),
    rides: (count) =>
      told(
        problemsOf(parsePlan({ ...planWith(), rides: Array.from({ length: count }, () => own) })),
        'too-big',
      ),
    attempts: (count) => told(problemsOf(parsePlan({ ...planWith(), attempts: count })), 'too-big'),
    problems: (count) => told(problemsOf(parsePlan({ ...planWith(), ...unknownKeys(count) })), 'more'),
  },
  rideFile: {
    characters: (count) => toldOfText('{"deviceId":1}'.padEnd(count)),
    lines: (count) => toldOfText('\n'.repeat(count)),
    lineCharacters: 'not walked: a long line is a damaged ride among others',
    withdrawn: 'not walked: the first line is then a damaged one',
    deep: 'not walked: a deep line is a damaged ride among others',
  },
};

function toldOfRide(value: unknown): string | null {
  const parsed = parseRecording(value);
  return parsed.ok ? null : recordingSentence(parsed);
}

const walked = Object.entries(cases).flatMap(([door, limits]) =>
  Object.entries(limits).flatMap(([name, send]) => {
    const limit = (LIMITS[door as Door] as Readonly<Record<string, Limit>>)[name] as Limit;
    return typeof send === 'function' ? [{ door, name, send: send as Send, ...limit }] : [];
  }),
);

describe('every door', () => {
  it.each(walked)('$door: $name, $most $unit and not one more', async ({ send, most }) => {
    expect(await send(most)).toBeNull();
    expect(await send(most + 1)).toMatch(/^([A-Z"\d].{15,}[.!]|too-[a-z]+|no codes)$/s);
  });
});
