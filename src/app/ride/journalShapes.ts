/** How the journal of a ride is kept, the doors it comes back through, and the ride that is put together from it. */
import { parseLevel } from '../../core/level/parse.ts';
import { isFields } from '../../core/math/measure.ts';
import {
  parseRecording,
  readBike,
  readRider,
  RECORDING_SCHEMA,
  type RideSetup,
} from '../../core/ride/recording.ts';
import type { RecordedPart } from '../../core/ride/run.ts';
import type { GroupTurn } from '../../state/groupTurn.ts';
import type { UnfinishedRide } from '../../state/unfinished.ts';
import type { RecordKind } from '../../storage/index.ts';

/** What is ridden; written once. */
export interface JournalHead extends Pick<UnfinishedRide, 'rest' | 'level' | 'turn' | 'physicsVersion'> {
  readonly setup: RideSetup;
}

/**
 * A piece of the recording: the `index`-th of the ride `of`. It takes the place of everything from that many commands
 * and fingerprints on, for a ride that goes on is written once more from its beginning.
 */
export interface JournalPart extends RecordedPart {
  readonly of: string;
  readonly index: number;
  readonly from: { readonly commands: number; readonly checkpoints: number };
}

export const HEADS: RecordKind<JournalHead> = { kind: 'ride-journal', schema: 1, read: readHead };
/** What is in a piece is looked at when the whole recording is put together. */
export const PARTS: RecordKind<JournalPart> = { kind: 'ride-journal-part', schema: 1, read: readPart };

function readHead(value: unknown): JournalHead | null {
  if (!isFields(value)) return null;
  const { rest, physicsVersion, setup } = value;
  const level = parseLevel(value['level']);
  const recording = parseRecording({
    ...(isFields(setup) ? setup : {}),
    schema: RECORDING_SCHEMA,
    ticks: 0,
    commands: [],
    checkpoints: [],
  });
  const turn = readTurn(value['turn']);
  if (!level.ok || !recording.ok || turn === undefined) return null;
  if (typeof rest !== 'string' || typeof physicsVersion !== 'string') return null;
  const { levelId, levelHash, seed, bike, rider, autoEase } = recording.recording;
  const read = { levelId, levelHash, seed, bike, rider, autoEase };
  return { rest, level: level.level, turn, physicsVersion, setup: read };
}

/** The turn, null where there is none, undefined where it cannot be read. */
function readTurn(value: unknown): GroupTurn | null | undefined {
  if (value === null) return null;
  if (!isFields(value)) return undefined;
  const { planId, nickname, rideIndex, attempt } = value;
  const level = parseLevel(value['level']);
  const bike = readBike(value['bike']);
  const rider = readRider(value['rider']);
  if (typeof planId !== 'string' || typeof nickname !== 'string') return undefined;
  if (typeof rideIndex !== 'number' || typeof attempt !== 'number') return undefined;
  if (!level.ok || bike === null || rider === null) return undefined;
  return { planId, nickname, rideIndex, attempt, level: level.level, bike, rider };
}

function readPart(value: unknown): JournalPart | null {
  if (!isFields(value)) return null;
  const { of, index, from, ticks, commands, checkpoints, hash } = value;
  if (!isFields(from)) return null;
  const counts = [index, ticks, from['commands'], from['checkpoints']];
  const whole = counts.every((one) => Number.isInteger(one) && (one as number) >= 0);
  if (!whole || typeof of !== 'string' || typeof hash !== 'string') return null;
  if (!Array.isArray(commands) || !Array.isArray(checkpoints)) return null;
  return value as unknown as JournalPart;
}

/** The ride up to the last piece without a gap before it, or null where nothing can be ridden again. */
export function unfinishedRide(
  id: string,
  atMs: number,
  head: JournalHead,
  sorted: readonly JournalPart[],
): UnfinishedRide | null {
  const gap = sorted.findIndex((part, i) => part.index !== i);
  const whole = gap < 0 ? sorted : sorted.slice(0, gap);
  const last = whole.at(-1);
  if (last === undefined) return null;
  const read = parseRecording({
    schema: RECORDING_SCHEMA,
    ...head.setup,
    ticks: last.ticks,
    commands: joined(whole.map(({ from, commands }) => ({ from: from.commands, items: commands }))),
    checkpoints: [
      ...joined(whole.map(({ from, checkpoints }) => ({ from: from.checkpoints, items: checkpoints }))),
      last.hash,
    ],
  });
  if (!read.ok) return null;
  const { rest, level, turn, physicsVersion } = head;
  const partCount = sorted.length;
  return { id, atMs, rest, level, turn, physicsVersion, partCount, recording: read.recording };
}

function joined<T>(pieces: readonly { readonly from: number; readonly items: readonly T[] }[]): readonly T[] {
  return pieces.reduce<readonly T[]>((all, { from, items }) => [...all.slice(0, from), ...items], []);
}
