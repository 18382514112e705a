/**
 * A stranger who knows nothing of the game: reads what is written on the screen, presses what it names, and gets over
 * both hills of the first road with the gear ready before the foot. With keys, with thumbs upright and sideways, and
 * with two buttons.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { type Lead, leadRides } from './gamePage.ts';
import type { OpenPage, Screen } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const SPEED = 4;
/** What a stranger's eyes and hands need (ms of ride time). */
const LOOK_MS = 250;
const HOLD_MS = 700;
const AFTER_MS = 400;
const SOFT_FIRST_MS = 300;
const KEYS: Readonly<Record<string, string>> = { '↓': 'ArrowDown', '↑': 'ArrowUp', Space: 'Space' };

const site = siteForTests();

/** Everything that can be read, line by line. */
const linesOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => document.body.innerText.split('\n').map((line) => line.trim()));

/** What the screen asks for: a word of a lever, how often, and the key that stands beside it. */
interface Asked {
  readonly word: string;
  readonly times: number;
  readonly key: string | null;
  /** "Space + ↓": the first one is held meanwhile. */
  readonly soft: string | null;
  readonly holds: boolean;
}

/** Reads it: "easier" or "Easier, 2 steps" with "now"; nothing that lies ahead. */
function askedIn(lines: readonly string[]): Asked | null {
  for (const [i, line] of lines.entries()) {
    const near = lines.slice(i + 1, i + 5).filter((one) => one !== '');
    const step = /^(easier|harder|soft feet)(?:, (\d) steps)?$/i.exec(line);
    if (step === null) continue;
    const [, word = '', times = '1'] = step;
    const isNow = near[0] === 'now' || near.some((one) => /^(hold )?(↓|↑|Space)$|^(tap|hold)$/.test(one));
    if (!isNow || near.some((one) => /^in \d/.test(one))) continue;
    const together = /(Space) \+ (↓|↑)/.exec(near.join(' '));
    const key = together?.[2] ?? near.join(' ').match(/↓|↑|Space/)?.[0] ?? null;
    const soft = together?.[1] ?? null;
    return {
      word: word.toLowerCase(),
      times: Number(times),
      key,
      soft,
      holds: /hold/.test(near.slice(0, 2).join(' ')),
    };
  }
  return null;
}

/** Presses the key that is named, or taps the pad that has the word on it. */
async function press(page: Page, lead: Lead, { word, key, holds }: Asked): Promise<void> {
  if (key !== null) {
    const code = KEYS[key] ?? key;
    await page.keyboard.down(code);
    await lead(holds ? HOLD_MS : LOOK_MS);
    await page.keyboard.up(code);
    return;
  }
  const label = word === 'soft feet' ? 'soft' : word;
  await page
    .locator('button:visible', { hasText: new RegExp(`${label}$`) })
    .last()
    .tap({ position: await lowHalf(page, label) });
}

/** The pad with two halves has the soft one below. */
async function lowHalf(page: Page, label: string): Promise<{ x: number; y: number }> {
  const box = await page
    .locator('button:visible', { hasText: new RegExp(`${label}$`) })
    .last()
    .boundingBox();
  return { x: (box?.width ?? 2) / 2, y: (box?.height ?? 2) * 0.75 };
}

async function rideAsTold(open: OpenPage): Promise<string[]> {
  const { page } = open;
  const lead = await leadRides(page, SPEED);
  const touch = (await page.evaluate(() => navigator.maxTouchPoints)) > 0;
  const push = (name: RegExp) => {
    const button = page.getByRole('button', { name }).first();
    return touch ? button.tap() : button.click();
  };
  await push(/^Ride/);
  await push(/^Ride$/);
  for (let lines = await linesOf(page); !lines.includes('Ride again'); lines = await linesOf(page)) {
    const asked = askedIn(lines);
    const soft = asked?.soft ?? null;
    const held = soft === null ? null : (KEYS[soft] ?? soft);
    if (held !== null) await page.keyboard.down(held);
    if (held !== null) await lead(SOFT_FIRST_MS);
    if (asked === null) await lead(LOOK_MS);
    for (let i = 0; i < (asked?.times ?? 0); i += 1) {
      await press(page, lead, asked as Asked);
      await lead(AFTER_MS);
    }
    if (held !== null) await page.keyboard.up(held);
  }
  const guess = page.getByRole('button', { name: 'Just tell me' });
  await expect
    .poll(async () => (await guess.count()) + (await page.getByText('You made it.').count()))
    .toBeGreaterThan(0);
  if ((await guess.count()) > 0) await guess.click();
  await page.getByText('What happened, why and where').click();
  // All of it stands there when the best ride has been worked out.
  await expect.poll(async () => (await linesOf(page)).includes('Pitch by pitch')).toBe(true);
  return linesOf(page);
}

const screens: readonly (readonly [string, Screen])[] = [
  ['keys', { width: 960, height: 540 }],
  ['thumbs on a phone held upright', { width: 390, height: 844, touch: true }],
  ['thumbs on a phone held sideways', { width: 844, height: 390, touch: true }],
];

/** Easier gears before the foot, pitch by pitch. */
const madeBeforeFoot = (lines: readonly string[]): number[] =>
  lines
    .flatMap((line) => /(\d+|none) (?:of \d+ )?made/.exec(line)?.[1] ?? [])
    .map((n) => (n === 'none' ? 0 : Number(n)));

describe('a stranger', () => {
  it.each(screens)('gets over both hills in time with %s', async (_, screen) => {
    const open = await site.openPage(screen);
    const lines = await rideAsTold(open);
    expect(madeBeforeFoot(lines).length, lines.join(' | ')).toBe(2);
    for (const made of madeBeforeFoot(lines)) expect(made).toBeGreaterThan(0);
    // Thumbs of this stranger do one thing at a time; keys can be held together.
    if (screen.touch !== true) expect(lines).toContain('You made it.');
    expect(open.problems).toEqual([]);
    await open.close();
  });

  it('gets over both hills in time with two buttons', async () => {
    const open = await site.openPage({ width: 960, height: 540 });
    await open.page.getByRole('button', { name: 'Settings' }).click();
    await open.page.getByText('Two buttons are enough').click();
    await open.page.keyboard.press('Escape');
    const lines = await rideAsTold(open);
    for (const made of madeBeforeFoot(lines)) expect(made).toBeGreaterThan(0);
    expect(lines).toContain('You made it.');
    await open.close();
  });

  it('reads no more than twelve words before the bike moves for the first time', async () => {
    const open = await site.openPage({ width: 390, height: 844, touch: true });
    const { page } = open;
    await page.getByRole('button', { name: /^Ride/ }).first().tap();
    const dialog = (await page.getByRole('dialog').innerText()).split(/\s+/);
    await page.getByRole('button', { name: /^Ride$/ }).tap();
    const card = page.getByText('tap', { exact: true }).locator('..');
    await card.waitFor();
    const lesson = (await card.innerText()).split(/\s+/);
    expect([...dialog, ...lesson, 'Skip'].filter((word) => /\w/.test(word)).length).toBeLessThanOrEqual(12);
    await open.close();
  });
});
