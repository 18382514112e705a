/**
 * A desk for group sessions without a browser: a shelf in memory that reads what it gives through the real door,
 * turns that are really ridden and really marked, and the pages' props. No expectation lives here.
 */
import { type HandoverDesk, openHandoverDesk } from '../../src/app/group/handoverDesk.ts';
import { mergeSets } from '../../src/core/group/records/merge.ts';
import {
  type CarriedSession,
  type CarriedSessions,
  NOTHING_CARRIED,
  type OwnedSessions,
} from '../../src/storage/sessions.ts';
import { openClinicDesk, type OwnedDesk } from '../../src/app/group/clinicDesk.ts';
import { READY_PLANS } from '../../src/core/group/readyPlans.ts';
import type { ClinicPlan } from '../../src/core/group/plan.ts';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { parseLevel } from '../../src/core/level/parse.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { habitsForSkill, virtualRider } from '../../src/core/virtual/riders.ts';
import { setupOfJob } from '../../src/core/ride/job.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { newSession, startOf } from '../../src/features/clinic/session.ts';
import { type FinishedTurn, readRound, type SavedRound } from '../../src/core/group/savedRound.ts';
import type { ClinicProps, RideStart } from '../../src/features/clinic/services.ts';
import { createFormat } from '../../src/words/format.ts';
import { createPlanner } from '../../src/worker/client.ts';
import { createGroupVerifier } from '../../src/worker/verifierClient.ts';
import { createVerifier } from '../../src/worker/verifier.ts';
import { createWorkshop } from '../../src/worker/workshop.ts';
import { workplaceOf } from '../worker/nearWorker.ts';
import file from '../../levels/click-before-the-hill.json' with { type: 'json' };

const parsed = parseLevel(file);
if (!parsed.ok) throw new Error('the level of these tests does not parse');
export const LEVEL = parsed.level;
/** Short enough to be ridden many times. */
const short = parseLevel({
  ...file,
  id: 'short-and-steep',
  cues: [],
  pieces: [
    { kind: 'flat', lengthM: 60 },
    { kind: 'pitch', lengthM: 30, slopeRatio: 0.06 },
    { kind: 'flat', lengthM: 20 },
  ],
});
if (!short.ok) throw new Error('the short level of these tests does not parse');
export const PLAN: ClinicPlan = {
  ...READY_PLANS[0]!,
  id: 'tuesday',
  title: 'Tuesday',
  rides: [{ kind: 'own', level: short.level }],
  attempts: 2,
  riderId: 'child-9',
};
export const NAMES = ['red-fox', 'blue-owl', 'green-hare'] as const;

/** Everything that was put, as text. */
export interface MemoryShelf extends OwnedSessions {
  readonly kept: Map<string, string>;
  /** Every write in the order in which it was done. */
  readonly log: string[];
}

/** A shelf in memory; `slow` says how many turns of the event loop a write takes. */
export function memoryShelf(slow: (key: string) => number = () => 0): MemoryShelf {
  const kept = new Map<string, string>();
  const log: string[] = [];
  const write = async (key: string, value: unknown): Promise<boolean> => {
    for (let i = slow(key); i > 0; i -= 1) await new Promise((resolve) => setTimeout(resolve, 0));
    log.push(value === undefined ? `-${key}` : key);
    if (value === undefined) kept.delete(key);
    else kept.set(key, JSON.stringify(value));
    return true;
  };
  const all = <T>(kind: string): T[] =>
    [...kept].filter(([key]) => key.startsWith(`${kind} `)).map(([, value]) => JSON.parse(value) as T);
  const drop = async (...keys: readonly string[]): Promise<true> => {
    for (const key of keys) if (kept.has(key)) await write(key, undefined);
    return true;
  };
  return {
    kept,
    log,
    isOwned: () => true,
    load: async () => {
      const records = all<RideRecord>('record').toSorted((a, b) => a.seq - b.seq);
      return {
        plans: all<ClinicPlan>('plan'),
        rounds: all<unknown>('round').flatMap((value) => readRound(value) ?? []),
        records,
        own: new Set(records.filter(({ id }) => !kept.has(`record from-${id}`))),
        finished: all<FinishedTurn>('finished'),
        undone: all<string>('undone'),
      };
    },
    putPlan: (plan) => write(`plan ${plan.id}`, plan),
    dropPlan: (id) => drop(`plan ${id}`),
    putRound: (saved) => write(`round ${saved.plan.id}`, saved),
    putFinished: (turn) => write(`finished ${turn.planId}`, turn),
    dropFinished: ({ planId }) => drop(`finished ${planId}`),
    keepRide: async (record, moved) =>
      (await write(`record ${record.id}`, record)) &&
      (await write(`round ${moved.plan.id}`, moved)) &&
      drop(`finished ${moved.plan.id}`),
    undoRide: async (id, moved) =>
      (await write(`round ${moved.plan.id}`, moved)) && write(`undone ${id}`, id),
    giveRide: async (record, oldId, moved) =>
      (await write(`record ${record.id}`, record)) &&
      (await write(`round ${moved.plan.id}`, moved)) &&
      write(`undone ${oldId}`, oldId),
    dropRide: (id) => drop(`record ${id}`, `undone ${id}`),
    dropSession: (id) =>
      drop(
        ...all<RideRecord>('record').flatMap((one) => (one.planId === id ? `record ${one.id}` : [])),
        `finished ${id}`,
        `round ${id}`,
      ),
  };
}

const planner = createPlanner(workplaceOf(createWorkshop));

