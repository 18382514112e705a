/**
 * The first seconds of somebody's first ride: three things to be done once each while the world stands still, so
 * that nobody has to read which key or pad does what. Pure; time comes from the caller.
 */
import type { KeyAction } from '../core/settings/settings.ts';

/** What is asked for, in this order; soft feet are left out where the game has them by itself. */
const STEPS = ['rear-easier', 'rear-harder', 'ease'] as const;
type FirstStep = (typeof STEPS)[number];

/** What is on the screen of it. */
export interface FirstStepShown {
  /** What is asked for now; null while the bike rolls. */
  readonly asked: FirstStep | null;
  /** What was pressed instead. */
  readonly instead: KeyAction | null;
  /** What was done last. */
  readonly done: FirstStep | null;
}

interface FirstStepsOptions {
  /** False where somebody knows the levers: then nothing is asked for, and the ride has everything. */
  readonly isAsked: boolean;
  readonly autoEase: boolean;
  /** Ride time rolled between two steps, and after the last one (ticks): long enough to feel what changed. */
  readonly rollTicks: number;
  /** The gear that was asked for is not in yet: what it changes can only be felt from then on. */
  readonly isShifting: () => boolean;
  /** The first thing is asked for when the world has stood there for so long (ms). */
  readonly lookMs: number;
  /** Whoever presses nothing for so long (ms) rides on and is asked again another time. */
  readonly patienceMs: number;
  /** Gets what is to be seen, null when it is over. */
  readonly show: (shown: FirstStepShown | null) => void;
  /** All of it was done. */
  readonly onDone: () => void;
}

/** Begins with the first step before the first tick. */
export function createFirstSteps(options: FirstStepsOptions) {
  const left: FirstStep[] = STEPS.filter((step) => options.isAsked && (step !== 'ease' || !options.autoEase));
  let shown: FirstStepShown | null = options.isAsked ? { asked: null, instead: null, done: null } : null;
  let dueTick = 0;
  let lastTick = 0;
  let beganMs: number | null = null;
  let askedAtMs: number | null = null;
  const show = (next: FirstStepShown | null): void => {
    shown = next;
    options.show(next);
  };
  const end = (): void => {
    left.length = 0;
    if (shown !== null && shown.asked !== null) show(null);
  };
  return {
    /** Whether the world stands still at this tick; `timeMs` tells how long it has. */
    stands(tick: number, timeMs: number): boolean {
      lastTick = tick;
      if (shown !== null && shown.asked === null && options.isShifting()) dueTick = tick + options.rollTicks;
      if (shown === null || tick < dueTick) return false;
      const [step] = left;
      if (step === undefined) {
        show(null);
        return false;
      }
      beganMs ??= timeMs;
      if (timeMs - beganMs < options.lookMs) return true;
      if (shown.asked === null) {
        askedAtMs = timeMs;
        show({ ...shown, asked: step, instead: null });
      }
      askedAtMs ??= timeMs;
      if (timeMs - askedAtMs < options.patienceMs) return true;
      end();
      return false;
    },
    /** A hand did something; whether the ride may have it. What was not asked for waits for its turn. */
    takes(action: KeyAction): boolean {
      if (shown === null || shown.asked === null || action === 'pause') return true;
      askedAtMs = null;
      if (action !== shown.asked) {
        show({ ...shown, instead: action });
        return !isShift(action);
      }
      left.shift();
      dueTick = lastTick + options.rollTicks;
      show({ asked: null, instead: null, done: shown.asked });
      if (left.length === 0) options.onDone();
      return true;
    },
    /** The clock was stopped: patience begins anew. */
    waitAnew(): void {
      askedAtMs = null;
    },
    /** What was shown last. */
    shown: (): FirstStepShown | null => shown,
    /** Nothing more is asked for; what was said of the last thing done stays for its time. */
    end,
  };
}
export type FirstSteps = ReturnType<typeof createFirstSteps>;

function isShift(action: KeyAction): boolean {
  return /^(rear|front)-/.test(action);
}
