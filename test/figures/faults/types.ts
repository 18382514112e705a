/** One thing that breaks while somebody uses the game, and what became of it. Plain data; who breaks and who looks is elsewhere. */

/** What somebody does in the game. */
export type JourneyName = 'ride' | 'turn' | 'hand-back' | 'import' | 'edit' | 'recorded' | 'delete' | 'tour';

/** How far a journey has come, in order. */
export const MOMENTS = ['start', 'opened', 'acting', 'riding', 'over', 'done'] as const;
export type Moment = (typeof MOMENTS)[number];

/** What is really the matter; a sentence that names another cause is false. */
export type Cause =
  | 'network'
  | 'disk-full'
  | 'store'
  | 'no-store'
  | 'worker'
  | 'picture'
  | 'browser'
  | 'clock'
  | 'tabs'
  | 'killed'
  | 'looks';

/** What the server answers for one file instead of the file. */
export type Answer = 'missing' | 'portal' | 'hangs' | 'throws' | 'refused';

/** What a patched function of the browser does. */
export type Misdeed =
  | 'throws'
  | 'rejects'
  | 'never-settles'
  | 'gives-null'
  | 'is-not-heard'
  | 'aborts'
  | 'closes'
  | 'does-nothing';

/** A function or a getter of the browser that misbehaves. */
export interface CallFault {
  readonly what: 'call';
  /** Where it hangs below the window, as in `IDBObjectStore.prototype.put`. */
  readonly path: string;
  readonly misdeed: Misdeed;
  /** Name of the exception where one is thrown. */
  readonly error: string;
  /** Which call, counted from 1 since `from`. */
  readonly nth: number;
  readonly forever: boolean;
  readonly from: Moment;
}

/** What is done to the page from within, before its own scripts run. */
export type PageFault =
  | CallFault
  | { readonly what: 'absent'; readonly path: string }
  | { readonly what: 'clock'; readonly byMs: number; readonly from: Moment }
  | {
      readonly what: 'worker';
      readonly script: string;
      readonly ends: 'at-start' | 'with-an-error' | 'silent' | 'in-mid-work' | 'unreadably';
    }
  | { readonly what: 'count'; readonly paths: readonly string[] };

/** What is done from outside, as a person, a browser or a system would. */
export const HANDS = [
  'reload',
  'close-tab',
  'kill-tab',
  'go-back',
  'second-tab',
  'second-tab-same-journey',
  'blur',
  'hide',
  'freeze',
  'offline',
  'turn-device',
  'tiny-window',
  'more-contrast',
  'less-motion',
  'print',
  'memory-pressure',
  'slow-processor',
  'real-quota',
  'close-databases',
  'clear-cache',
  'press-everything',
] as const;
export type Hand = (typeof HANDS)[number];

export type How =
  | { readonly kind: 'file'; readonly file: string; readonly answer: Answer }
  | { readonly kind: 'page'; readonly fault: PageFault }
  | { readonly kind: 'hand'; readonly hand: Hand; readonly at: Moment };

export interface Fault {
  /** Says what breaks, when and in which journey; no two are the same. */
  readonly name: string;
  readonly group: string;
  readonly journey: JourneyName;
  readonly cause: Cause;
  readonly how: How;
}

/** Ends that are as they should be. */
export const GOOD = ['unharmed', 'told', 'waits'] as const;
/** Ends that must not be. */
export const BAD = [
  'white page',
  'frozen ride',
  'stuck',
  'uncaught error',
  'lost',
  'false sentence',
  'next journey fails',
] as const;
/** The fault did not happen: nobody called what was broken. Counted apart. */
export type Verdict = (typeof GOOD)[number] | (typeof BAD)[number] | 'did not happen';

export interface Outcome {
  readonly fault: Fault;
  readonly verdict: Verdict;
  /** The sentence that was told, or what was seen. */
  readonly detail: string;
}
