/**
 * The pages of a group session: plans, who rides, handing the device round, the group picture, the report. Which
 * one is open is the owner's to keep, and so is everything else that must survive a reload.
 */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { ClinicHome } from './home.tsx';
import { GroupPicturePage } from './picture.tsx';
import { PlanForm } from './planForm.tsx';
import { Report } from './report.tsx';
import { Riders } from './riders.tsx';
import { Round } from './round.tsx';
import { sessionOfPlace } from '../../state/groupTurn.ts';
import { planById } from './session.ts';
import { SessionStage, type Tab, Tablets } from './stage.tsx';
import type { ClinicProps, InSession } from './services.ts';
import './clinic.css';
import './form.css';
import './riders.css';
import './stage.css';
import './round.css';
import './picture.css';
import './boards.css';
import './report.css';

/** The page for a place: empty, `plan`, `plan/<id>`, `go/<id>`, `s/<id>` and one of its tabs. */
export function ClinicPage(props: ClinicProps): JSX.Element {
  useArrival(props.place);
  const at = sessionOfPlace(props.place);
  const session = props.saved.rounds.find(({ plan }) => plan.id === at?.planId);
  if (at !== null && session !== undefined) return <Session {...{ props, session }} tab={tabOf(at.tab)} />;
  const [kind, id = ''] = props.place.split('/');
  const plan = planById(props, id);
  if (kind === 'plan') return <PlanForm key={id} props={props} from={plan ?? null} />;
  if (kind === 'go' && plan !== undefined) return <Riders key={id} props={props} plan={plan} />;
  return <ClinicHome {...props} />;
}

function Session({ props, session, tab }: InSession & { readonly tab: Tab }): JSX.Element {
  return (
    <SessionStage props={props} session={session} tab={tab}>
      {tab === 'round' && <Round props={props} session={session} />}
      {tab === 'picture' && <GroupPicturePage props={props} session={session} />}
      {tab === 'report' && <Report props={props} session={session} />}
      {tab === 'tablets' && <Tablets props={props} session={session} />}
    </SessionStage>
  );
}

function tabOf(text: string): Tab {
  return text === 'picture' || text === 'report' || text === 'tablets' ? text : 'round';
}

/** Another place begins at its top, with its heading in focus, as another page does. */
function useArrival(place: string): void {
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    window.scrollTo(0, 0);
    document.querySelector('h1')?.focus({ preventScroll: true });
  }, [place]);
}
