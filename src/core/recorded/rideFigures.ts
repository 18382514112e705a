/**
 * "What did I do on Sunday?" A recorded ride pitch by pitch, beside what the best ride of a rider of the same power would
 * have done on the same road and bike. What a reading a second cannot tell (easing, the second of a shift, the chain line
 * where no teeth are known) is not said.
 */
import { findPitches } from '../course/pitches.ts';
import type { Course, Pitch } from '../course/types.ts';
import { levelFromRoad } from '../gpx/level.ts';
import type { Road } from '../gpx/road.ts';
import { courseOfLevel } from '../level/build.ts';
import { mean } from '../math/numbers.ts';
import { bandLowRpm } from '../model/legs.ts';
import { buildMachine } from '../model/machine.ts';
import type { Bike, Rider } from '../model/types.ts';
import { policyDriver } from '../planner/driver.ts';
import { planRoad } from '../planner/plan.ts';
import { rideThrough } from '../ride/run.ts';
import { buildRideWorld } from '../ride/world.ts';
import { MOVING_MPS, possibleDevelopments, type ReadGears, readGears } from './gears.ts';
import { heightLagS, roadInTime } from './lateHeights.ts';
import { figuresOf, type PitchFigures } from './pitchFigures.ts';
import { follows, type RoadSecond, secondsOf } from './seconds.ts';
import { steadyPowerOf, withSteadyPower } from './steadyPower.ts';

export interface RoadRider {
  readonly bike: Bike;
  readonly rider: Rider;
  /** Whether the teeth of the bike are those of the ride; without them gears are only told apart. */
  readonly teethKnown: boolean;
}

/** What the best ride would have done at a pitch. */
type BestAtPitch = Pick<PitchFigures, 'firstEasierM' | 'shareAtFoot' | 'lowestRpm'>;

/** A pitch of a real road and what was done there. */
export interface RoadPitch extends PitchFigures {
  /** Where it is on the road that was read (m); never kept. */
  readonly footM: number;
  readonly endM: number;
  /** Mean slope of it (rise over run). */
  readonly slopeRatio: number;
  /** The first easier gear lies within so much of what is said (m); null where none is said. */
  readonly plusMinusM: number | null;
  /** Null until it has been worked out, or where no road can be made of the place. */
  readonly best: BestAtPitch | null;
}

/** What is known of a ride besides its seconds. */
interface RideKnown {
  /** So late the heights were written down (s); hills stand where they belong. Null where power does not tell, and then they may be late. */
  readonly heightsLateS: number | null;
  /** Month it was ridden in, like `2026-05`, or null where the file does not say. */
  readonly month: string | null;
  /** Whether every foot had been counted, so that cadences were halved. */
  readonly cadenceHalved: boolean;
}

/** Figures of a ride on a real road. */
export type RoadRideFigures = Readonly<ReturnType<typeof figuresOfRide>>;

/** A road or a ride that cannot be looked at, as a code. */
export type RoadRideProblem = 'no-times' | 'too-sparse' | 'no-cadence' | 'cadence-stuck';

export type RoadRideResult =
  | {
      readonly ok: true;
      readonly figures: RoadRideFigures;
      readonly seconds: readonly RoadSecond[];
      /** The road with its hills where the legs met them; places of pitches are places on it. */
      readonly road: Road;
    }
  | { readonly ok: false; readonly why: RoadRideProblem };

/** How far the foot of a pitch may lie from where it was found on a recorded road (m; a standard deviation or so). */
const FOOT_M = 8;
/** A lag told by power is right within so much; one nobody can tell is as large as those of the six open rides, squared, meant and rooted (s). */
const LAG_TOLD_S = 1;
const LAG_UNKNOWN_S = 6.4;
/** With less of the ride read than this, changes are not counted. */
const LEAST_READABLE = 0.1;
/** A ride of which less than this was recorded second by second is not looked at (share of its length). */
const LEAST_SHARE_SEEN = 0.5;
/** Road before and behind a pitch that the best ride is ridden on (m). */
const BEST_BEFORE_M = 260;
const BEST_BEHIND_M = 60;
const SAME_FOOT_M = 30;

