/**
 * The hands of one ride: keys and gamepads that count while it is ridden, and nobody's hands when the page is left. What
 * a key means is said in `src/input`; the pads on the screen come and go with the picture.
 */
import type { Settings } from '../../core/settings/settings.ts';
import { createGamepads } from '../../input/gamepad.ts';
import type { InputHub } from '../../input/hub.ts';
import { listenToKeys } from '../../input/keyboard.ts';
import type { RideLoop } from './loop.ts';

interface HandsOptions {
  readonly hub: InputHub;
  readonly loop: Pick<RideLoop, 'mode'>;
  readonly settings: () => Pick<Settings, 'keys' | 'padButtons'>;
  /** Number of the only gamepad that counts; any of them without it. */
  readonly gamepad: number | undefined;
  /** Nobody looks any more. */
  readonly onAway: () => void;
}

/** Gamepads are looked at so often while paused, when no picture asks (ms). */
const PAUSED_POLL_MS = 100;

export function joinHands({ hub, loop, settings, gamepad, onAway }: HandsOptions) {
  const gamepads = createGamepads(hub, () => settings().padButtons, gamepad);
  const onHidden = (): void => {
    if (document.hidden) onAway();
  };
  const poll = window.setInterval(
    () => loop.mode() === 'paused' && gamepads.poll(performance.now()),
    PAUSED_POLL_MS,
  );
  document.addEventListener('visibilitychange', onHidden);
  window.addEventListener('blur', onAway);
  onHidden();
  return {
    /** Looks at the gamepads; to be called with every picture. */
    poll: (timeMs: number): void => gamepads.poll(timeMs),
    /** What lets go of page and devices again, each by itself. */
    stops: [
      listenToKeys({
        target: window,
        hub,
        keys: () => settings().keys,
        active: () => loop.mode() === 'riding' || loop.mode() === 'counting',
      }),
      () => document.removeEventListener('visibilitychange', onHidden),
      () => window.removeEventListener('blur', onAway),
      () => window.clearInterval(poll),
    ],
  };
}
