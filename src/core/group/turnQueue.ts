/**
 * Handing one device round a group, as a pure reducer: who is next, who rides, who comes later, how many
 * attempts are left. The state is plain data that survives JSON at any moment, also during a ride; records
 * of rides are kept elsewhere and only named here.
 */
import { readNickname } from './nicknames.ts';
import type { ClinicPlan } from './plan.ts';
import { MOST_RIDERS, ROUND_SCHEMA, type TurnQueue } from './roundFile.ts';

type RoundPhase = TurnQueue['phase'];

export type QueueAction =
  /** Also for late-comers, and for somebody who was removed and is back. */
  | { readonly kind: 'add'; readonly nickname: string }
  | { readonly kind: 'remove'; readonly nickname: string }
  | { readonly kind: 'start'; readonly nickname: string }
  | { readonly kind: 'finish'; readonly recordId: string }
  /** Ends the ride that is going on without counting it. */
  | { readonly kind: 'stop' }
  /** Leaves the page of the ride that was finished. */
  | { readonly kind: 'next' }
  /** To the end of the line; the attempt is kept. */
  | { readonly kind: 'skip'; readonly nickname: string }
  /** To the head of the line. */
  | { readonly kind: 'pick'; readonly nickname: string }
  /** The ride that was just finished was somebody else's: it counts for them under another record. */
  | { readonly kind: 'give'; readonly nickname: string; readonly recordId: string }
  | { readonly kind: 'later'; readonly nickname: string }
  | { readonly kind: 'back'; readonly nickname: string }
  /** Takes the last finished ride back: that rider stands in the line as before it. */
  | { readonly kind: 'undo' };

/** Why an action cannot be done now. */
type QueueRefusal =
  | 'not-a-nickname'
  | 'nickname-taken'
  | 'too-many-riders'
  | 'unknown-rider'
  | 'not-in-line'
  | 'not-their-turn'
  | 'ride-going-on'
  | 'no-ride-going-on'
  | 'look-at-ride-first'
  | 'record-taken'
  | 'nothing-to-undo'
  | 'nothing-to-give'
  | 'other-ride'
  | 'already-so';

const READY: RoundPhase = { kind: 'ready' };

/** A round in which nobody has ridden yet. */
export function startQueue(plan: ClinicPlan): TurnQueue {
  return {
    schema: ROUND_SCHEMA,
    planId: plan.id,
    rideCount: plan.rides.length,
    attempts: plan.attempts,
    order: plan.order,
    riders: [],
    line: [],
    rides: [],
    phase: READY,
  };
}

/** The state after an action; the very same state where the action is refused. */
export function takeTurn(round: TurnQueue, action: QueueAction): TurnQueue {
  if (refusalOf(round, action) !== null) return round;
  switch (action.kind) {
    case 'add':
    case 'back':
      return enter(round, action.nickname);
    case 'remove':
      return leave(round, action.nickname, 'gone');
    case 'later':
      return leave(round, action.nickname, 'later');
    case 'start': {
      const { rideIndex, attempt } = turnOf(round, action.nickname);
      return { ...round, phase: { kind: 'riding', nickname: action.nickname, rideIndex, attempt } };
    }
    case 'finish':
      return finish(round, action.recordId);
    case 'stop':
    case 'next':
      return { ...round, phase: READY };
    case 'skip':
      return { ...round, line: toEnd(round.line, action.nickname) };
    case 'pick':
      return first(round, action.nickname);
    case 'undo':
      return undo(round);
    case 'give': {
      const before = undo(round);
      return finish(
        takeTurn(first(before, action.nickname), { kind: 'start', nickname: action.nickname }),
        action.recordId,
      );
    }
  }
}