/** Looks at a ride; the best rides are worked out one pitch after the other by `withBest`. */
export function roadRide(road: Road, month: string | null, who: RoadRider): RoadRideResult {
  const written = secondsOf(road);
  if (written === null) return { ok: false, why: 'no-times' };
  const hasNote = (code: string): boolean => road.problems.some((note) => note.code === code);
  if (hasNote('cadence-stuck')) return { ok: false, why: 'cadence-stuck' };
  // Told before what is too far apart is left out: there may be none of it among what is left.
  if (!road.recorded.cadenceRpm.some((rpm) => rpm > 0)) return { ok: false, why: 'no-cadence' };
  if (metresRidden(written) < LEAST_SHARE_SEEN * road.lengthM) return { ok: false, why: 'too-sparse' };
  const heightsLateS = heightLagS(written);
  const inTime = roadInTime(road, written, heightsLateS ?? 0);
  const seconds = secondsOf(inTime) ?? written;
  const pitches = findPitches(slopesByMetre(inTime));
  const figures = figuresOfRide(
    seconds,
    pitches,
    { month, heightsLateS, cadenceHalved: hasNote('cadence-halved') },
    who,
  );
  return { ok: true, seconds, road: inTime, figures };
}

/** Figures of seconds over a road whose pitches are known, with its hills where they belong as far as that is known. */
export function figuresOfRide(
  seconds: readonly RoadSecond[],
  pitches: readonly Pitch[],
  known: RideKnown,
  who: RoadRider,
) {
  const machine = buildMachine(who.bike, who.rider);
  const gears = readGears(seconds, possibleDevelopments(who.teethKnown ? machine : null));
  const moving = seconds.filter(({ speedMps }) => speedMps >= MOVING_MPS);
  const ridden = metresRidden(seconds);
  const powerW = steadyPowerOf(
    seconds.map((second) => ({ ...second, forS: 1 })),
    machine,
  );
  const enough = gears.readableShare >= LEAST_READABLE && ridden > 0;
  return {
    lengthM: ridden,
    movingS: moving.length,
    ...known,
    /** Share of the moving seconds whose gear was read. */
    readableShare: gears.readableShare,
    /** Changes of gear a km; null where too little could be read. */
    changesPerKm: enough ? (1000 * gears.changes.length) / ridden : null,
    /** Share of the pedalled seconds in the rider's band; null without cadence. */
    shareInBand: shareInBand(moving, who.rider),
    /** Steady power on the flat that goes with what was done uphill (W); the rider's own where that cannot be told. */
    steadyPowerW: powerW ?? who.rider.steadyPowerW,
    powerMeasured: powerW !== null,
    pitches: pitchesOf(seconds, gears, pitches, known.heightsLateS === null ? LAG_UNKNOWN_S : LAG_TOLD_S),
  };
}

/** The rider of the file: the same body and band, with the power that was told from the hills. */
export function riderOf(
  figures: Pick<RoadRideFigures, 'steadyPowerW' | 'powerMeasured'>,
  rider: Rider,
): Rider {
  return figures.powerMeasured ? withSteadyPower(rider, figures.steadyPowerW) : rider;
}

/** The same pitch with what the best ride of this rider's power does there. */
export function withBest(road: Road, pitch: RoadPitch, bike: Bike, rider: Rider): RoadPitch {
  const fromM = Math.max(0, pitch.footM - BEST_BEFORE_M);
  const made = levelFromRoad(road, {
    fromM,
    toM: pitch.endM + BEST_BEHIND_M,
    title: 'pitch',
    sentence: 'pitch',
  });
  if (!made.ok) return pitch;
  const best = bestOn(
    courseOfLevel(made.level),
    pitch.footM - Math.round(fromM / road.profile.stepM) * road.profile.stepM,
    bike,
    rider,
  );
  return best === null ? pitch : { ...pitch, best };
}

