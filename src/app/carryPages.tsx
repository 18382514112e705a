/**
 * The pages that carry plans and rides between devices, joined to the game: handing out, joining, handing back and
 * collecting. They fetch their owners and follow them; a club's own store is in `storePages.tsx`.
 */
import type { JSX } from 'preact';
import type { ClinicPlan } from '../core/group/plan.ts';
import { offerFile } from '../ui/file.ts';
import { nameOf } from '../words/group.ts';
import type { SavedRound } from '../core/group/savedRound.ts';
import type { ClinicDesk } from '../features/clinic/services.ts';
import { newSession } from '../features/clinic/session.ts';
import { createFormat } from '../words/format.ts';
import type { Page } from '../ui/parts.tsx';
import { BackWay, Sheet } from '../ui/parts.tsx';
import { useAnswer, useFollowed } from '../ui/hooks.ts';
import { useFetched, Waiting } from './fetched.tsx';
import type { Services } from './services.ts';
import { Outgoing } from './storePages.tsx';
import { useSite } from './useSite.ts';
import { hashOf } from '../state/address.ts';
import { sessionPlace } from '../state/groupTurn.ts';
import type { Send, State } from '../state/store.ts';
import { common } from '../words/common.ts';
import { words } from '../words/words.ts';
import { Collect } from '../features/handover/collect.tsx';
import { thisHost } from '../features/handover/readiness.ts';
import { HandBack } from '../features/handover/handOut.tsx';
import { HandOut } from '../features/handover/handOut.tsx';
import { Join } from '../features/handover/join.tsx';
import { NOTHING_READ, readText } from '../features/handover/reading.ts';

const clinic = words('clinic');
const handover = words('handover');

interface SiteProps {
  readonly state: State;
  readonly send: Send;
  readonly services: Services;
}

type Tab = 'out' | 'back' | 'collect';

const saveFile = (name: string, text: string): void => offerFile(new Blob([text]), name);
/** Over plain http there is no clipboard to write to. */
const copy = async (text: string): Promise<boolean> => {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
};

/** `#join/…`: a tablet takes a plan. */
export const joinPage: Page<Services> = (state, send, services) => <Joining {...{ state, send, services }} />;

/** `#collect/…`: results that came by link. */
export const collectPage: Page<Services> = (state, send, services) => (
  <Arrived {...{ state, send, services }} />
);

function Joining({ state, send, services }: SiteProps): JSX.Element {
  const fetched = useFetched(() => services.clinic());
  const desk = fetched.one;
  if (desk === null) return <Waiting title={common('nav-join')} fetched={fetched} />;
  return (
    <Join
      // Another link begins anew, also while a plan is shown.
      key={state.rest}
      arrived={state.rest}
      levels={state.levels}
      readRides={services.carry.readRides}
      joined={desk.state().saved.rounds.map(({ plan }) => plan)}
      format={createFormat(state.settings.units)}
      onJoin={(plan) =>
        void services
          .clinic()
          .then((now) => join(now, plan))
          .then(() => toSession(send, plan.id))
      }
      onGo={(planId) => toSession(send, planId)}
    />
  );
}

/** The session keeps the plan's own id and seed, or its rides would be those of another session. */
async function join(desk: ClinicDesk, plan: ClinicPlan): Promise<void> {
  const { id, seed } = plan;
  await desk.onSaveRound(newSession(plan, [], { id, seed, deviceId: desk.newId(), atMs: desk.now() }));
}

function toSession(send: Send, planId: string): void {
  send({ kind: 'address', address: { view: 'clinic', rest: sessionPlace(planId) } });
}

function Arrived({ state, send, services }: SiteProps): JSX.Element {
  const fetched = useFetched(() => services.clinic());
  const desk = fetched.one;
  const planId = usePlanOf(state.rest);
  const rounds = desk?.state().saved.rounds ?? [];
  const latest = rounds.toSorted((a, b) => b.startedAtMs - a.startedAtMs)[0];
  const session = rounds.find(({ plan }) => plan.id === planId) ?? (planId === null ? latest : undefined);
  if (desk === null || planId === undefined)
    return <Waiting title={clinic('tablets-collect-title')} fetched={fetched} />;
  if (session === undefined)
    return (
      <Sheet title={clinic('tablets-collect-title')}>
        <section class="paper">
          <output>{handover('collect-noSession')}</output>
        </section>
      </Sheet>
    );
  return <CarryPage {...{ state, send, services, session }} tab="collect" arrived={state.rest} />;
}

/** The session the rides in a link belong to; undefined while it is being read, null where it does not say. */
function usePlanOf(arrived: string): string | null | undefined {
  const read = useAnswer(() => readText(NOTHING_READ, arrived), [arrived]);
  if (read === 'waiting') return undefined;
  if (read === 'failed') return null;
  const [record] = read.arrivals.flatMap((one) => (one.kind === 'rides' ? one.read.set.records : []));
  return record?.planId ?? null;
}

/** One of the three pages of a session that carry something. */
export function CarryPage(
  props: SiteProps & { readonly session: SavedRound; readonly tab: Tab; readonly arrived?: string },
): JSX.Element {
  const { state, services, session, tab, arrived = '' } = props;
  const { plan } = session;
  const fetched = useFetched(() => services.carry.session(plan));
  const carry = fetched.one;
  useFollowed(carry);
  const storeLine = <Outgoing services={services} planId={plan.id} />;
  const back = {
    href: hashOf({ view: 'clinic', rest: sessionPlace(plan.id, 'tablets') }),
    word: clinic('tabs-tablets'),
  };
  const site = useSite();
  if (carry === null || site === undefined)
    return <Waiting title={clinic(`tablets-${tab}-title`)} fetched={fetched} />;
  const shared = { plan, site, onSaveFile: saveFile, onCopy: copy };
  return (
    <BackWay.Provider value={back}>
      {tab === 'out' && <HandOut {...shared} host={thisHost()} />}
      {tab === 'back' && (
        <HandBack {...shared} handOver={carry.handOver(session.deviceId)} store={storeLine} />
      )}
      {tab === 'collect' && (
        <Collect
          plan={plan}
          collected={carry.collected()}
          arrived={arrived}
          readRides={services.carry.readRides}
          nameOf={nameOf}
          format={createFormat(state.settings.units)}
          now={() => Date.now()}
          onTake={(read) => carry.take(read)}
          store={storeLine}
        />
      )}
    </BackWay.Provider>
  );
}
