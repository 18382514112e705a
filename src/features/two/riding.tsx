/** Rides on one screen: a half of it for each of two with the road of both between them, or all of it for a leg. */
import type { RideResult } from '../../core/coach/results.ts';
import type { Level } from '../../core/level/schema.ts';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { courseOfLevel } from '../../core/level/build.ts';
import { common } from '../../words/common.ts';
import { Button } from '../../ui/controls.tsx';
import { Dialog } from '../../ui/parts.tsx';
import { RideSpot, ridePlacesIn } from '../../ui/rideSpot.tsx';
import { RIDE_PLACES, type RidePhaseShown } from '../../state/ridePlaces.ts';
import type { TogetherChoice, Way } from './rounds.ts';
import { SIDES } from './keys.ts';
import { RoadBetween } from './road.tsx';
import type { RiderChoice, RidesTogether, Seat, TwoServices } from './services.ts';
import { words } from '../../words/words.ts';

const say = words('two');

interface Props {
  /** Not there only where the game has no levels at all. */
  readonly level: Level | undefined;
  readonly choice: Pick<TogetherChoice, 'way' | 'autoEase' | 'headStart'>;
  /** Two at once, or the one whose leg it is. */
  readonly riders: readonly RiderChoice[];
  /** Number of the first of them, from 0. */
  readonly first: number;
  readonly services: TwoServices;
  /** Settings lie over the pause. */
  readonly dialogOpen: boolean;
  readonly onLeave: () => void;
  /** Where a failed leg can be ridden once more; not there where that is the same as leaving. */
  readonly onFailed: (() => void) | undefined;
  readonly onDone: (rides: readonly RideResult[]) => void;
}

interface SeatShown {
  readonly phase: RidePhaseShown;
  readonly countdownS: number | null;
}

const READY: SeatShown = { phase: 'ready', countdownS: null };
/** Longer counts are no countdown but a wait for somebody's head start (s). */
const LONGEST_COUNT_S = 3;
/** Whoever waits longer than this looks away (s, common practice, no source). */
const LONG_WAIT_S = 30;

export function Riding(props: Props): JSX.Element {
  const { level, choice, riders, first, dialogOpen, onLeave, onFailed = onLeave } = props;
  const root = useRef<HTMLElement | null>(null);
  const marks = useRef<HTMLElement | null>(null);
  const { shown, failed, resume } = useRides(props, root, marks);
  const paused = shown.some(({ phase }) => phase === 'paused');
  const othersRide = shown.some(({ phase }) => phase !== 'finished');
  const title = failed ? say('title') : common('riding-paused');
  const ways = (
    <>
      {failed && <p>{say('failed')}</p>}
      <div class="buttons">
        {!failed && (
          <Button strong data-ride-on autofocus onClick={resume}>
            {common('riding-on')}
          </Button>
        )}
        {failed && props.onFailed !== undefined && (
          <Button strong data-to-gate autofocus onClick={onFailed}>
            {say('toGate')}
          </Button>
        )}
        <Button data-leave-two onClick={onLeave}>
          {say('leave')}
        </Button>
      </div>
    </>
  );
  return (
    <main class="two-ride" data-way={choice.way} ref={root}>
      <h1 class="unseen">{say('riding', { road: level?.title ?? '' })}</h1>
      {shown.map((one, i) => (
        <Place
          key={i}
          place={i}
          turned={choice.way === 'facing' && i === 0}
          name={say(`name-${choice.way}`, { rider: first + i + 1 })}
          shown={one}
          failed={failed}
          othersRide={othersRide}
        />
      ))}
      {riders.length > 1 && level !== undefined && (
        <RoadBetween {...{ level, marks }} letters={marksOf(choice.way)} />
      )}
      {(paused || failed) && !dialogOpen && (
        <Dialog title={title} onClose={failed ? onFailed : resume}>
          {ways}
          {choice.way === 'facing' && (
            <div class="two-across" data-across>
              <h2>{title}</h2>
              {ways}
            </div>
          )}
        </Dialog>
      )}
    </main>
  );
}

