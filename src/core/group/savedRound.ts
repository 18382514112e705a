/**
 * A group session as one device keeps it, and a ride of it that came to its end, each with the door it comes back
 * through. How a round goes on is `turnQueue.ts`; what the pages know of a session is theirs.
 */
import { parseLevel } from '../level/parse.ts';
import { ID_TEXT, type Level } from '../level/schema.ts';
import { isFields } from '../math/measure.ts';
import { riderById } from '../model/presets.ts';
import { parseRecording, type Recording } from '../ride/recording.ts';
import { readNickname } from './nicknames.ts';
import { type ClinicPlan, parsePlan } from './plan.ts';
import { parseRound, type TurnQueue } from './roundFile.ts';

/** One session on this device. `plan.id` is the id of the session; a plan that is used again gets a new one. */
export interface SavedRound {
  readonly plan: ClinicPlan;
  /** Random, of this device for one group evening alone, so that nothing ties two of them together. */
  readonly deviceId: string;
  readonly round: TurnQueue;
  /** Milliseconds since 1970. */
  readonly startedAtMs: number;
  /** The bundled rider each chose by feel, by nickname; only for plans that leave it to them. */
  readonly feels: Readonly<Record<string, string>>;
}

/** What is needed to tell whose turn a ride was. */
export interface RiddenTurn {
  readonly planId: string;
  readonly nickname: string;
  readonly rideIndex: number;
  readonly attempt: number;
}

/** A ride that came to its end and has no record yet. */
export interface FinishedTurn extends RiddenTurn {
  readonly level: Level;
  readonly recording: Recording;
}

/** Reads a kept session, or null where its parts are not what they were. */
export function readRound(value: unknown): SavedRound | null {
  if (!isFields(value)) return null;
  const { deviceId, startedAtMs, feels } = value;
  const plan = parsePlan(value['plan']);
  const round = parseRound(value['round']);
  if (!plan.ok || round === null || round.planId !== plan.plan.id) return null;
  if (typeof deviceId !== 'string' || !ID_TEXT.test(deviceId)) return null;
  if (typeof startedAtMs !== 'number' || !isFields(feels)) return null;
  return { plan: plan.plan, deviceId, round, startedAtMs, feels: readFeels(feels) };
}

function readFeels(feels: Readonly<Record<string, unknown>>): SavedRound['feels'] {
  const known = Object.entries(feels).filter(
    (entry): entry is [string, string] =>
      readNickname(entry[0]) !== null && typeof entry[1] === 'string' && riderById(entry[1]) !== undefined,
  );
  return Object.fromEntries(known);
}

/** Whose turn it was is only compared with the round that waits, so its values need no limits here. */
export function readFinished(value: unknown): FinishedTurn | null {
  if (!isFields(value)) return null;
  const { planId, nickname, rideIndex, attempt } = value;
  if (typeof planId !== 'string' || typeof nickname !== 'string') return null;
  if (typeof rideIndex !== 'number' || typeof attempt !== 'number') return null;
  const level = parseLevel(value['level']);
  const recording = parseRecording(value['recording']);
  if (!level.ok || !recording.ok) return null;
  return { planId, nickname, rideIndex, attempt, level: level.level, recording: recording.recording };
}
