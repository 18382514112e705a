/**
 * The door of the core: everything another program needs to make a road, ride it, plan it and mark it. Pure
 * TypeScript without a screen, a clock or chance of its own; lengths are metres, speeds metres a second, slopes rise
 * over run, forces newtons, cadences turns of the crank a minute. Values are plain data that survive JSON unless
 * something else is said. What a name means in full stands where it is declared; `model/MODEL.md` has the physics
 * with its sources and `coach/MARKS.md` what the marks can tell.
 */

/** Text of a level file → `{ ok: true, level }` or `{ ok: false, problems }`, each with path, code and numbers. Never throws. */
export { parseLevelText } from './level/parse.ts';
/** The road of a level as arrays of one value a metre; another seed (0 to 2³² − 1) gives another road of the same kind. */
export { courseOfLevel, levelHash } from './level/build.ts';
/** A road nobody has seen, without help, to be ridden as a test: the same seed gives the same road. */
export { checkLevel } from './level/generate.ts';
export type { Level } from './level/schema.ts';
export type { Course } from './course/types.ts';
/** `path` like `pieces[2].lengthM`, a `code`, and the numbers that a sentence about it needs. */
export type { Problem } from './level/problems.ts';

/** Bundled bikes and riders; `undefined` for a name that is none. Where their numbers come from: `model/presets.ts`. */
export { BIKES, bikeById, RIDERS, riderById } from './model/presets.ts';
/** A gear by its chainring (0 is the smallest) and sprocket (0 is the smallest). Throws where there is none. */
export { cadenceAtRpm, gearAt } from './model/machine.ts';
export type { Bike, Gear, Machine, Pressure, Rider } from './model/types.ts';

/** Road, bike and rider put together. Throws where no bike or rider can be made of the numbers. */
export { buildRideWorld } from './ride/world.ts';
/** One tick of 1/120 s: state and commands → next state and events. Pure; never throws on a state of its own. */
export { stepRide } from './ride/step.ts';
/** A ride that is going on (`startRide`), one ridden to its end by a controller, or one ridden again from its recording. */
export { replayRecording, rideThrough, startRide } from './ride/run.ts';
/** Commands that stop at the next stop line, as a practised person would. */
export { brakeForLine } from './ride/pilot.ts';
/** A value that should be a recording → `{ ok: true, recording }`, or why not. Never throws. */
export { parseRecording } from './ride/recording.ts';
export type { Recording, RideSetup } from './ride/recording.ts';
export type { Controller, LiveRide, Replay } from './ride/run.ts';
export type { RideTrace, TraceSample } from './ride/trace.ts';
export type { RideCommand, RideEvent, RideState, RideWorld } from './ride/types.ts';

/** The cheapest way to ride every metre from every speed and gear, found by dynamic programming backwards over the road. */
export { planRoad } from './planner/plan.ts';
/** A controller that follows a policy, and the ride that comes of it: the reference. */
export { policyDriver } from './planner/driver.ts';
export { referenceRide } from './planner/reference.ts';
/** What a ridden trace costs in the currency of the plan (no unit), so that rides and plans can be compared. */
export { realisedCost } from './planner/realised.ts';
export type { Policy } from './planner/plan.ts';

/** Five marks (0 to 100, null where nothing could be judged), their weighted total, pitches and verdict. */
export { judgeRide } from './coach/judge.ts';
/** Level, world, policy, reference and judge together in one call; throws for a bike or rider that is none. */
export { groundOf, groundOfJob, markOn, markRecording } from './coach/ground.ts';
export type { MarkingGround, MarkedRide } from './coach/ground.ts';
/** What a recording says about the ride it is of: level, its fingerprint, seed, bike, rider. */
export { setupOfJob } from './ride/job.ts';
export type { RideJob } from './ride/job.ts';
export type { RideReport } from './coach/types.ts';

/** Riders made of habits, for tests and for company: the same world, habits and seed give the same ride. */
export { habitsForSkill, NAMED_HABITS, virtualRider } from './virtual/riders.ts';
export type { Habits } from './virtual/riders.ts';
/** Chance with a seed (0 to 2³² − 1): a function that gives numbers from 0 up to, not including, 1. */
export { seededRandom } from './math/random.ts';
