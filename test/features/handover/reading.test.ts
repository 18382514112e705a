// @vitest-environment node
/**
 * Links, files and pasted texts: what they come to, also when mail programs and messengers have been at them, when
 * they are damaged, and when a stranger has made them.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeRideFile } from '../../../src/core/transfer/rideFile.ts';
import { inflate, deflate } from '../../../src/ui/packing.ts';
import { framesIn, messageOfPlan, messageOfRides } from '../../../src/features/handover/message.ts';
import { NOTHING_READ, openDamage, openMessages, readText } from '../../../src/features/handover/reading.ts';
import { realRecord } from '../../core/group/rides.ts';
import { type Arrival, readiness, made, ownPlan, SITE } from './given.ts';

const read = async (text: string): Promise<Arrival | undefined> =>
  (await readText(NOTHING_READ, text)).arrivals[0];

describe('one link', () => {
  it('carries a plan with a 3 km level, or 36 rides', async () => {
    const plan = ownPlan();
    const planLink = made(await messageOfPlan(plan, SITE)).link;
    expect(planLink.startsWith(`${SITE}#join/B1`)).toBe(true);
    expect(await read(planLink)).toEqual({ kind: 'plan', plan });
    const ridesLink = made(await messageOfRides(readiness(), SITE)).link;
    expect(ridesLink.startsWith(`${SITE}#collect/B1`)).toBe(true);
    expect(await read(ridesLink)).toMatchObject({
      kind: 'rides',
      read: { set: { records: readiness().records } },
    });
  });

  it.each([
    ['broken into lines', (link: string) => link.replace(/(.{76})/g, '$1\r\n')],
    [
      'with signs written as %..',
      (link: string) => link.replace(/[+:/.]/g, (s) => `%${s.charCodeAt(0).toString(16)}`),
    ],
    ['without its address', (link: string) => link.slice(link.indexOf('#'))],
    [
      'as the address bar hands it on',
      (link: string) => decodeURIComponent(encodeURIComponent(link.split('#join/')[1] ?? '')),
    ],
    ['between other words', (link: string) => `${link}\n`],
  ])('%s it is still read', async (_name, change) => {
    const plan = ownPlan();
    expect(await read(change(made(await messageOfPlan(plan, SITE)).link))).toEqual({ kind: 'plan', plan });
  });

  it('cut off it says which frames are missing and which is damaged', async () => {
    const { link, frames } = made(await messageOfRides(readiness(), SITE));
    const { reading, arrivals } = await readText(
      NOTHING_READ,
      link.slice(0, SITE.length + 9 + 801 * 2 + 400),
    );
    expect(arrivals).toEqual([]);
    expect(openMessages(reading)).toMatchObject([{ count: frames.length, missing: [3] }]);
    expect(openDamage(reading)).toMatchObject([{ code: 'checksum', number: 3 }]);
    // The whole link mends it.
    const after = await readText(reading, link);
    expect(after.arrivals).toHaveLength(1);
    expect(openDamage(after.reading)).toEqual([]);
  });

  it('with one wrong letter anywhere never gives anything but what was sent', async () => {
    const { link } = made(await messageOfRides(readiness('t1', 12), SITE));
    const start = link.indexOf('#collect/') + 9;
    for (let at = start; at < link.length; at += 41) {
      const wrong = `${link.slice(0, at)}${link[at] === 'A' ? 'B' : 'A'}${link.slice(at + 1)}`;
      const { arrivals, reading } = await readText(NOTHING_READ, wrong);
      expect(arrivals).toEqual([]);
      expect(openDamage(reading).length + openMessages(reading).length).toBeGreaterThan(0);
    }
  });
});

describe('files', () => {
  it('of rides come back with their recordings; of plans the same', async () => {
    const record = realRecord({ deviceId: 't1', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.6);
    const handOver = { ...readiness('t1', 0), lastSeq: 1, records: [record] };
    expect(await read(made(await messageOfRides(handOver, SITE)).file.text)).toMatchObject({
      kind: 'rides',
      read: { set: { records: [record] } },
    });
    const plan = ownPlan();
    expect(await read(made(await messageOfPlan(plan, SITE)).file.text)).toEqual({ kind: 'plan', plan });
  });

  it('of rides that are all damaged are named, not called nothing', async () => {
    const text = writeRideFile(readiness('t1', 3)).replaceAll('"total":', '"totel":');
    const arrival = await read(text);
    expect(arrival?.kind === 'rides' && arrival.read.set.damaged).toHaveLength(3);
  });

  it.each([
    ['', 'nothing'],
    ['  \n', 'nothing'],
    ['hello', 'not-a-packet'],
    ['<script>alert(1)</script>', 'not-a-packet'],
    ['{"type":"FeatureCollection"}', 'not-a-packet'],
    ['\u202Etxt.exe\u0000\u0007', 'not-a-packet'],
    ['x'.repeat(10_000), 'not-a-packet'],
  ])('%j is told as %s', async (text, code) => {
    expect(await read(text)).toEqual({ kind: 'unreadable', code });
  });

  it('a plan with something wrong says what, by a sentence', async () => {
    const dirty = JSON.stringify({ ...ownPlan(), title: '\u202Eevil' });
    expect(await read(dirty)).toMatchObject({ kind: 'plan-problems', problems: [{ path: 'title' }] });
    const unknown = JSON.stringify({ ...ownPlan(), '<img src=x>': 1 });
    expect((await read(unknown))?.kind).toBe('plan-problems');
  });
});

describe('any text', () => {
  it('never throws and never keeps more than it should', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ maxLength: 300 }), fc.boolean(), async (text, asLink) => {
        const { arrivals, reading } = await readText(NOTHING_READ, asLink ? `#join/${text}` : text);
        for (const arrival of arrivals) expect(['unreadable', 'plan-problems']).toContain(arrival.kind);
        expect(reading.box.damaged.length).toBeLessThanOrEqual(200);
      }),
      { numRuns: 300, seed: 5 },
    );
  });

  it('frames are found however they are strung together', () => {
    expect(framesIn('  A_B\n_ C')).toEqual(['A', 'B', 'C']);
    expect(framesIn('https://a.example/x#join/A_B https://a.example/x#join/C')).toEqual(['A', 'B', 'C']);
  });
});

describe('packing', () => {
  it('gives back what went in, and gives up on what would be enormous', async () => {
    const bytes = Uint8Array.from({ length: 5_000 }, (_, i) => (i * i) % 251);
    expect(await inflate(await deflate(bytes), 10_000)).toEqual(bytes);
    const bomb = await deflate(new Uint8Array(3_000_000));
    expect(bomb.length).toBeLessThan(5_000);
    await expect(async () => inflate(bomb, 100_000)).rejects.toThrow('more than is allowed');
    await expect(async () => inflate(Uint8Array.of(1, 2, 3), 100)).rejects.toThrow();
  });
});
