/** A browser that will not play anything disturbs nobody: what it throws at the sound ends there. */
import { Howler } from 'howler';
import { afterEach, describe, expect, it } from 'vitest';
import { wakeOnGesture } from '../../src/audio/wake.ts';
import { quietOnceBroken } from '../../src/app/ride/sound.ts';

const before = Howler.ctx;
const loud: unknown[] = [];
const hear = (reason: unknown): void => void loud.push(reason);

afterEach(() => {
  Howler.ctx = before;
  process.off('unhandledRejection', hear);
  loud.length = 0;
});

describe('a sleeping audio context', () => {
  it.each([
    ['refuses', () => Promise.reject(new DOMException('not now', 'NotAllowedError'))],
    [
      'throws at',
      () => {
        throw new DOMException('not now', 'InvalidStateError');
      },
    ],
  ])('that %s the sound library disturbs nobody either', async (_, resume) => {
    process.on('unhandledRejection', hear);
    Howler.usingWebAudio = true;
    Howler.ctx = { state: 'suspended', resume } as unknown as AudioContext;
    wakeOnGesture()();
    void Howler.ctx.resume();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(loud).toEqual([]);
  });

  it.each([
    ['refuses', () => Promise.reject(new DOMException('not now', 'NotAllowedError'))],
    [
      'throws',
      () => {
        throw new DOMException('not now', 'InvalidStateError');
      },
    ],
  ])('that %s to wake leaves the ride alone', async (_, resume) => {
    process.on('unhandledRejection', hear);
    let asked = 0;
    Howler.usingWebAudio = true;
    Howler.ctx = {
      state: 'suspended',
      resume: () => {
        asked += 1;
        return resume();
      },
    } as unknown as AudioContext;
    const stop = wakeOnGesture();
    document.dispatchEvent(new Event('keydown'));
    stop();
    document.dispatchEvent(new Event('keydown'));
    await new Promise((resolve) => setImmediate(resolve));
    expect([asked, loud]).toEqual([2, []]);
  });
});

describe('ears', () => {
  it('that break fall silent for good and give back what they hold', () => {
    const heard: string[] = [];
    const ears = quietOnceBroken({
      frame: (what: string) => {
        if (what === 'loud') throw new Error('no sound today');
        heard.push(what);
      },
      stop: () => void heard.push('stopped'),
    });
    ears.frame('soft');
    ears.frame('loud');
    ears.frame('soft');
    ears.stop();
    expect(heard).toEqual(['soft', 'stopped']);
  });

  it('that cannot even be stopped are left alone', () => {
    const ears = quietOnceBroken({
      stop: () => {
        throw new Error('no sound today');
      },
    });
    expect(() => ears.stop()).not.toThrow();
  });
});
