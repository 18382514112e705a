/**
 * Two rides side by side on one device: the same road, each with its own picture, keys or gamepad, and recording.
 * Joins two sessions; the page decides what is ridden and what happens afterwards.
 */
import type { Judging } from '../device/scoring.ts';
import { outfitBeside } from '../../core/settings/outfit.ts';
import { KEYS_FOR_TWO, type Side, SIDES } from '../../features/two/keys.ts';
import type { TwoRides, TwoWish } from '../../features/two/services.ts';
import { type RideSession, startRideSession } from './session.ts';
import type { RideLook } from './views.ts';

const TOGETHER: Readonly<Record<Side, number>> = { left: 0, right: 0 };

/**
 * How long each waits (s), so that two who ride as well as their bikes and legs allow come to the end together. Without
 * an answer both start at once.
 */
async function waitsOf(
  { level, sides, autoEase }: TwoWish,
  paceRatio: number,
  judging: Judging,
): Promise<Readonly<Record<Side, number>>> {
  try {
    const bests = SIDES.map((side) =>
      judging.planner.prepare({ level, seed: level.seed, ...sides[side], autoEase }),
    );
    const [left = 0, right = 0] = (await Promise.all(bests)).map(
      ({ trace }) => trace.samples.at(-1)?.timeS ?? 0,
    );
    return {
      left: Math.max(0, right - left) / paceRatio,
      right: Math.max(0, left - right) / paceRatio,
    };
  } catch {
    return TOGETHER;
  }
}

/** Starts both; instruments and pads are told apart by the half they are in. */
export async function startTwoRides(
  wish: TwoWish,
  look: () => RideLook,
  judging: Judging,
): Promise<TwoRides> {
  const { level, autoEase } = wish;
  const waitsS = wish.headStart ? await waitsOf(wish, look().settings.paceRatio, judging) : TOGETHER;
  const sessions = new Map<Side, RideSession>();
  const lookOf = (side: Side): RideLook => {
    const { settings, ...rest } = look();
    const { bike, rider } = wish.sides[side];
    return {
      ...rest,
      settings: {
        ...settings,
        bike,
        rider,
        autoEase,
        keys: KEYS_FOR_TWO[side],
        kit: side === 'left' ? settings.kit : outfitBeside(settings.kit),
      },
    };
  };
  const broken = (): void => {
    for (const session of sessions.values()) session.halt();
    wish.onFailed();
  };
  for (const side of SIDES) {
    const session = startRideSession({
      places: wish.places[side],
      level,
      rest: level.id,
      watching: null,
      goesOn: null,
      // Two at once are no ride of whoever owns the device; they are kept nowhere.
      journal: null,
      firstSteps: null,
      known: null,
      reference: judging.expect({ level, seed: level.seed, ...wish.sides[side], autoEase }),
      waitS: Math.round(waitsS[side]),
      gamepad: side === 'left' ? 0 : 1,
      look: () => lookOf(side),
      onPhase: (phase, countdownS) => wish.onPhase(side, phase, countdownS),
      onFailed: broken,
      onBroken: broken,
      onFinished: (result) => wish.onFinished(side, result),
    });
    sessions.set(side, session);
  }
  return {
    resume() {
      for (const session of sessions.values()) session.resume();
    },
    stop() {
      for (const session of sessions.values()) session.destroy();
    },
  };
}
