/**
 * Reads what is named after `--rides`: files that tablets handed over, and plain recordings, which are
 * marked and given a place in the plan. A recording in `fox-2.json` is the second attempt of "fox".
 */
import { basename } from 'node:path';
import { ownNickname } from '../../core/group/nicknames.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { MOST_ATTEMPTS } from '../../core/group/plan.ts';
import { RULES_VERSION } from '../../core/coach/rules.ts';
import { makeRecord, type RideRecord, usualRecordId } from '../../core/group/records/record.ts';
import type { Remarker } from '../../core/group/records/remark.ts';
import { type ReadFile, readRideFile } from '../../core/transfer/rideFile.ts';
import { levelOfRide } from '../../core/group/turn.ts';
import type { Level } from '../../core/level/schema.ts';
import { isOnLevel } from '../../core/ride/job.ts';
import { parseRecording } from '../../core/ride/recording.ts';
import { BadInput } from '../common/badInput.ts';
import { readTextFile } from '../common/files.ts';
import { unwrapRecording } from '../common/players.ts';
import { recordingSentence } from '../common/print.ts';

/** Everything needed to give a plain recording its place. */
interface RideReader {
  readonly plan: ClinicPlan;
  readonly levels: readonly Level[];
  readonly remarker: Remarker;
}

/** The device that stands for recordings without one. */
const FILES = 'files';

/** Reads all files, in order. */
export function readRides(reader: RideReader, paths: readonly string[]): ReadFile[] {
  return paths.map((path, i) => {
    const text = readTextFile(path);
    const record = recordFrom(reader, path, text, i + 1);
    return record === null
      ? readRideFile(text)
      : { set: { records: [record], damaged: [], withdrawn: [] }, heard: [] };
  });
}

/** The level of one ride of the plan, as far as it is known here. */
export function planLevel(
  plan: ClinicPlan,
  rideIndex: number,
  seed: number,
  levels: readonly Level[],
): Level | undefined {
  const ride = plan.rides[rideIndex];
  if (ride === undefined) return undefined;
  return levelOfRide(ride, seed, (id) => levels.find((level) => level.id === id)) ?? undefined;
}

/** A record made of a plain recording; null where the file is something else. */
function recordFrom(reader: RideReader, path: string, text: string, seq: number): RideRecord | null {
  let value: unknown;
  try {
    value = unwrapRecording(JSON.parse(text));
  } catch {
    return null;
  }
  if (value === null || typeof value !== 'object' || !('commands' in value)) return null;
  const parsed = parseRecording(value);
  if (!parsed.ok) throw new BadInput(`"${path}" cannot be ridden again. ${recordingSentence(parsed)}`);
  const { recording } = parsed;
  const { plan, levels, remarker } = reader;
  const places = plan.rides.map((_, i) => planLevel(plan, i, recording.seed, levels));
  const rideIndex = places.findIndex(
    (candidate) => candidate !== undefined && isOnLevel(recording, candidate),
  );
  const level = places[rideIndex];
  if (level === undefined)
    throw new BadInput(
      `"${path}" was ridden on "${recording.levelId}", which is not in this plan as it was ridden.`,
    );
  const report = remarker.mark(level, recording);
  if (report === null)
    throw new BadInput(`"${path}" does not come out as it was recorded, or never reaches the end.`);
  const { name, attempt } = nameFrom(path);
  const id = usualRecordId(FILES, seq);
  const nickname = ownNickname(name) ?? `~${seq}`;
  const who = { id, planId: plan.id, deviceId: FILES, seq, nickname, attempt, rideIndex };
  return makeRecord({ ...who, version: RULES_VERSION, recording, report });
}

function nameFrom(path: string): { name: string; attempt: number } {
  const bare = basename(path).replace(/\.[a-z0-9]+$/i, '');
  const match = /^(.+)[-_.](\d{1,2})$/.exec(bare);
  const attempt = Number(match?.[2]);
  return match !== null && attempt >= 1 && attempt <= MOST_ATTEMPTS
    ? { name: match[1] as string, attempt }
    : { name: bare, attempt: 1 };
}
