/**
 * What the machine sounds like at a moment: for every loop how loud and how fast. Pure arithmetic on a
 * frame, without clock or sound library; playing it is left to the voices.
 */
import { clamp } from '../core/math/numbers.ts';
import { RATED_W } from '../core/model/motor.ts';
import { pullAtAngle } from '../core/model/shift.ts';
import type { RideFrame } from '../core/ride/types.ts';
import {
  FREEWHEEL_TICKS_PER_S,
  HUM_CADENCE_RPM,
  LOOP_NAMES,
  type LoopName,
  RUB_CADENCE_RPM,
} from './sounds.ts';

/** `gain` 0 (silent) to 1, before the player's volumes; `rate` 1 as recorded. */
export interface LoopLevel {
  readonly gain: number;
  readonly rate: number;
}

export type Mix = Readonly<Record<LoopName, LoopLevel>>;

/** The loudest each loop may ever be. All of them together stay below the click of a shift. */
export const LOUDEST_GAIN: Readonly<Record<LoopName, number>> = {
  'tyre-roll': 0.34,
  wind: 0.42,
  gravel: 0.4,
  'drivetrain-hum': 0.3,
  'freewheel-slow': 0.5,
  'freewheel-medium': 0.5,
  'freewheel-fast': 0.5,
  'shift-grind': 0.5,
  'chain-rub': 0.45,
  brake: 0.4,
};

/** Below this rate of chain movement a shift is heard to grind. */
const GRINDING_RATE = 0.35;
/**
 * Rolling resistance, against good asphalt, above which loose ground is heard, where it is loudest, and where
 * it is so soft (grass) that little is left of the stones.
 */
const LOOSE_FROM_FACTOR = 1.25;
const LOOSE_FULL_FACTOR = 2;
const SOFT_FACTOR = 3;
const SOFT_SHARE = 0.3;
/** What is left of the hum between two pushes of a rider who stands on the pedals. */
const STANDING_LULL = 0.35;
/** A motor at its rated power is as loud as so much steady pushing, and whirs so much higher. */
const MOTOR_HEARD = 1;
const MOTOR_WHIRS = 0.35;
/** Notches a freewheel passes in one turn of the wheel. */
const FREEWHEEL_NOTCHES = 20;
/** Speed from which tyre, ground and freewheel are at their loudest (m/s). */
const FAST_MPS = 13;
/** Air speed at which the wind is at its loudest (m/s). */
const GALE_MPS = 15;
/** Slower than this nothing rolls loudly enough to be heard (m/s). */
const ROLLING_MPS = 0.5;

const SILENT_LEVEL: LoopLevel = { gain: 0, rate: 1 };

function level(name: LoopName, share: number, rate: number): LoopLevel {
  return { gain: clamp(share) * LOUDEST_GAIN[name], rate: clamp(rate, 0.5, 3) };
}

export const SILENT_MIX: Mix = Object.fromEntries(LOOP_NAMES.map((name) => [name, SILENT_LEVEL])) as Mix;

/** How fast the wheel runs ahead of what the cranks drive (m/s along the road); 0 while they drive it. */
export function overrunMps(frame: RideFrame): number {
  const drivenMps = (frame.cadenceRpm / 60) * frame.developmentM;
  const aheadMps = frame.speedMps - drivenMps;
  // A little slack: a driving crank may lag by a rounding, and a pawl that just lets go is not heard.
  return aheadMps > 0.2 + 0.04 * frame.speedMps ? aheadMps : 0;
}

/** Notches passed in a second (1/s); the wheel's size follows from the gear. */
export function freewheelTicksPerS(frame: RideFrame): number {
  const circumferenceM = frame.developmentM / frame.gear.ratio;
  return (overrunMps(frame) / circumferenceM) * FREEWHEEL_NOTCHES;
}

function isCoasting(frame: RideFrame): boolean {
  return frame.chainOn && frame.speedMps > ROLLING_MPS && overrunMps(frame) > 0;
}

/** The three freewheel loops overlap around the middle between their own tick rates, each then at the same true rate. */
function freewheel(frame: RideFrame): Pick<Mix, keyof typeof FREEWHEEL_TICKS_PER_S> {
  const ticks = isCoasting(frame) ? freewheelTicksPerS(frame) : 0;
  const share = ticks > 0 ? 0.55 + 0.45 * clamp(frame.speedMps / FAST_MPS) : 0;
  const {
    'freewheel-slow': slow,
    'freewheel-medium': medium,
    'freewheel-fast': fast,
  } = FREEWHEEL_TICKS_PER_S;
  const overMedium = clamp((ticks - slow * 1.3) / (slow * 0.6));
  const overFast = clamp((ticks - medium * 1.3) / (medium * 0.6));
  return {
    'freewheel-slow': level('freewheel-slow', share * (1 - overMedium), ticks / slow),
    'freewheel-medium': level('freewheel-medium', share * overMedium * (1 - overFast), ticks / medium),
    'freewheel-fast': level('freewheel-fast', share * overFast, ticks / fast),
  };
}

