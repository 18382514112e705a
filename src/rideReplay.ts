/** A finished ride as the script of a ride that is watched: silent up to a place, then tick by tick. */
import { commandsByTick, type Recording } from './core/ride/recording.ts';
import type { LiveRide } from './core/ride/run.ts';
import type { RideCommand } from './core/ride/types.ts';

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
