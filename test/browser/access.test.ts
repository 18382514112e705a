/**
 * Rides for those who play otherwise, passed by scripts that may use only what these riders have: two buttons, the
 * keys of one hand, or nothing but what is said and the pitch of a tone. And menus with one switch.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { setSpeed, view } from './gamePage.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const SPEED = 4;
/** What is heard comes one after the other, so the blindfolded ride is slower. */
const EAR_SPEED = 2;
const LEVEL = 'one-pitch-announced';

const site = siteForTests();

/** Opens the game, makes choices in the settings and begins the level. */
async function begin(choose: (page: Page) => Promise<void>, speed = SPEED): Promise<OpenPage> {
  const open = await site.openPage({ width: 800, height: 450 });
  const { page } = open;
  await setSpeed(page, speed);
  await page.getByRole('button', { name: 'Settings' }).click();
  await choose(page);
  await page.keyboard.press('Escape');
  await page.evaluate((id) => {
    location.hash = `#ride/${id}`;
  }, LEVEL);
  await page.click('[data-accept]');
  await expect.poll(() => rideState(page)).toBe('riding');
  return open;
}

const tick = (page: Page, name: RegExp): Promise<void> => page.getByRole('checkbox', { name }).check();
const rideState = (page: Page): Promise<string | undefined> =>
  page.evaluate(() =>
    document.body.dataset['view'] === 'ride' ? document.body.dataset['rideState'] : 'over',
  );

/** What the debrief says a ride came to, of 100. */
async function total(page: Page): Promise<number> {
  await page.locator('[data-guess="skipped"]').click({ timeout: 60_000 });
  return Number(await page.locator('[data-debrief="total"] b').first().textContent({ timeout: 60_000 }));
}

/** Follows a hint for the rear lever until the ride is over; `ease` is the key that eases, or none. */
async function obey(
  page: Page,
  hint: () => Promise<string>,
  keys: { readonly easier: string; readonly harder: string; readonly ease: string | null },
  speed = SPEED,
): Promise<void> {
  while ((await rideState(page)) === 'riding') {
    const text = await hint();
    // "Easier, 2 steps" is read, "2 easier." is heard.
    const wanted = /^(?<heard>\d )?(?<way>easier|harder)(?:, (?<seen>\d))?/i.exec(text)?.groups;
    if (wanted === undefined) {
      await page.waitForTimeout(40);
      continue;
    }
    const steps = Number(wanted['heard'] ?? wanted['seen'] ?? 1);
    const key = wanted['way']?.toLowerCase() === 'easier' ? keys.easier : keys.harder;
    if (keys.ease !== null) await page.keyboard.down(keys.ease);
    await page.waitForTimeout(400 / speed);
    for (let i = 0; i < steps; i += 1) {
      await page.keyboard.press(key);
      await page.waitForTimeout(450 / speed);
    }
    // What was said while the hands were busy is about a gear that is no longer there.
    await hint();
    if (keys.ease !== null) await page.keyboard.up(keys.ease);
    await page.waitForTimeout(300 / speed);
  }
}

/** The hint on the screen, if it is for now. */
const seenHint = (page: Page) => (): Promise<string> =>
  page.evaluate(() => {
    const card = document.querySelector<HTMLElement>('.hud-step');
    const now = card !== null && !card.classList.contains('hud-empty') && card.dataset['now'] === 'true';
    return now ? (card.querySelector('[data-hud="next-step"]')?.textContent ?? '') : '';
  });

/** What was said since the last time, or what the tone asks for when it has lasted a second of the ride. */
async function listen(page: Page): Promise<() => Promise<string>> {
  await page.evaluate(() => {
    const ear = document.querySelector<HTMLElement>('[data-place="ear"]');
    const heard = { said: '', since: 0, now: 0 };
    Object.assign(window, { heard });
    if (ear === null) return;
    new MutationObserver(() => {
      if (/^\d (easier|harder)/.test(ear.textContent ?? '')) heard.said = ear.textContent ?? '';
    }).observe(ear, { childList: true, subtree: true });
  });
  let toneSince = 0;
  return async () => {
    const { said, hz } = await page.evaluate(() => {
      const { heard } = window as unknown as { heard: { said: string } };
      const one = heard.said;
      heard.said = '';
      return {
        said: one,
        hz: Number(document.querySelector<HTMLElement>('[data-place="ear"]')?.dataset['toneHz'] ?? 0),
      };
    });
    if (said !== '') return said;
    if (hz === 0) toneSince = Date.now();
    if (Date.now() - toneSince < 1500 / EAR_SPEED) return '';
    toneSince = Date.now();
    return hz < 400 ? 'easier' : 'harder';
  };
}

describe('the announced pitch is passed', () => {
  it('with two buttons, the game easing by itself', async () => {
    const { page, problems, close } = await begin((opened) => tick(opened, /Two buttons are enough/));
    await obey(page, seenHint(page), { easier: 'ArrowDown', harder: 'ArrowUp', ease: null });
    expect(await total(page)).toBeGreaterThanOrEqual(70);
    expect(problems).toEqual([]);
    await close();
  });

  it('with the left hand alone', async () => {
    const { page, problems, close } = await begin((opened) => opened.click('[data-keys-for="left"]'));
    await obey(page, seenHint(page), { easier: 'KeyS', harder: 'KeyW', ease: 'Space' });
    expect(await total(page)).toBeGreaterThanOrEqual(70);
    expect(problems).toEqual([]);
    await close();
  });

  it('blindfolded, by what is said and the pitch of the tone', async () => {
    const { page, problems, close } = await begin((opened) => tick(opened, /By ear/), EAR_SPEED);
    const hear = await listen(page);
    await obey(page, hear, { easier: 'ArrowDown', harder: 'ArrowUp', ease: 'Space' }, EAR_SPEED);
    expect(await total(page)).toBeGreaterThanOrEqual(70);
    expect(problems).toEqual([]);
    await close();
  });
});

describe('one switch', () => {
  it('gets from the start page on the road', async () => {
    const { page, problems, close } = await site.openPage({ width: 800, height: 450 });
    await page.getByRole('button', { name: 'Settings' }).click();
    await tick(page, /One switch in menus/);
    await page
      .locator('input[type=range]')
      .last()
      .evaluate((one: HTMLInputElement) => {
        one.value = '0.6';
        one.dispatchEvent(new InputEvent('input', { bubbles: true }));
      });
    await page.keyboard.press('Escape');
    const offered = (selector: string): Promise<boolean> =>
      page.evaluate((css) => document.activeElement?.matches(css) === true, selector);
    for (const wanted of ['[data-ride-next]', '[data-accept]']) {
      await expect.poll(() => offered(wanted)).toBe(true);
      await page.keyboard.press('Space');
    }
    await expect.poll(() => view(page)).toBe('ride');
    expect(problems).toEqual([]);
    await close();
  });
});

describe('text at twice its size', () => {
  it('stays within the page', async () => {
    const { page, close } = await site.openPage({ width: 1280, height: 720 });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    for (const name of [
      'start',
      'levels',
      'children',
      'bike',
      'progress',
      'gearcheck',
      'two',
      'teach',
      'about',
    ]) {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, `#${name}`);
      await expect.poll(() => page.locator('[data-coming]').count()).toBe(0);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect([name, tooWide]).toEqual([name, 0]);
    }
    await close();
  });
});
