/**
 * The frame of a ride: places for picture, instruments and pads, which others fill, and what lies over them
 * while nobody rides (loading, counting down, paused) or the levers are tried for the first time.
 */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { shiftsInFront } from '../../core/model/shifters.ts';
import { hashOf } from '../../state/address.ts';
import { sessionPlace } from '../../state/groupTurn.ts';
import { hasFewPads, type KeyAction, type Settings } from '../../core/settings/settings.ts';
import { KeyList, Sign } from '../../ui/keyList.tsx';
import { Dialog, type Page } from '../../ui/parts.tsx';
import { settingsOfRide, TRIAL } from '../../state/rideLevel.ts';
import { RIDE_PLACES } from '../../state/ridePlaces.ts';
import { RideSpot } from '../../ui/rideSpot.tsx';
import { asksFirstSteps } from '../../state/rideState.ts';
import type { Action, RideFailure, RideShown, Send, State } from '../../state/store.ts';
import type { RideServices } from './services.ts';
import { onPauseKey, RideTrouble } from './trouble.tsx';
import { firstStepsAloud, stepDone } from '../../words/firstSteps.ts';
import { words } from '../../words/words.ts';
import { common, keyName, levelWords } from '../../words/common.ts';
import { Button } from '../../ui/controls.tsx';
import type { FirstStepShown } from '../../state/firstSteps.ts';

const say = words('ride');

export const ridePage: Page<RideServices> = (state, send, services) => {
  const { ride } = state;
  if (ride === null) return <main class="ride" />;
  const { title, sentence, lang } = levelWords(ride.level, state.levels);
  const isByEar = state.settings.byEar;
  return (
    <main class="ride" key={`${state.rest} ${ride.attempt}`}>
      <h1 class="unseen">{ride.watchFromM === null ? say('title', { level: title }) : say('watching')}</h1>
      {/* A screen reader hands every key to an application that has the focus; browsing, it would keep arrows and letters. */}
      <RideStage title={title} />
      {/* Else watching looks like riding, with hands that do nothing. */}
      {ride.watchFromM !== null && ride.phase !== 'ready' && (
        <p class="ride-watching" aria-hidden="true">
          {say('watching')}
        </p>
      )}
      {ride.phase === 'ready' && (
        <output class="ride-ready" aria-live={isByEar && ride.failed === null ? 'off' : 'polite'}>
          <div class="paper">
            <strong lang={lang}>{title}</strong>
            {/* Whoever does the first steps has enough to read; they come without a countdown. */}
            {(!asksFirstSteps(ride, state) || ride.failed !== null) &&
              (ride.watchFromM === null ? <p lang={lang}>{sentence}</p> : <p>{say('watching')}</p>)}
            {ride.difficultyStep !== 0 && <p>{ride.difficultyStep > 0 ? say('steeper') : say('gentler')}</p>}
            {ride.failed !== null ? (
              <Failed why={ride.failed} again={againOf(state, ride)} send={send} />
            ) : (
              <span class={ride.countdownS === null ? 'loading' : 'countdown'} data-countdown>
                {ride.countdownS ?? common('riding-loading')}
              </span>
            )}
            {ride.failed === null && ride.countdownS === null && (
              <a class="button ride-late" href={wayOut(ride, state.rest)}>
                {ride.watchFromM === null ? say('leave') : say('backToDebrief')}
              </a>
            )}
          </div>
        </output>
      )}
      {/* Read aloud when it changes; by ear the ride says it itself. */}
      <output class="unseen">
        {ride.firstSteps !== null && !isByEar && firstStepsAloud(ride.firstSteps, state.settings)}
      </output>
      {ride.phase === 'riding' && ride.countdownS === null && ride.firstSteps !== null && (
        <FirstStepsPanel shown={ride.firstSteps} settings={state.settings} send={send} />
      )}
      {ride.phase === 'riding' && ride.countdownS !== null && (
        <output class="ride-ready" aria-live={isByEar ? 'off' : 'polite'}>
          <span class="paper countdown" data-countdown>
            {ride.countdownS}
          </span>
        </output>
      )}
      {ride.phase === 'paused' && state.dialog === null && state.trouble === null && (
        <Paused state={state} ride={ride} send={send} />
      )}
      {state.trouble?.place === 'ride' && (
        <RideTrouble
          {...{ state, services, send }}
          trouble={state.trouble}
          leaveTo={wayOut(ride, state.rest)}
        />
      )}
    </main>
  );
};

/** Has the focus from its beginning, also of a ride that is begun once more on the same page. */
function RideStage({ title }: { readonly title: string }): JSX.Element {
  const hands = useRef<HTMLDivElement | null>(null);
  useEffect(() => hands.current?.focus({ preventScroll: true }), []);
  return (
    // Orca 43 enters an application without a word and goes on browsing; one inside it, if there is something to read in
    // it, is named and gets the keys.
    <div role="application" aria-label={say('stage')}>
      <div
        ref={hands}
        class="ride-stage"
        role="application"
        aria-label={title}
        tabIndex={-1}
        data-takes-focus
      >
        <p class="unseen">{say('hands')}</p>
        {RIDE_PLACES.map((place) => (
          <RideSpot key={place} place={place} />
        ))}
      </div>
    </div>
  );
}

