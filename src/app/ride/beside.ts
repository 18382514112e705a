/** Rides that are over, as somebody who rides the same road once more beside the rider. Pure. */
import type { RideResult } from '../../core/coach/results.ts';
import { levelHash } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import type { RideTrace } from '../../core/ride/trace.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { Beside } from '../../game/engine/types.ts';

/** Who could ride beside; the best ride may be known later. */
export interface BesideRides {
  readonly best: () => RideTrace | null;
  readonly last: RideTrace | null;
}

/** Rides that are known: the last one here, and whether this road was ridden before. */
export interface KnownRides {
  readonly last: (RideResult & { readonly reference: RideTrace | null }) | null;
  readonly before: boolean;
}

/** The best ride and the rider's own last one, from the second ride of a road on; in a ride that is watched only the best. */
export function ridesBeside(ride: {
  readonly known: KnownRides | null;
  readonly level: Level;
  readonly reference: () => RideTrace | null;
  readonly watching: object | null;
}): BesideRides | null {
  const { known, level, reference, watching } = ride;
  if (known === null) return null;
  const { last, before } = known;
  if (watching !== null) return { best: () => last?.reference ?? null, last: null };
  const isSame = last !== null && last.level.id === level.id && levelHash(last.level) === levelHash(level);
  return isSame || before ? { best: reference, last: isSame ? last.trace : null } : null;
}

/** Those who are wished for, in the order they are drawn. */
export function besideFor(
  rides: BesideRides | null,
  { beside }: Pick<Settings, 'beside'>,
): readonly Beside[] {
  if (rides === null || beside === 'nobody') return [];
  const { best, last } = rides;
  return [
    ...(beside === 'last' ? [] : [follow('best', best)]),
    ...(beside === 'best' || last === null ? [] : [follow('last', () => last)]),
  ];
}

/** Follows a trace by the time since its start; behind its end it stands. */
function follow(who: Beside['who'], trace: () => RideTrace | null): Beside {
  let known: ReturnType<typeof walkAlong> | null = null;
  return {
    who,
    at(timeS) {
      if (known === null) {
        const ridden = trace();
        if (ridden === null) return null;
        known = walkAlong(ridden);
      }
      return known(timeS);
    },
  };
}

function walkAlong({ samples }: RideTrace): Beside['at'] {
  const [first] = samples;
  const last = samples.at(-1);
  if (first === undefined || last === undefined || last === first) return () => null;
  const everyS = (last.timeS - first.timeS) / (samples.length - 1);
  const turns = new Float64Array(samples.length);
  samples.forEach(({ pedalling, cadenceRpm }, i) => {
    turns[i] = (turns[i - 1] ?? 0) + (pedalling ? (cadenceRpm / 60) * everyS : 0);
  });
  return (timeS) => {
    const place = Math.max(0, Math.min(samples.length - 1, (timeS - first.timeS) / everyS));
    const low = Math.floor(place);
    const high = Math.min(samples.length - 1, low + 1);
    const between = (from: number, to: number): number => from + (to - from) * (place - low);
    return {
      distanceM: between(samples[low]?.distanceM ?? 0, samples[high]?.distanceM ?? 0),
      crankTurns: between(turns[low] ?? 0, turns[high] ?? 0),
    };
  };
}
