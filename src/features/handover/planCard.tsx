/** What a plan holds, shown before it is kept. Its texts come from outside and are only ever text. */
import type { JSX } from 'preact';
import type { ClinicPlan, PlanRide } from '../../core/group/plan.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { bikeName } from '../../words/common.ts';
import { checkTitle, planTitle } from '../../words/group.ts';

const say = words('handover');
const clinic = words('clinic');

export function PlanCard(props: {
  readonly plan: ClinicPlan;
  readonly levels: readonly Level[];
  readonly format: Format;
}): JSX.Element {
  const { plan, levels, format } = props;
  const bike = plan.bike === 'own' ? clinic('facts-ownBike') : bikeName(plan.bike);
  return (
    <div class="plan-found" data-plan-found={plan.id}>
      <h2>
        <bdi>{planTitle(plan)}</bdi>
      </h2>
      <h3>{say('join-rides')}</h3>
      <ol>
        {plan.rides.map((ride, i) => (
          <li key={i}>
            <Ride {...{ ride, levels, format }} />
          </li>
        ))}
      </ol>
      <p>{clinic('facts', { count: plan.attempts, bike })}</p>
    </div>
  );
}

function Ride(props: {
  readonly ride: PlanRide;
  readonly levels: readonly Level[];
  readonly format: Format;
}): JSX.Element {
  const { ride, levels, format } = props;
  if (ride.kind === 'check') return <>{checkTitle(ride)}</>;
  const level = ride.kind === 'own' ? ride.level : levels.find(({ id }) => id === ride.levelId);
  if (level === undefined)
    return <>{say('join-unknownLevel', { level: ride.kind === 'bundled' ? ride.levelId : '' })}</>;
  return (
    <>
      <bdi lang={level.lang}>{level.title}</bdi> · {format.road(courseOfLevel(level).lengthM)}
      {ride.kind === 'own' && ` · ${say('join-ownLevel')}`}
    </>
  );
}

/** True if everything the plan names is on this device. */
export function isPlanHere(plan: ClinicPlan, levels: readonly Level[]): boolean {
  return plan.rides.every(
    (ride) => ride.kind !== 'bundled' || levels.some((level) => level.id === ride.levelId),
  );
}
