/**
 * From bytes to frames for QR codes and back: in any order, repeated, mixed with other messages, damaged. And
 * what a plan and an evening's marks come to.
 */
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase41, toBase41 } from '../../../src/core/transfer/base41.ts';
import { utf8Bytes, utf8Text } from '../../../src/core/transfer/bytes.ts';
import {
  EMPTY_BOX,
  type FrameBox,
  messageState,
  takeFrame,
  toFrames,
} from '../../../src/core/transfer/frames.ts';
import { packPlan, packRecords, unpack } from '../../../src/core/transfer/pack.ts';
import { parsePlan } from '../../../src/core/group/plan.ts';
import { READY_PLANS } from '../../../src/core/group/readyPlans.ts';
import { parseRecord } from '../../../src/core/group/records/recordFile.ts';
import type { HandOver } from '../../../src/core/transfer/rideFile.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { madeUpRecord, ownLevel, planWith } from '../group/rides.ts';

const FRAME_BYTES = 512;

const deflate = (bytes: Uint8Array): Uint8Array => new Uint8Array(deflateRawSync(bytes, { level: 9 }));
const inflate = (bytes: Uint8Array, most: number): Uint8Array =>
  new Uint8Array(inflateRawSync(bytes, { maxOutputLength: most }));
const some = (length: number, seed: number): Uint8Array => {
  const random = seededRandom(seed);
  return Uint8Array.from({ length }, () => Math.floor(random() * 256));
};
const take = (frames: readonly string[], box: FrameBox = EMPTY_BOX): FrameBox =>
  frames.reduce(takeFrame, box);
const framesOf = (bytes: Uint8Array): string[] => toFrames(bytes) ?? [];

describe('frames', () => {
  it('any bytes come back from any order with repeats', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 3_000 }), fc.integer(), (bytes, seed) => {
        const frames = framesOf(bytes);
        const random = seededRandom(seed);
        const shuffled = [...frames, ...frames].map((f) => ({ f, k: random() })).sort((a, b) => a.k - b.k);
        const box = take(shuffled.map(({ f }) => f));
        expect(box.messages).toHaveLength(1);
        expect(box.damaged).toEqual([]);
        expect(messageState(box.messages[0] as never)).toEqual({ kind: 'complete', bytes });
      }),
      { numRuns: 100, seed: 1 },
    );
  });

  it('no frame is longer than 800 characters, all of which a QR code packs densely and a link may carry', () => {
    for (const length of [0, 1, FRAME_BYTES - 1, FRAME_BYTES, FRAME_BYTES + 1, 20_000]) {
      const frames = framesOf(some(length, length));
      expect(frames).toHaveLength(Math.max(1, Math.ceil(length / FRAME_BYTES)));
      for (const frame of frames) {
        expect(frame.length).toBeLessThanOrEqual(800);
        expect(frame).toMatch(/^[0-9A-Z+\-./:]+$/);
        expect(new URL(`https://example.org/#${frame}`).hash).toBe(`#${frame}`);
      }
    }
  });

  it('what takes more than 999 frames is refused', () => {
    expect(toFrames(new Uint8Array(999 * FRAME_BYTES))).toHaveLength(999);
    expect(toFrames(new Uint8Array(999 * FRAME_BYTES + 1))).toBeNull();
  });

  it('missing frames are named by their number', () => {
    const frames = framesOf(some(3_000, 2));
    const box = take(frames.filter((_, i) => i !== 1 && i !== 4));
    expect(messageState(box.messages[0] as never)).toEqual({ kind: 'missing', count: 6, missing: [2, 5] });
  });

  it('several messages may be mixed', () => {
    const messages = [some(1_200, 3), some(700, 4), some(10, 5)];
    const all = messages.map(framesOf);
    const mixed = [0, 1, 2].flatMap((i) => all.flatMap((frames) => frames[i] ?? []));
    const states = take(mixed).messages.map(messageState);
    expect(states).toEqual(messages.map((bytes) => ({ kind: 'complete', bytes })));
  });

  it('every single wrong character is noticed, and the frame is named as far as it can be', () => {
    const [, frame = ''] = framesOf(some(1_200, 6));
    for (let i = 0; i < frame.length; i += 1) {
      const wrong = frame.slice(0, i) + (frame[i] === '7' ? '8' : '7') + frame.slice(i + 1);
      const box = takeFrame(EMPTY_BOX, wrong);
      expect([i, box.messages.length, box.damaged.length]).toEqual([i, 0, 1]);
      if (i > 24) expect(box.damaged[0]).toMatchObject({ code: 'checksum', number: 2 });
    }
  });

  it('a damaged frame is noted once and made good by a sound one', () => {
    const [frame = ''] = framesOf(some(100, 7));
    const wrong = `${frame.slice(0, 40)}::${frame.slice(42)}`;
    const box = take([wrong, wrong, frame, wrong]);
    expect(box.damaged).toHaveLength(1);
    expect(messageState(box.messages[0] as never).kind).toBe('complete');
  });

  it.each([
    '',
    'B',
    'hello',
    '<script>alert(1)</script>',
    'x'.repeat(10_000),
    'B1'.repeat(300),
    '\u202E',
    'B10',
  ])('text that is no frame is named (%#)', (text) => {
    expect(takeFrame(EMPTY_BOX, text)).toEqual({
      messages: [],
      damaged: [{ code: 'not-a-frame', messageId: null, number: null }],
    });
  });

  it('a camera held at anything does not fill the memory', () => {
    let box = EMPTY_BOX;
    for (let i = 0; i < 400; i += 1) box = take(framesOf(some(600, i)).slice(0, 1), box);
    expect(box.messages.length).toBeLessThanOrEqual(50);
    expect(box.damaged.length).toBeLessThanOrEqual(200);
    expect(box.damaged[0]?.code).toBe('too-many-messages');
  });

  it('the box survives JSON', () => {
    const box = take([...framesOf(some(1_200, 8)).slice(1), 'nonsense']);
    expect(JSON.parse(JSON.stringify(box))).toEqual(box);
  });
});