/** Why an action would change nothing, or null if it can be done. */
export function refusalOf(round: TurnQueue, action: QueueAction): QueueRefusal | null {
  const { phase } = round;
  switch (action.kind) {
    case 'add':
      return refuseAdd(round, action.nickname);
    case 'remove':
    case 'later':
    case 'back':
      return refusePresence(round, action.kind, action.nickname);
    case 'start':
      if (phase.kind === 'riding') return 'ride-going-on';
      if (phase.kind === 'ridden') return 'look-at-ride-first';
      if (!round.line.includes(action.nickname)) return 'not-in-line';
      return round.order === 'rotate' && round.line[0] !== action.nickname ? 'not-their-turn' : null;
    case 'finish':
      if (phase.kind !== 'riding') return 'no-ride-going-on';
      return round.rides.some((ride) => ride.recordId === action.recordId) ? 'record-taken' : null;
    case 'stop':
      return phase.kind === 'riding' ? null : 'no-ride-going-on';
    case 'next':
      if (phase.kind === 'riding') return 'ride-going-on';
      return phase.kind === 'ridden' ? null : 'already-so';
    case 'skip':
      if (isRiding(round, action.nickname)) return 'ride-going-on';
      if (!round.line.includes(action.nickname)) return 'not-in-line';
      return round.line.at(-1) === action.nickname ? 'already-so' : null;
    case 'pick':
      if (phase.kind === 'riding') return 'ride-going-on';
      if (!round.line.includes(action.nickname)) return 'not-in-line';
      return round.line[0] === action.nickname ? 'already-so' : null;
    case 'undo':
      if (phase.kind === 'riding') return 'ride-going-on';
      return round.rides.length === 0 ? 'nothing-to-undo' : null;
    case 'give':
      return refuseGive(round, action.nickname, action.recordId);
  }
}

/** Who is next: somebody in line, else those who wanted to come back later, else nobody. */
type NextUp =
  | ({ readonly kind: 'rider'; readonly nickname: string } & TurnNumbers)
  | { readonly kind: 'waiting-for'; readonly nicknames: readonly string[] }
  | { readonly kind: 'nobody' }
  | { readonly kind: 'done' };

interface TurnNumbers {
  readonly rideIndex: number;
  readonly attempt: number;
}

/** Who is next after the ride that is going on, if one is. */
export function nextUp(round: TurnQueue): NextUp {
  const nickname = lineAfterRide(round)[0];
  if (nickname !== undefined) {
    const going = isRiding(round, nickname) ? 1 : 0;
    return { kind: 'rider', nickname, ...numbersOf(round, turnsTaken(round, nickname) + going) };
  }
  const later = round.riders.filter(
    (rider) => rider.presence === 'later' && turnsLeft(round, rider.nickname) > 0,
  );
  if (later.length > 0) return { kind: 'waiting-for', nicknames: later.map((rider) => rider.nickname) };
  return round.riders.some((rider) => rider.presence !== 'gone') ? { kind: 'done' } : { kind: 'nobody' };
}

/** Rides a rider still has, over all rides of the plan; a ride that is going on is still counted. */
export function turnsLeft(round: TurnQueue, nickname: string): number {
  return round.rideCount * round.attempts - turnsTaken(round, nickname);
}

/** What a rider would ride now. */
export function turnOf(round: TurnQueue, nickname: string): TurnNumbers {
  return numbersOf(round, turnsTaken(round, nickname));
}

/** True when nobody who is here or comes later has anything left to ride. */
export function isDone(round: TurnQueue): boolean {
  return round.phase.kind !== 'riding' && nextUp(round).kind === 'done';
}

function turnsTaken(round: TurnQueue, nickname: string): number {
  return round.rides.filter((ride) => ride.nickname === nickname).length;
}

/** All attempts on the first ride, then all on the second, so that a rider can get better at one thing. */
function numbersOf(round: TurnQueue, taken: number): TurnNumbers {
  const rideIndex = (taken - (taken % round.attempts)) / round.attempts;
  return { rideIndex, attempt: (taken % round.attempts) + 1 };
}

function lineAfterRide(round: TurnQueue): readonly string[] {
  const { phase } = round;
  if (phase.kind !== 'riding') return round.line;
  const others = round.line.filter((name) => name !== phase.nickname);
  return turnsLeft(round, phase.nickname) > 1 ? [...others, phase.nickname] : others;
}

