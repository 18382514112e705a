/**
 * One ride of a group session as it is handed from device to device: written once, by one device, never
 * changed. Numbers are rounded when a record is made, so that it reads the same after any journey. How
 * records are put together is `merge.ts`; whether a ride is what it says is `remark.ts`.
 */
import {
  MARK_NAMES,
  type MarkName,
  type PitchReport,
  type RideReport,
  type Timing,
} from '../../coach/types.ts';
import { hashJson } from '../../math/hash.ts';
import type { Recording } from '../../ride/recording.ts';
import { cleanText } from '../texts.ts';

export const RECORD_SCHEMA = 1;
export const VERSION_CHARACTERS = 40;

/** How one pitch went, short enough to travel. */
export interface PitchDigest {
  /** Credit in percent; null where the pitch asked nothing. */
  readonly creditPercent: number | null;
  readonly timing: Timing;
  /** Metres before the foot of the first easier shift, to a tenth; negative beyond it, null without one. */
  readonly firstShiftBeforeFootM: number | null;
  /** Gear steps easier made before the foot. */
  readonly stepsBeforeFoot: number;
}

/** Marks to a tenth of a point; null where there was nothing to judge. */
export type RecordMarks = { readonly [name in MarkName]: number | null };

/** One ride. */
export interface RideRecord {
  readonly schema: typeof RECORD_SCHEMA;
  readonly id: string;
  readonly planId: string;
  readonly deviceId: string;
  /** Counts the records of a device from 1, without gaps. */
  readonly seq: number;
  readonly nickname: string;
  readonly attempt: number;
  readonly rideIndex: number;
  readonly levelId: string;
  readonly levelHash: string;
  readonly seed: number;
  readonly bikeId: string;
  readonly riderId: string;
  readonly total: number;
  readonly marks: RecordMarks;
  /** In riding order, one for each pitch the ride went over. */
  readonly pitches: readonly PitchDigest[];
  readonly ticks: number;
  /** Version of the rules that rode and judged, usually `RULES_VERSION`. */
  readonly version: string;
  /** Fingerprint of the recording, also where the recording itself stays behind. */
  readonly recordingHash: string | null;
  readonly recording: Recording | null;
  /** Fingerprint of everything but itself and the recording. */
  readonly checksum: string;
}

/** What the shell knows of a ride that was just finished. */
interface RecordInput
  extends Pick<
    RideRecord,
    'id' | 'planId' | 'deviceId' | 'seq' | 'nickname' | 'attempt' | 'rideIndex' | 'version'
  > {
  readonly recording: Recording;
  readonly report: Pick<RideReport, 'total' | 'marks' | 'pitches'>;
}

/** The usual id of a record: one device counts its own rides, so nobody else can give the same. */
export function usualRecordId(deviceId: string, seq: number): string {
  return `${deviceId}.${seq}`;
}

/** Makes the record of a finished ride. */
export function makeRecord(input: RecordInput): RideRecord {
  const { recording, report } = input;
  return sealRecord({
    schema: RECORD_SCHEMA,
    // One by one: whatever else a caller has would make a record that no door lets in.
    id: input.id,
    planId: input.planId,
    deviceId: input.deviceId,
    seq: input.seq,
    nickname: input.nickname,
    attempt: input.attempt,
    rideIndex: input.rideIndex,
    levelId: recording.levelId,
    levelHash: recording.levelHash,
    seed: recording.seed,
    bikeId: cleanText(recording.bike.id, 60),
    riderId: cleanText(recording.rider.id, 60),
    total: tenths(report.total),
    marks: marksOf(report),
    pitches: report.pitches.map(digestOf),
    ticks: recording.ticks,
    version: cleanText(input.version, VERSION_CHARACTERS),
    recordingHash: hashJson(recording),
    recording,
  });
}

/** Marks of a report as they stand in a record. */
export function marksOf(report: Pick<RideReport, 'marks'>): RecordMarks {
  const value = (name: MarkName): number | null => {
    const mark = report.marks[name].value;
    return mark === null ? null : tenths(mark);
  };
  return {
    cadence: value('cadence'),
    foresight: value('foresight'),
    easing: value('easing'),
    chainLine: value('chainLine'),
    economy: value('economy'),
  };
}

/** A pitch of a report as it stands in a record. */
export function digestOf(pitch: PitchReport): PitchDigest {
  const { firstShiftBeforeFootM } = pitch;
  return {
    creditPercent: pitch.asked || pitch.footDown ? Math.round(pitch.credit * 100) : null,
    timing: pitch.timing,
    firstShiftBeforeFootM: firstShiftBeforeFootM === null ? null : tenths(firstShiftBeforeFootM),
    stepsBeforeFoot: pitch.stepsBeforeFoot,
  };
}

/** Rounded as in records: to a tenth, never -0. */
export function tenths(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

/** Puts the checksum on a record, in place of one it may have. */
export function sealRecord(record: Omit<RideRecord, 'checksum'>): RideRecord {
  return { ...record, checksum: checksumOf(record) };
}

/** Fingerprint over canonical JSON of all that makes the ride, without the recording itself. */
export function checksumOf(record: Omit<RideRecord, 'checksum'>): string {
  // What is undefined does not count in canonical JSON.
  return hashJson({ ...record, recording: undefined, checksum: undefined });
}

/** True if two sets of marks are the same to the tenth. */
export function sameMarks(a: RecordMarks, b: RecordMarks): boolean {
  return MARK_NAMES.every((name) => a[name] === b[name]);
}