describe('bytes', () => {
  it('base 41 brings back every sequence and refuses what it never writes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(fromBase41(toBase41(bytes))).toEqual(bytes);
      }),
      { seed: 2 },
    );
    for (const text of ['A', '::', ':::', 'ab', '0 0']) expect(fromBase41(text)).toBeNull();
  });

  it('UTF-8 is the UTF-8 of everybody else', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const bytes = new TextEncoder().encode(text);
        expect(utf8Bytes(text)).toEqual(bytes);
        expect(utf8Text(bytes)).toBe(text);
      }),
      { seed: 3 },
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 12 }), (bytes) => {
        let expected: string | null = null;
        try {
          expected = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
        } catch {
          expected = null;
        }
        expect(utf8Text(bytes)).toBe(expected);
      }),
      { numRuns: 2_000, seed: 4 },
    );
  });
});

const evening: HandOver = {
  planId: 'tuesday',
  deviceId: 'tablet-3',
  lastSeq: 36,
  withdrawn: ['tablet-3.4'],
  records: Array.from({ length: 36 }, (_, i) =>
    madeUpRecord(
      {
        deviceId: 'tablet-3',
        seq: i + 1,
        nickname: ['red-fox', 'blue-owl', '~Zoë', 'grey-hare'][i % 4] ?? '',
        attempt: 1 + Math.floor(i / 12),
      },
      seededRandom(i),
      4,
    ),
  ),
};

describe('packets', () => {
  it('every plan comes back the same, also with a 3 km level of its own', async () => {
    const own = planWith({
      rides: [
        { kind: 'own', level: ownLevel() },
        { kind: 'check', audience: 'children' },
        { kind: 'check', audience: 'everyone', needs: 'crank-motor' },
      ],
    });
    for (const plan of [...READY_PLANS, own]) {
      const packet = await packPlan(plan, deflate);
      expect(await unpack(packet, inflate)).toEqual({ kind: 'plan', result: { ok: true, plan } });
    }
  });

  it('a plan is one frame, one with a 3 km level at most three, an evening of 36 marks at most five', async () => {
    const own = planWith({ rides: [{ kind: 'own', level: ownLevel() }] });
    const counts = {
      ready: framesOf(await packPlan(READY_PLANS[0] as never, deflate)).length,
      own: framesOf(await packPlan(own, deflate)).length,
      marks: framesOf(await packRecords(evening, deflate)).length,
    };
    expect(counts.ready).toBe(1);
    expect(counts.own).toBeLessThanOrEqual(3);
    expect(counts.marks).toBeLessThanOrEqual(5);
  });

  it('records come back the same without their recordings, with and without deflating', async () => {
    for (const squeeze of [deflate, (bytes: Uint8Array) => bytes]) {
      const packet = await packRecords(evening, squeeze);
      expect(await unpack(packet, inflate)).toEqual({ kind: 'records', handOver: evening });
    }
  });

  it('a packet that was cut, changed or made up is unreadable, or what it claims to be is checked', async () => {
    const packets = [await packRecords(evening, deflate), await packPlan(READY_PLANS[1] as never, (b) => b)];
    for (const packet of packets)
      for (let i = 0; i < packet.length; i += 3) {
        const cut = await unpack(packet.subarray(0, i), inflate);
        expect(cut.kind).toBe('unreadable');
        const wrong = packet.slice();
        wrong[i] = (wrong[i] as number) ^ 0x55;
        const read = await unpack(wrong, inflate);
        if (read.kind === 'records')
          for (const record of read.handOver.records) expect(parseRecord(record).damaged).toBeNull();
        else if (read.kind === 'plan' && read.result.ok)
          expect(parsePlan(read.result.plan)).toEqual(read.result);
      }
    for (let seed = 0; seed < 300; seed += 1) {
      const noise = some(200, seed);
      noise.set([0x52, 1], 0);
      expect((await unpack(noise, inflate)).kind).toBe('unreadable');
    }
  });

  it('a packet that unpacks to something enormous is given up', async () => {
    const bomb = deflate(new Uint8Array(50_000_000));
    const packet = new Uint8Array(bomb.length + 2);
    packet.set([0x52, 2]);
    packet.set(bomb, 2);
    expect(await unpack(packet, inflate)).toEqual({ kind: 'unreadable', code: 'damaged' });
  });

  it('a newer format and no packet at all are told apart', async () => {
    expect(await unpack(Uint8Array.of(0x50, 9, 1), inflate)).toMatchObject({ code: 'newer-version' });
    expect(await unpack(Uint8Array.of(), inflate)).toMatchObject({ code: 'not-a-packet' });
  });
});
