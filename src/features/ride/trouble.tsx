/** What a person sees when something in the game broke down: what happened, and what can be done now. */
import type { JSX } from 'preact';
import { Dialog } from '../../ui/parts.tsx';
import type { RideServices } from './services.ts';
import type { Send, State } from '../../state/store.ts';
import type { TroubleShown } from '../../state/unfinished.ts';
import { words } from '../../words/words.ts';
import { Button } from '../../ui/controls.tsx';

const say = words('ride');

/** The browser closes dialogs with Esc by itself; other pause keys are ours, and no pause again. */
export const onPauseKey = (state: State, goOn: () => void) => (event: KeyboardEvent) => {
  if (event.code === 'Escape' || !state.settings.keys.pause.includes(event.code)) return;
  event.stopPropagation();
  goOn();
};

/** A ride that stands still because something broke. */
export function RideTrouble(props: {
  readonly state: State;
  readonly trouble: TroubleShown;
  readonly leaveTo: string;
  readonly services: RideServices;
  readonly send: Send;
}): JSX.Element {
  const { state, trouble, leaveTo, services, send } = props;
  const { ride, kept, again } = trouble;
  const canGoOn = ride !== null && !again;
  const goOn = (): void => {
    if (canGoOn) send({ kind: 'go-on', ride });
  };
  const keep = async (): Promise<void> => {
    if (ride === null) return;
    const told = await services.keepUnfinished(ride);
    if (told.ok) location.hash = '#progress';
  };
  return (
    <Dialog
      title={say('trouble-ride-title')}
      class="paused"
      {...(canGoOn ? { onClose: goOn } : {})}
      onKey={onPauseKey(state, goOn)}
    >
      <p data-trouble="ride">
        {ride === null ? say('trouble-watching') : again ? say('trouble-again') : say('trouble-ride')}
      </p>
      {kept !== null && (
        <p data-trouble-kept={String(kept)}>{kept ? say('trouble-kept') : say('trouble-notKept')}</p>
      )}
      <div class="buttons">
        {canGoOn && (
          <Button strong data-ride-on autofocus onClick={goOn}>
            {say('trouble-goOn')}
          </Button>
        )}
        {ride !== null && kept !== null && (
          <Button strong={!canGoOn} data-keep-unfinished onClick={() => void keep()}>
            {say('trouble-keep')}
          </Button>
        )}
        <a class="button" href={leaveTo}>
          {ride === null ? say('trouble-back') : say('leave')}
        </a>
      </div>
      <Report services={services} />
    </Dialog>
  );
}

/** Something broke while nobody rides: one sentence that can be put away. */
export function PageTrouble(props: {
  readonly services: Pick<RideServices, 'saveReport'>;
  readonly send: Send;
}): JSX.Element {
  const { services, send } = props;
  return (
    <section class="page-trouble paper" role="alert" data-trouble="page">
      <p>{say('trouble-page')}</p>
      <div class="buttons">
        <Button strong onClick={() => location.reload()}>
          {say('trouble-reload')}
        </Button>
        <Button data-close-trouble onClick={() => send({ kind: 'found', found: { trouble: null } })}>
          {say('trouble-close')}
        </Button>
      </div>
      <Report services={services} />
    </section>
  );
}

function Report({ services }: { readonly services: Pick<RideServices, 'saveReport'> }): JSX.Element {
  return (
    <p class="quiet trouble-report">
      <Button look="link" data-save-report onClick={() => services.saveReport()}>
        {say('trouble-report')}
      </Button>{' '}
      {say('trouble-reportHint')}
    </p>
  );
}
