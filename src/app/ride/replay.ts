/**
 * Recordings ridden again: a finished one as the script of a ride that is watched, silent up to a place and then
 * tick by tick; one that broke off, silently to its end.
 */
import { commandsByTick, type Recording } from '../../core/ride/recording.ts';
import type { LiveRide } from '../../core/ride/run.ts';
import type { RideCommand, RideState } from '../../core/ride/types.ts';

/** Rides a recording again to where it broke off. */
export function rideAgain(ride: LiveRide, recording: Recording): void {
  const commandsAt = commandsByTick(recording.commands);
  while (ride.now.tick < recording.ticks && ride.now.phase !== 'finished')
    ride.step(commandsAt(ride.now.tick));
}

/** What hands do that hold nothing: whatever was pressed when the ride broke off is let go. */
export function lettingGo({ pressure, braking }: RideState): readonly RideCommand[] {
  return [
    ...(pressure === 'steady' ? [] : [{ kind: 'pressure', pressure: 'steady' } as const]),
    ...(braking ? [{ kind: 'brake', on: false } as const] : []),
  ];
}

/** Rides a recording silently up to a place and hands over the commands of the rest. */
export function playTo(
  ride: LiveRide,
  recording: Recording,
  fromM: number,
): (tick: number) => readonly RideCommand[] {
  const commandsAt = commandsByTick(recording.commands);
  // A place beyond the finish would leave nothing to watch.
  const stopM = Math.min(fromM, ride.world.course.lengthM - 5);
  while (ride.now.distanceM < stopM && ride.now.phase !== 'finished') ride.step(commandsAt(ride.now.tick));
  return commandsAt;
}
