/**
 * Decides what the legs and the brake are asked for from what is held down. Pure: the same pushes give the
 * same answer, so it is tested without a keyboard. Shifts and pause are no business of this file.
 */
import type { Pressure } from '../core/model/types.ts';
import type { Settings } from '../core/settings/settings.ts';

/** `hold`: acts as long as it is held. `switch`: one push on, the next push off. */
export type HoldMode = Settings['holdMode'];

/** Actions that last as long as they are held. */
type LastingAction = 'ease' | 'press' | 'coast' | 'brake';

/** What is down now. A source is one key, finger or button, so that two hands can hold the same thing. */
export interface Held {
  readonly mode: HoldMode;
  readonly down: readonly { readonly action: LastingAction; readonly source: string }[];
  /** Only in switch mode: what is switched on. */
  readonly pressureOn: Exclude<LastingAction, 'brake'> | null;
  readonly brakeOn: boolean;
}

export function nothingHeld(mode: HoldMode): Held {
  return { mode, down: [], pressureOn: null, brakeOn: false };
}

/** A source goes down. The same source cannot go down twice. */
export function push(held: Held, action: LastingAction, source: string): Held {
  if (held.down.some((one) => one.source === source)) return held;
  const down = [...held.down, { action, source }];
  if (held.mode === 'hold') return { ...held, down };
  if (action === 'brake') return { ...held, down, brakeOn: !held.brakeOn };
  return { ...held, down, pressureOn: held.pressureOn === action ? null : action };
}

/** A source comes up; one that was never down changes nothing. */
export function release(held: Held, source: string): Held {
  if (!held.down.some((one) => one.source === source)) return held;
  return { ...held, down: held.down.filter((one) => one.source !== source) };
}

/** Ends a switched-on brake, as after a stop: a rider with one hand should not have to hurry. */
export function letGoBrake(held: Held): Held {
  return held.brakeOn ? { ...held, brakeOn: false } : held;
}

/**
 * What the legs are asked for. The gentler wish wins, so that easing for a shift works while pressing and
 * the press comes back afterwards.
 */
export function pressureOf(held: Held): Pressure {
  const wants = (action: LastingAction): boolean =>
    held.mode === 'switch' ? held.pressureOn === action : held.down.some((one) => one.action === action);
  if (wants('coast')) return 'coast';
  if (wants('ease')) return 'ease';
  return wants('press') ? 'press' : 'steady';
}

export function brakeOf(held: Held): boolean {
  return held.mode === 'switch' ? held.brakeOn : held.down.some((one) => one.action === 'brake');
}