const marked = new Map<string, ReturnType<typeof planner.judge>>();

/** Marks a turn as the game does; the same turn is marked once in all tests of a file. */
export function markTurn({ level, recording }: FinishedTurn): ReturnType<typeof planner.judge> {
  const key = `${level.id} ${recording.checkpoints.join()}`;
  const known = marked.get(key) ?? planner.judge(level, recording);
  marked.set(key, known);
  return known;
}

const saidOn = new WeakMap<OwnedSessions, Map<string, CarriedSession>>();

/** What is carried, over a shelf that holds it all in memory: what was said outlives the desk, as on a device. */
function carriedOn(shelf: OwnedSessions): CarriedSessions {
  const said = saidOn.get(shelf) ?? new Map<string, CarriedSession>();
  saidOn.set(shelf, said);
  return {
    async load(planId) {
      const { set, heard } = said.get(planId) ?? NOTHING_CARRIED;
      const { records, own } = await shelf.load();
      const ours = records.filter((record) => record.planId === planId);
      return { set: mergeSets({ ...set, records: ours }), heard, own };
    },
    async keep(planId, _before, after) {
      said.set(planId, after);
      return true;
    },
    async drop(planId) {
      said.delete(planId);
      return true;
    },
  };
}

/** The owners of what is carried, one a session. */
function carryFrom(sessions: CarriedSessions): (plan: ClinicPlan) => Promise<HandoverDesk> {
  const desks = new Map<string, Promise<HandoverDesk>>();
  return (plan) => {
    const desk =
      desks.get(plan.id) ??
      openHandoverDesk(plan, {
        sessions,
        verifier: { verify: async () => [] },
        now: () => 1_700_000_000_000,
        onChanged: () => undefined,
      });
    desks.set(plan.id, desk);
    return desk;
  };
}

/**
 * A desk on a shelf; rides that are asked for are collected. Where several tabs share a storage, what is carried comes
 * from there: looking at it takes the sessions over from nobody.
 */
export async function openDesk(
  shelf: OwnedSessions,
  rides: RideStart[] = [],
  markLater: (turn: FinishedTurn) => ReturnType<typeof markTurn> = markTurn,
  startVerifier: () => Worker | null = () => null,
  newId: () => string = idsFor(shelf),
  carried: CarriedSessions = carriedOn(shelf),
): Promise<OwnedDesk> {
  return openClinicDesk({
    gone: new Promise(() => undefined),
    shelf,
    verifier: createGroupVerifier(workplaceOf(createVerifier, startVerifier), [LEVEL]),
    ownLevels: [],
    cautionsRead: async () => true,
    ride: (start) => void rides.push(start),
    markLater,
    newId,
    carry: carryFrom(carried),
    onKept: () => undefined,
    newSeed: () => 7,
    now: () => 1_700_000_000_000,
  });
}

function idsFor(shelf: OwnedSessions): () => string {
  const number = shelfNumber(shelf);
  let ids = 0;
  return () => `id-${number}-${(ids += 1)}`;
}

let shelves = 0;
const numbers = new WeakMap<OwnedSessions, number>();
/** Another opening of the same shelf is another page, and must not give the same ids again. */
function shelfNumber(shelf: OwnedSessions): number {
  const number = numbers.get(shelf) ?? (shelves += 1) * 1_000;
  numbers.set(shelf, number + 1);
  return number;
}

/** A session of three riders that has not begun. */
export function sessionOfThree(plan: ClinicPlan = PLAN): SavedRound {
  return newSession(plan, NAMES, { id: 'session-1', deviceId: 'device-1', seed: 5, atMs: 1_700_000_000_000 });
}

/** The turn that is due, ridden by a virtual rider of some skill. */
export function turnOf(start: RideStart, skill = 0.5): FinishedTurn {
  const { planId, nickname, rideIndex, attempt, level } = start;
  const bike = bikeById(start.bikeId)!;
  const rider = riderById('child-9')!;
  const world = buildRideWorld(courseOfLevel(level), bike, rider);
  const setup = setupOfJob({ level, seed: level.seed, bike, rider, autoEase: false });
  const person = virtualRider(world, habitsForSkill(skill), attempt * 7 + nickname.length);
  const recording = rideThrough(world, person).recording(setup);
  return { planId, nickname, rideIndex, attempt, level, recording };
}

/** Props of the pages for what a desk knows now. */
export function propsOf(desk: OwnedDesk, place: string, more: Partial<ClinicProps> = {}): ClinicProps {
  return {
    ...desk,
    ...desk.state(),
    place,
    levels: [LEVEL],
    outgoing: null,
    format: createFormat('metric'),
    onSaveFile: () => undefined,
    onPrint: () => undefined,
    onDebrief: () => undefined,
    onPlace: () => undefined,
    ...more,
  };
}

/** Rides the turn of whoever is first in line, from start to record. */
export async function rideNext(desk: OwnedDesk, skill = 0.5): Promise<void> {
  const [saved] = desk.state().saved.rounds;
  const nickname = saved?.round.line[0];
  if (saved === undefined || nickname === undefined) throw new Error('nobody is in line');
  const start = startOf(saved, nickname, propsOf(desk, ''));
  if (start === null) throw new Error('there is nothing to ride');
  const { takeTurn } = await import('../../src/core/group/turnQueue.ts');
  await desk.onSaveRound({ ...saved, round: takeTurn(saved.round, { kind: 'start', nickname }) });
  const turn = turnOf(start, skill);
  await desk.take(turn, async (keep) => void (await keep(await markTurn(turn))));
}
