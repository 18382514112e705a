/**
 * Rides of several people on one device: side by side, each with its own picture, keys or gamepad, and recording; or
 * the leg of one of them, who has the whole device. The page decides what is ridden and what comes then.
 */
import type { Judging } from '../device/scoring.ts';
import { keepAwake } from '../device/wakeLock.ts';
import type { RidePhaseShown } from '../../state/ridePlaces.ts';
import { outfitBeside } from '../../core/settings/outfit.ts';
import { KEYS_FOR_TWO } from '../../features/two/keys.ts';
import type { RidesTogether, Seat, TogetherWish } from '../../features/two/services.ts';
import { type ScreenRide, startScreenRide } from './screenRide.ts';
import type { RideLook } from './views.ts';

const awake = keepAwake();

/**
 * How long each waits (s), so that all who ride as well as their bikes and legs allow come to the end together. Without
 * an answer all start at once.
 */
async function waitsOf(
  { seats, autoEase }: TogetherWish,
  paceRatio: number,
  judging: Judging,
): Promise<readonly number[]> {
  try {
    const bests = await Promise.all(
      seats.map(({ level, bike, rider }) =>
        judging.planner.prepare({ level, seed: level.seed, bike, rider, autoEase }),
      ),
    );
    const tookS = bests.map(({ trace }) => trace.samples.at(-1)?.timeS ?? 0);
    const mostS = Math.max(...tookS);
    return tookS.map((oneS) => Math.round((mostS - oneS) / paceRatio));
  } catch {
    return [];
  }
}

/** What one of them sees and pushes: the device as it is set, on a bike of their own. */
export function lookOfSeat(
  look: RideLook,
  { bike, rider, side, otherJersey }: Seat,
  wish: TogetherWish,
): RideLook {
  const { settings } = look;
  return {
    ...look,
    showPads: look.showPads || wish.needsPads,
    settings: {
      ...settings,
      bike,
      rider,
      autoEase: wish.autoEase,
      keys: side === null ? settings.keys : KEYS_FOR_TWO[side],
      kit: otherJersey ? outfitBeside(settings.kit) : settings.kit,
    },
  };
}

/** Starts all; instruments and pads are told apart by the places they are in. */
export async function startRidesTogether(
  wish: TogetherWish,
  look: () => RideLook,
  judging: Judging,
): Promise<RidesTogether> {
  const { seats, autoEase } = wish;
  const waitsS =
    wish.headStart && seats.length > 1 ? await waitsOf(wish, look().settings.paceRatio, judging) : [];
  const rides: ScreenRide[] = [];
  const phases: RidePhaseShown[] = seats.map(() => 'ready');
  const follow = (seat: number, phase: RidePhaseShown): void => {
    phases[seat] = phase;
    awake.want(phases.some((one) => one === 'ready' || one === 'riding'));
  };
  const broken = (): void => {
    for (const ride of rides) ride.halt();
    awake.want(false);
    wish.onFailed();
  };
  seats.forEach((seat, i) => {
    const { level, bike, rider, side } = seat;
    const ride = startScreenRide({
      places: seat.places,
      level,
      rest: level.id,
      watching: null,
      goesOn: null,
      // Rides of several people are none of whoever owns the device; they are kept nowhere.
      journal: null,
      firstSteps: null,
      known: null,
      reference: judging.expect({ level, seed: level.seed, bike, rider, autoEase }),
      waitS: waitsS[i] ?? 0,
      ...(side === null ? {} : { gamepad: side === 'left' ? 0 : 1 }),
      look: () => lookOfSeat(look(), seat, wish),
      onPhase(phase, countdownS) {
        follow(i, phase);
        wish.onPhase(i, phase, countdownS);
      },
      onPlace: (distanceM) => wish.onPlace(i, distanceM),
      onFailed: broken,
      onBroken: broken,
      onFinished: (result) => wish.onFinished(i, result),
    });
    rides.push(ride);
  });
  return {
    resume() {
      for (const ride of rides) ride.resume();
    },
    stop() {
      for (const ride of rides) ride.destroy();
      awake.want(false);
    },
  };
}
