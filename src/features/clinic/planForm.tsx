/** A plan of one's own: what is ridden, on what, how often, with which help, what the group sees. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type ClinicPlan, parsePlan } from '../../core/group/plan.ts';
import { cleanText } from '../../core/group/texts.ts';
import type { Problem } from '../../core/level/problems.ts';
import { Sheet } from '../../ui/parts.tsx';
import { Minutes, USUAL_COUNT } from './minutes.tsx';
import { PlanSetup } from './planSetup.tsx';
import { RideChoice } from './rideChoice.tsx';
import type { ClinicProps } from './services.ts';
import { sentenceOf } from '../../words/problems.ts';

const TITLE_CHARACTERS = 80;

const EMPTY: Omit<ClinicPlan, 'id' | 'seed'> = {
  schema: 1,
  title: '',
  rides: [],
  seedRule: 'same',
  bike: 'own',
  riderId: 'by-feel',
  attempts: 2,
  aids: 'as-level',
  shows: 'group-picture',
  order: 'rotate',
  audience: 'everyone',
};

/** The page; `from` is the plan it begins as a copy of. */
export function PlanForm(props: {
  readonly props: ClinicProps;
  readonly from: ClinicPlan | null;
}): JSX.Element {
  const { words, levels, newId, newSeed, onSavePlan, onPlace } = props.props;
  const [plan, setPlan] = useState<ClinicPlan>(() => ({
    ...(props.from ?? EMPTY),
    id: newId(),
    seed: newSeed(),
  }));
  const [problems, setProblems] = useState<readonly string[]>([]);
  const change = (part: Partial<ClinicPlan>): void => setPlan({ ...plan, ...part });
  const save = (place: string): void => {
    const whole = {
      ...plan,
      title: cleanText(plan.title, TITLE_CHARACTERS),
      audience: audienceOf(plan, levels),
    };
    const parsed = parsePlan(whole, new Set(levels.map((level) => level.id)));
    if (!parsed.ok) return setProblems(said(whole, parsed.problems, words));
    onSavePlan(parsed.plan);
    return onPlace(place);
  };
  return (
    <Sheet title={words.form.title}>
      <form class="clinic plan-form paper" onSubmit={(event) => event.preventDefault()}>
        <label class="field wide">
          <span>{words.form.name}</span>
          <input
            type="text"
            name="title"
            maxLength={TITLE_CHARACTERS}
            placeholder={words.form.nameHint}
            value={plan.title}
            onInput={(event) => change({ title: event.currentTarget.value })}
          />
        </label>
        <RideChoice rides={plan.rides} props={props.props} onChange={(rides) => change({ rides })} />
        <PlanSetup plan={plan} change={change} words={words} />
        <p class="wide">
          <Minutes plan={plan} riders={USUAL_COUNT} props={props.props} />
        </p>
        {problems.length > 0 && <Problems title={words.form.problems} lines={problems} />}
        <div class="buttons wide">
          <button type="button" class="button strong" data-save-go onClick={() => save(`go/${plan.id}`)}>
            {words.form.saveAndGo}
          </button>
          <button type="button" class="button" data-save onClick={() => save('')}>
            {words.form.save}
          </button>
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
function said(
  plan: ClinicPlan,
  problems: readonly Problem[],
  words: ClinicProps['words'],
): readonly string[] {
  const missing: string[] = [];
  if (plan.title === '') missing.push(words.form.noTitle);
  if (plan.rides.length === 0) missing.push(words.form.noRide);
  return missing.length > 0 ? missing : problems.map(sentenceOf);
}

function Problems(props: { readonly title: string; readonly lines: readonly string[] }): JSX.Element {
  return (
    <div class="notice wide" role="alert">
      <strong>{props.title}</strong>
      <ul>
        {props.lines.map((line, index) => (
          <li key={index}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
