/**
 * The one place that hears of everything that went wrong: errors and promises nobody caught, workers that broke
 * down, frames that threw, what the policy of the page forbade. It remembers them without a word of anybody's data
 * and tells whoever decides what happens next; a fault in that is remembered and told to nobody, so nothing loops.
 */
import { RULES_VERSION } from '../../core/coach/rules.ts';
import { PHYSICS_VERSION, type Recording } from '../../core/ride/recording.ts';

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

/** So many different ones are remembered. */
const MOST = 20;
const MOST_PLACES = 8;
const LONGEST_MESSAGE = 160;
/** Errors whose messages browsers write themselves, about the program and not about its data. */
const BROWSERS_OWN = ['TypeError', 'RangeError', 'ReferenceError', 'InvalidStateError'];

/** Opens the place; `tell` hears of each trouble while none is being told. */
export function openTroubleLog(target: Window, tell: (kind: TroubleKind) => void) {
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
  return {
    /** Something went wrong and somebody caught it who could do nothing about it. */
    report /** The same where somebody could: it is remembered, and nobody is disturbed. */,
    note,
    all: (): readonly Trouble[] => [...known.values()],
  };
}
export type TroubleLog = ReturnType<typeof openTroubleLog>;

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

interface ReportParts {
  /** Names of the files of this build; their names change with their contents. */
  readonly build: readonly string[];
  readonly browser: string;
  readonly troubles: readonly Trouble[];
  readonly recording: Recording | null;
  /** Whether a level of this id comes with the game; others may be called after a place or a person. */
  readonly isBundled: (levelId: string) => boolean;
}

/**
 * A report of what went wrong, as a file a person may pass on: versions, what happened, and the ride. It holds no
 * person: no name, no group, no road somebody made, and of bike and rider only the numbers the ride depends on.
 */
export function reportOf({ build, browser, troubles, recording, isBundled }: ReportParts): object {
  return {
    report: 'before-the-hill',
    schema: 1,
    versions: { build, physics: PHYSICS_VERSION, rules: RULES_VERSION, browser },
    happened: troubles,
    ride: recording === null ? null : withoutPerson(recording, isBundled),
  };
}

function withoutPerson(recording: Recording, isBundled: (levelId: string) => boolean): Recording {
  const { levelId, bike, rider } = recording;
  return {
    ...recording,
    levelId: isBundled(levelId) ? levelId : 'own-level',
    bike: { ...bike, id: 'bike' },
    rider: { ...rider, id: 'rider' },
  };
}
