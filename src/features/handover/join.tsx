/** A tablet's page to join: reads the coach's plan, shows what it is, and keeps it only when told to. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { canonicalJson } from '../../core/math/hash.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Format } from '../../words/format.ts';
import { Sheet } from '../../ui/parts.tsx';
import type { HandoverWords } from './words.ts';
import { isPlanHere, PlanCard } from './planCard.tsx';
import { Reader } from './reader.tsx';
import type { ReadRidesAway } from './services.ts';
import './handover.css';
import './tablets.css';

/** What the page is given. */
interface JoinProps {
  /** What stood in the link behind `#join/`, or empty. */
  readonly arrived: string;
  readonly levels: readonly Level[];
  /** Plans of sessions this device is in. */
  readonly joined: readonly ClinicPlan[];
  readonly words: HandoverWords;
  readonly format: Format;
  readonly readRides: ReadRidesAway;
  /** Keeps the plan as a session under its own id. */
  readonly onJoin: (plan: ClinicPlan) => void;
  /** Opens a session this device is in. */
  readonly onGo: (planId: string) => void;
}

/** The page. */
export function Join(props: JoinProps): JSX.Element {
  const { words } = props;
  const [plan, setPlan] = useState<ClinicPlan | null>(null);
  // A plan that was turned down does not come back from the same link.
  const [arrived, setArrived] = useState(props.arrived);
  return (
    <Sheet title={words.join.title} intro={words.join.intro}>
      <div class="handover">
        {plan === null ? (
          <Reader
            words={words}
            arrived={arrived}
            readRides={props.readRides}
            onArrival={(arrival) => {
              if (arrival.kind !== 'plan') return words.reader.isRides;
              setPlan(arrival.plan);
              return null;
            }}
          />
        ) : (
          <Found
            props={props}
            plan={plan}
            onNo={() => {
              setArrived('');
              setPlan(null);
            }}
          />
        )}
      </div>
    </Sheet>
  );
}

function Found(found: {
  readonly props: JoinProps;
  readonly plan: ClinicPlan;
  readonly onNo: () => void;
}): JSX.Element {
  const { props, plan, onNo } = found;
  const { words, levels, format, joined, onJoin, onGo } = props;
  const say = words.join;
  const known = joined.find(({ id }) => id === plan.id);
  const same = known !== undefined && canonicalJson(known) === canonicalJson(plan);
  const here = isPlanHere(plan, levels);
  return (
    <section class="paper" aria-label={say.found}>
      <p>{say.found}</p>
      <PlanCard {...{ plan, levels, format, words }} />
      {!here && <p class="reader-problem">{say.missing}</p>}
      {known !== undefined && <p>{same ? say.here : say.other}</p>}
      <div class="buttons">
        {known === undefined ? (
          <button type="button" class="button strong" data-join disabled={!here} onClick={() => onJoin(plan)}>
            {say.join}
          </button>
        ) : (
          <button type="button" class="button strong" data-go onClick={() => onGo(plan.id)}>
            {say.go}
          </button>
        )}
        <button type="button" class="button" data-no onClick={onNo}>
          {say.no}
        </button>
      </div>
    </section>
  );
}
