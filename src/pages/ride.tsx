/**
 * The frame of a ride: places for picture, instruments and pads, which others fill, and what lies over them
 * while nobody rides (loading, counting down, paused).
 */
import type { JSX } from 'preact';
import { KeyList } from './keyList.tsx';
import type { Page } from './page.ts';
import { Dialog } from './parts.tsx';
import { TRIAL } from './rideLevel.ts';
import type { Action, RideShown, Send, State } from './store.ts';
import { words } from './words.ts';

/** Elements the ride is put into, by their `data-place`. */
export const RIDE_PLACES = ['picture', 'hud', 'pads'] as const;
export type RidePlace = (typeof RIDE_PLACES)[number];

export const ridePage: Page = (state, send) => {
  const { ride } = state;
  if (ride === null) return <main class="ride" />;
  const { level } = ride;
  return (
    <main class="ride" key={`${state.rest} ${ride.attempt}`}>
      <h1 class="unseen">{words.ride.title(level.title)}</h1>
      {RIDE_PLACES.map((place) => (
        <div key={place} class={`ride-${place}`} data-place={place} />
      ))}
      {ride.phase === 'ready' && (
        <output class="ride-ready">
          <div class="paper">
            <strong>{level.title}</strong>
            <p>{ride.watchFromM === null ? level.sentence : words.after.watching}</p>
            {ride.notch !== 0 && <p>{ride.notch > 0 ? words.after.steeper : words.after.gentler}</p>}
            {ride.failed ? (
              <Failed rest={state.rest} send={send} />
            ) : (
              <span class={ride.countdownS === null ? 'loading' : 'countdown'} data-countdown>
                {ride.countdownS ?? words.ride.loading}
              </span>
            )}
          </div>
        </output>
      )}
      {ride.phase === 'riding' && ride.countdownS !== null && (
        <output class="ride-ready">
          <span class="paper countdown" data-countdown>
            {ride.countdownS}
          </span>
        </output>
      )}
      {ride.phase === 'paused' && state.dialog === null && <Paused state={state} ride={ride} send={send} />}
    </main>
  );
};

function Failed({ rest, send }: { readonly rest: string; readonly send: Send }): JSX.Element {
  return (
    <>
      <p>{words.ride.failed}</p>
      <div class="buttons">
        <button type="button" class="button strong" onClick={() => send({ kind: 'ask-ride', levelId: rest })}>
          {words.ride.again}
        </button>
        <a class="button" href="#levels">
          {words.nav.levels}
        </a>
      </div>
    </>
  );
}

function Paused(props: {
  readonly state: State;
  readonly ride: RideShown;
  readonly send: Send;
}): JSX.Element {
  const { state, ride, send } = props;
  const rideOn = (): void => send({ kind: 'ride-phase', phase: 'riding', countdownS: null });
  const watching = ride.watchFromM !== null;
  const again: Action = watching
    ? { kind: 'watch', fromM: ride.watchFromM }
    : { kind: 'ask-ride', levelId: state.rest };
  return (
    <Dialog
      title={words.ride.paused}
      class="paused"
      onClose={rideOn}
      onKey={(event) => {
        // The browser closes dialogs with Esc by itself; other pause keys are ours, and no pause again.
        if (event.code === 'Escape' || !state.settings.keys.pause.includes(event.code)) return;
        event.stopPropagation();
        rideOn();
      }}
    >
      <p>{words.ride.pausedHint}</p>
      <div class="buttons">
        <button type="button" class="button strong" data-ride-on onClick={rideOn} autofocus>
          {words.ride.on}
        </button>
        <button type="button" class="button" onClick={() => send(again)}>
          {words.ride.restart}
        </button>
        <button
          type="button"
          class="button"
          onClick={() => send({ kind: 'open-dialog', dialog: 'settings' })}
        >
          {words.nav.settings}
        </button>
        <a class="button" href={watching ? '#debrief' : state.rest === TRIAL ? '#bench/edit' : '#levels'}>
          {watching ? words.after.backToDebrief : words.ride.leave}
        </a>
      </div>
      <h3>{words.ride.controls}</h3>
      <KeyList keys={state.settings.keys} />
    </Dialog>
  );
}
