/** The clinic as a page of the game: fetches its owner, follows what it knows, and joins it to the store. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../ui/controls.tsx';
import { offerFile } from '../ui/file.ts';
import { createFormat } from '../words/format.ts';
import type { Page } from '../ui/parts.tsx';
import { Sheet } from '../ui/parts.tsx';
import { useFollowed } from '../ui/hooks.ts';
import type { Services } from './services.ts';
import { sessionOfPlace } from '../state/groupTurn.ts';
import type { Send, State } from '../state/store.ts';
import { words } from '../words/words.ts';
import { CarryPage } from './carryPages.tsx';
import { useFetched } from './fetched.tsx';
import { ClubStorePage, Outgoing } from './storePages.tsx';
import { ClinicPage } from '../features/clinic/page.tsx';
import { CARRY_TABS, type CarryTab } from '../features/clinic/stage.tsx';
import type { SavedRound } from '../core/group/savedRound.ts';
import type { ClinicDesk, ClinicProps } from '../features/clinic/services.ts';

const say = words('clinic');

export const clinicPage: Page<Services> = (state, send, services) => <Site {...{ state, send, services }} />;

interface SiteProps {
  readonly state: State;
  readonly send: Send;
  readonly services: Services;
}

function Site({ state, send, services }: SiteProps): JSX.Element {
  const { desk, told, open } = useDesk(services);
  if (state.rest === 'store' || state.rest.startsWith('store/'))
    return <ClubStorePage services={services} place={state.rest} />;
  const carrying = desk === null ? null : carryingAt(desk, state.rest);
  if (carrying !== null) return <CarryPage key={state.rest} {...{ state, send, services }} {...carrying} />;
  if (desk !== null) return <Open {...{ state, send, services, desk }} />;
  return (
    <Sheet title={say('title')}>
      <section class="paper">
        <output data-clinic-told={told}>{say(told)}</output>
        {told === 'elsewhere' && (
          <div class="buttons">
            <Button strong data-go-on-here onClick={open}>
              {say('goOnHere')}
            </Button>
          </div>
        )}
      </section>
    </Sheet>
  );
}

/** A place of a session that carries something, or null. */
function carryingAt(
  desk: ClinicDesk,
  place: string,
): { readonly session: SavedRound; readonly tab: CarryTab } | null {
  const at = sessionOfPlace(place);
  const tab = CARRY_TABS.find((one) => one === at?.tab);
  const session = desk.state().saved.rounds.find(({ plan }) => plan.id === at?.planId);
  return tab === undefined || session === undefined ? null : { session, tab };
}

function Open({ state, send, services, desk }: SiteProps & { readonly desk: ClinicDesk }): JSX.Element {
  const { units } = state.settings;
  const format = createFormat(units);
  useFollowed(desk);
  useEffect(() => desk.look(state.rest), [desk, state.rest]);
  const props: ClinicProps = {
    ...desk,
    ...desk.state(),
    // A level that was made a moment ago can be planned at once.
    ownLevels: state.ownLevels,
    ...wishes(send),
    place: state.rest,
    levels: state.levels,
    format,
    outgoing: <Outgoing services={services} planId={sessionOfPlace(state.rest)?.planId ?? null} />,
  };
  return <ClinicPage {...props} />;
}

function wishes(send: Send): Pick<ClinicProps, 'onSaveFile' | 'onPrint' | 'onDebrief' | 'onPlace'> {
  const type = (name: string): string =>
    name.endsWith('.csv') ? 'text/csv;charset=utf-8' : 'application/json';
  return {
    onSaveFile: (name, text) => offerFile(new Blob([text], { type: type(name) }), name),
    onPrint: () => window.print(),
    onDebrief: () => send({ kind: 'address', address: { view: 'debrief', rest: '' } }),
    onPlace: (place) => send({ kind: 'address', address: { view: 'clinic', rest: place } }),
  };
}

/** The owner, once it is there and until another tab takes over; `told` is what is said while there is none. */
function useDesk(services: Services): {
  readonly desk: ClinicDesk | null;
  readonly told: 'opening' | 'elsewhere' | 'openFailed';
  readonly open: () => void;
} {
  const { one, failed, again } = useFetched(() => services.clinic());
  const [gone, setGone] = useState<ClinicDesk | null>(null);
  useEffect(() => void one?.gone.then(() => setGone(one)), [one]);
  if (one !== null && one === gone) return { desk: null, told: 'elsewhere', open: again };
  return { desk: one, told: failed ? 'openFailed' : 'opening', open: again };
}
