/** The first steps with the levers, as a sequence of presses and pictures. */
import { describe, expect, it } from 'vitest';
import { createFirstSteps, type FirstStepShown } from '../../src/state/firstSteps.ts';

const ROLL = 250;

function begin(autoEase = false, lookMs = 0) {
  const seen: (FirstStepShown | null)[] = [];
  let known = 0;
  const chain = { moves: false };
  const steps = createFirstSteps({
    isAsked: true,
    autoEase,
    rollTicks: ROLL,
    isShifting: () => chain.moves,
    lookMs,
    patienceMs: 15_000,
    show: (shown) => seen.push(shown),
    onDone: () => {
      known += 1;
    },
  });
  return { steps, seen, chain, known: () => known };
}

describe('the first steps', () => {
  it('let somebody look, or hear where they are, before the first of them', () => {
    const { steps, seen } = begin(false, 1000);
    expect([steps.stands(0, 300), steps.stands(0, 1299), seen.length]).toEqual([true, true, 0]);
    expect(steps.stands(0, 1300)).toBe(true);
    expect(seen).toEqual([{ asked: 'rear-easier', instead: null, done: null }]);
  });

  it('stand still before the first tick until the easier lever is pushed, roll, and ask for the next', () => {
    const { steps, seen, known } = begin();
    expect(steps.stands(0, 0)).toBe(true);
    expect(steps.stands(0, 5000)).toBe(true);
    expect(seen).toEqual([{ asked: 'rear-easier', instead: null, done: null }]);
    expect(steps.takes('rear-easier')).toBe(true);
    expect(steps.stands(0, 5010)).toBe(false);
    expect(steps.stands(ROLL - 1, 7000)).toBe(false);
    expect(steps.stands(ROLL, 7010)).toBe(true);
    expect(seen.at(-1)).toEqual({ asked: 'rear-harder', instead: null, done: 'rear-easier' });
    steps.takes('rear-harder');
    expect(steps.stands(2 * ROLL, 9000)).toBe(true);
    expect(known()).toBe(0);
    expect(steps.takes('ease')).toBe(true);
    expect(known()).toBe(1);
    // What was done last is said while the bike rolls, and then no more.
    expect(seen.at(-1)).toEqual({ asked: null, instead: null, done: 'ease' });
    expect(steps.stands(3 * ROLL, 11_000)).toBe(false);
    expect(seen.at(-1)).toBeNull();
    expect(steps.takes('rear-harder')).toBe(true);
  });

  it('ask for the way back only when the first gear has been in for the whole roll', () => {
    const { steps, seen, chain } = begin();
    steps.stands(0, 0);
    steps.takes('rear-easier');
    chain.moves = true;
    for (let tick = 1; tick <= 100; tick += 1) expect(steps.stands(tick, 10 * tick)).toBe(false);
    chain.moves = false;
    expect(steps.stands(ROLL, 7000)).toBe(false);
    expect(steps.stands(100 + ROLL - 1, 8000)).toBe(false);
    expect(steps.stands(100 + ROLL, 8010)).toBe(true);
    expect(seen.at(-1)?.asked).toBe('rear-harder');
  });

  it('say what was pressed instead, and keep a shift nobody asked for from the ride', () => {
    const { steps, seen } = begin();
    steps.stands(0, 0);
    expect(steps.takes('rear-harder')).toBe(false);
    expect(seen.at(-1)).toEqual({ asked: 'rear-easier', instead: 'rear-harder', done: null });
    // What lasts must come to its end, so the ride hears of it.
    expect(steps.takes('ease')).toBe(true);
    expect(seen.at(-1)?.instead).toBe('ease');
    expect(steps.takes('pause')).toBe(true);
    expect(steps.stands(0, 100)).toBe(true);
    expect(steps.takes('rear-easier')).toBe(true);
  });

  it('let whoever presses nothing ride on, and are not known then; a wrong press begins the patience anew', () => {
    const { steps, seen, known } = begin();
    steps.stands(0, 0);
    steps.stands(0, 14_000);
    steps.takes('brake');
    expect(steps.stands(0, 16_000)).toBe(true);
    expect(steps.stands(0, 31_000)).toBe(false);
    expect(seen.at(-1)).toBeNull();
    expect(known()).toBe(0);
    expect(steps.stands(ROLL * 5, 40_000)).toBe(false);
  });

  it('ask for no soft feet where the game has them by itself', () => {
    const { steps, known } = begin(true);
    steps.stands(0, 0);
    steps.takes('rear-easier');
    steps.stands(ROLL, 3000);
    steps.takes('rear-harder');
    expect(known()).toBe(1);
    expect(steps.stands(2 * ROLL, 6000)).toBe(false);
  });

  it('can be left at any moment', () => {
    const { steps, seen } = begin();
    steps.stands(0, 0);
    steps.end();
    expect(seen.at(-1)).toBeNull();
    expect(steps.stands(0, 10)).toBe(false);
    expect(steps.takes('rear-harder')).toBe(true);
  });
});
