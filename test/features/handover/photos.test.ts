// @vitest-environment node
/**
 * From codes to pictures and back: a plan with a 3 km level and an evening of 36 rides, photographed out of focus,
 * turned and in bad light, read by the reader of the pages; in any order, repeated, one missing.
 */
import { describe, expect, it } from 'vitest';
import { LIMITS } from '../../../src/core/math/limits.ts';
import { codeOf } from '../../../src/ui/pictures/code.ts';
import { decodePicture } from '../../../src/features/handover/decode.ts';
import { messageOfPlan, messageOfRides } from '../../../src/features/handover/message.ts';
import { NOTHING_READ, openMessages, readText } from '../../../src/features/handover/reading.ts';
import { type Arrival, readiness, made, ownPlan, shuffled, SITE } from './given.ts';
import { photo, type Shot } from './photo.ts';

const SHOTS: Readonly<Record<string, Shot>> = {
  'straight and sharp': { squarePx: 4 },
  'from far away': { squarePx: 2.6 },
  'turned by 7°': { squarePx: 4, angleDeg: 7 },
  'turned by 31°': { squarePx: 4, angleDeg: 31 },
  'turned by 45°': { squarePx: 4, angleDeg: 45 },
  'upside down and askew': { squarePx: 4, angleDeg: 187 },
  'smeared over half a square': { squarePx: 4, blurPx: 2 },
  'light from one side': { squarePx: 4, lightFrom: 0.15, lightTo: 1 },
  'with a reflection': { squarePx: 4, lightFrom: 0.3, lightTo: 0.9, glare: 0.4 },
  'in the dark, noisy': { squarePx: 4, lightFrom: 0.12, lightTo: 0.25, noise: 8 },
  'all of it': { squarePx: 4, angleDeg: 13, blurPx: 1.4, lightFrom: 0.2, lightTo: 0.9, noise: 10 },
  'all of it, steeper': { squarePx: 3.4, angleDeg: -22, blurPx: 1.3, lightFrom: 0.9, lightTo: 0.2, noise: 6 },
};

/** Reads texts one after another. */
async function readAll(texts: readonly string[]) {
  let reading = NOTHING_READ;
  const arrivals: Arrival[] = [];
  for (const text of texts) {
    const after = await readText(reading, text);
    reading = after.reading;
    arrivals.push(...after.arrivals);
  }
  return { reading, arrivals };
}

const snap = (frame: string, shot: Shot, seed: number): string | null =>
  decodePicture(photo(codeOf(frame), shot, seed));

describe('photographs of a full code', () => {
  it.each(Object.keys(SHOTS))('%s: the reader gives the very text', async (name) => {
    const { frames } = made(await messageOfRides(readiness(), SITE));
    const frame = frames.find((one) => one.length === LIMITS.code.characters.most) ?? '';
    expect(snap(frame, SHOTS[name] ?? { squarePx: 4 }, 1)).toBe(frame);
  });

  it('a picture without a code gives nothing', () => {
    const wall = { data: new Uint8ClampedArray(300 * 300 * 4).fill(120), width: 300, height: 300 };
    expect(decodePicture(wall)).toBeNull();
    expect(decodePicture({ data: new Uint8ClampedArray(4), width: 1, height: 1 })).toBeNull();
  });
});

describe('a plan and an evening by camera', () => {
  it('every frame photographed in another way, in any order and twice: the plan and all 36 rides come back', async () => {
    const plan = ownPlan();
    const planMessage = made(await messageOfPlan(plan, SITE));
    const rides = made(await messageOfRides(readiness(), SITE));
    expect([planMessage.frames.length, rides.frames.length]).toEqual([2, 3]);
    const shots = Object.values(SHOTS);
    const taken = shuffled([...planMessage.frames, ...rides.frames], 4).map((frame, i) =>
      snap(frame, shots[(i * 5) % shots.length] ?? { squarePx: 4 }, i),
    );
    expect(taken.filter((text) => text === null)).toEqual([]);
    const texts = shuffled([...taken, ...taken], 7).map((text) => text ?? '');
    const { arrivals, reading } = await readAll(texts);
    expect(arrivals).toHaveLength(2);
    expect(arrivals).toContainEqual({ kind: 'plan', plan });
    const arrived = arrivals.find((arrival) => arrival.kind === 'rides');
    expect(arrived?.read.set.records).toEqual(readiness().records);
    expect(arrived?.read.heard).toEqual([{ deviceId: 'tablet-3', lastSeq: 36 }]);
    expect(reading.box.damaged).toEqual([]);
  });

  it('one that was never seen is named by its number, and nothing is opened before it comes', async () => {
    const { frames } = made(await messageOfRides(readiness(), SITE));
    const without = shuffled(
      frames.filter((_, i) => i !== 1),
      3,
    );
    const first = await readAll(without);
    expect(first.arrivals).toEqual([]);
    expect(openMessages(first.reading)).toMatchObject([{ count: 3, missing: [2] }]);
    const last = await readText(first.reading, frames[1] ?? '');
    expect(last.arrivals).toHaveLength(1);
    expect(openMessages(last.reading)).toEqual([]);
  });
});
