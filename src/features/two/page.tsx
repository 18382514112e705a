/**
 * Two riders at once as a page of the game: choosing, riding side by side, and looking at both rides. What is
 * chosen lives as long as the page is open; a ride that is looked at goes to the store.
 */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { BIKES } from '../../core/model/presets.ts';
import type { Level } from '../../core/level/schema.ts';
import { inLearningOrder } from '../../core/coach/ladder.ts';
import type { Page } from '../../ui/page.ts';
import { Sheet } from '../../ui/parts.tsx';
import type { TwoServices } from './services.ts';
import { isChild, riderFor } from '../../core/settings/settings.ts';
import type { Send, State } from '../../state/store.ts';
import { After } from './after.tsx';
import { Choosing } from './choosing.tsx';
import type { Side } from './keys.ts';
import { Riding } from './riding.tsx';
import type { Pair, TwoChoice } from './choice.ts';
import { twoWords } from './words.ts';
import './two.css';

export const twoPage: Page<TwoServices> = (state, send, services) => <Two {...{ state, send, services }} />;

/** Rides of a series; the best of each rider's own counts. */
const SERIES = 3;
const NOTHING: Readonly<Record<Side, readonly number[]>> = { left: [], right: [] };

type Phase =
  | { readonly kind: 'choosing' }
  | { readonly kind: 'riding'; readonly attempt: number }
  | { readonly kind: 'after'; readonly rides: Pair };

interface Props {
  readonly state: State;
  readonly send: Send;
  readonly services: TwoServices;
}

function Two({ state, send, services }: Props): JSX.Element {
  const [choice, setChoice] = useState<TwoChoice>(() => usualChoice(state));
  const [phase, setPhase] = useState<Phase>({ kind: 'choosing' });
  const [attempt, setAttempt] = useState(0);
  /** Totals of the series so far, and those of the rides that are looked at. */
  const [before, setBefore] = useState(NOTHING);
  const [now, setNow] = useState<Readonly<Partial<Record<Side, number>>>>({});
  const ride = (next: TwoChoice): void => {
    const goesOn = next === choice && before.left.length < SERIES - 1;
    const { left, right } = now;
    setBefore(
      goesOn && left !== undefined && right !== undefined
        ? { left: [...before.left, left], right: [...before.right, right] }
        : NOTHING,
    );
    setNow({});
    setChoice(next);
    setAttempt(attempt + 1);
    setPhase({ kind: 'riding', attempt: attempt + 1 });
  };
  if (phase.kind === 'riding')
    return (
      <Riding
        key={phase.attempt}
        {...{ choice, services, send, dialogOpen: state.dialog !== null }}
        onLeave={() => setPhase({ kind: 'choosing' })}
        onDone={(rides) => setPhase({ kind: 'after', rides })}
      />
    );
  return (
    <Sheet title={twoWords.title} intro={twoWords.intro}>
      {phase.kind === 'choosing' ? (
        <Choosing
          levels={roads(state)}
          own={state.settings.bike}
          choice={choice}
          onChoice={setChoice}
          onRide={() => ride(choice)}
        />
      ) : (
        <After
          {...{ choice, services, send, units: state.settings.units }}
          rides={phase.rides}
          before={before}
          onTotal={(side, total) => setNow((all) => ({ ...all, [side]: total }))}
          onAgain={() => ride(choice)}
          onSwap={() => ride({ ...choice, sides: { left: choice.sides.right, right: choice.sides.left } })}
          onOther={() => setPhase({ kind: 'choosing' })}
        />
      )}
    </Sheet>
  );
}

function roads(state: State): readonly Level[] {
  return [...inLearningOrder(state.levels), ...state.ownLevels];
}

/** Both on the bike of the device, on the first road that suits it; children are spared the easing. */
function usualChoice(state: State): TwoChoice {
  const { bike, rider } = state.settings;
  const child = isChild(rider);
  const side = { bike, rider };
  const audience = child ? 'children' : 'everyone';
  const level = roads(state).find((one) => one.audience === audience) ?? state.levels[0] ?? null;
  const other = BIKES.some(({ id }) => id === bike.id) ? side : { bike, rider: riderFor(bike) };
  return { level, sides: { left: side, right: other }, autoEase: child, headStart: true };
}
