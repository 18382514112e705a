/** Parts of a ride on the screen, each by itself: the first steps with the levers, hands, and the watch over the picture. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { firstStepsOf } from '../../src/app/ride/firstSteps.ts';
import { joinHands } from '../../src/app/ride/hands.ts';
import { watchPicture } from '../../src/app/ride/pictureWatch.ts';
import { startRide } from '../../src/core/ride/run.ts';
import type { RideCommand } from '../../src/core/ride/types.ts';
import { DEFAULT_KEYS, USUAL_PAD_BUTTONS, withPadButton } from '../../src/core/settings/settings.ts';
import { createInputHub, type InputCommand } from '../../src/input/hub.ts';
import type { FirstStepShown } from '../../src/state/firstSteps.ts';
import { levelById, worldOn } from '../core/ride/worlds.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('the first steps with the levers', () => {
  const easier = { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 } as const;
  const harder = { ...easier, direction: 'harder' } as const;

  function begun() {
    const ride = startRide(worldOn(courseOfLevel(levelById('two-levers'))));
    const commands: RideCommand[] = [];
    const shown: (FirstStepShown | null)[] = [];
    const steps = firstStepsOf({
      isAsked: true,
      ride,
      hub: { now: () => ({ pressure: 'steady', braking: false }) },
      byEar: false,
      speed: 1,
      command: (command) => commands.push(command),
      show: (now) => shown.push(now),
      onDone: () => undefined,
    });
    expect(steps.stands(0, 0)).toBe(true);
    return { ride, commands, shown, steps };
  }

  it('keep a shift that was not asked for from the ride', () => {
    const { steps, shown, commands } = begun();
    expect(shown.at(-1)?.asked).toBe('rear-easier');
    expect(steps.takes(harder)).toBe(false);
    expect(shown.at(-1)?.instead).toBe('rear-harder');
    expect(commands).toEqual([]);
  });

  it('give the legs soft feet for a second when the shift that was asked for comes', () => {
    const { ride, steps, commands } = begun();
    expect(steps.takes(easier)).toBe(true);
    expect(commands).toEqual([{ kind: 'pressure', pressure: 'ease' }]);
    const second = Math.round(1 / ride.world.tickS);
    for (let tick = 1; tick < second; tick += 1) ride.step([]);
    steps.frame();
    expect(commands).toHaveLength(1);
    ride.step([]);
    steps.frame();
    expect(commands.at(-1)).toEqual({ kind: 'pressure', pressure: 'steady' });
  });

  it('are shown once more to a picture that is new, and are over when nobody wants them', () => {
    const { steps, shown } = begun();
    const before = shown.at(-1);
    steps.showAgain();
    expect([shown.length, shown.at(-1)]).toEqual([2, before]);
    expect(steps.isOn()).toBe(true);
    steps.end();
    expect(steps.isOn()).toBe(false);
  });
});

describe('hands', () => {
  it('have the buttons that are chosen now, and nobody’s when the page is left', () => {
    const pressed = (button: number) => ({
      index: 0,
      buttons: Array.from({ length: 17 }, (_, i) => ({ pressed: i === button, value: Number(i === button) })),
    });
    let pad = pressed(-1);
    vi.stubGlobal('navigator', { getGamepads: () => [pad] });
    const sent: InputCommand[] = [];
    let away = 0;
    let settings = { keys: DEFAULT_KEYS, padButtons: USUAL_PAD_BUTTONS };
    const hub = createInputHub('hold', (command) => sent.push(command));
    const hands = joinHands({
      hub,
      loop: { mode: () => 'riding' },
      settings: () => settings,
      gamepad: undefined,
      onAway: () => {
        away += 1;
      },
    });
    settings = { ...settings, padButtons: withPadButton(USUAL_PAD_BUTTONS, 'rear-harder', 12) };
    hands.poll(0);
    pad = pressed(12);
    hands.poll(16);
    expect(sent).toEqual([{ kind: 'shift', derailleur: 'rear', direction: 'harder', steps: 1 }]);
    window.dispatchEvent(new Event('blur'));
    expect(away).toBe(1);
    for (const stop of hands.stops) stop();
    window.dispatchEvent(new Event('blur'));
    expect(away).toBe(1);
  });
});

describe('a picture that nobody asks for any more', () => {
  it('is noticed once after four looks, unless one was asked for or none is wanted', () => {
    vi.useFakeTimers();
    let isWanted = true;
    let gone = 0;
    const watch = watchPicture(
      () => isWanted,
      () => {
        gone += 1;
      },
    );
    vi.advanceTimersByTime(3_500);
    watch.seen();
    vi.advanceTimersByTime(3_000);
    isWanted = false;
    vi.advanceTimersByTime(10_000);
    expect(gone).toBe(0);
    isWanted = true;
    vi.advanceTimersByTime(20_000);
    expect(gone).toBe(1);
    watch.stop();
  });
});
