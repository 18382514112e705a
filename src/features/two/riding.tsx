/** Two rides side by side: a half of the screen for each, with its own count and its own waiting. */
import type { RideResult } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { common } from '../../words/common.ts';
import { Button } from '../../ui/controls.tsx';
import { Dialog } from '../../ui/parts.tsx';
import { RideSpot, ridePlacesIn } from '../../ui/rideSpot.tsx';
import { RIDE_PLACES, type RidePhaseShown, type RidePlaces } from '../../state/ridePlaces.ts';
import type { Send } from '../../state/store.ts';
import { twoWords } from './words.ts';
import type { Pair, TwoChoice } from './choice.ts';
import { type Side, SIDES } from './keys.ts';
import type { TwoRides, TwoServices } from './services.ts';

interface Props {
  readonly choice: TwoChoice;
  readonly services: TwoServices;
  readonly send: Send;
  /** Settings lie over the pause. */
  readonly dialogOpen: boolean;
  readonly onLeave: () => void;
  readonly onDone: (rides: Pair) => void;
}

interface SideShown {
  readonly phase: RidePhaseShown;
  readonly countdownS: number | null;
}

const READY: SideShown = { phase: 'ready', countdownS: null };

/** The two halves. */
export function Riding(props: Props): JSX.Element {
  const { choice, dialogOpen, onLeave } = props;
  const root = useRef<HTMLElement | null>(null);
  const { shown, failed, resume } = useRides(props, root);
  const paused = SIDES.some((side) => shown[side].phase === 'paused');
  return (
    <main class="two-ride" ref={root}>
      <h1 class="unseen">{twoWords.riding(choice.level?.title ?? '')}</h1>
      {SIDES.map((side) => (
        <Half key={side} side={side} shown={shown[side]} failed={failed} />
      ))}
      {(paused || failed) && !dialogOpen && (
        <Dialog title={failed ? twoWords.title : common('riding-paused')} onClose={failed ? onLeave : resume}>
          {failed && <p>{twoWords.failed}</p>}
          <div class="buttons">
            {!failed && (
              <Button strong data-ride-on autofocus onClick={resume}>
                {common('riding-on')}
              </Button>
            )}
            <Button data-leave-two onClick={onLeave}>
              {twoWords.leave}
            </Button>
          </div>
        </Dialog>
      )}
    </main>
  );
}

/** Begins both rides when their places are there, and ends them with the page. */
function useRides(props: Props, root: { readonly current: HTMLElement | null }) {
  const { choice, services, onDone } = props;
  const [shown, setShown] = useState<Readonly<Record<Side, SideShown>>>({ left: READY, right: READY });
  const [failed, setFailed] = useState(false);
  const rides = useRef<TwoRides | null>(null);
  useEffect(() => {
    const { level, sides, autoEase, headStart } = choice;
    const places = { left: placesOf(root.current, 'left'), right: placesOf(root.current, 'right') };
    if (level === null || places.left === null || places.right === null) return undefined;
    const finished: Partial<Record<Side, RideResult>> = {};
    let left = false;
    const begun = services.rideTwo({
      level,
      sides,
      autoEase,
      headStart,
      places: { left: places.left, right: places.right },
      onPhase: (side, phase, countdownS) => setShown((now) => ({ ...now, [side]: { phase, countdownS } })),
      onFailed: () => setFailed(true),
      onFinished: (side, result) => {
        finished[side] = result;
        const { left, right } = finished;
        if (left !== undefined && right !== undefined) onDone({ left, right });
      },
    });
    begun.then(
      (both) => {
        if (left) both.stop();
        else rides.current = both;
      },
      () => setFailed(true),
    );
    return () => {
      left = true;
      rides.current?.stop();
    };
    // The rides are those of the choice this was drawn with first; another choice is another key.
  }, []);
  return { shown, failed, resume: () => rides.current?.resume() };
}

function placesOf(root: HTMLElement | null, side: Side): RidePlaces | null {
  return ridePlacesIn(root?.querySelector(`[data-side="${side}"]`) ?? null);
}

function Half(props: {
  readonly side: Side;
  readonly shown: SideShown;
  readonly failed: boolean;
}): JSX.Element {
  const { side, shown, failed } = props;
  const { phase, countdownS } = shown;
  return (
    <section class="two-half" data-side={side} data-phase={phase} aria-label={twoWords.sides[side]}>
      {RIDE_PLACES.map((place) => (
        <RideSpot key={place} place={place} />
      ))}
      {phase === 'ready' && !failed && (
        <output class="two-over">
          <span class="paper">{countdownS ?? common('riding-loading')}</span>
        </output>
      )}
      {phase === 'riding' && countdownS !== null && (
        <output class="two-over">
          <span class="paper">{countdownS}</span>
        </output>
      )}
      {phase === 'finished' && (
        <output class="two-over two-waiting">
          <span class="paper">{twoWords.waiting}</span>
        </output>
      )}
    </section>
  );
}
