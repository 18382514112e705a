/**
 * Prints how long ready plans take with eight riders, as the game says it and as a script finds it: turns at real pace,
 * a hand that does what is asked for, and a person who reads and hands on. Run `npm run build` first, then
 * `npx tsx test/figures/evening.ts`, and wait some ten minutes. Rides are counted in their own time, so that a busy
 * machine changes only what lies between them.
 */
import type { Page } from 'playwright-core';
import { minutesSaid, planRideSeconds, planSeconds } from '../../src/core/group/minutes.ts';
import { READY_PLANS } from '../../src/core/group/readyPlans.ts';
import { TICK_S } from '../../src/core/ride/clock.ts';
import { keptIn } from '../browser/clinicVisit.ts';
import { openSite } from '../browser/site.ts';
import { BUNDLED } from '../core/ride/worlds.ts';

const RIDERS = 8;
/** Turns that are ridden of each plan. */
const TURNS = 2;
/** A coach or rider reads the line, and the tablet goes to the next pair of hands (s; common practice, no source). */
const READ_S = 10;
const HAND_S = 10;
const PATIENT = { timeout: 15 * 60_000 };
const KEYS: Readonly<Record<string, string>> = {
  '↓': 'ArrowDown',
  '↑': 'ArrowUp',
  '←': 'ArrowLeft',
  '→': 'ArrowRight',
};

/** Pushes what the next step asks for, until the ride is over. */
async function rideAsAsked(page: Page): Promise<void> {
  while ((await page.evaluate(() => document.body.dataset['view'])) === 'ride') {
    const asked = await page.evaluate(
      () => document.querySelector('.hud-step[data-now="true"] kbd')?.textContent ?? null,
    );
    const key = asked === null ? undefined : KEYS[asked];
    if (key !== undefined) await page.keyboard.press(key);
    await page.waitForTimeout(400);
  }
}

const site = await openSite();
for (const plan of READY_PLANS.slice(0, 2)) {
  const { page, close } = await site.openPage({ width: 1280, height: 720, address: '#clinic' });
  await page.click(`[data-plan="${plan.id}"]`);
  await page.click('[data-go]');
  const betweenS: number[] = [];
  for (let turn = 0; turn < TURNS; turn += 1) {
    const askedMs = performance.now();
    await page.click('[data-start]');
    const accept = page.locator('[data-accept]');
    await accept.or(page.locator('.ride')).first().waitFor(PATIENT);
    if ((await accept.count()) > 0) await accept.click();
    await page.locator('.ride:not(:has(.ride-ready))').waitFor(PATIENT);
    const goneMs = performance.now();
    await rideAsAsked(page);
    const overMs = performance.now();
    await page.locator('[data-next-rider]').waitFor(PATIENT);
    betweenS.push((goneMs - askedMs + performance.now() - overMs) / 1000 + READ_S + HAND_S);
    await page.click('[data-next-rider]');
  }
  const records = await keptIn<{ recording: { ticks: number } }>(page, 'clinic-record');
  const ridesS = records.map(({ recording }) => recording.ticks * TICK_S);
  const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
  const find = (id: string) => BUNDLED.find(({ level }) => level.id === id)?.level;
  const saidS = planSeconds(
    planRideSeconds(plan, find).flatMap((one) => one ?? []),
    { riders: RIDERS, attempts: plan.attempts },
  );
  const foundS = (mean(ridesS) + mean(betweenS)) * RIDERS * plan.attempts;
  console.log(
    `${plan.id}: worked out ${(saidS / 60).toFixed(1)} min (said: ${minutesSaid(saidS)}), ridden ${(foundS / 60).toFixed(1)} min`,
    `(${(100 * (saidS / foundS - 1)).toFixed(1)} %): rides ${ridesS.map((s) => s.toFixed(0)).join(', ')} s,`,
    `between ${betweenS.map((s) => s.toFixed(0)).join(', ')} s`,
  );
  await close();
}
await site.close();
