/** All that instruments can say, and rides that are nearly over, so that no state of a ride has to be ridden in every language. */
import type { Page } from 'playwright-core';
import { carriedWords, ENGLISH, languages, wordFiles } from '../../../assets/words/carry.ts';
import { courseOfLevel, levelHash } from '../../../src/core/level/build.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { PHYSICS_VERSION } from '../../../src/core/ride/recording.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import { TICKS_PER_S } from '../../../src/core/ride/clock.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { type NamedRider, NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import { recordKey } from '../../../src/storage/shapes.ts';
import { cueText } from '../../../src/words/cues.ts';
import { createFormat } from '../../../src/words/format.ts';
import type { Messages } from '../../../src/words/messages.ts';
import { type WordList, speak, take, words } from '../../../src/words/words.ts';
import { ALL_LEVELS } from '../../core/coach/riding.ts';
import { type Pseudo, pseudoWords } from '../../words/pseudo.ts';
import type { HudMoment } from './unfit.ts';

export const PSEUDO: readonly string[] = ['en-XA', 'ar-XB'] satisfies readonly Pseudo[];
export const ALL_LANGUAGES = [...languages(), ...PSEUDO];

/** A message file of a language, also of one that nobody speaks. */
export const wordsOf = (language: string, file: string): WordList =>
  PSEUDO.includes(language)
    ? pseudoWords(carriedWords(ENGLISH, file), language as Pseudo)
    : carriedWords(language, file);

const hud = words('hud');
const MOVES = ['rear-easier', 'rear-harder', 'front-easier', 'front-harder'] as const;

/** Every sentence an instrument can hold, the lists of all instruments side by side. */
export function hudMoments(language: string, carries: boolean): readonly HudMoment[] {
  for (const file of wordFiles()) take(language, file, wordsOf(language, file));
  speak(language);
  const ids = (file: string, start: string): readonly string[] =>
    wordsOf(language, file).flatMap(([id]) => (id.startsWith(start) ? [id] : []));
  const said = (start: string): readonly string[] =>
    ids('hud', start).map((id) => hud.coded(id as keyof Messages['hud'], { speed: '25 km/h' }));
  const format = createFormat('metric');
  const move = (id: 'move' | 'move-after', way: (typeof MOVES)[number], steps: number): string =>
    hud(id, { move: way, steps });
  const levelCues = ALL_LEVELS.filter((level) => (level.carries !== undefined) === carries).flatMap(
    ({ cues }) => cues,
  );
  const cues = [
    ...levelCues.flatMap((cue) => ('cue' in cue ? [cueText(cue.cue)] : [])),
    ...ALL_LEVELS.filter((level) => (level.carries !== undefined) === carries).flatMap(({ id }) =>
      ids('ladder', `cue-${id}`).map((one) =>
        words('ladder').coded(one as keyof Messages['ladder'], { speed: '25 km/h' }),
      ),
    ),
  ];
  const steps = [
    ...MOVES.map((way) => move('move', way, 3)),
    ...MOVES.slice(2).flatMap((way) =>
      MOVES.slice(0, 2).map((then) =>
        hud('move-then', { first: move('move', way, 1), second: move('move-after', then, 3) }),
      ),
    ),
  ];
  const whens = [hud('step-now'), hud('step-soon'), hud('step-in', { distance: format.distance(60) })];
  const notes = [hud('crossed'), hud('chainOff'), ...said('motor-'), hud('widened', { times: 3 })];
  const lists: Readonly<Record<string, readonly string[]>> = {
    'hud-cue': [...new Set(cues)],
    'hud-remark': said('remark-'),
    'hud-step-action': carries ? [] : steps,
    'hud-step-when': carries ? [] : whens,
    'hud-pressure': said('legs-'),
    'hud-note': notes,
    'hud-speed': [format.speed(13.4)],
    'hud-distance': [format.distance(1234)],
    'hud-gear': ['46 × 28'],
    'hud-stop-text': [format.distance(120)],
  };
  const most = Math.max(...Object.values(lists).map((list) => list.length));
  return Array.from({ length: most }, (_, i) =>
    Object.fromEntries(
      Object.entries(lists).flatMap(([style, list]) => {
        const text = list[i % list.length];
        return text === undefined ? [] : [[style, text]];
      }),
    ),
  );
}

interface JournalRecord {
  readonly kind: string;
  readonly id: string;
  readonly schema: number;
  readonly savedAtMs: number;
  readonly data: object;
}

/** So much of a ride is left (s). */
const LEFT_S = 1.5;

/** A ride on a bundled level as the game keeps one that broke off just before its end. */
function journal(
  id: string,
  levelId: string,
  who: NamedRider,
  bikeId: string,
  riderId: string,
): readonly JournalRecord[] {
  const level = ALL_LEVELS.find((one) => one.id === levelId);
  const bike = bikeById(bikeId);
  const rider = riderById(riderId);
  if (level === undefined || bike === undefined || rider === undefined)
    throw new Error(`${levelId} ${bikeId} ${riderId}`);
  const world = buildRideWorld(courseOfLevel(level), bike, rider);
  const ridden = () => virtualRider(world, NAMED_HABITS[who], 1);
  const { tick } = rideThrough(world, ridden()).now;
  const until = tick - LEFT_S * TICKS_PER_S;
  const ride = rideThrough(world, ridden(), { stopWhen: (state) => state.tick >= until });
  const setup = { levelId, levelHash: levelHash(level), seed: level.seed, bike, rider, autoEase: false };
  const kept = { schema: 1, savedAtMs: Date.now() };
  return [
    {
      ...kept,
      kind: 'ride-journal',
      id,
      data: { rest: levelId, level, turn: null, physicsVersion: PHYSICS_VERSION, setup },
    },
    {
      ...kept,
      kind: 'ride-journal-part',
      id: `${id}-0`,
      data: { of: id, index: 0, from: { commands: 0, checkpoints: 0 }, ...ride.recordedSince(0, 0) },
    },
  ];
}

/** Rides that end in every way there is, by name. */
export const ENDINGS = {
  passed: () => journal('ends-passed', 'one-pitch-announced', 'early', 'road-2x11', 'adult-new'),
  failed: () => journal('ends-failed', 'three-little-hills', 'never', 'trekking-3x8', 'adult-weekly'),
  child: () => journal('ends-child', 'click-before-the-hill', 'late', 'kids-20-1x7', 'child-9'),
  party: () => journal('ends-party', 'apples-for-the-party', 'late', 'kids-20-1x7', 'child-9'),
} as const;

/** Puts records where the game keeps them. */
export const putRecords = (page: Page, records: readonly JournalRecord[]): Promise<void> =>
  page.evaluate(
    (all) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('before-the-hill');
        request.onerror = () => reject(new Error('no database'));
        request.onsuccess = () => {
          const work = request.result.transaction('records', 'readwrite');
          for (const one of all) {
            work.objectStore('records').put(one.record, one.key);
          }
          work.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    records.map((record) => ({ record, key: recordKey(record.kind, record.id) })),
  );
