/** How long a plan takes, said on every plan; a warning before it is too long, with ways that are shorter; how a round stands. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import {
  LONGEST_ROUND_MIN,
  minutesSaid,
  planRideSeconds,
  planSeconds,
  type Shorter,
  shorterWays,
} from '../../core/group/minutes.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { turnsLeft } from '../../core/group/turnQueue.ts';
import { levelHash } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { Button } from '../../ui/controls.tsx';
import { rideTitle } from './say.ts';
import type { ClinicProps, InSession } from './services.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** How many a round is thought for until somebody says how many there are. */
export const USUAL_COUNT = 6;

/** A road takes the same time each time it is asked for. */
const known = new Map<string, number | null>();

function keyOf(plan: ClinicPlan, ride: ClinicPlan['rides'][number]): string {
  const road = ride.kind === 'own' ? levelHash(ride.level) : JSON.stringify(ride);
  return `${road} ${ride.kind === 'check' ? plan.seed : ''} ${plan.bike} ${plan.riderId}`;
}

/**
 * Seconds of every ride of a plan, or null while they are worked out, or where a level is not here. One road a turn of
 * the event loop, so that the page is drawn and can be used meanwhile.
 */
function useRideSeconds(plan: ClinicPlan, levels: readonly Level[]): readonly number[] | null {
  const [, setCounted] = useState(0);
  const next = plan.rides.find((ride) => !known.has(keyOf(plan, ride)));
  const nextKey = next === undefined ? null : keyOf(plan, next);
  useEffect(() => {
    if (next === undefined || nextKey === null) return undefined;
    const timer = setTimeout(() => {
      const find = (id: string): Level | undefined => levels.find((level) => level.id === id);
      known.set(nextKey, planRideSeconds({ ...plan, rides: [next] }, find)[0] ?? null);
      setCounted((n) => n + 1);
    }, 0);
    return () => clearTimeout(timer);
  }, [nextKey]);
  const seconds = plan.rides.map((ride) => known.get(keyOf(plan, ride)) ?? null);
  const all = seconds.flatMap((one) => one ?? []);
  return all.length === seconds.length && all.length > 0 ? all : null;
}

interface MinutesProps {
  readonly plan: ClinicPlan;
  readonly riders: number;
  readonly props: Pick<ClinicProps, 'levels'>;
}

/** "8 riders, two rides each: about 50 minutes". */
export function Minutes({ plan, riders, props }: MinutesProps): JSX.Element | null {
  const rideS = useRideSeconds(plan, props.levels);
  if (plan.rides.length === 0) return null;
  const each = plan.rides.length * plan.attempts;
  if (rideS === null) return <span class="minutes">{say('minutes-who', { riders, count: each })}</span>;
  const takes = minutesSaid(planSeconds(rideS, { riders, attempts: plan.attempts }));
  return (
    <span class="minutes" data-minutes={takes}>
      {say('minutes-whoAbout', { riders, count: each, minutes: takes })}
    </span>
  );
}

/** A warning where a round is too long, with ways that fit; nothing where it fits. */
export function TooLong(
  props: MinutesProps & {
    readonly onPlan: (plan: ClinicPlan) => void;
    /** Begins, and opens the page on which the plan is handed out. */
    readonly onTablets: () => void;
  },
): JSX.Element | null {
  const { plan, riders, onPlan, onTablets } = props;
  const { levels } = props.props;
  const rideS = useRideSeconds(plan, levels);
  const ways = rideS === null ? [] : shorterWays(rideS, riders, plan.attempts);
  if (ways.length === 0) return null;
  const name = (way: Shorter): string => {
    const minutes = minutesSaid(way.seconds);
    if (way.kind === 'attempts') return say('minutes-attempts', { count: way.attempts, minutes });
    if (way.kind === 'devices') return say('minutes-devices', { count: way.devices, minutes });
    const ride = plan.rides[way.rideIndex];
    const road = (ride === undefined ? null : rideTitle(ride, levels)) ?? '';
    return say('minutes-road', { road, minutes });
  };
  const take = (way: Shorter): void => {
    if (way.kind === 'attempts') onPlan({ ...plan, attempts: way.attempts });
    else if (way.kind === 'road')
      onPlan({ ...plan, rides: plan.rides.slice(way.rideIndex, way.rideIndex + 1) });
    else onTablets();
  };
  return (
    <section class="paper notice too-long" role="note" data-too-long>
      <strong>{say('minutes-tooLong', { most: LONGEST_ROUND_MIN })}</strong>
      <div class="buttons">
        {ways.map((way) => (
          <Button key={way.kind} data-shorter={way.kind} onClick={() => take(way)}>
            {name(way)}
          </Button>
        ))}
        <a class="button" href="#two">
          {say('minutes-two')}
        </a>
      </div>
    </section>
  );
}

/** How a round stands: minutes that are left on this device, and how far it is behind or ahead. */
export function RoundMinutes(props: InSession): JSX.Element | null {
  const { session } = props;
  const { levels, now } = props.props;
  const { plan, round, startedAtMs } = session;
  const rideS = useRideSeconds(plan, levels);
  if (rideS === null || round.riders.length === 0) return null;
  const turn = planSeconds(rideS, { riders: 1, attempts: 1 }) / rideS.length;
  const left = round.riders
    .filter(({ presence }) => presence !== 'gone')
    .reduce((sum, { nickname }) => sum + turnsLeft(round, nickname), 0);
  const minutes = minutesSaid(turn * left);
  const behindMin = ((now() - startedAtMs) / 1000 - turn * round.rides.length) / 60;
  return (
    <p class="hint" data-left={Math.round((turn * left) / 60)}>
      {left === 0
        ? say('minutes-noneLeft')
        : isTold(behindMin, round.rides.length)
          ? say('minutes-leftBehind', { minutes, behind: Math.round(behindMin) })
          : say('minutes-left', { minutes })}
    </p>
  );
}

/** Behind the plan is worth a word from a few minutes on; a session that was left for hours is not behind. */
function isTold(behindMin: number, rides: number): boolean {
  return rides > 1 && behindMin >= 3 && behindMin < 2 * LONGEST_ROUND_MIN;
}
