/**
 * The one place that hears of everything that went wrong: errors and promises nobody caught, workers that broke
 * down, frames that threw, what the policy of the page forbade. It remembers them without a word of anybody's data
 * and tells whoever decides what happens next; a fault in that is remembered and told to nobody, so nothing loops.
 */

/** Where it went wrong. */
type TroubleKind = 'page' | 'promise' | 'policy' | 'worker' | 'frame' | 'ride';

/** What is remembered of it. Texts of messages may hold what somebody typed, so most of them stay out. */
export interface Trouble {
  readonly kind: TroubleKind;
  /** Name of the error, such as `TypeError`. */
  readonly name: string;
  /** What the browser says of it, without anything between quotes; empty where it could hold something of ours. */
  readonly message: string;
  /** Files and places of the program, the innermost first. */
  readonly places: readonly string[];
  /** How often just this has happened. */
  readonly times: number;
}

/** The place. */
export interface TroubleLog {
  /** Something went wrong and somebody caught it who could do nothing about it. */
  readonly report: (kind: TroubleKind, error: unknown) => void;
  /** The same where somebody could: it is remembered, and nobody is disturbed. */
  readonly note: (kind: TroubleKind, error: unknown) => void;
  all(): readonly Trouble[];
}

/** So many different ones are remembered. */
const MOST = 20;
const MOST_PLACES = 8;
const LONGEST_MESSAGE = 160;
/** Errors whose messages browsers write themselves, about the program and not about its data. */
const BROWSERS_OWN = ['TypeError', 'RangeError', 'ReferenceError', 'InvalidStateError'];

/** Opens the place; `tell` hears of each trouble while none is being told. */
export function openTroubleLog(target: Window, tell: (kind: TroubleKind) => void): TroubleLog {
  const known = new Map<string, Trouble>();
  let telling = false;
  const note = (kind: TroubleKind, error: unknown): void => {
    const next = troubleOf(kind, error);
    const key = [kind, next.name, next.message, ...next.places].join();
    const times = (known.get(key)?.times ?? 0) + 1;
    if (times > 1 || known.size < MOST) known.set(key, { ...next, times });
  };
  const report = (kind: TroubleKind, error: unknown): void => {
    note(kind, error);
    if (telling) return;
    telling = true;
    try {
      tell(kind);
    } catch (fault) {
      note('page', fault);
    } finally {
      telling = false;
    }
  };
  target.addEventListener('error', (event) => {
    if (event instanceof ErrorEvent && isOurs(event, target)) report('page', event.error ?? event.message);
  });
  target.addEventListener('unhandledrejection', ({ reason }) => report('promise', reason));
  target.document.addEventListener('securitypolicyviolation', (event) => {
    // Extensions of the browser are held back by the policy of the page too; that is no fault of the game.
    if (event.sourceFile.startsWith(target.location.origin))
      report('policy', { name: event.effectiveDirective });
  });
  return { report, note, all: () => [...known.values()] };
}

/** Errors of extensions come without a file of ours; a size that is watched too late is no error at all. */
function isOurs({ message, filename, error }: ErrorEvent, { location }: Window): boolean {
  if (message.startsWith('ResizeObserver loop')) return false;
  const strange = filename === '' ? error === null : !filename.startsWith(location.origin);
  return !strange;
}

function troubleOf(kind: TroubleKind, error: unknown): Trouble {
  const { name, message, stack } = (typeof error === 'object' && error !== null ? error : {}) as {
    name?: unknown;
    message?: unknown;
    stack?: unknown;
  };
  const called = typeof name === 'string' ? name.slice(0, 60) : typeof error;
  const told = BROWSERS_OWN.includes(called) && typeof message === 'string' ? withoutQuotes(message) : '';
  const places = typeof stack === 'string' ? (stack.match(/[\w.-]+\.[jt]sx?:\d+:\d+/g) ?? []) : [];
  return { kind, name: called, message: told, places: places.slice(0, MOST_PLACES), times: 1 };
}

function withoutQuotes(text: string): string {
  return text
    .replaceAll(/(["'`]).*?\1/g, '…')
    .replaceAll(/["'`].*$/g, '…')
    .replaceAll(/\w+:\/\/\S+/g, '…')
    .slice(0, LONGEST_MESSAGE);
}
