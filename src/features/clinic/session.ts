/**
 * What a page of a session knows: its plan, its round, its rides, the road of a picture, and how a change of the round is
 * kept before anything else happens. Plain functions over plain data.
 */
import type { ClinicPlan, PlanRide } from '../../core/group/plan.ts';
import type { TurnQueue } from '../../core/group/roundFile.ts';
import { type QueueAction, startQueue, takeTurn, turnOf } from '../../core/group/turnQueue.ts';
import { READY_PLANS } from '../../core/group/readyPlans.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import { levelOfRide, levelOfTurn } from '../../core/group/turn.ts';
import type { RiddenTurn, SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicProps, RideStart } from './services.ts';
import type { RoadPicture } from '../../core/group/picture/group.ts';
import type { Course } from '../../core/course/types.ts';
import { courseOfLevel, levelHash } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { rideTitle } from './say.ts';

/** A plan by its id, among those that come with the game and those that were saved. */
export function planById(props: ClinicProps, planId: string): ClinicPlan | undefined {
  return [...props.saved.plans, ...READY_PLANS].find((plan) => plan.id === planId);
}

/** A session as it begins: the plan under an id and a seed of its own, everybody in line. */
export function newSession(
  template: ClinicPlan,
  nicknames: readonly string[],
  fresh: {
    readonly id: string;
    readonly deviceId: string;
    readonly seed: number;
    readonly atMs: number;
  },
): SavedRound {
  const plan: ClinicPlan = { ...template, id: fresh.id, seed: fresh.seed };
  const round = nicknames.reduce<TurnQueue>(
    (before, nickname) => takeTurn(before, { kind: 'add', nickname }),
    startQueue(plan),
  );
  return { plan, deviceId: fresh.deviceId, round, startedAtMs: fresh.atMs, feels: {} };
}

/** The session after an action; the very same where it is refused. */
export function after(saved: SavedRound, action: QueueAction): SavedRound {
  const round = takeTurn(saved.round, action);
  return round === saved.round ? saved : { ...saved, round };
}

/**
 * Rides that count in a session, in the order they were ridden here; then those of other devices. `apart` holds the
 * checksums of those that are kept but count nowhere.
 */
export function ridesOf(
  saved: SavedRound,
  records: readonly RideRecord[],
  apart: readonly string[] = [],
): readonly RideRecord[] {
  return records.filter((record) => record.planId === saved.plan.id && !apart.includes(record.checksum));
}

/** Rides over one road; all of them where all roads are looked at together. */
export function ridesOn(
  { road }: { readonly road: Pick<RideRecord, 'levelHash' | 'seed'> | null },
  records: readonly RideRecord[],
): readonly RideRecord[] {
  if (road === null) return records;
  return records.filter(({ levelHash, seed }) => levelHash === road.levelHash && seed === road.seed);
}

/** True while the round waits for the end of just this ride. */
export function awaits({ plan, round }: SavedRound, turn: RiddenTurn): boolean {
  const { phase } = round;
  return (
    phase.kind === 'riding' &&
    turn.planId === plan.id &&
    turn.nickname === phase.nickname &&
    turn.rideIndex === phase.rideIndex &&
    turn.attempt === phase.attempt
  );
}

/** What a rider would ride now; null where its level is not on this device. */
export function startOf(saved: SavedRound, nickname: string, props: ClinicProps): RideStart | null {
  const { plan, round, feels } = saved;
  const turn = { nickname, ...turnOf(round, nickname) };
  const level = levelOfTurn(plan, turn, (id) => props.levels.find((one) => one.id === id));
  if (level === null) return null;
  const riderId = plan.riderId === 'by-feel' ? (feels[nickname] ?? 'by-bike') : plan.riderId;
  return { planId: plan.id, ...turn, level, bikeId: plan.bike, riderId };
}

/** Rides that were planned for those who have not gone, and rides done. */
export function counts(round: TurnQueue): { readonly ridden: number; readonly all: number } {
  const each = round.rideCount * round.attempts;
  const all = round.riders.reduce((sum, rider) => {
    const own = round.rides.filter((ride) => ride.nickname === rider.nickname).length;
    return sum + (rider.presence === 'gone' ? own : each);
  }, 0);
  return { ridden: round.rides.length, all };
}

/** Courses that were built, so that another question does not build them anew. */
const courses = new Map<string, Course>();

/** The ride of the plan that goes over a road, and its level. */
function plannedOn(
  road: RoadPicture,
  session: SavedRound,
  props: ClinicProps,
): { readonly ride: PlanRide; readonly level: Level } | null {
  const find = (id: string): Level | undefined => props.levels.find((level) => level.id === id);
  for (const ride of session.plan.rides) {
    const level = levelOfRide(ride, road.seed, find);
    if (level !== null && levelHash(level) === road.levelHash) return { ride, level };
  }
  return null;
}

/** The course of a road; null where its level is not here, or was changed since. */
export function courseOfRoad(road: RoadPicture, session: SavedRound, props: ClinicProps): Course | null {
  const key = `${road.levelHash} ${road.seed}`;
  const known = courses.get(key);
  if (known !== undefined) return known;
  const planned = plannedOn(road, session, props);
  if (planned === null) return null;
  const course = courseOfLevel(planned.level, road.seed);
  courses.set(key, course);
  return course;
}

/** Its title, or the id of its level. */
export function titleOfRoad(road: RoadPicture, session: SavedRound, props: ClinicProps): string {
  const planned = plannedOn(road, session, props);
  return (planned === null ? null : rideTitle(planned.ride, props.levels)) ?? road.levelId;
}
