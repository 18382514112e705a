/** A handful of hostile inputs in real pages: each is answered, nothing goes uncaught, and the kept rides stay as they are. */
import { expect, it } from 'vitest';
import { copyOf, hostileInput, keptRide } from '../hostile/inputs.ts';
import { intoPage, keptInPage, PAGE_KINDS } from './hostilePages.ts';
import { siteForTests } from './siteForTests.ts';

const SEED = 20_261_126;
const ROUNDS = 2;
const rides = [1, 2, 3].map(keptRide);
const ids = rides.map((ride) => ride['id'] as string);
const site = siteForTests();

it('every page that takes something answers, and keeps what was kept', async () => {
  const { page, problems, close } = await site.openPage({ width: 1280, height: 720, address: '#about' });
  await intoPage(page, { kind: 'copy', how: '', text: JSON.stringify(copyOf({ rides })) });
  const before = await page.evaluate(keptInPage, ids);
  expect(before).toContain('ride-3');
  for (let i = 0; i < ROUNDS * PAGE_KINDS.length; i += 1) {
    const input = hostileInput(SEED, i, PAGE_KINDS);
    await intoPage(page, input).catch((error: unknown) => {
      throw new Error(`${i} ${input.kind}, ${input.how}`, { cause: error });
    });
    expect([`${i} ${input.kind}, ${input.how}`, ...problems]).toHaveLength(1);
  }
  expect(await page.evaluate(keptInPage, ids)).toBe(before);
  await close();
});

it('long things are read by workers, which the policy of the page lets start, or by the page from the same file', async () => {
  const { page, problems, close } = await site.openPage({
    width: 1280,
    height: 720,
    address: '#about',
  });
  let started = 0;
  page.on('worker', () => {
    started += 1;
  });
  await intoPage(page, { kind: 'copy', how: '', text: JSON.stringify(copyOf({ rides })) });
  expect(started).toBe(1);
  await intoPage(page, { kind: 'rides', how: '', text: '{"deviceId":"t1","seq":1}\n'.repeat(12_000) });
  expect(started).toBe(2);
  // Without workers the page takes over, with the code of the worker's own file.
  await page.addInitScript(() => Object.assign(window, { Worker: undefined }));
  await intoPage(page, { kind: 'copy', how: '', text: JSON.stringify(copyOf({ rides })) });
  await intoPage(page, { kind: 'rides', how: '', text: '{"deviceId":"t1","seq":1}\n'.repeat(12_000) });
  expect(started).toBe(2);
  expect(problems).toEqual([]);
  await close();
});