/** What the plan does at the pitch whose foot is nearest to a place; null where there is none. */
function bestOn(course: Course, footM: number, bike: Bike, rider: Rider): BestAtPitch | null {
  const near = course.pitches
    .filter((one) => Math.abs(one.footM - footM) <= SAME_FOOT_M)
    .toSorted((a, b) => Math.abs(a.footM - footM) - Math.abs(b.footM - footM))[0];
  if (near === undefined) return null;
  const world = buildRideWorld(course, bike, rider);
  const { trace } = rideThrough(world, policyDriver(world, planRoad(world)));
  const places = trace.samples.map(({ distanceM, timeS, cadenceRpm, pedalling, developmentM }) => ({
    distanceM,
    timeS,
    cadenceRpm: pedalling ? cadenceRpm : 0,
    developmentM,
  }));
  const { firstEasierM, shareAtFoot, lowestRpm } = figuresOf(places, near);
  return { firstEasierM, shareAtFoot, lowestRpm };
}

function pitchesOf(
  seconds: readonly RoadSecond[],
  gears: ReadGears,
  pitches: readonly Pitch[],
  lagWithinS: number,
): RoadPitch[] {
  const places = seconds.map((second, i) => ({ ...second, developmentM: gears.nearlyM[i] ?? null }));
  return pitches.flatMap((pitch) => {
    const on = seconds.filter(({ distanceM }) => distanceM >= pitch.footM && distanceM < pitch.endM);
    // A pitch nobody was recorded on, or on which everybody stood, says nothing.
    if (on.length < 3) return [];
    const figures = figuresOf(places, pitch);
    const { firstEasierM } = figures;
    const change =
      firstEasierM === null
        ? undefined
        : gears.changes.find(({ atM }) => Math.abs(atM - pitch.footM - firstEasierM) < 1);
    const spreadM = change?.plusMinusM ?? FOOT_M;
    const lagM = lagWithinS * (on[0] as RoadSecond).speedMps;
    return [
      {
        ...figures,
        footM: pitch.footM,
        endM: pitch.endM,
        slopeRatio: mean(on.map(({ slopeRatio }) => slopeRatio)),
        plusMinusM:
          firstEasierM === null ? null : Math.sqrt(FOOT_M * FOOT_M + spreadM * spreadM + lagM * lagM),
        best: null,
      },
    ];
  });
}

/** Slopes of a recorded road, one a metre. */
function slopesByMetre(road: Pick<Road, 'profile'>): Float64Array {
  const { stepM, slopesRatio } = road.profile;
  const slopes = new Float64Array((slopesRatio.length - 1) * stepM + 1);
  for (let m = 0; m < slopes.length; m += 1) {
    const i = Math.min(Math.floor(m / stepM), slopesRatio.length - 2);
    const a = slopesRatio[i] as number;
    slopes[m] = a + ((slopesRatio[i + 1] as number) - a) * (m / stepM - i);
  }
  return slopes;
}

function metresRidden(seconds: readonly RoadSecond[]): number {
  return seconds.reduce((sum, second, i) => {
    const before = seconds[i - 1];
    return before !== undefined && follows(before, second) ? sum + second.distanceM - before.distanceM : sum;
  }, 0);
}

function shareInBand(moving: readonly RoadSecond[], rider: Rider): number | null {
  const turning = moving.filter(({ cadenceRpm }) => cadenceRpm !== null && cadenceRpm > 0);
  if (turning.length === 0) return null;
  const inBand = turning.filter(
    ({ cadenceRpm, slopeRatio }) =>
      (cadenceRpm as number) >= bandLowRpm(rider, slopeRatio) &&
      (cadenceRpm as number) <= rider.cadenceHighRpm,
  );
  return inBand.length / turning.length;
}
