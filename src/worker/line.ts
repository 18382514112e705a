/**
 * The way to a worker, or to this thread in its place: a worker that cannot be started is replaced by this thread, one
 * that falls silent is started anew once, and whoever asked hears in the end. What is asked is not looked at.
 */
import { answering, type Asked, type Methods, type Told } from './rpc.ts';

/** Where a service is at work. */
export interface Workplace<Service> {
  /** Starts the worker, or answers null where there is none. */
  readonly start: () => Worker | null;
  /** The same service for this thread; fetched only where it is needed. */
  readonly here: () => Promise<Service>;
}

export interface WorkerOptions<Service> extends Workplace<Service> {
  /** Who works after the second silence. Work that hangs in a worker may hang here as well, with the page. */
  readonly afterSilence: 'here' | 'nobody';
  /** Hears of a worker that broke down or fell silent. */
  readonly onBroken?: ((error: Error) => void) | undefined;
  /** A worker that owes an answer and gives no sign for so long (s, while the page is awake) counts as dead. */
  readonly silenceS?: number | undefined;
}

const SILENCE_S = 20;
const LOOK_EVERY_MS = 1000;
/** A worker that falls silent is started anew so often, counted from its last sign. */
const STARTS = 2;

interface LineEnds {
  readonly receive: (told: Told) => void;
  readonly owes: () => boolean;
  /** Everything that was asked and has no answer yet, to be asked again. */
  readonly unanswered: () => readonly Asked[];
  /** Nobody can do the work. What has no answer now gets none; what is asked later is tried again. */
  readonly onLost: () => void;
}

/** Opens nothing by itself: the first thing that is sent does. */
export function openLine<Service extends Methods<Service>>(
  { start, here, afterSilence, onBroken, silenceS = SILENCE_S }: WorkerOptions<Service>,
  { receive, owes, unanswered, onLost }: LineEnds,
) {
  let send: ((asked: Asked) => void) | null = null;
  let worker: Worker | null = null;
  let starts = 0;
  let silentS = 0;
  let watch: ReturnType<typeof setInterval> | undefined;
  const hangUp = (): void => {
    worker?.terminate();
    worker = null;
    send = null;
    clearInterval(watch);
  };
  const lose = (): void => {
    hangUp();
    starts = 0;
    onLost();
  };
  const workHere = (): void => {
    const take = here().then((service) => answering(service, receive));
    take.catch(lose);
    send = (asked) => void take.then((ask) => ask(asked)).catch(() => undefined);
  };
  const replace = (error: Error, byWhom: () => void): void => {
    onBroken?.(error);
    hangUp();
    byWhom();
    for (const asked of unanswered()) send?.(asked);
  };
  const onSilence = (): void => {
    const error = new Error('silent');
    if (starts < STARTS) return replace(error, open);
    if (afterSilence === 'here') return replace(error, workHere);
    onBroken?.(error);
    lose();
  };
  const open = (): void => {
    const mine = start();
    if (mine === null) return workHere();
    worker = mine;
    starts += 1;
    silentS = 0;
    send = (asked) => mine.postMessage(asked);
    mine.addEventListener('message', (event: MessageEvent<Told>) => {
      silentS = 0;
      starts = 1;
      receive(event.data);
    });
    mine.addEventListener('error', (event) => {
      event.preventDefault();
      // One that cannot be fetched or run will not be better for another start.
      if (worker === mine) replace(new Error('broken'), workHere);
    });
    // Seconds while the page is awake: after a night in a closed laptop nobody has been silent for hours.
    watch = setInterval(() => {
      silentS = owes() ? silentS + LOOK_EVERY_MS / 1000 : 0;
      if (silentS >= silenceS) onSilence();
    }, LOOK_EVERY_MS);
  };
  return {
    open: (): void => {
      if (send === null) open();
    },
    send: (asked: Asked): void => {
      if (send === null) open();
      send?.(asked);
    },
    hangUp,
  };
}
