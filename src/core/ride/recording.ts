/**
 * A ride is its recording: who rode what, every command with its tick, and a fingerprint of the state every
 * 600 ticks. Riding it again gives the same bits; everything else (marks, debrief, clinic) is derived.
 */
import * as z from 'zod/mini';
import { createHasher } from '../math/hash.ts';
import { fingerprintShape, seedShape } from '../level/schema.ts';
import { LIMITS } from '../math/limits.ts';
import { HUB_KINDS } from '../model/hubKinds.ts';
import { MOTOR_PLACES } from '../model/motor.ts';
import type { Bike, Rider } from '../model/types.ts';
import { TICKS_PER_S } from './clock.ts';
import type { RideCommand, RideState, ShiftInProgress, TimedCommand } from './types.ts';

export const RECORDING_SCHEMA = 1;
/** Version of the physics; raised when any recording comes out differently than before. */
export const PHYSICS_VERSION = '2';
/** Recordings of the first physics do not name it. */
const FIRST_PHYSICS = '1';
/** A ride takes at most this long (ticks): one hour, so that nothing can hang. */
export const LONGEST_RIDE_TICKS = 3600 * TICKS_PER_S;

/** Ticks between two fingerprints. */
export const CHECKPOINT_TICKS = 600;

/** What must be known to ride it again. */
export interface RideSetup {
  readonly levelId: string;
  readonly levelHash: string;
  readonly seed: number;
  readonly bike: Bike;
  readonly rider: Rider;
  readonly autoEase: boolean;
}

/** A whole ride as data. */
export interface Recording extends RideSetup {
  readonly schema: typeof RECORDING_SCHEMA;
  /** Version of the physics it was ridden by; `physicsOf` also knows those that name none. */
  readonly physicsVersion?: string;
  readonly ticks: number;
  readonly commands: readonly TimedCommand[];
  /** Fingerprints after every 600 ticks and, last, after the final tick. */
  readonly checkpoints: readonly string[];
}

/** Version of the physics a recording was ridden by. Only one of `PHYSICS_VERSION` can be ridden again. */
export function physicsOf({ physicsVersion }: Recording): string {
  return physicsVersion ?? FIRST_PHYSICS;
}

/** Fingerprint of a state: everything that decides what comes next. */
export function hashState(state: RideState): string {
  const hasher = createHasher();
  hasher.number(state.tick);
  hasher.number(state.distanceM);
  hasher.number(state.speedMps);
  hasher.number(state.pressureRatio);
  hasher.number(state.crankTurns);
  hasher.number(state.cadenceRpm);
  hasher.number(state.crankTorqueNm);
  hasher.number(state.reserveJ);
  hasher.number(state.crossedS);
  hasher.number(state.phaseLeftS);
  hasher.number(state.ringIndex * 100 + state.sprocketIndex);
  hasher.number(turnsOf(state.rear));
  hasher.number(turnsOf(state.front));
  hasher.text(
    `${state.phase} ${state.pressure} ${state.braking} ${state.chainOn} ${state.spent} ${state.queue.length}`,
  );
  if (state.motor !== null) {
    hasher.number(state.motor.torqueNm);
    hasher.number(state.motor.idleM);
    hasher.number(state.motor.chargeJ);
  }
  return hasher.digest();
}

/** How far a movement has come: what a chain has done, what a hub has waited, of which one is always none. */
function turnsOf(shift: ShiftInProgress | null): number {
  return shift === null ? -1 : shift.doneTurns + shift.waitedTurns;
}

const teeth = z.array(z.int().check(z.gte(5), z.lte(80))).check(z.minLength(1), z.maxLength(14));
const positive = z.number().check(z.gt(0), z.lte(100_000));

/** Lengths of a bike that can be ridden and drawn (mm); tyres and rims as in `bikeInput`. */
const between = (low: number, high: number) => z.number().check(z.gte(low), z.lte(high));

