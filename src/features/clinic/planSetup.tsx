/** How a plan is ridden: attempts, road, bike and rider, help, order, and what the group sees. */
import type { JSX } from 'preact';
import { type ClinicPlan, MOST_ATTEMPTS } from '../../core/group/plan.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import { Choice, Select } from '../../ui/controls.tsx';
import { Stepper } from './stepper.tsx';
import { bikeName, riderName } from '../../words/common.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

interface SetupProps {
  readonly plan: ClinicPlan;
  readonly change: (part: Partial<ClinicPlan>) => void;
}

/** Attempts, road, bike, rider, help, order and what is shown. */
export function PlanSetup(props: SetupProps): JSX.Element {
  const { plan, change } = props;
  const choice = <Part extends 'seedRule' | 'aids' | 'order' | 'shows'>(
    part: Part,
    name: 'seed' | 'aids' | 'order' | 'shows',
    values: readonly ClinicPlan[Part][],
    nameOf: (value: ClinicPlan[Part]) => string,
  ): JSX.Element => (
    <Choice
      legend={say(`form-${name}`)}
      name={name}
      value={plan[part]}
      options={values.map((one) => [one, nameOf(one)])}
      onChoose={(one) => change({ [part]: one })}
    />
  );
  return (
    <>
      <Stepper
        label={say('form-attempts')}
        fewer={say('form-attemptsFewer')}
        more={say('form-attemptsMore')}
        value={plan.attempts}
        low={1}
        high={MOST_ATTEMPTS}
        onChange={(attempts) => change({ attempts })}
      />
      {choice('seedRule', 'seed', ['same', 'fresh'], (one) => say(`form-seeds-${one}`))}
      <Who {...props} />
      {choice('aids', 'aids', ['as-level', 'none', 'all'], (one) => say(`form-aidsNames-${one}`))}
      {choice('order', 'order', ['rotate', 'free'], (one) => say(`form-orders-${one}`))}
      {choice('shows', 'shows', ['own-marks', 'group-picture', 'table'], (one) =>
        say(`form-showsNames-${one}`),
      )}
    </>
  );
}

/** On a child's bike nobody is asked how strong they feel. */
function riderFor(bike: string, riderId: string): string {
  return riderId === 'by-feel' && bike.startsWith('kids') ? 'by-bike' : riderId;
}

/** Bike and rider of everybody, or left to each. */
function Who({ plan, change }: SetupProps): JSX.Element {
  return (
    <>
      <Select
        label={say('form-bike')}
        name="bike"
        value={plan.bike}
        options={[['own', say('form-ownBike')], ...BIKES.map(({ id }) => [id, bikeName(id)] as const)]}
        onChoose={(bike) => change({ bike, riderId: riderFor(bike, plan.riderId) })}
      />
      <Select
        label={say('form-rider')}
        name="rider"
        value={plan.riderId}
        options={[
          ['by-bike', say('form-byBike')],
          ['by-feel', say('form-byFeel')],
          ...RIDERS.map(({ id }) => [id, riderName(id)] as const),
        ]}
        onChoose={(riderId) => change({ riderId })}
      />
    </>
  );
}
