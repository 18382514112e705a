/**
 * The tap test: one tap for each turn of the pedals, 20 seconds from the first. Counts and hands the times to the
 * core; what becomes of the band is told to whoever asked.
 */
import type { JSX } from 'preact';
import { useEffect, useReducer, useRef } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { TAP_TEST_MS, tapCadence, type TapResult } from '../../core/coach/tapTest.ts';
import { words } from '../../words/words.ts';

const say = words('bike');

interface TapTestProps {
  readonly onBand: (lowRpm: number, highRpm: number) => void;
  readonly onUndo: () => void;
  /** Milliseconds from any start. */
  readonly clock?: () => number;
}

interface TapState {
  readonly timesMs: readonly number[];
  readonly nowMs: number;
  readonly result: TapResult | null;
  readonly undone: boolean;
}

type TapAction =
  | { readonly kind: 'tap' | 'clock'; readonly atMs: number }
  | { readonly kind: 'end' | 'undo' };

const WAITING: TapState = { timesMs: [], nowMs: 0, result: null, undone: false };
const CLOCK_MS = 200;
/** After the end a finger that taps on must not begin anew (ms). */
const REST_MS = 1_500;

/** The next state of a test. */
function reduceTaps(state: TapState, action: TapAction): TapState {
  const { timesMs, result } = state;
  switch (action.kind) {
    case 'tap': {
      if (result !== null && action.atMs - state.nowMs < REST_MS) return state;
      const begun = result === null ? timesMs : [];
      if (isOver(begun, action.atMs)) return ended(state, action.atMs);
      return { ...WAITING, timesMs: [...begun, action.atMs], nowMs: action.atMs };
    }
    case 'clock':
      if (result !== null) return state;
      return isOver(timesMs, action.atMs) ? ended(state, action.atMs) : { ...state, nowMs: action.atMs };
    case 'end':
      return ended(state, state.nowMs);
    case 'undo':
      return { ...state, undone: true };
  }
}

function isOver([first]: readonly number[], atMs: number): boolean {
  return first !== undefined && atMs - first >= TAP_TEST_MS;
}

function ended(state: TapState, nowMs: number): TapState {
  return { ...state, nowMs, result: tapCadence(state.timesMs) };
}

/** The pad and what it found. */
export function TapTest(props: TapTestProps): JSX.Element {
  const { onUndo, clock = () => performance.now() } = props;
  const [state, send] = useReducer(reduceTaps, WAITING);
  const running = state.timesMs.length > 0 && state.result === null;
  useEffect(() => {
    if (!running) return undefined;
    const timer = setInterval(() => send({ kind: 'clock', atMs: clock() }), CLOCK_MS);
    return () => clearInterval(timer);
  }, [running]);
  useTold(state.result, props.onBand);
  return (
    <section class="tap-test" aria-label={say('tap')}>
      <h3>{say('tap')}</h3>
      <p class="hint">{say('tap-intro')}</p>
      <Pad {...{ state, running }} onTap={() => send({ kind: 'tap', atMs: clock() })} />
      {running && (
        <Button small onClick={() => send({ kind: 'end' })}>
          {say('tap-stop')}
        </Button>
      )}
      <output data-tap={state.result === null ? '' : state.result.ok ? 'found' : state.result.code}>
        {state.result !== null && <Told result={state.result} state={state} />}
      </output>
      {state.result?.ok === true && !state.undone && (
        <Button
          small
          onClick={() => {
            send({ kind: 'undo' });
            onUndo();
          }}
        >
          {say('tap-undo')}
        </Button>
      )}
    </section>
  );
}

/** Tells a found band once. */
function useTold(result: TapResult | null, onBand: TapTestProps['onBand']): void {
  const told = useRef<TapResult | null>(null);
  useEffect(() => {
    if (result === told.current) return;
    told.current = result;
    if (result?.ok === true) onBand(result.lowRpm, result.highRpm);
  }, [result]);
}

/** Answers when the finger or key goes down, not when it comes up. */
function Pad(props: {
  readonly state: TapState;
  readonly running: boolean;
  readonly onTap: () => void;
}): JSX.Element {
  const { state, running, onTap } = props;
  const [first = 0] = state.timesMs;
  const leftS = Math.max(0, Math.ceil((TAP_TEST_MS - (state.nowMs - first)) / 1000));
  const isTapKey = ({ key }: KeyboardEvent): boolean => key === ' ' || key === 'Enter';
  return (
    <Button
      look="tap-pad"
      onPointerDown={onTap}
      onKeyDown={(event) => {
        if (!isTapKey(event)) return;
        event.preventDefault();
        if (!event.repeat) onTap();
      }}
      onKeyUp={(event) => {
        // Some browsers click when the key comes up again; that would be a second tap.
        if (isTapKey(event)) event.preventDefault();
      }}
      onClick={(event) => {
        // Only a click that no finger and no key made: that of an assistive device.
        if (event.detail === 0) onTap();
      }}
    >
      <b>
        {running
          ? say('tap-left', { seconds: leftS })
          : state.result === null
            ? say('tap-first')
            : say('tap-again')}
      </b>
      <span>{running ? say('tap-count', { count: state.timesMs.length }) : say('tap-firstHint')}</span>
    </Button>
  );
}

function Told(props: { readonly result: TapResult; readonly state: TapState }): JSX.Element {
  const { result, state } = props;
  if (!result.ok)
    return (
      <>
        {say(`tap-${result.code}`)} {say('tap-unchanged')}
      </>
    );
  if (state.undone) return <>{say('tap-undone')}</>;
  const { cadenceRpm, lowRpm, highRpm, missed, doubled } = result;
  return (
    <>
      {say('tap-found', { rpm: Math.round(cadenceRpm), low: lowRpm, high: highRpm })}
      {missed + doubled > 0 && ` ${say('tap-slips', { missed, doubled })}`}
    </>
  );
}
