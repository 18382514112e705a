/**
 * Buttons of gamepads with the standard layout become actions. Gamepads send no events for buttons, so they
 * are asked once a picture; what changed since the last time goes to the hub.
 */
import type { KeyAction } from '../core/settings/settings.ts';
import type { InputHub } from './hub.ts';

/** The number of the button of each action (W3C standard layout). */
type PadBindings = Readonly<Partial<Record<KeyAction, number>>>;

/** A trigger counts as pushed from here on (0 to 1). */
const TRIGGER_AT = 0.4;

/** The part of a gamepad that is looked at. */
interface PadState {
  readonly index: number;
  readonly buttons: readonly { readonly pressed: boolean; readonly value: number }[];
}

/** Sources that are down on these pads, with what they mean. Pure. */
export function buttonsDown(
  pads: readonly (PadState | null)[],
  bindings: PadBindings,
): ReadonlyMap<string, KeyAction> {
  const down = new Map<string, KeyAction>();
  for (const pad of pads) {
    if (pad === null) continue;
    for (const [action, number] of Object.entries(bindings) as [KeyAction, number][]) {
      const button = pad.buttons[number];
      if (button !== undefined && (button.pressed || button.value >= TRIGGER_AT))
        down.set(`pad${pad.index}:${number}`, action);
    }
  }
  return down;
}

/** Looks at the gamepads when told to and reports changes; at one of them only if it is named by its number. */
export function createGamepads(
  hub: InputHub,
  bindings: () => PadBindings,
  only?: number,
  read: () => readonly (PadState | null)[] = readGamepads,
): { poll(timeMs: number): void } {
  let before: ReadonlyMap<string, KeyAction> = new Map();
  return {
    poll(timeMs) {
      const pads = read();
      if (pads.length === 0 && before.size === 0) return;
      const now = buttonsDown(
        pads.filter((pad) => only === undefined || pad?.index === only),
        bindings(),
      );
      for (const source of before.keys()) if (!now.has(source)) hub.up(source);
      for (const [source, action] of now) if (!before.has(source)) hub.down(action, source, timeMs);
      before = now;
    },
  };
}

const NO_PADS: readonly (PadState | null)[] = [];

/**
 * Asks for the gamepads of a window, but only once there is one: asking costs the same with none, in every
 * picture. A browser shows a pad when one of its buttons is pushed, and says so with an event.
 */
export function padsOf(target: Window): () => readonly (PadState | null)[] {
  const ask = (): readonly (PadState | null)[] => {
    try {
      return target.navigator.getGamepads?.() ?? NO_PADS;
    } catch {
      // Forbidden by a policy of the site around this one.
      return NO_PADS;
    }
  };
  let met = ask().some((pad) => pad !== null);
  target.addEventListener('gamepadconnected', () => {
    met = true;
  });
  return () => (met ? ask() : NO_PADS);
}

let ofThisPage: (() => readonly (PadState | null)[]) | null = null;

/** Gamepads of this browser; none where it does not know them or forbids asking. */
function readGamepads(): readonly (PadState | null)[] {
  ofThisPage ??= padsOf(window);
  return ofThisPage();
}