const bikeSchema = z.strictObject({
  id: z.string().check(z.maxLength(60)),
  chainringsTeeth: teeth,
  sprocketsTeeth: teeth,
  hub: z.optional(z.enum(HUB_KINDS)),
  motor: z.optional(
    z.strictObject({
      place: z.enum(MOTOR_PLACES),
      helpRatio: z.number().check(z.gte(0), z.lte(4)),
      batteryWh: between(0, 2000),
      brakeSwitches: z.optional(z.boolean()),
      fallsS: z.optional(between(0.05, 2)),
    }),
  ),
  backPedalBrake: z.optional(z.boolean()),
  tyreWidthMm: between(18, 125),
  beadSeatMm: between(200, 700),
  measuredCircumferenceM: z.optional(between(0.5, 4)),
  crankLengthMm: between(50, 300),
  chainstayMm: between(150, 1500),
  frontChainLineMm: between(1, 200),
  rearChainLineMm: between(1, 200),
  ringSpacingMm: between(1, 50),
  sprocketPitchMm: between(1, 50),
  shifter: z.enum(['mechanical', 'electronic']),
  refusesCrossed: z.boolean(),
  massKg: positive,
  cdaM2: positive,
  rollingCoefficient: positive,
  wheelInertiaKgM2: positive,
});

const riderSchema = z.strictObject({
  id: z.string().check(z.maxLength(60)),
  massKg: positive,
  steadyPowerW: positive,
  cadenceLowRpm: positive,
  cadenceHighRpm: positive,
  criticalPowerW: positive,
  reserveJ: positive,
});

const commandSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('shift'),
    derailleur: z.enum(['rear', 'front']),
    direction: z.enum(['easier', 'harder']),
    steps: z.int().check(z.gte(1), z.lte(3)),
  }),
  z.strictObject({ kind: z.literal('pressure'), pressure: z.enum(['coast', 'ease', 'steady', 'press']) }),
  z.strictObject({ kind: z.literal('brake'), on: z.boolean() }),
]);

/** A bike from outside (a kept setting, a file), or null. */
export function readBike(value: unknown): Bike | null {
  const parsed = bikeSchema.safeParse(value);
  return parsed.success ? (parsed.data as Bike) : null;
}

/** A rider from outside, or null. */
export function readRider(value: unknown): Rider | null {
  const parsed = riderSchema.safeParse(value);
  return parsed.success ? parsed.data : null;
}

/** Longest ride that is read back (ticks). */
export const MOST_TICKS = LIMITS.ride.seconds.most * TICKS_PER_S;

const recordingSchema = z.strictObject({
  schema: z.literal(RECORDING_SCHEMA),
  physicsVersion: z.optional(z.string().check(z.minLength(1), z.maxLength(40))),
  levelId: z.string().check(z.maxLength(60)),
  levelHash: fingerprintShape,
  seed: seedShape,
  bike: bikeSchema,
  rider: riderSchema,
  autoEase: z.boolean(),
  ticks: z.int().check(z.gte(0), z.lte(MOST_TICKS)),
  commands: z
    .array(z.strictObject({ tick: z.int().check(z.gte(0), z.lte(MOST_TICKS)), command: commandSchema }))
    .check(z.maxLength(LIMITS.ride.commands.most)),
  checkpoints: z.array(fingerprintShape).check(z.maxLength(LIMITS.ride.checkpoints.most)),
});

/** Why something is no recording; `where` is the part that does not fit, like `commands.3.tick`, or empty. */
export interface RecordingProblem {
  readonly ok: false;
  readonly code: 'newer-schema' | 'not-a-recording' | 'out-of-order';
  readonly where: string;
}

/** A recording read from outside, or why not. Never throws. */
export function parseRecording(
  value: unknown,
): { readonly ok: true; readonly recording: Recording } | RecordingProblem {
  const schema = (value as { schema?: unknown } | null)?.schema;
  if (typeof schema === 'number' && schema > RECORDING_SCHEMA)
    return { ok: false, code: 'newer-schema', where: 'schema' };
  const parsed = recordingSchema.safeParse(value);
  if (!parsed.success) {
    const where = parsed.error.issues[0]?.path.map(String).join('.') ?? '';
    return { ok: false, code: 'not-a-recording', where };
  }
  const unordered = parsed.data.commands.some(
    (item, i, all) => i > 0 && item.tick < (all[i - 1] as { tick: number }).tick,
  );
  if (unordered) return { ok: false, code: 'out-of-order', where: 'commands' };
  // A measured circumference or a version that is absent must stay absent, which zod's optional type cannot say.
  return { ok: true, recording: parsed.data as Recording };
}

/** Commands grouped by their tick, for a loop that asks tick by tick. */
export function commandsByTick(commands: readonly TimedCommand[]): (tick: number) => readonly RideCommand[] {
  const none: readonly RideCommand[] = [];
  let next = 0;
  return (tick) => {
    if (commands[next]?.tick !== tick) return none;
    const due: RideCommand[] = [];
    while (commands[next]?.tick === tick) {
      due.push((commands[next] as TimedCommand).command);
      next += 1;
    }
    return due;
  };
}
