/** What is held decides legs and brake: alone, together, by two hands at once, and switched instead of held. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  brakeOf,
  type Held,
  letGoBrake,
  nothingHeld,
  pressureOf,
  push,
  release,
} from '../../src/input/held.ts';

const holding = nothingHeld('hold');
const switching = nothingHeld('switch');

describe('holding', () => {
  it('nothing held is steady without brake', () => {
    expect([pressureOf(holding), brakeOf(holding)]).toEqual(['steady', false]);
  });

  it('ease lasts as long as its key is down and returns to steady', () => {
    const eased = push(holding, 'ease', 'a');
    expect(pressureOf(eased)).toBe('ease');
    expect(pressureOf(release(eased, 'a'))).toBe('steady');
  });

  it('easing while pressing eases, and letting go of it presses again', () => {
    const both = push(push(holding, 'press', 'a'), 'ease', 'b');
    expect(pressureOf(both)).toBe('ease');
    expect(pressureOf(release(both, 'b'))).toBe('press');
  });

  it('coast is gentler than ease, whichever came first', () => {
    expect(pressureOf(push(push(holding, 'coast', 'a'), 'ease', 'b'))).toBe('coast');
    expect(pressureOf(push(push(holding, 'ease', 'a'), 'coast', 'b'))).toBe('coast');
  });

  it('a key and a pad for the same thing must both be let go', () => {
    const twice = push(push(holding, 'brake', 'key'), 'brake', 'pad');
    expect(brakeOf(release(twice, 'key'))).toBe(true);
    expect(brakeOf(release(release(twice, 'key'), 'pad'))).toBe(false);
  });

  it('the brake does not change the legs', () => {
    expect(pressureOf(push(push(holding, 'press', 'a'), 'brake', 'b'))).toBe('press');
  });
});

describe('switching', () => {
  it('one push on, the next push off, whether the key comes up or not', () => {
    const on = release(push(switching, 'ease', 'a'), 'a');
    expect(pressureOf(on)).toBe('ease');
    expect(pressureOf(release(push(on, 'ease', 'a'), 'a'))).toBe('steady');
  });

  it('pressing takes over from easing', () => {
    const on = release(push(switching, 'ease', 'a'), 'a');
    expect(pressureOf(push(on, 'press', 'b'))).toBe('press');
  });

  it('a switched-on brake can be let go for the rider', () => {
    const braking = release(push(switching, 'brake', 'a'), 'a');
    expect(brakeOf(braking)).toBe(true);
    expect(brakeOf(letGoBrake(braking))).toBe(false);
  });
});

describe('any order of pushes', () => {
  const actions = ['ease', 'press', 'coast', 'brake'] as const;
  const move = fc.record({
    down: fc.boolean(),
    action: fc.constantFrom(...actions),
    source: fc.constantFrom('a', 'b', 'c'),
  });

  it('ends steady and unbraked once every source is up, as long as things are held', () => {
    fc.assert(
      fc.property(fc.array(move, { maxLength: 30 }), (moves) => {
        const after = moves.reduce<Held>(
          (held, { down, action, source }) => (down ? push(held, action, source) : release(held, source)),
          holding,
        );
        const free = ['a', 'b', 'c'].reduce(release, after);
        expect([pressureOf(free), brakeOf(free), free.down]).toEqual(['steady', false, []]);
      }),
      { seed: 7 },
    );
  });
});
