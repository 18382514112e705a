/** A plan of one's own: what is ridden, on what, how often, with which help, what the group sees. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import {
  type ClinicPlan,
  MOST_ATTEMPTS,
  MOST_RIDES,
  parsePlan,
  type PlanRide,
} from '../../core/group/plan.ts';
import { USUAL_PLAN } from '../../core/group/readyPlans.ts';
import { cleanText } from '../../core/group/texts.ts';
import type { Problem } from '../../core/level/problems.ts';
import { Lines, Sheet } from '../../ui/parts.tsx';
import { Minutes, USUAL_COUNT } from './minutes.tsx';
import type { ClinicProps } from './services.ts';
import { sentenceOf } from '../../words/problems.ts';
import { checkTitle, type PlannedCheck, planTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';
import { Button, Choice, Select } from '../../ui/controls.tsx';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import { Stepper } from './riders.tsx';
import { bikeName, common, riderName } from '../../words/common.ts';
import { rowsOf } from '../../core/coach/ladder.ts';

const say = words('clinic');

const TITLE_CHARACTERS = 80;

const EMPTY: Omit<ClinicPlan, 'id' | 'seed'> = { ...USUAL_PLAN, title: '', rides: [] };

/** The page; `from` is the plan it begins as a copy of. */
export function PlanForm(props: {
  readonly props: ClinicProps;
  readonly from: ClinicPlan | null;
}): JSX.Element {
  const { levels, newId, newSeed, onSavePlan, onPlace } = props.props;
  const from = props.from ?? EMPTY;
  const [plan, setPlan] = useState<ClinicPlan>(() => ({
    ...from,
    title: planTitle(from),
    id: newId(),
    seed: newSeed(),
  }));
  const [asked, setAsked] = useState(false);
  const change = (part: Partial<ClinicPlan>): void => setPlan({ ...plan, ...part });
  const whole = {
    ...plan,
    title: cleanText(plan.title, TITLE_CHARACTERS),
    audience: audienceOf(plan, levels),
  };
  const parsed = parsePlan(whole, new Set(levels.map((level) => level.id)));
  const save = (place: string): void => {
    if (!parsed.ok) return setAsked(true);
    onSavePlan(parsed.plan);
    return onPlace(place);
  };
  return (
    <Sheet title={say('form-title')}>
      <form class="clinic plan-form paper" onSubmit={(event) => event.preventDefault()}>
        <label class="field wide">
          <span>{say('form-name')}</span>
          <span class="hint">{say('form-nameHint')}</span>
          <input
            type="text"
            name="title"
            maxLength={TITLE_CHARACTERS}
            value={plan.title}
            onInput={(event) => change({ title: event.currentTarget.value })}
          />
        </label>
        <RideChoice rides={plan.rides} props={props.props} onChange={(rides) => change({ rides })} />
        <PlanSetup plan={plan} change={change} />
        <p class="wide">
          <Minutes plan={plan} riders={USUAL_COUNT} props={props.props} />
        </p>
        <div class="plan-end wide">
          <div class="buttons">
            <Button strong data-save-go onClick={() => save(`go/${plan.id}`)}>
              {say('form-saveAndGo')}
            </Button>
            <Button data-save onClick={() => save('')}>
              {say('form-save')}
            </Button>
          </div>
          {asked && !parsed.ok && (
            <Problems title={say('form-problems')} lines={said(whole, parsed.problems)} />
          )}
        </div>
      </form>
    </Sheet>
  );
}

/** A plan is for children when everything in it is. */
function audienceOf(plan: ClinicPlan, levels: ClinicProps['levels']): ClinicPlan['audience'] {
  const children = plan.rides.every((ride) => {
    if (ride.kind === 'check') return ride.audience === 'children';
    if (ride.kind === 'own') return ride.level.audience === 'children';
    return levels.find((level) => level.id === ride.levelId)?.audience === 'children';
  });
  return children && plan.rides.length > 0 ? 'children' : 'everyone';
}

/** The two things that are usually missing are said in a person's words. */
function said(plan: ClinicPlan, problems: readonly Problem[]): readonly string[] {
  const missing: string[] = [];
  if (plan.title === '') missing.push(say('form-noTitle'));
  if (plan.rides.length === 0) missing.push(say('form-noRide'));
  return missing.length > 0 ? missing : problems.map(sentenceOf);
}