function isRiding(round: TurnQueue, nickname: string): boolean {
  return round.phase.kind === 'riding' && round.phase.nickname === nickname;
}

function refuseAdd(round: TurnQueue, nickname: string): QueueRefusal | null {
  if (readNickname(nickname) === null) return 'not-a-nickname';
  const known = round.riders.find((rider) => rider.nickname === nickname);
  if (known !== undefined) return known.presence === 'gone' ? null : 'nickname-taken';
  return round.riders.length >= MOST_RIDERS ? 'too-many-riders' : null;
}

function refusePresence(
  round: TurnQueue,
  kind: 'remove' | 'later' | 'back',
  nickname: string,
): QueueRefusal | null {
  const rider = round.riders.find((other) => other.nickname === nickname);
  if (rider === undefined || (rider.presence === 'gone' && kind !== 'remove')) return 'unknown-rider';
  if (kind === 'remove') return rider.presence === 'gone' ? 'already-so' : null;
  if (kind === 'back') return rider.presence === 'here' ? 'already-so' : null;
  if (isRiding(round, nickname)) return 'ride-going-on';
  return rider.presence === 'later' ? 'already-so' : null;
}

/** Only who is in line and would have ridden the same road can have ridden it. */
function refuseGive(round: TurnQueue, nickname: string, recordId: string): QueueRefusal | null {
  const last = round.rides.at(-1);
  if (round.phase.kind !== 'ridden' || last === undefined) return 'nothing-to-give';
  if (last.nickname === nickname) return 'already-so';
  if (!round.line.includes(nickname)) return 'not-in-line';
  if (turnOf(round, nickname).rideIndex !== last.rideIndex) return 'other-ride';
  return round.rides.some((ride) => ride.recordId === recordId) ? 'record-taken' : null;
}

/** Somebody new, or somebody who is back: to the end of the line, if there is anything left to ride. */
function enter(round: TurnQueue, nickname: string): TurnQueue {
  const known = round.riders.some((rider) => rider.nickname === nickname);
  const here = { nickname, presence: 'here' } as const;
  const riders = known
    ? round.riders.map((rider) => (rider.nickname === nickname ? here : rider))
    : [...round.riders, here];
  const line = turnsLeft(round, nickname) > 0 ? [...round.line, nickname] : round.line;
  return { ...round, riders, line };
}

function leave(round: TurnQueue, nickname: string, presence: 'later' | 'gone'): TurnQueue {
  return {
    ...round,
    riders: round.riders.map((rider) => (rider.nickname === nickname ? { nickname, presence } : rider)),
    line: round.line.filter((name) => name !== nickname),
    phase: isRiding(round, nickname) ? READY : round.phase,
  };
}

function finish(round: TurnQueue, recordId: string): TurnQueue {
  if (round.phase.kind !== 'riding') return round;
  const { nickname, rideIndex, attempt } = round.phase;
  const place = round.line.indexOf(nickname);
  const rides = [...round.rides, { nickname, rideIndex, attempt, place, recordId }];
  return { ...round, rides, line: lineAfterRide(round), phase: { kind: 'ridden', nickname, recordId } };
}

function undo(round: TurnQueue): TurnQueue {
  const last = round.rides.at(-1) as TurnQueue['rides'][number];
  const others = round.line.filter((name) => name !== last.nickname);
  const here = round.riders.some((r) => r.nickname === last.nickname && r.presence === 'here');
  // Others may have come or gone since; the place is then as near as it can be.
  const line = here ? others.toSpliced(last.place, 0, last.nickname) : others;
  return { ...round, rides: round.rides.slice(0, -1), line, phase: READY };
}

function first(round: TurnQueue, nickname: string): TurnQueue {
  return { ...round, line: [nickname, ...round.line.filter((name) => name !== nickname)] };
}

function toEnd(line: readonly string[], nickname: string): readonly string[] {
  return [...line.filter((name) => name !== nickname), nickname];
}
