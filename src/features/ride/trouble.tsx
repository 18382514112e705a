/** What a person sees when something in the game broke down: what happened, and what can be done now. */
import type { JSX } from 'preact';
import { Dialog } from '../../ui/parts.tsx';
import type { RideServices } from './services.ts';
import type { Send, State } from '../../state/store.ts';
import type { TroubleShown } from '../../state/unfinished.ts';
import { rideWords } from './words.ts';
import { troubleWords, unfinishedWords } from '../../words/unfinished.ts';

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
  const say = troubleWords;
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
      title={say.rideTitle}
      class="paused"
      {...(canGoOn ? { onClose: goOn } : {})}
      onKey={(event) => {
        // The same keys as in a pause; the browser closes dialogs with Esc by itself.
        if (event.code === 'Escape' || !state.settings.keys.pause.includes(event.code)) return;
        event.stopPropagation();
        goOn();
      }}
    >
      <p data-trouble="ride">{ride === null ? say.watching : again ? say.again : say.ride}</p>
      {kept !== null && <p data-trouble-kept={String(kept)}>{kept ? say.kept : say.notKept}</p>}
      <div class="buttons">
        {canGoOn && (
          <button type="button" class="button strong" data-ride-on autofocus onClick={goOn}>
            {say.goOn}
          </button>
        )}
        {ride !== null && kept !== null && (
          <button
            type="button"
            class={canGoOn ? 'button' : 'button strong'}
            data-keep-unfinished
            onClick={() => void keep()}
          >
            {unfinishedWords.keep}
          </button>
        )}
        <a class="button" href={leaveTo}>
          {ride === null ? say.back : rideWords.leave}
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
  const say = troubleWords;
  return (
    <section class="page-trouble paper" role="alert" data-trouble="page">
      <p>{say.page}</p>
      <div class="buttons">
        <button type="button" class="button strong" onClick={() => location.reload()}>
          {say.reload}
        </button>
        <button
          type="button"
          class="button"
          data-close-trouble
          onClick={() => send({ kind: 'trouble', trouble: null })}
        >
          {say.close}
        </button>
      </div>
      <Report services={services} />
    </section>
  );
}

function Report({ services }: { readonly services: Pick<RideServices, 'saveReport'> }): JSX.Element {
  const say = troubleWords;
  return (
    <p class="quiet trouble-report">
      <button type="button" class="link" data-save-report onClick={() => services.saveReport()}>
        {say.report}
      </button>{' '}
      {say.reportHint}
    </p>
  );
}
