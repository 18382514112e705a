/**
 * Where all hands meet: keys, pads and gamepad buttons report what goes down and comes up, and ride commands
 * come out, each change once. Reads no device and no clock itself; times are handed in.
 */
import type { Pressure } from '../core/model/types.ts';
import type { RideCommand } from '../core/ride/types.ts';
import type { KeyAction } from '../core/settings/settings.ts';
import {
  brakeOf,
  type Held,
  type HoldMode,
  letGoBrake,
  nothingHeld,
  pressureOf,
  push,
  release,
} from './held.ts';
import { beginSweep, type Sweep, sweepDue } from './sweep.ts';

/** What comes out of a hand: a command for the ride, or the wish to stop the clock. */
export type InputCommand = RideCommand | { readonly kind: 'pause' };

const EASIER = { kind: 'shift', derailleur: 'rear', direction: 'easier' } as const;

/** Makes a hub; `send` gets every command at once, in order. */
export function createInputHub(mode: HoldMode, send: (command: InputCommand) => void) {
  let held: Held = nothingHeld(mode);
  let sweep: Sweep | null = null;
  let told: { pressure: Pressure; braking: boolean } = { pressure: 'steady', braking: false };

  const settle = (next: Held): void => {
    held = next;
    const now = { pressure: pressureOf(held), braking: brakeOf(held) };
    const before = told;
    told = now;
    if (now.pressure !== before.pressure) send({ kind: 'pressure', pressure: now.pressure });
    if (now.braking !== before.braking) send({ kind: 'brake', on: now.braking });
  };

  return {
    /** A source (one key, finger or button) goes down at `timeMs`. */
    down(action: KeyAction, source: string, timeMs: number): void {
      switch (action) {
        case 'rear-easier':
          sweep = beginSweep(source, timeMs);
          return send({ ...EASIER, steps: 1 });
        case 'rear-harder':
          return send({ kind: 'shift', derailleur: 'rear', direction: 'harder', steps: 1 });
        case 'front-smaller':
          return send({ kind: 'shift', derailleur: 'front', direction: 'easier', steps: 1 });
        case 'front-bigger':
          return send({ kind: 'shift', derailleur: 'front', direction: 'harder', steps: 1 });
        case 'pause':
          return send({ kind: 'pause' });
        default:
          return settle(push(held, action, source));
      }
    },
    up(source: string): void {
      if (sweep?.source === source) sweep = null;
      settle(release(held, source));
    },
    /** Gives the further steps of a held lever; call it once a picture. */
    poll(timeMs: number): void {
      if (sweep === null) return;
      const due = sweepDue(sweep, timeMs);
      sweep = due.sweep;
      for (let i = 0; i < due.steps; i += 1) send({ ...EASIER, steps: 1 });
    },
    /** Everything up, as when the window loses the keyboard; commands for it come out. */
    releaseAll(): void {
      sweep = null;
      settle(nothingHeld(held.mode));
    },
    /** A switched-on brake ends (the bike stands). */
    letGoBrake: (): void => settle(letGoBrake(held)),
    setMode(next: HoldMode): void {
      if (next !== held.mode) settle(nothingHeld(next));
    },
    /** What the hands ask for now, for pads that show it. */
    now: (): { readonly pressure: Pressure; readonly braking: boolean } => told,
  };
}
export type InputHub = ReturnType<typeof createInputHub>;
