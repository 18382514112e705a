/**
 * Rides a record's recording again and marks it anew, so that a group's table rests on rides and not on
 * claims. The reference of a road, bike and rider is planned once and kept. What does not come out as the
 * record says is set apart with a code, never changed.
 */
import { groundOfJob, markOn } from '../../coach/ground.ts';
import type { RideReport } from '../../coach/types.ts';
import { levelHash } from '../../level/build.ts';
import type { Level } from '../../level/schema.ts';
import { canonicalJson } from '../../math/hash.ts';
import { bikeById, riderById, todaysBike } from '../../model/presets.ts';
import { isPossibleTransmission } from '../../model/transmission.ts';
import type { Bike, Rider } from '../../model/types.ts';
import { isOnLevel, jobOfRecording, keyOfJob, type RideJob } from '../../ride/job.ts';
import { LONGEST_RIDE_TICKS, type Recording } from '../../ride/recording.ts';
import { replayRecording } from '../../ride/run.ts';
import { RULES_VERSION } from '../../coach/rules.ts';
import type { ApartCode } from './apart.ts';
import { digestOf, marksOf, type RideRecord, sameMarks, tenths } from './record.ts';
import { lineOf, type RideLine } from './rideLine.ts';

/** What came of marking a record again. */
export type Remark =
  | {
      readonly kind: 'same';
      readonly record: RideRecord;
      readonly line: RideLine;
      readonly reference: RoadReference;
    }
  | {
      readonly kind: 'apart';
      readonly record: RideRecord;
      readonly code: ApartCode;
      /** First tick that came out differently, or null. */
      readonly tick: number | null;
      /** The total that was found, or null. */
      readonly total: number | null;
    };

/** The best ride over one road on one bike, as far as a group picture needs it. */
export type RoadReference = Prepared['reference'];

/** Marks records; keeps the plans of the roads it saw last. */
export interface Remarker {
  /** Of a ride of this device (`own`) the marks are not made again: they were made here. */
  remark(record: RideRecord, own?: boolean): Remark;
  /** Rides a recording again and marks it, or null where it does not come out or cannot be ridden. */
  mark(level: Level, recording: Recording): RideReport | null;
  /** Roads that were planned so far, for measuring. */
  planned(): number;
}

type Prepared = Readonly<ReturnType<typeof prepare>>;

/** Plans that are kept; each takes one to two megabytes per kilometre. */
const KEPT_PLANS = 12;

/** Finds the level of a record; its own seed and aids do not matter. */
type FindRoad = (record: RideRecord) => Level | undefined;

/** A remarker for records of one version of the game. */
export function createRemarker(find: FindRoad, version = RULES_VERSION): Remarker {
  const plans = new Map<string, Prepared>();
  let planned = 0;
  const prepared = (level: Level, recording: Recording): Prepared => {
    const job = jobOfRecording(level, recording);
    const key = keyOfJob(job);
    const held = plans.get(key);
    // Asked for again means wanted longer than the others.
    plans.delete(key);
    const plan = held ?? prepare(job);
    if (held === undefined) planned += 1;
    plans.set(key, plan);
    const oldest = plans.keys().next();
    if (plans.size > KEPT_PLANS && oldest.done !== true) plans.delete(oldest.value);
    return plan;
  };
  return {
    planned: () => planned,
    mark(level, recording) {
      if (!isOnLevel(recording, level) || !isPossible(recording.bike, recording.rider)) return null;
      try {
        const { ground } = prepared(level, recording);
        const { ride, same, report } = markOn(ground, recording, level.passMark);
        return same && ride.state().phase === 'finished' ? report : null;
      } catch {
        return null;
      }
    },
    remark(record, own = false) {
      const level = find(record);
      const code = refuse(record, level, version);
      if (code !== null || level === undefined || record.recording === null)
        return { kind: 'apart', record, code: code ?? 'no-recording', tick: null, total: null };
      try {
        return markAgain(record, record.recording, level, prepared(level, record.recording), own);
      } catch {
        // Numbers that pass every limit one by one can still make no bike or no rider together.
        return { kind: 'apart', record, code: 'impossible-setup', tick: null, total: null };
      }
    },
  };
}

/** What can be seen without riding. */
function refuse(record: RideRecord, level: Level | undefined, version: string): ApartCode | null {
  const { recording } = record;
  if (recording === null) return 'no-recording';
  if (record.version !== version) return 'other-version';
  if (level === undefined) return 'unknown-level';
  if (levelHash(level) !== record.levelHash) return 'other-level';
  const told = [record.levelId, record.levelHash, record.seed, record.bikeId, record.riderId, record.ticks];
  const { levelId, seed, bike, rider, ticks } = recording;
  const ridden = [levelId, recording.levelHash, seed, bike.id, rider.id, ticks];
  if (told.some((value, i) => value !== ridden[i])) return 'other-setup';
  if (changed(todaysBike(bike), bikeById(bike.id))) return 'changed-bike';
  if (changed(rider, riderById(rider.id))) return 'changed-rider';
  if (!isPossible(bike, rider)) return 'impossible-setup';
  return ticks > LONGEST_RIDE_TICKS ? 'too-long' : null;
}

function changed<T extends Bike | Rider>(own: T, bundled: T | undefined): boolean {
  return bundled !== undefined && canonicalJson(own) !== canonicalJson(bundled);
}

function isPossible(bike: Bike, rider: Rider): boolean {
  return (
    isPossibleTransmission(bike) && rider.cadenceLowRpm < rider.cadenceHighRpm && rider.cadenceHighRpm < 150
  );
}

/** The marks of a ride of this device (`own`) are not made again. */
function markAgain(
  record: RideRecord,
  recording: Recording,
  level: Level,
  { ground, reference }: Prepared,
  own: boolean,
): Remark {
  const apart = (code: ApartCode, tick: number | null, total: number | null): Remark => ({
    kind: 'apart',
    record,
    code,
    tick,
    total,
  });
  const { ride, same, firstDifferentTick } = replayRecording(ground.world, recording);
  if (!same) return apart('not-same-ride', firstDifferentTick, null);
  if (ride.state().phase !== 'finished') return apart('not-finished', null, null);
  const report = own ? null : ground.judge(ride.trace, level.passMark);
  if (report !== null && !saysTheSame(record, report))
    return apart('other-marks', null, tenths(report.total));
  return { kind: 'same', record, line: lineOf(ride.trace, ground.world.course.lengthM), reference };
}

function saysTheSame(record: RideRecord, report: RideReport): boolean {
  return (
    tenths(report.total) === record.total &&
    sameMarks(marksOf(report), record.marks) &&
    canonicalJson(report.pitches.map(digestOf)) === canonicalJson(record.pitches)
  );
}

function prepare(job: RideJob) {
  const ground = groundOfJob(job);
  const { lengthM, pitches } = ground.world.course;
  const report = ground.judge(ground.reference);
  const reference = {
    levelHash: levelHash(job.level),
    seed: job.seed,
    bikeId: job.bike.id,
    riderId: job.rider.id,
    lengthM,
    line: lineOf(ground.reference, lengthM),
    pitches: pitches.map((pitch, i) => ({
      ...pitch,
      /** Where the best ride first shifts for it (m before the foot); null without a shift. */
      firstShiftBeforeFootM: report.pitches[i]?.firstShiftBeforeFootM ?? null,
    })),
  };
  return { ground, reference };
}