/** The same ride from its beginning. */
function againOf(state: State, ride: RideShown): Action {
  if (ride.watchFromM !== null) return { kind: 'watch', fromM: ride.watchFromM };
  if (ride.goesOn !== null && ride.failed !== null) return { kind: 'go-on', ride: ride.goesOn };
  if (ride.group !== null) return { kind: 'ride-turn', turn: ride.group };
  return { kind: 'ask-ride', rest: state.rest };
}

/** A check ride and a turn in a group are ridden once: what was seen of the road would be known the second time. */
function mayBeginAnew({ level, group, watchFromM }: RideShown): boolean {
  return watchFromM !== null || (group === null && level.teaches !== 'check');
}

/** Where somebody goes who leaves a ride. */
function wayOut({ watchFromM, group }: RideShown, rest: string): string {
  if (watchFromM !== null) return '#debrief';
  if (rest === TRIAL) return '#bench/edit';
  return group === null ? '#levels' : hashOf({ view: 'clinic', rest: sessionPlace(group.planId) });
}

function Failed(props: {
  readonly why: RideFailure;
  readonly again: Action;
  readonly send: Send;
}): JSX.Element {
  const { why, again, send } = props;
  return (
    <>
      <p data-failed={why}>{say(`failed-${why}`)}</p>
      <div class="buttons">
        <Button strong onClick={() => send(again)}>
          {say('again')}
        </Button>
        <a class="button" href="#levels">
          {common('nav-levels')}
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
  const rideOn = (): void => send({ kind: 'ride', shows: { phase: 'riding', countdownS: null } });
  const watching = ride.watchFromM !== null;
  const settings = settingsOfRide(state.settings, ride);
  return (
    <Dialog title={common('riding-paused')} class="paused" onClose={rideOn} onKey={onPauseKey(state, rideOn)}>
      <p>{watching ? say('watching') : say('pausedHint')}</p>
      <div class="buttons">
        <Button strong data-ride-on onClick={rideOn} autofocus>
          {watching ? say('watchOn') : common('riding-on')}
        </Button>
        {mayBeginAnew(ride) && (
          <Button data-restart onClick={() => send(againOf(state, ride))}>
            {say('restart')}
          </Button>
        )}
        <Button onClick={() => send({ kind: 'open-dialog', dialog: 'settings' })}>
          {common('nav-settings')}
        </Button>
        <a class="button" href={wayOut(ride, state.rest)}>
          {watching ? say('backToDebrief') : say('leave')}
        </a>
      </div>
      {!watching && (
        <>
          <h3>{say('controls')}</h3>
          <p class="paused-pads">{say('controlsPads')}</p>
          <KeyList
            keys={settings.keys}
            twoShifters={shiftsInFront(settings.bike)}
            few={hasFewPads(ride.level, settings)}
          />
        </>
      )}
    </Dialog>
  );
}

function FirstStepsPanel(props: {
  readonly shown: FirstStepShown;
  readonly settings: Settings;
  readonly send: Send;
}): JSX.Element | null {
  const { asked, instead, done } = props.shown;
  const { settings, send } = props;
  const skip = (): void => {
    send({ kind: 'set', settings: { leversKnown: true } });
    // The button goes with it; keys belong to the ride again.
    document.querySelector<HTMLElement>('[data-takes-focus]')?.focus();
  };
  if (asked === null && done === null) return null;
  return (
    <div class="first-steps" data-first-step={asked ?? 'rolling'}>
      <div class="paper" aria-hidden="true">
        {asked === null ? (
          <p class="first-steps-done">{done !== null && stepDone(done, settings.bike)}</p>
        ) : (
          <>
            {instead !== null && (
              <p class="first-steps-instead">{`${say(`wrong-${instead}`)} ${say('instead')}`}</p>
            )}
            <Sign action={asked} />
            <strong>{say(`step-${asked}`)}</strong>
            <How action={asked} settings={settings} />
          </>
        )}
      </div>
      {asked !== null && (
        <Button data-skip-first-steps onClick={skip}>
          {say('skip')}
        </Button>
      )}
    </div>
  );
}

/** The first steps with the levers: what to do now, as a sign, a word and this device's key or pad. */
function How({ action, settings }: { readonly action: KeyAction; readonly settings: Settings }): JSX.Element {
  const isHeld = action === 'ease' && settings.holdMode === 'hold';
  return (
    <>
      <span class="first-steps-key">
        {isHeld && `${say('hold')} `}
        <kbd>{keyName(settings.keys[action][0] ?? '')}</kbd>
      </span>
      <span class="first-steps-pad">{say(isHeld ? 'holdPad' : 'pad')}</span>
    </>
  );
}
