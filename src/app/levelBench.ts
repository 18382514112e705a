/**
 * The level bench joined to keeping, planner and the reader of recorded roads. Fetched with the bench; decides
 * nothing about levels.
 */
import type { RecordedSample } from '../core/gpx/recorded.ts';
import { readUnfinished } from '../core/level/parse.ts';
import type { Level } from '../core/level/schema.ts';
import type { RideJob } from '../core/ride/job.ts';
import type { Keeping } from './device/persistence.ts';
import type { BenchServices, KeepAnswer, ReferenceJob, DraftStore } from '../features/bench/services.ts';
import type { SaveAnswer } from '../storage/index.ts';
import type { Planner } from '../worker/client.ts';
import { workplace } from './device/workplace.ts';
import { createGpxImporter } from '../worker/gpxClient.ts';
import { Cancelled } from '../worker/rpc.ts';

/** Kind and version of kept records of what was ridden. */
const RECORDED = 'recorded-ride';
const RECORDED_SCHEMA = 1;
/** The same for the one level that lies on the bench unfinished. */
const UNFINISHED = 'unfinished-level';
const UNFINISHED_ID = 'bench';
const UNFINISHED_SCHEMA = 1;

/** Opens the desk. */
export function openLevelBench(keeping: Keeping, planner: Planner): BenchServices {
  const importer = createGpxImporter(workplace);
  const records = recordedStore(keeping);
  const levels = {
    keep: (level: Level) => changed(keeping, async () => (await keeping.storage).saveLevel(level)),
    remove: (id: string) => changed(keeping, async () => (await keeping.storage).deleteLevel(id)),
    restore: (id: string) => changed(keeping, async () => (await keeping.storage).restoreLevel(id)),
  };
  return {
    ...levels,
    ...records,
    ...draftStore(keeping, records.recordedOf),
    async plan(job, onShare, signal) {
      try {
        const { trace, report } = await planner.prepare(rideJob(job), onShare, signal);
        return { trace, report };
      } catch (error) {
        if (error instanceof Cancelled) return null;
        throw error;
      }
    },
    prepareRoad: () => importer.prepare(),
    readRoad: (file, onShare) => importer.read(file, onShare),
    answerRoad: (answers) => importer.answer(answers),
    cutRoad: (wishes) => importer.cut(wishes),
    recordedOn: (stretch) => importer.recorded(stretch),
  };
}

function recordedStore(
  keeping: Keeping,
): Pick<BenchServices, 'keepRecorded' | 'recordedOf' | 'forgetRecorded'> {
  return {
    async keepRecorded({ levelId, samples }) {
      const storage = await keeping.storage;
      const record = { kind: RECORDED, id: levelId, schema: RECORDED_SCHEMA, data: samples };
      return answerOf(await storage.putRecord(record));
    },
    async recordedOf(levelId) {
      const storage = await keeping.storage;
      const all = await storage.listRecords(RECORDED, {
        schema: RECORDED_SCHEMA,
        steps: [],
        read: readSamples,
      });
      return all.find((one) => one.id === levelId)?.data ?? null;
    },
    async forgetRecorded(levelId) {
      return (await (await keeping.storage).deleteRecords(RECORDED, [levelId])) === null;
    },
  };
}

function draftStore(
  keeping: Keeping,
  recordedOf: (levelId: string) => Promise<readonly RecordedSample[] | null>,
): DraftStore {
  return {
    async keepUnfinished(level) {
      // What could not be read again is no help.
      if (readUnfinished(level) === null) return false;
      const record = { kind: UNFINISHED, id: UNFINISHED_ID, schema: UNFINISHED_SCHEMA, data: level };
      return (await (await keeping.storage).putRecord(record)).saved;
    },
    async dropUnfinished() {
      await (await keeping.storage).deleteRecords(UNFINISHED);
    },
    async unfinished() {
      const storage = await keeping.storage;
      const shape = { schema: UNFINISHED_SCHEMA, steps: [], read: readUnfinished };
      const level = (await storage.listRecords(UNFINISHED, shape))[0]?.data;
      if (level === undefined) return null;
      const own = (await storage.listLevels()).find(({ id }) => id === level.id);
      return { level, kept: own?.level ?? null, recorded: await recordedOf(level.id) };
    },
  };
}

/** Own levels are ridden with the player's own easing, so the best ride is too. */
function rideJob({ level, bike, rider }: ReferenceJob): RideJob {
  return { level, seed: level.seed, bike, rider, autoEase: false };
}

/** Does something to the kept levels and lets the pages know. What is kept is said at once, however long reading takes. */
async function changed(keeping: Keeping, doing: () => Promise<SaveAnswer | null>): Promise<KeepAnswer> {
  const answer = await doing();
  keeping.refresh().catch(() => undefined);
  return answerOf(answer);
}

function answerOf(answer: SaveAnswer | null): KeepAnswer {
  if (answer === null) return { saved: false, code: 'corrupt' };
  return answer.saved ? { saved: true } : { saved: false, code: answer.code };
}

/** Samples as they were kept, or null where they are something else. */
function readSamples(value: unknown): readonly RecordedSample[] | null {
  if (!Array.isArray(value)) return null;
  const numbers = (one: Record<string, unknown>): boolean =>
    ['distanceM', 'timeS', 'speedMps'].every((key) => Number.isFinite(one[key])) &&
    (one['cadenceRpm'] === null || Number.isFinite(one['cadenceRpm']));
  const isSample = (one: unknown): boolean =>
    one !== null && typeof one === 'object' && numbers(one as Record<string, unknown>);
  return value.every(isSample) ? (value as readonly RecordedSample[]) : null;
}
