/**
 * What events sound like, and that the eye is told the same.
 */
import { describe, expect, it } from 'vitest';
import { shotsOf } from '../../src/audio/shots.ts';
import { LOOPS, SHOTS, type SoundName } from '../../src/audio/sounds.ts';
import { soundUrl } from '../../src/audio/urls.ts';
import type { Derailleur, RideEvent } from '../../src/core/ride/types.ts';

const SOUNDS = Object.entries({ ...LOOPS, ...SHOTS });

const at = { tick: 100, distanceM: 40 };

function shiftDone(load: number, derailleur: Derailleur = 'rear', toIndex = 4): RideEvent {
  return {
    ...at,
    kind: 'shift-done',
    derailleur,
    direction: 'easier',
    fromIndex: toIndex - 1,
    toIndex,
    load,
    durationS: 0.3,
    startedAtM: 38,
  };
}

describe('a shift', () => {
  it('clicks and nothing else when it was eased', () => {
    expect(shotsOf(shiftDone(0.5)).map((shot) => [shot.name, shot.gain])).toEqual([['shift-click', 1]]);
  });

  it('clunks in front', () => {
    expect(shotsOf(shiftDone(0.5, 'front', 1)).map((shot) => shot.name)).toEqual(['front-clunk']);
  });

  it('crunches under load, with little left of the click', () => {
    const [seat, crunch] = shotsOf(shiftDone(1.6));
    expect(seat?.name).toBe('shift-click');
    expect(crunch?.name).toBe('shift-crunch');
    expect(crunch?.gain).toBe(1);
    expect(seat?.gain).toBeLessThan(0.5);
  });

  it('crunches more the more load there was', () => {
    const crunches = [0.7, 0.8, 0.9, 1].map((load) => shotsOf(shiftDone(load))[1]?.gain ?? 0);
    expect([...crunches].sort((a, b) => a - b)).toEqual(crunches);
    expect(crunches[0]).toBeGreaterThan(0);
  });

  it('rings lower on a bigger sprocket', () => {
    const small = shotsOf(shiftDone(0.5, 'rear', 1))[0];
    const big = shotsOf(shiftDone(0.5, 'rear', 9))[0];
    expect(big?.rate).toBeLessThan(small?.rate ?? 0);
  });
});

describe('other events', () => {
  it('sound once each, or are only seen', () => {
    const heard: readonly (readonly [RideEvent, readonly string[]])[] = [
      [{ ...at, kind: 'chain-dropped' }, ['chain-drop']],
      [{ ...at, kind: 'chain-restored' }, ['chain-back']],
      [{ ...at, kind: 'foot-down' }, ['foot-down']],
      [{ ...at, kind: 'finished' }, ['finish']],
      [
        { ...at, kind: 'shift-refused', derailleur: 'rear', direction: 'easier', reason: 'no-more' },
        ['shift-stop'],
      ],
      [{ ...at, kind: 'pushed-off' }, []],
      [{ ...at, kind: 'chain-crossed' }, []],
      [{ ...at, kind: 'shift-hung', derailleur: 'rear' }, []],
    ];
    for (const [event, names] of heard) expect(shotsOf(event).map((shot) => shot.name)).toEqual(names);
  });
});

describe('every sound', () => {
  it('has a visible twin', () => {
    for (const [, { seen }] of SOUNDS) expect(seen).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('is there in both formats, webm first', () => {
    for (const [name] of SOUNDS) {
      const urls = soundUrl(name as SoundName);
      expect(urls).toHaveLength(2);
      expect(urls[0]).toContain(`${name}.webm`);
      expect(urls[1]).toContain(`${name}.mp3`);
    }
  });
});
