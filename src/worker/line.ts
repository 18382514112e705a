/**
 * A line to one of our workers that always comes to an end: one that cannot be started is replaced by this thread, one
 * that falls silent is started anew once, and if that does not help whoever asked is told.
 */

/** What a line is made of. */
export interface LineOptions<Request, Answer> {
  /** Starts the worker, or answers null where there are none. */
  readonly start: () => Worker | null;
  /** Loads what does the same work in this thread. */
  readonly here: () => Promise<(request: Request) => void>;
  readonly receive: (answer: Answer) => void;
  /** Everything that was asked and has no answer yet. */
  readonly unanswered: () => readonly Request[];
  /** Nobody can do the work. What has no answer now gets none; what is asked later is tried again. */
  readonly onLost: () => void;
  /** A worker that owes an answer and gives no sign for so long (s, while the page is awake) counts as dead. */
  readonly silenceS?: number;
}

/** Sends a request; the answer comes through `receive`. */
export type Line<Request> = (request: Request) => void;

const SILENCE_S = 20;
const LOOK_EVERY_MS = 1000;
const STARTS = 2;

/** Opens a line. Nothing is started before the first request, or before `null` is sent to have it ready. */
export function openLine<Request, Answer>(options: LineOptions<Request, Answer>): Line<Request | null> {
  const { start, here, receive, unanswered, onLost, silenceS = SILENCE_S } = options;
  let send: Line<Request> | null = null;
  let worker: Worker | null = null;
  let starts = 0;
  let watch: Watch | null = null;

  const hangUp = (): void => {
    worker?.terminate();
    worker = null;
    send = null;
    watch?.stop();
    watch = null;
  };
  const lose = (): void => {
    hangUp();
    starts = 0;
    onLost();
  };
  const workHere = (): void => {
    const desk = here();
    desk.catch(lose);
    send = (request) => void desk.then((take) => take(request)).catch(() => undefined);
  };
  const askAgain = (): void => {
    for (const request of unanswered()) send?.(request);
  };
  const onSilence = (): void => {
    hangUp();
    // Work that hangs in a worker would hang here as well, with the page.
    if (starts >= STARTS) return lose();
    connect();
    askAgain();
  };
  const connect = (): void => {
    const mine = start();
    if (mine === null) return workHere();
    worker = mine;
    starts += 1;
    send = (request) => mine.postMessage(request);
    mine.addEventListener('message', (event: MessageEvent<Answer>) => {
      watch?.sign();
      starts = 1;
      receive(event.data);
    });
    mine.addEventListener('error', (event) => {
      event.preventDefault();
      if (worker !== mine) return;
      hangUp();
      workHere();
      askAgain();
    });
    watch = watchFor(silenceS, () => unanswered().length > 0, onSilence);
  };
  return (request) => {
    if (send === null) connect();
    if (request !== null) send?.(request);
  };
}

interface Watch {
  /** The worker has given a sign. */
  sign(): void;
  stop(): void;
}

/** Seconds are counted while the page is awake: after a night in a closed laptop nobody has been silent for hours. */
function watchFor(silenceS: number, owes: () => boolean, onSilence: () => void): Watch {
  let silentS = 0;
  const timer = setInterval(() => {
    silentS = owes() ? silentS + LOOK_EVERY_MS / 1000 : 0;
    if (silentS >= silenceS) onSilence();
  }, LOOK_EVERY_MS);
  return {
    sign: () => {
      silentS = 0;
    },
    stop: () => clearInterval(timer),
  };
}