function looseShare(rollingFactor: number): number {
  const rising = clamp((rollingFactor - LOOSE_FROM_FACTOR) / (LOOSE_FULL_FACTOR - LOOSE_FROM_FACTOR));
  const softness = clamp((rollingFactor - LOOSE_FULL_FACTOR) / (SOFT_FACTOR - LOOSE_FULL_FACTOR));
  return rising * (1 - (1 - SOFT_SHARE) * softness);
}

function road(frame: RideFrame): Pick<Mix, 'tyre-roll' | 'wind' | 'gravel'> {
  const pace = clamp(frame.speedMps / FAST_MPS);
  const loose = looseShare(frame.rollingFactor);
  const airMps = frame.speedMps + frame.windMps;
  const gale = clamp((airMps * airMps) / (GALE_MPS * GALE_MPS));
  return {
    // On loose ground the stones cover most of the tyre.
    'tyre-roll': level('tyre-roll', pace * (1 - 0.6 * loose), 0.65 + 0.75 * pace),
    gravel: level('gravel', loose * pace * (1.6 - 0.6 * pace), 0.7 + 0.6 * pace),
    wind: level('wind', gale, 0.8 + 0.45 * gale),
  };
}

function drivetrain(frame: RideFrame): Pick<Mix, 'drivetrain-hum' | 'shift-grind' | 'chain-rub'> {
  const chainRuns = frame.chainOn && frame.cadenceRpm > 5;
  const drives = chainRuns && !isCoasting(frame);
  const turning = clamp(frame.cadenceRpm / 40);
  // Standing up, the machine is heard to answer every push instead of humming along.
  const pushes = frame.outOfSaddle
    ? STANDING_LULL + (1 - STANDING_LULL) * (pullAtAngle(frame.crankTurns) / 1.5)
    : 1;
  // A motor is heard to pull with the legs, and to let go a moment after them.
  const motor = frame.motor === null ? 0 : frame.motor.powerW / RATED_W;
  const pull = frame.torqueRatio + MOTOR_HEARD * motor;
  const hum = drives ? turning * pushes * (0.3 + 0.7 * clamp(pull / 1.6)) : 0;
  const shift = frame.shift;
  const stuck =
    shift !== null && !shift.hub && shift.rate < GRINDING_RATE ? 1 - shift.rate / GRINDING_RATE : 0;
  const grinds = chainRuns && frame.speedMps > 0.2 && stuck > 0;
  // The rub grows while the chain stays crossed, so that passing through such a gear is only a whisper.
  const rub = chainRuns && frame.crossed ? turning * (0.45 + 0.55 * clamp(frame.crossedS / 2)) : 0;
  return {
    'drivetrain-hum': level(
      'drivetrain-hum',
      hum,
      (frame.cadenceRpm / HUM_CADENCE_RPM) * (1 + MOTOR_WHIRS * motor),
    ),
    'shift-grind': level(
      'shift-grind',
      grinds ? 0.55 + 0.45 * stuck : 0,
      0.75 + 0.35 * clamp(frame.cadenceRpm / 100),
    ),
    'chain-rub': level('chain-rub', rub, frame.cadenceRpm / RUB_CADENCE_RPM),
  };
}

export function mixOf(frame: RideFrame): Mix {
  const brakes = frame.braking && frame.speedMps > 0.3;
  return {
    ...road(frame),
    ...drivetrain(frame),
    ...freewheel(frame),
    brake: level(
      'brake',
      brakes ? 0.5 + 0.5 * clamp(frame.speedMps / 8) : 0,
      0.75 + 0.4 * clamp(frame.speedMps / FAST_MPS),
    ),
  };
}

/** Time in which a level covers half of its way, roughly (s): loudness gently, speed at once enough to be true. */
const GAIN_LAG_S = 0.07;
const RATE_LAG_S = 0.04;
/** Quieter than this is silence. */
const HEARD_FROM = 0.0015;

function approach(from: number, to: number, lagS: number, elapsedS: number): number {
  return from + ((to - from) * elapsedS) / (lagS + elapsedS);
}

/** Moves each level towards what is wanted, `elapsedS` seconds (0 to 0.1) after the last time. */
export function approachMix(present: Mix, wanted: Mix, elapsedS: number): Mix {
  const stepS = clamp(elapsedS, 0, 0.1);
  const moved = LOOP_NAMES.map((name): [LoopName, LoopLevel] => {
    const [from, to] = [present[name], wanted[name]];
    const gain = approach(from.gain, to.gain, GAIN_LAG_S, stepS);
    if (to.gain === 0) return [name, { gain: gain < HEARD_FROM ? 0 : gain, rate: from.rate }];
    // From silence there is nothing to glide from.
    const rate = from.gain === 0 ? to.rate : approach(from.rate, to.rate, RATE_LAG_S, stepS);
    return [name, { gain, rate }];
  });
  return Object.fromEntries(moved) as Mix;
}

/** Whether a value has moved far enough from the last one sent to be worth sending: more than one in a hundred. */
export function isAudibleChange(sent: number, now: number): boolean {
  if (sent === now) return false;
  if (sent === 0 || now === 0) return true;
  const difference = now > sent ? now - sent : sent - now;
  return difference > 0.01 * sent;
}
