/** How a plan is ridden: attempts, road, bike and rider, help, order, and what the group sees. */
import type { JSX } from 'preact';
import { type ClinicPlan, MOST_ATTEMPTS } from '../../core/group/plan.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import { Choice, Select } from '../../ui/controls.tsx';
import { Stepper } from './stepper.tsx';
import type { ClinicProps } from './services.ts';
import { bikeName, riderName } from '../../words/common.ts';

interface SetupProps {
  readonly plan: ClinicPlan;
  readonly change: (part: Partial<ClinicPlan>) => void;
  readonly words: ClinicProps['words'];
}

/** Values with their words, in the order of the words. */
function pairs<Key extends string>(names: Readonly<Record<Key, string>>): (readonly [Key, string])[] {
  return (Object.keys(names) as Key[]).map((key) => [key, names[key]]);
}

/** Attempts, road, bike, rider, help, order and what is shown. */
export function PlanSetup(props: SetupProps): JSX.Element {
  const { plan, change } = props;
  const { form } = props.words;
  return (
    <>
      <Stepper
        label={form.attempts}
        fewer={form.attemptsFewer}
        more={form.attemptsMore}
        value={plan.attempts}
        low={1}
        high={MOST_ATTEMPTS}
        onChange={(attempts) => change({ attempts })}
      />
      <Choice
        legend={form.seed}
        name="seed"
        value={plan.seedRule}
        options={pairs(form.seeds)}
        onChoose={(seedRule) => change({ seedRule })}
      />
      <Who {...props} />
      <Choice
        legend={form.aids}
        name="aids"
        value={plan.aids}
        options={pairs(form.aidsNames)}
        onChoose={(aids) => change({ aids })}
      />
      <Choice
        legend={form.order}
        name="order"
        value={plan.order}
        options={pairs(form.orders)}
        onChoose={(order) => change({ order })}
      />
      <Choice
        legend={form.shows}
        name="shows"
        value={plan.shows}
        options={pairs(form.showsNames)}
        onChoose={(shows) => change({ shows })}
      />
    </>
  );
}

/** On a child's bike nobody is asked how strong they feel. */
function riderFor(bike: string, riderId: string): string {
  return riderId === 'by-feel' && bike.startsWith('kids') ? 'by-bike' : riderId;
}

/** Bike and rider of everybody, or left to each. */
function Who({ plan, change, words }: SetupProps): JSX.Element {
  const { form } = words;
  return (
    <>
      <Select
        label={form.bike}
        name="bike"
        value={plan.bike}
        options={[['own', form.ownBike], ...BIKES.map(({ id }) => [id, bikeName(id)] as const)]}
        onChoose={(bike) => change({ bike, riderId: riderFor(bike, plan.riderId) })}
      />
      <Select
        label={form.rider}
        name="rider"
        value={plan.riderId}
        options={[
          ['by-bike', form.byBike],
          ['by-feel', form.byFeel],
          ...RIDERS.map(({ id }) => [id, riderName(id)] as const),
        ]}
        onChoose={(riderId) => change({ riderId })}
      />
    </>
  );
}
