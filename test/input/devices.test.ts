/** Keys, fingers and gamepad buttons as they arrive in a document, up to the commands that come out. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buttonsDown, createGamepads, padsOf } from '../../src/input/gamepad.ts';
import { shakeFor } from '../../src/input/haptic.ts';
import { createInputHub, type InputCommand, type InputHub } from '../../src/input/hub.ts';
import { listenToKeys } from '../../src/input/keyboard.ts';
import {
  DEFAULT_KEYS,
  KEY_ACTIONS,
  USUAL_PAD_BUTTONS,
  withPadButton,
} from '../../src/core/settings/settings.ts';
import { drawSign } from '../../src/ui/signs.ts';
import { createPads, legsAction } from '../../src/input/pads.ts';

type PadState = NonNullable<ReturnType<ReturnType<typeof padsOf>>[number]>;

let sent: InputCommand[];
let hub: InputHub;

beforeEach(() => {
  sent = [];
  hub = createInputHub('hold', (command) => sent.push(command));
});

describe('keys', () => {
  let active: boolean;
  let stop: () => void;
  const key = (type: 'keydown' | 'keyup', code: string, more: KeyboardEventInit = {}): KeyboardEvent => {
    const event = new KeyboardEvent(type, { code, bubbles: true, cancelable: true, ...more });
    document.body.dispatchEvent(event);
    return event;
  };

  beforeEach(() => {
    active = true;
    stop = listenToKeys({ target: window, hub, keys: () => DEFAULT_KEYS, active: () => active });
  });
  afterEach(() => stop());

  it('no key has two actions', () => {
    const codes = KEY_ACTIONS.flatMap((action) => DEFAULT_KEYS[action]);
    expect(new Set(codes).size).toBe(codes.length);
  });

  it('arrow down is one sprocket easier, without scrolling and without repeating', () => {
    expect(key('keydown', 'ArrowDown').defaultPrevented).toBe(true);
    key('keydown', 'ArrowDown', { repeat: true });
    expect(sent).toEqual([{ kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 }]);
  });

  it('space held eases and comes back to steady', () => {
    key('keydown', 'Space');
    key('keyup', 'Space');
    expect(sent).toEqual([
      { kind: 'pressure', pressure: 'ease' },
      { kind: 'pressure', pressure: 'steady' },
    ]);
  });

  it('keys without an action and combinations with Ctrl stay with the browser', () => {
    expect(key('keydown', 'KeyQ').defaultPrevented).toBe(false);
    expect(key('keydown', 'KeyS', { ctrlKey: true }).defaultPrevented).toBe(false);
    expect(sent).toEqual([]);
  });

  it('typing in a field is no riding', () => {
    const field = document.createElement('input');
    document.body.append(field);
    const event = new KeyboardEvent('keydown', { code: 'KeyS', bubbles: true, cancelable: true });
    field.dispatchEvent(event);
    field.remove();
    expect([event.defaultPrevented, sent]).toEqual([false, []]);
  });

  it('a key let go after the ride was paused is not stuck', () => {
    key('keydown', 'Space');
    active = false;
    key('keyup', 'Space');
    expect(hub.now().pressure).toBe('steady');
  });
});

describe('pads', () => {
  let root: HTMLElement;
  let pads: ReturnType<typeof createPads>;
  const build = (twoShifters: boolean): void => {
    root = document.createElement('div');
    document.body.append(root);
    pads = createPads(root, hub, {
      gears: 'sprockets',
      twoShifters,
      hand: 'right',
      oneHand: false,
      few: false,
      turned: false,
      mode: () => 'hold',
      drawSign,
    });
  };
  const pad = (name: string): HTMLElement => root.querySelector(`[data-pad="${name}"]`) as HTMLElement;
  const finger = (name: string, type: string, pointerId: number): void => {
    pad(name).dispatchEvent(new PointerEvent(type, { pointerId, button: 0, bubbles: true, clientY: 0 }));
  };

  beforeEach(() => build(true));
  afterEach(() => {
    pads.destroy();
    root.remove();
  });

  it('two fingers brake and shift at once', () => {
    finger('brake', 'pointerdown', 1);
    finger('rear-easier', 'pointerdown', 2);
    expect(pad('brake').dataset['down']).toBe('true');
    finger('rear-easier', 'pointerup', 2);
    finger('brake', 'pointerup', 1);
    expect(sent.map((command) => command.kind)).toEqual(['brake', 'shift', 'brake']);
    expect(pad('brake').dataset['down']).toBeUndefined();
  });

  it('a finger the system takes away lets go', () => {
    finger('brake', 'pointerdown', 1);
    finger('brake', 'pointercancel', 1);
    expect(hub.now().braking).toBe(false);
  });

  it('a bike with one ring has no ring pads', () => {
    expect(pad('front-bigger')).not.toBeNull();
    pads.destroy();
    root.remove();
    build(false);
    expect([pad('front-bigger'), pad('front-smaller')]).toEqual([null, null]);
    expect(pad('rear-easier')).not.toBeNull();
  });

  it('every pad has a name for a screen reader', () => {
    const names = [...root.querySelectorAll('button')].map((one) => one.getAttribute('aria-label'));
    expect(names.every((name) => name !== null && name.length > 0)).toBe(true);
    expect(names).toHaveLength(7);
  });

  it('the upper half and a slide upwards press, the lower half eases', () => {
    expect([legsAction(0.2, 0), legsAction(0.8, 0), legsAction(0.8, 30), legsAction(0.2, -40)]).toEqual([
      'press',
      'ease',
      'press',
      'ease',
    ]);
  });

  it('shows what another hand does', () => {
    pads.show({ pressure: 'ease', braking: true });
    expect([pad('legs').dataset['asks'], pad('brake').getAttribute('aria-pressed')]).toEqual([
      'ease',
      'true',
    ]);
  });
});

describe('gamepads', () => {
  const padWith = (...numbers: number[]): PadState => ({
    index: 0,
    buttons: Array.from({ length: 16 }, (_, i) => ({ pressed: numbers.includes(i), value: 0 })),
  });

  it('bumper and trigger shift the rear, start pauses', () => {
    expect([...buttonsDown([null, padWith(5, 7, 9)], USUAL_PAD_BUTTONS).values()]).toEqual([
      'rear-easier',
      'rear-harder',
      'pause',
    ]);
  });

  it('buttons can be tied to other actions, and none is lost', () => {
    const swapped = withPadButton(USUAL_PAD_BUTTONS, 'rear-easier', 7);
    expect([...buttonsDown([padWith(7)], swapped).values()]).toEqual(['rear-easier']);
    expect(swapped['rear-harder']).toBe(5);
    expect(new Set(Object.values(swapped)).size).toBe(Object.keys(USUAL_PAD_BUTTONS).length);
  });

  it('only the named pad counts where two people ride', () => {
    const first = { ...padWith(5), index: 0 };
    const second = { ...padWith(7), index: 1 };
    createGamepads(
      hub,
      () => USUAL_PAD_BUTTONS,
      1,
      () => [first, second],
    ).poll(0);
    expect(sent).toEqual([{ kind: 'shift', derailleur: 'rear', direction: 'harder', steps: 1 }]);
  });

  it('pads are asked for once one has shown itself, and from then on', () => {
    const target = new EventTarget() as Window;
    let asked = 0;
    let pads: readonly (PadState | null)[] = [null, null];
    const navigator = {
      getGamepads: () => {
        asked += 1;
        return pads;
      },
    };
    Object.assign(target, { navigator });
    const read = padsOf(target);
    for (let i = 0; i < 10; i += 1) expect(read()).toEqual([]);
    expect(asked).toBe(1);
    pads = [padWith(4)];
    target.dispatchEvent(new Event('gamepadconnected'));
    expect(read()).toEqual([padWith(4)]);
    expect(padsOf(target)(), 'one that is there already').toEqual([padWith(4)]);
  });

  it('a trigger counts from a good part of its way on', () => {
    const half = { index: 1, buttons: Array.from({ length: 8 }, () => ({ pressed: false, value: 0.3 })) };
    expect(buttonsDown([half], USUAL_PAD_BUTTONS).size).toBe(0);
  });

  it('a button held over many pictures acts once and lets go once', () => {
    let now: readonly PadState[] = [padWith(0)];
    const gamepads = createGamepads(
      hub,
      () => USUAL_PAD_BUTTONS,
      undefined,
      () => now,
    );
    for (let timeMs = 0; timeMs < 100; timeMs += 16) gamepads.poll(timeMs);
    now = [];
    gamepads.poll(116);
    expect(sent).toEqual([
      { kind: 'pressure', pressure: 'ease' },
      { kind: 'pressure', pressure: 'steady' },
    ]);
  });
});

describe('shaking', () => {
  const done = {
    kind: 'shift-done',
    derailleur: 'rear',
    direction: 'easier',
    fromIndex: 1,
    toIndex: 2,
  } as const;
  const rest = { durationS: 0.4, startedAtM: 1, tick: 1, distanceM: 1 };

  it('marks a heavy shift and leaves a clean one alone', () => {
    expect(shakeFor({ ...done, ...rest, load: 1.3 })).not.toBeNull();
    expect(shakeFor({ ...done, ...rest, load: 0.5 })).toBeNull();
  });
});
