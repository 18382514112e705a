/** The music of the legs: a note for each push, higher in an easier gear, and silence where nobody pedals or listens. */
import { describe, expect, it, vi } from 'vitest';
import { createMusic, noteHz } from '../../src/audio/music.ts';
import { frameWith } from './frames.ts';

describe('a note', () => {
  it('is higher in an easier gear, and the tune comes round', () => {
    for (let push = 0; push < 16; push += 1) {
      expect(noteHz(push, 1.6)).toBeGreaterThan(noteHz(push, 6));
      expect(noteHz(push + 16, 3)).toBe(noteHz(push, 3));
    }
  });

  it('stays where ears and loudspeakers are', () => {
    for (const developmentM of [0.5, 1.6, 4, 9, 20])
      for (let push = 0; push < 16; push += 1) {
        expect(noteHz(push, developmentM)).toBeGreaterThan(100);
        expect(noteHz(push, developmentM)).toBeLessThan(2000);
      }
  });
});

describe('the music', () => {
  const play = () => {
    const started = vi.fn();
    const param = { value: 0, setValueAtTime: vi.fn(), exponentialRampToValueAtTime: vi.fn() };
    const node = () => ({
      gain: param,
      frequency: param,
      connect: (to: unknown) => to,
      disconnect: vi.fn(),
      start: started,
      stop: vi.fn(),
    });
    const context = {
      state: 'running',
      currentTime: 0,
      destination: {},
      createGain: node,
      createOscillator: node,
    };
    return { started, music: createMusic(context as never) };
  };

  it('plays with each push of a pedal and not between', () => {
    const { started, music } = play();
    for (const crankTurns of [1.1, 1.2, 1.3]) music.frame(frameWith({ crankTurns }), 1);
    expect(started).not.toHaveBeenCalled();
    music.frame(frameWith({ crankTurns: 1.51 }), 1);
    expect(started).toHaveBeenCalledTimes(2);
  });

  it('is silent at rest, without a volume, and after a jump', () => {
    const { started, music } = play();
    music.frame(frameWith({ crankTurns: 1.4 }), 1);
    music.frame(frameWith({ crankTurns: 1.6, pressure: 'coast' }), 1);
    music.frame(frameWith({ crankTurns: 2.1 }), 0);
    music.frame(frameWith({ crankTurns: 9.1 }), 1);
    expect(started).not.toHaveBeenCalled();
  });
});
