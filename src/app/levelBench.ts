/**
 * The level bench joined to keeping, planner and the reader of recorded roads. Fetched with the bench; decides
 * nothing about levels.
 */
import type { RecordedSample } from '../core/gpx/recorded.ts';
import { readUnfinished } from '../core/level/parse.ts';
import type { RideJob } from '../core/ride/job.ts';
import type { Keeping } from './device/persistence.ts';
import type { BenchServices, KeepAnswer, ReferenceJob } from '../features/bench/services.ts';
import type { SaveAnswer, Storage } from '../storage/index.ts';
import { recordOf } from '../storage/ladder.ts';
import type { Planner } from '../worker/client.ts';
import { workplace } from './device/workplace.ts';
import { createGpxImporter } from '../worker/gpxClient.ts';
import { Cancelled } from '../worker/rpc.ts';

/** What was ridden on an own level, under its id. */
const RECORDED = { kind: 'recorded-ride', schema: 1, read: readSamples };
/** The one level that lies on the bench unfinished. */
const UNFINISHED = { kind: 'unfinished-level', schema: 1, read: readUnfinished };
const UNFINISHED_ID = 'bench';

export function openLevelBench(keeping: Keeping, planner: Planner): BenchServices {
  const importer = createGpxImporter(workplace);
  const storage = (): Promise<Storage> => keeping.storage;
  const recordedOf = async (levelId: string): Promise<readonly RecordedSample[] | null> => {
    const all = await (await storage()).listRecords(RECORDED);
    return all.find(({ id }) => id === levelId)?.data ?? null;
  };
  return {
    keep: (level) => changed(keeping, async () => (await storage()).saveLevel(level)),
    remove: (id) => changed(keeping, async () => (await storage()).deleteLevel(id)),
    restore: (id) => changed(keeping, async () => (await storage()).restoreLevel(id)),
    keepRecorded: async ({ levelId, samples }) =>
      answerOf(await (await storage()).putRecord(recordOf(RECORDED, levelId, samples))),
    recordedOf,
    forgetRecorded: async (levelId) =>
      (await (await storage()).deleteRecords(RECORDED.kind, [levelId])) === null,
    async keepUnfinished(level) {
      // What could not be read again is no help.
      if (readUnfinished(level) === null) return false;
      return (await (await storage()).putRecord(recordOf(UNFINISHED, UNFINISHED_ID, level))).saved;
    },
    async dropUnfinished() {
      await (await storage()).deleteRecords(UNFINISHED.kind, [UNFINISHED_ID]);
    },
    async unfinished() {
      const kept = await storage();
      const level = (await kept.listRecords(UNFINISHED))[0]?.data;
      if (level === undefined) return null;
      const own = (await kept.listLevels()).find(({ id }) => id === level.id);
      return { level, kept: own?.level ?? null, recorded: await recordedOf(level.id) };
    },
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

function readSamples(value: unknown): readonly RecordedSample[] | null {
  if (!Array.isArray(value)) return null;
  const numbers = (one: Record<string, unknown>): boolean =>
    ['distanceM', 'timeS', 'speedMps'].every((key) => Number.isFinite(one[key])) &&
    (one['cadenceRpm'] === null || Number.isFinite(one['cadenceRpm']));
  const isSample = (one: unknown): boolean =>
    one !== null && typeof one === 'object' && numbers(one as Record<string, unknown>);
  return value.every(isSample) ? (value as readonly RecordedSample[]) : null;
}