/** Stands with the buttons, which stay on the screen: where the form was tapped it is answered. */
function Problems(props: { readonly title: string; readonly lines: readonly string[] }): JSX.Element {
  return (
    <div class="notice" role="alert">
      <strong>{props.title}</strong>
      <Lines lines={props.lines} />
    </div>
  );
}

interface SetupProps {
  readonly plan: ClinicPlan;
  readonly change: (part: Partial<ClinicPlan>) => void;
}

/** How a plan is ridden: attempts, road, bike and rider, help, order, and what the group sees. */
function PlanSetup(props: SetupProps): JSX.Element {
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

/** Check rides a plan can have; no child of ours rides with a motor. */
const CHECKS: readonly PlannedCheck[] = [
  { kind: 'check', audience: 'everyone' },
  { kind: 'check', audience: 'children' },
  { kind: 'check', audience: 'everyone', needs: 'hub' },
  { kind: 'check', audience: 'children', needs: 'hub' },
  { kind: 'check', audience: 'everyone', needs: 'crank-motor' },
  { kind: 'check', audience: 'everyone', needs: 'wheel-motor' },
];
const group = words('group');

/** Tells rides apart. */
function keyOf(ride: PlanRide): string {
  if (ride.kind === 'check') return ['check', ride.audience, ride.needs ?? ''].join(' ').trim();
  return ride.kind === 'own' ? `own ${ride.level.id}` : `bundled ${ride.levelId}`;
}

/** What a plan has its riders ride: levels, own levels, check rides, numbered in the order they were chosen. */
function RideChoice(props: {
  readonly rides: readonly PlanRide[];
  readonly props: ClinicProps;
  readonly onChange: (rides: readonly PlanRide[]) => void;
}): JSX.Element {
  const { rides, onChange } = props;
  const { levels, ownLevels } = props.props;
  const { everyone, children } = rowsOf(levels);
  const bundled = (list: typeof levels): Offer[] =>
    list.map((level) => ({ title: level.title, ride: { kind: 'bundled', levelId: level.id } }));
  const groups: readonly (readonly [string, readonly Offer[]])[] = [
    [group('check-everyone'), CHECKS.map((ride) => ({ title: checkTitle(ride), ride }))],
    [common('ladder-children'), bundled(children)],
    [common('ladder-everyone'), bundled(everyone)],
    [say('form-ownLevels'), ownLevels.map((level) => ({ title: level.title, ride: { kind: 'own', level } }))],
  ];
  const toggle = (ride: PlanRide): void => {
    const without = rides.filter((one) => keyOf(one) !== keyOf(ride));
    onChange(without.length < rides.length ? without : [...rides, ride].slice(0, MOST_RIDES));
  };
  return (
    <fieldset class="ride-choice wide">
      <legend>{say('form-rides')}</legend>
      <p class="hint">{say('form-ridesHint')}</p>
      {groups.map(
        ([title, offers]) =>
          offers.length > 0 && <Group key={title} {...{ title, offers, rides }} onToggle={toggle} />,
      )}
    </fieldset>
  );
}

interface Offer {
  readonly title: string;
  readonly ride: PlanRide;
}

function Group(props: {
  readonly title: string;
  readonly offers: readonly Offer[];
  readonly rides: readonly PlanRide[];
  readonly onToggle: (ride: PlanRide) => void;
}): JSX.Element {
  return (
    <div class="ride-group">
      <span class="ride-group-title">{props.title}</span>
      <div class="wrap ride-row">
        {props.offers.map(({ title, ride }) => {
          const place = props.rides.findIndex((one) => keyOf(one) === keyOf(ride));
          return (
            <Button
              look="pick ride-pick"
              key={keyOf(ride)}
              aria-pressed={place >= 0}
              data-ride={keyOf(ride)}
              onClick={() => props.onToggle(ride)}
            >
              {place >= 0 && <b>{place + 1}</b>}
              {title}
            </Button>
          );
        })}
      </div>
    </div>
  );
}
