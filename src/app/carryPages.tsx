/**
 * The pages that carry things between devices, joined to the game: handing out, joining, handing back, collecting,
 * and a club's own store. Fetches their owners and follows them.
 */
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { startQueue } from '../core/group/turnQueue.ts';
import type { ClinicPlan } from '../core/group/plan.ts';
import { offerFile } from '../charts/file.ts';
import { nameOf } from '../words/group.ts';
import type { SavedRound } from '../core/group/savedRound.ts';
import type { ClinicDesk } from '../features/clinic/services.ts';
import { createFormat } from '../words/format.ts';
import type { Page } from '../ui/page.ts';
import { useAnswer } from '../ui/useAnswer.ts';
import { Button } from '../ui/controls.tsx';
import { BackWay, Sheet } from '../ui/parts.tsx';
import { useFollowed } from '../ui/useFollowed.ts';
import type { Services } from './services.ts';
import type { Send, State } from '../state/store.ts';
import { common } from '../words/common.ts';
import { words } from '../words/words.ts';
import { Collect } from '../features/handover/collect.tsx';
import { thisHost } from '../features/handover/readiness.ts';
import { HandBack } from '../features/handover/handBack.tsx';
import { HandOut } from '../features/handover/handOut.tsx';
import { Join } from '../features/handover/join.tsx';
import { NOTHING_READ, readText } from '../features/handover/reading.ts';
import { isOnlyHere, siteForOthers } from '../features/handover/site.ts';
import { readStoreLink } from '../features/handover/storeCode.ts';
import { StoreLine } from '../features/handover/storeLine.tsx';
import { StorePage } from '../features/handover/storePage.tsx';

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

/** What other devices can open; undefined while the server of this computer is asked for its address in the network. */
function useSite(): string | null | undefined {
  const [site, setSite] = useState<string | null | undefined>(() =>
    isOnlyHere(location.href) ? undefined : siteForOthers(location.href, null),
  );
  useEffect(() => {
    if (site !== undefined) return;
    fetch('tablets.json', { cache: 'no-store' })
      .then((answer) => (answer.ok ? answer.json() : null))
      .then((tablets: unknown) => setSite(siteForOthers(location.href, tablets)))
      .catch(() => setSite(null));
  }, []);
  return site;
}

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
  const round: SavedRound = {
    plan,
    deviceId: desk.newId(),
    round: startQueue(plan),
    startedAtMs: desk.now(),
    feels: {},
  };
  await desk.onSaveRound(round);
}

function toSession(send: Send, planId: string): void {
  send({ kind: 'address', address: { view: 'clinic', rest: `s/${planId}` } });
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
  const [planId, setPlanId] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    let wanted = true;
    const tell = (id: string | null): void => {
      if (wanted) setPlanId(id);
    };
    readText(NOTHING_READ, arrived).then(
      ({ arrivals }) =>
        tell(
          arrivals.flatMap((one) => (one.kind === 'rides' ? one.read.set.records : []))[0]?.planId ?? null,
        ),
      () => tell(null),
    );
    return () => {
      wanted = false;
    };
  }, [arrived]);
  return planId;
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
    href: `#clinic/${encodeURIComponent(`s/${plan.id}/tablets`)}`,
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

/** While a session is on the screen its store is asked so often (ms): a ride of another tablet is seen within five seconds. */
const ASKED_EVERY_MS = 2_000;

/** What goes to a club's own store from a session, on its pages; meanwhile what others ride comes from there. */
export function Outgoing(
  props: Pick<SiteProps, 'services'> & { readonly planId: string | null },
): JSX.Element {
  const { services, planId } = props;
  const store = useFetched(services.carry.store).one;
  useFollowed(store);
  const agreed = store !== null && store.agreed() !== null;
  const sync = (inPassing: boolean): void => {
    // What went wrong stands in the store's own state.
    services.carry.sync(planId, inPassing).catch(() => undefined);
  };
  useEffect(() => {
    if (!agreed || planId === null) return undefined;
    sync(true);
    const timer = window.setInterval(() => {
      if (document.visibilityState === 'visible') sync(true);
    }, ASKED_EVERY_MS);
    return () => window.clearInterval(timer);
  }, [agreed, planId]);
  return (
    <StoreLine
      store={store}
      standing={store?.state(planId ?? undefined) ?? null}
      onFetch={() => sync(false)}
    />
  );
}

/** A club's own store: asking, and what has gone there; settings may come in the address. */
export function ClubStorePage(props: Pick<SiteProps, 'services'> & { readonly place: string }): JSX.Element {
  const { services, place } = props;
  const fetched = useFetched(services.carry.store);
  const site = useSite();
  const store = fetched.one;
  useFollowed(store);
  const sync = (): void => void services.carry.sync(null, false).catch(() => undefined);
  const [cut, setCut] = useState(false);
  const form = useRef('');
  useEffect(() => {
    if (store === null || place === 'store') return;
    const address = readStoreLink(`#clinic/${place}`, location.href);
    setCut(address === null);
    if (address !== null) store.offer(address, 'code');
    // A password does not stay in the address bar.
    location.replace('#clinic/store');
  }, [store, place]);
  useEffect(() => {
    if (store !== null && store.agreed() !== null) sync();
  }, [store]);
  if (store === null || site === undefined)
    return <Waiting title={handover('store-title')} fetched={fetched} />;
  const offered = store.offered();
  // Another offer begins another form; one that was agreed to or turned down leaves it as it is.
  if (offered !== null) form.current = JSON.stringify(offered);
  return (
    <BackWay.Provider value={{ href: '#clinic', word: clinic('title') }}>
      <StorePage
        key={`${form.current} ${cut}`}
        agreed={store.agreed()}
        offered={offered}
        sent={store.sent()}
        standing={store.state()}
        here={location.href}
        site={site}
        cut={cut}
        onOffer={(address) => store.offer(address, 'code')}
        onForget={() => void store.turnDown()}
        onTest={() => store.test()}
        onAgree={async (address) => {
          const answer = await store.agree(address);
          if (answer !== 'bad-address') sync();
          return answer;
        }}
        onStop={() => void store.stop()}
        onFetch={sync}
      />
    </BackWay.Provider>
  );
}

function Waiting(props: {
  readonly title: string;
  readonly fetched: Pick<Fetched<unknown>, 'failed' | 'again'>;
}): JSX.Element {
  const { failed, again } = props.fetched;
  return (
    <Sheet title={props.title}>
      <section class="paper">
        <output>{failed ? clinic('openFailed') : clinic('opening')}</output>
        {failed && (
          <div class="buttons">
            <Button strong data-fetch-again onClick={again}>
              {common('coming-tryAgain')}
            </Button>
          </div>
        )}
      </section>
    </Sheet>
  );
}

/** An owner that is fetched. */
interface Fetched<T> {
  /** Null while it is not there. */
  readonly one: T | null;
  readonly failed: boolean;
  readonly again: () => void;
}

/** An owner, once it is there; asked for once, and again when a person says so. */
function useFetched<T>(fetchIt: () => Promise<T>): Fetched<T> {
  const [times, setTimes] = useState(0);
  const one = useAnswer(fetchIt, [times]);
  return {
    one: one === 'waiting' || one === 'failed' ? null : one,
    failed: one === 'failed',
    again: () => setTimes(times + 1),
  };
}
