/** A plan of one's own: what is ridden, on what, how often, with which help, what the group sees. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type ClinicPlan, parsePlan } from '../../core/group/plan.ts';
import { USUAL_PLAN } from '../../core/group/readyPlans.ts';
import { cleanText } from '../../core/group/texts.ts';
import type { Problem } from '../../core/level/problems.ts';
import { Sheet } from '../../ui/parts.tsx';
import { Minutes, USUAL_COUNT } from './minutes.tsx';
import { PlanSetup } from './planSetup.tsx';
import { RideChoice } from './rideChoice.tsx';
import type { ClinicProps } from './services.ts';
import { sentenceOf } from '../../words/problems.ts';
import { planTitle } from '../../words/group.ts';
import { Lines } from '../../ui/paper.tsx';
import { words } from '../../words/words.ts';
import { Button } from '../../ui/controls.tsx';

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