/** Begins the rides when their places are there, and ends them with the page. */
function useRides(
  props: Props,
  root: { readonly current: HTMLElement | null },
  marks: { readonly current: HTMLElement | null },
) {
  const { level, choice, riders, services, onDone } = props;
  const [shown, setShown] = useState<readonly SeatShown[]>(() => riders.map(() => READY));
  const [failed, setFailed] = useState(false);
  const rides = useRef<RidesTogether | null>(null);
  useEffect(() => {
    const seats = seatsIn(root.current, props);
    if (seats === null || level === undefined) return undefined;
    const { lengthM } = courseOfLevel(level);
    const finished = new Map<number, RideResult>();
    let left = false;
    const begun = services.rideTogether({
      seats,
      autoEase: choice.autoEase,
      headStart: choice.headStart,
      needsPads: choice.way === 'facing',
      onPhase: (seat, phase, countdownS) =>
        setShown((now) => now.map((one, i) => (i === seat ? { phase, countdownS } : one))),
      onPlace: (seat, distanceM) => moveMark(marks.current, seat, distanceM / lengthM),
      onFailed: () => setFailed(true),
      onFinished: (seat, result) => {
        finished.set(seat, result);
        const all = seats.flatMap((_, i) => finished.get(i) ?? []);
        if (all.length === seats.length) onDone(all);
      },
    });
    begun.then(
      (all) => {
        if (left) all.stop();
        else rides.current = all;
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

/** Who sits where; null until all places are there. */
function seatsIn(root: HTMLElement | null, { level, riders, first }: Props): readonly Seat[] | null {
  if (level === undefined) return null;
  const seats = riders.flatMap((rider, i) => {
    const places = ridePlacesIn(root?.querySelector(`[data-seat="${i}"]`) ?? null);
    const side = riders.length > 1 ? (SIDES[i] ?? null) : null;
    return places === null ? [] : [{ ...rider, level, places, side, otherJersey: (first + i) % 2 === 1 }];
  });
  return seats.length === riders.length ? seats : null;
}

/** Not drawn by the page: a mark moves with every picture. */
function moveMark(road: HTMLElement | null, seat: number, share: number): void {
  const mark = road?.querySelector<HTMLElement>(`[data-mark="${seat}"]`);
  mark?.style.setProperty('--share', Math.min(1, share).toFixed(4));
}

function Place(props: {
  readonly place: number;
  /** Upside down, for somebody across the table. */
  readonly turned: boolean;
  readonly name: string;
  readonly shown: SeatShown;
  readonly failed: boolean;
  /** Somebody is not over the line yet. */
  readonly othersRide: boolean;
}): JSX.Element {
  const { place, turned, name, shown, failed, othersRide } = props;
  const { phase, countdownS } = shown;
  const counts = phase === 'ready' || (phase === 'riding' && countdownS !== null);
  return (
    <section
      class="two-place"
      data-seat={place}
      data-phase={phase}
      data-turned={turned ? 'yes' : undefined}
      aria-label={name}
    >
      {RIDE_PLACES.map((one) => (
        <RideSpot key={one} place={one} />
      ))}
      {counts && !failed && (
        <output class="two-over">
          <span class="paper">
            <strong>{countdownS ?? common('riding-loading')}</strong>
            {countdownS !== null && countdownS > LONGEST_COUNT_S && (
              <small>
                {say('headStartWait', { seconds: countdownS })}
                {countdownS > LONG_WAIT_S && ` ${say('longWait')}`}
              </small>
            )}
          </span>
        </output>
      )}
      {phase === 'finished' && othersRide && (
        <output class="two-over">
          <span class="paper">{say('waiting')}</span>
        </output>
      )}
    </section>
  );
}

/** On the road of both: one letter each, or an arrow to where somebody sits. */
function marksOf(way: Way): readonly string[] {
  return { beside: [say('mark-left'), say('mark-right')], facing: ['↑', '↓'], relay: [] }[way];
}

/** Whether this device can do that: two halves want a tablet, keys or gamepads; a tablet to lie between two wants touch. */
export function canRide(way: Way): boolean {
  const is = (query: string): boolean => window.matchMedia(query).matches;
  if (way === 'relay') return true;
  if (way === 'facing') return is('(any-pointer: coarse)') && !isPhone();
  return !(isOnlyTouch() && isPhone());
}

/** There is no keyboard to name keys of. */
export function isOnlyTouch(): boolean {
  return window.matchMedia('(pointer: coarse)').matches && window.matchMedia('(hover: none)').matches;
}

function isPhone(): boolean {
  return window.matchMedia(`(max-width: ${PHONE_PX}px), (max-height: ${PHONE_PX}px)`).matches;
}

/** Shorter sides than this are those of a phone (px): pads of two riders and a road do not fit. */
const PHONE_PX = 600;
