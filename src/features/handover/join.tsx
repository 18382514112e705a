/** A tablet's page to join: reads the coach's plan, shows what it is, and keeps it only when told to. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { canonicalJson } from '../../core/math/hash.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Format } from '../../words/format.ts';
import { Sheet } from '../../ui/parts.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import { isPlanHere, PlanCard } from './planCard.tsx';
import { Reader } from './reader.tsx';
import type { ReadRidesAway } from './services.ts';
import './handover.css';
import './tablets.css';
import { Button } from '../../ui/controls.tsx';

const say = words('handover');

interface JoinProps {
  /** What stood in the link behind `#join/`, or empty. */
  readonly arrived: string;
  readonly levels: readonly Level[];
  /** Plans of sessions this device is in. */
  readonly joined: readonly ClinicPlan[];
  readonly format: Format;
  readonly readRides: ReadRidesAway;
  /** Keeps the plan as a session under its own id. */
  readonly onJoin: (plan: ClinicPlan) => void;
  /** Opens a session this device is in. */
  readonly onGo: (planId: string) => void;
}

export function Join(props: JoinProps): JSX.Element {
  const [plan, setPlan] = useState<ClinicPlan | null>(null);
  // A plan that was turned down does not come back from the same link.
  const [arrived, setArrived] = useState(props.arrived);
  return (
    <Sheet title={common('nav-join')} intro={say('join-intro')}>
      <div class="handover">
        {plan === null ? (
          <Reader
            arrived={arrived}
            readRides={props.readRides}
            onArrival={(arrival) => {
              if (arrival.kind !== 'plan') return say('reader-isRides', { page: common('nav-collect') });
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
  const { levels, format, joined, onJoin, onGo } = props;
  const known = joined.find(({ id }) => id === plan.id);
  const same = known !== undefined && canonicalJson(known) === canonicalJson(plan);
  const here = isPlanHere(plan, levels);
  return (
    <section class="paper" aria-label={say('join-found')}>
      <p>{say('join-found')}</p>
      <PlanCard {...{ plan, levels, format }} />
      {!here && <p class="reader-problem">{say('join-missing')}</p>}
      {known !== undefined && <p>{same ? say('join-here') : say('join-other')}</p>}
      <div class="buttons">
        {known === undefined ? (
          <Button strong data-join disabled={!here} onClick={() => onJoin(plan)}>
            {say('join-join')}
          </Button>
        ) : (
          <Button strong data-go onClick={() => onGo(plan.id)}>
            {say('join-go')}
          </Button>
        )}
        <Button data-no onClick={onNo}>
          {say('join-no')}
        </Button>
      </div>
    </section>
  );
}
