/**
 * The shape of a round, and the door for one that was kept while the page was closed: the same state again, also in
 * the middle of a ride, or nothing. A round whose parts contradict each other is not repaired here.
 */
import * as z from 'zod/mini';
import type { Unchanging } from '../level/schema.ts';
import { readNickname } from './nicknames.ts';
import { MOST_ATTEMPTS, MOST_RIDES } from './plan.ts';

export const ROUND_SCHEMA = 1;
/** More people than anybody hands one device round. */
export const MOST_RIDERS = 60;
const MOST_TURNS = MOST_RIDERS * MOST_ATTEMPTS * MOST_RIDES;

const nickname = z.string().check(
  z.maxLength(60),
  z.refine((text) => readNickname(text) !== null),
);
const recordId = z.string().check(z.minLength(1), z.maxLength(80));
const rideIndex = z.int().check(z.gte(0), z.lt(MOST_RIDES));
const place = z.int().check(z.gte(0), z.lt(MOST_RIDERS));
const attempt = z.int().check(z.gte(1), z.lte(MOST_ATTEMPTS));

const roundSchema = z.strictObject({
  schema: z.literal(ROUND_SCHEMA),
  planId: z.string().check(z.maxLength(60)),
  rideCount: z.int().check(z.gte(1), z.lte(MOST_RIDES)),
  attempts: attempt,
  order: z.enum(['rotate', 'free']),
  /**
   * The nickname is the name and the id. `later`: not now, but not forgotten; `gone`: removed, rides kept.
   */
  riders: z
    .array(z.strictObject({ nickname, presence: z.enum(['here', 'later', 'gone']) }))
    .check(z.maxLength(MOST_RIDERS)),
  /** Nicknames of those who are here and have attempts left, the next one first. */
  line: z.array(nickname).check(z.maxLength(MOST_RIDERS)),
  /** Rides that were finished; `place` is where the rider stood in the line before it. */
  rides: z
    .array(z.strictObject({ nickname, rideIndex, attempt, place, recordId }))
    .check(z.maxLength(MOST_TURNS)),
  /** What the device is doing. */
  phase: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('ready') }),
    z.strictObject({ kind: z.literal('riding'), nickname, rideIndex, attempt }),
    z.strictObject({ kind: z.literal('ridden'), nickname, recordId }),
  ]),
});

/** A round of turns on one device. */
export type TurnQueue = Unchanging<z.infer<typeof roundSchema>>;

/** The round as it was, or null where the value is none (any more). */
export function parseRound(value: unknown): TurnQueue | null {
  const parsed = roundSchema.safeParse(value);
  return parsed.success && agrees(parsed.data) ? parsed.data : null;
}

/** The line holds exactly those who are here with something left, and nobody has ridden too often. */
function agrees(round: TurnQueue): boolean {
  const taken = new Map<string, number>();
  for (const ride of round.rides) taken.set(ride.nickname, (taken.get(ride.nickname) ?? 0) + 1);
  const most = round.rideCount * round.attempts;
  const names = new Set(round.riders.map((rider) => rider.nickname));
  const waiting = round.riders.filter(
    (rider) => rider.presence === 'here' && (taken.get(rider.nickname) ?? 0) < most,
  );
  return (
    names.size === round.riders.length &&
    new Set(round.rides.map((ride) => ride.recordId)).size === round.rides.length &&
    [...taken].every(([name, count]) => names.has(name) && count <= most) &&
    waiting.length === round.line.length &&
    waiting.every((rider) => round.line.includes(rider.nickname)) &&
    (round.phase.kind !== 'riding' || round.line.includes(round.phase.nickname))
  );
}
